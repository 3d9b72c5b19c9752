import { asked, byHand, closed, dry, level, loose, out, paper, released, torqued, washers } from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { readingsOf } from "../readings.ts";
import { type Calendar, type Line, on, telling } from "../script.ts";
import type { Weigher } from "../weighing.ts";

/** An ordinary service: two book figures that belong to two seals, and the one for the seal that was fitted. */
export function job0231(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0231", "jory");
  const day = -352;
  const weighed = weigh("van", "van-fill", day);
  const pull = weighed.pull(null);
  const aluminium = {
    plug: "original, M22x1.5",
    seal: "flat washer",
    material: "aluminium",
    surface: "oiled",
  } as const;
  return [
    ...at(
      on(day, "08:05"),
      {
        type: "JobOpened",
        machine: "van",
        owner: ownerOf("van"),
        cameFor: "gear oil",
        bay: "bay 1",
        meter: { distance: "198400 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.van },
      { type: "ConditionFound", port: "van-fill", words: "dry all round, plug head clean" },
    ),
    ...at(
      on(day, "08:15"),
      loose("van-fill"),
      out("van-fill"),
      ...readingsOf("van", "van-fill"),
      loose("van-drain"),
      out("van-drain"),
    ),
    ...at(
      on(day, "08:30"),
      {
        type: "UnitDrained",
        unit: "van-gearbox",
        out: "2.25 L",
        how: "jug",
        temperature: "44 °C",
        colour: "dark amber",
        metal: "paste",
        water: "no",
      },
      ...washers("van-drain", 1, 1),
      ...washers("van-fill", 1, 1),
      asked("van-fill"),
      weighed.fact,
      {
        type: "NoteWritten",
        words: "35 stands beside a fibre washer, 48 beside flat aluminium: flat aluminium is fitted, so 48.",
      },
    ),
    ...at(on(day, "08:45"), byHand("van-drain"), torqued(calendar, day, "van-drain", pull, "jory", aluminium)),
    ...at(
      on(day, "08:55"),
      {
        type: "UnitFilled",
        unit: "van-gearbox",
        fluid: "F-75W90",
        called: "Gear oil 75W-90 GL-4",
        volume: "2.40 L",
        how: "meter pump",
      },
      { type: "LevelDrawnDown", unit: "van-gearbox", out: "60 ml", fell: "2.7 mm" },
      {
        type: "UnitFilled",
        unit: "van-gearbox",
        fluid: "F-75W90",
        called: "Gear oil 75W-90 GL-4",
        volume: "60 ml",
        how: "60 ml syringe",
      },
      level("van-gearbox"),
      byHand("van-fill"),
      torqued(calendar, day, "van-fill", pull, "jory", aluminium),
    ),
    ...at(
      on(day, "09:20"),
      dry("van-drain"),
      dry("van-fill"),
      {
        type: "ServiceLaidDown",
        unit: "van-gearbox",
        every: { distance: "80000 km", months: 48 },
        source: "service sheet",
      },
      paper,
      released,
      closed,
    ),
  ];
}

/** In the field, without a network: one plug left by hand overnight, flagged by the board on both phones. */
export function job0299(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const day = -181;
  const jory = telling("0299", "jory", "phone-jory");
  const sefa = telling("0299", "sefa", "phone-sefa");
  const weighed = weigh("combine", "combine-left", day);
  const pull = weighed.pull(null);
  return [
    ...jory(
      on(day, "17:20"),
      {
        type: "JobOpened",
        machine: "combine",
        owner: ownerOf("combine"),
        cameFor: "front hub oil, both sides",
        bay: "in the field",
        meter: { hours: "2870 h" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.combineLeft },
      { type: "UnitIdentified", is: unitsOfDemo.combineRight },
    ),
    ...sefa(on(day, "17:45"), loose("combine-left"), out("combine-left"), ...readingsOf("combine", "combine-left")),
    ...jory(on(day, "17:50"), loose("combine-right"), out("combine-right"), ...readingsOf("combine", "combine-right")),
    ...sefa(
      on(day, "18:00"),
      { type: "UnitDrained", unit: "combine-hub-left", out: "3.9 L", how: "jug", metal: "paste", water: "no" },
      ...washers("combine-left", 1, 1),
      asked("combine-left"),
      weighed.fact,
    ),
    ...jory(
      on(day, "18:05"),
      { type: "UnitDrained", unit: "combine-hub-right", out: "2.6 L", how: "jug", metal: "paste", water: "no" },
      ...washers("combine-right", 1, 1),
      {
        type: "AlsoNoticed",
        notice: "combine-seal",
        words: "right hub weeps at its seal; that is where the 1.3 L went",
        look: calendar.day(day + 1),
      },
    ),
    ...jory(
      on(day, "18:25"),
      {
        type: "UnitFilled",
        unit: "combine-hub-right",
        fluid: "F-80W90",
        called: "Gear oil 80W-90 GL-5",
        volume: "3.9 L",
        how: "jug",
      },
      level("combine-hub-right"),
      byHand("combine-right"),
      torqued(calendar, day, "combine-right", pull, "jory"),
      dry("combine-right", "10 min"),
    ),
    ...sefa(
      on(day, "18:40"),
      {
        type: "UnitFilled",
        unit: "combine-hub-left",
        fluid: "F-80W90",
        called: "Gear oil 80W-90 GL-5",
        volume: "3.9 L",
        how: "jug",
      },
      level("combine-hub-left"),
      byHand("combine-left"),
      { type: "NoteWritten", words: "called away" },
    ),
    ...jory(
      on(day + 1, "07:10"),
      torqued(calendar, day + 1, "combine-left", pull, "jory"),
      { type: "NearMiss", words: "left plug stood by hand overnight; the board on both phones said so" },
      dry("combine-left", "10 min"),
      {
        type: "NoticeSettled",
        notice: "combine-seal",
        words: "seal ordered by the farm, level looked at weekly until then",
      },
      { type: "ServiceLaidDown", unit: "combine-hub-left", every: { hours: "500 h" }, source: "hub plate" },
      { type: "ServiceLaidDown", unit: "combine-hub-right", every: { hours: "500 h" }, source: "hub plate" },
      paper,
      released,
      closed,
    ),
  ];
}
