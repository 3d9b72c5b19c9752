import { asked, byHand, dry, level, loose, out, paper, released, seenDry, torqued, washers } from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { readingsOf } from "../readings.ts";
import { ago, type Calendar, type Line, on, telling } from "../script.ts";
import type { Weigher } from "../weighing.ts";

/** A sump with three turns of seven: no torque is right with its copper ring, a longer plug with a bonded seal has a window. */
export function job0244(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0244", "jory");
  const day = -331;
  const port = "hatchback-sump";
  const weighed = weigh("hatchback", port, day);
  const pull = weighed.pull("longer plug, bonded seal");
  const fitted = { plug: "M14x1.5, 6 mm longer", underHead: "18 mm", seal: "bonded seal", surface: "oiled" } as const;
  return [
    ...at(
      on(day, "09:00"),
      {
        type: "JobOpened",
        machine: "hatchback",
        owner: ownerOf("hatchback"),
        cameFor: "oil change",
        bay: "bay 2",
        meter: { distance: "91300 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.hatchback },
      { type: "ConditionFound", port, words: "plug stands askew; cross-started at a former owner's" },
      asked(port, { crack: "no" }),
      loose(port, "easy"),
      out(port),
      {
        type: "UnitDrained",
        unit: "hatchback-engine",
        out: "3.35 L",
        how: "jug",
        temperature: "60 °C",
        metal: "none",
        water: "no",
      },
      ...readingsOf("hatchback", port),
      weighed.fact,
    ),
    ...at(
      on(day, "09:50"),
      {
        type: "OptionsOffered",
        port,
        rows: [
          { id: "longer plug, bonded seal", inHisWords: "A longer plug bites in fresh metal, with a softer seal." },
          { id: "solid bushing", inHisWords: "New steel thread, stronger than new.", price: { low: 185, high: 185 } },
        ],
        recommended: "solid bushing",
      },
      {
        type: "OwnerDecided",
        port,
        decision: { is: "refused", option: "solid bushing", instead: "longer plug, bonded seal" },
        words: "the longer plug will do",
        by: "telephone",
      },
    ),
    ...at(
      on(day, "10:20"),
      {
        type: "RepairMade",
        port,
        method: "longer plug, bonded seal",
        lasting: false,
        until: calendar.day(34),
        leaves: fitted,
      },
      ...washers(port, 1, 1, "copper out, bonded seal in"),
      byHand(port),
      torqued(calendar, day, port, pull, "jory", fitted),
      {
        type: "UnitFilled",
        unit: "hatchback-engine",
        fluid: "F-5W30",
        called: "Engine oil 5W-30",
        volume: "3.60 L",
        how: "meter pump",
      },
      level("hatchback-engine"),
      dry(port, "30 min"),
      {
        type: "PortTagged",
        port,
        lines: [
          "REPAIRED PORT - READ",
          "M14x1.5 LONG 18mm + BONDED",
          `SET ${pull.set.replace("·", "")}. KEEP THIS PLUG.`,
          "SHORT PLUG OR COPPER STRIPS",
          "HRW 0244",
        ],
      },
      { type: "NextHandWarned", port, words: "only this plug with a bonded seal; the original with copper strips" },
      paper,
      released,
      { type: "FollowUpPlanned", followUp: "0244-year", port, on: calendar.day(34), way: "call" },
    ),
    ...at(on(-317, "16:00"), seenDry(port)),
    ...at(on(-20, "11:30"), {
      type: "FollowUpDone",
      followUp: null,
      port,
      found: "dry",
      meter: { distance: "106400 km" },
    }),
  ];
}

/** Water on the other side: no make-do, a bushing, and a test that found another leak first. */
export function job0260(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0260", "jory");
  const day = -286;
  const port = "outboard-drain";
  const book = { set: "6 N·m", wrench: "TW-1" } as const;
  const hold = (of: string, from: string, to: string, minutes: number, verdict: "holds" | "leaks") =>
    ({
      type: "PressureHeld",
      port: of,
      from,
      to,
      minutes,
      fromTemperature: "17 °C",
      toTemperature: "17 °C",
      verdict,
    }) as const;
  return [
    ...at(
      on(day, "08:30"),
      {
        type: "JobOpened",
        machine: "outboard",
        owner: ownerOf("outboard"),
        cameFor: "milky oil in the lower unit",
        bay: "yard",
        meter: { hours: "610 h" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.outboard },
      asked(port, { reaches: ["water"], waterTest: "not done" }),
      loose(port),
      out(port),
      loose("outboard-vent"),
      out("outboard-vent"),
      {
        type: "UnitDrained",
        unit: "outboard-lower",
        out: "0.47 L",
        how: "jug",
        colour: "milky",
        metal: "none",
        water: "milky",
      },
      ...readingsOf("outboard", port),
      weigh("outboard", port, day).fact,
      {
        type: "OwnerDecided",
        port,
        decision: { is: "chosen", option: "solid bushing" },
        words: "do it properly",
        by: "at the counter",
      },
      {
        type: "RepairMade",
        port,
        method: "solid bushing",
        lasting: true,
        sizes: "outer thread M12x1",
        chips: { caught: true, how: "greased tap, flushed" },
        leaves: { plug: "original, M8x1.25", seal: "flat washer", material: "fibre" },
      },
      ...washers(port, 1, 1),
      ...washers("outboard-vent", 1, 1),
      byHand(port),
      torqued(calendar, day, port, book, "jory"),
      byHand("outboard-vent"),
      torqued(calendar, day, "outboard-vent", book, "jory"),
      hold("outboard-vent", "0.70 bar", "0.52 bar", 5, "leaks"),
    ),
    ...at(
      on(day, "11:10"),
      out("outboard-vent"),
      { type: "WashersOut", port: "outboard-vent", count: 1, words: "the old seal leaked" },
      { type: "WashersIn", port: "outboard-vent", count: 1 },
      byHand("outboard-vent"),
      torqued(calendar, day, "outboard-vent", book, "jory"),
      hold(port, "0.70 bar", "0.70 bar", 10, "holds"),
      hold(port, "-0.50 bar", "-0.50 bar", 10, "holds"),
      {
        type: "UnitFilled",
        unit: "outboard-lower",
        fluid: "F-80W90",
        called: "Gear oil 80W-90 GL-5",
        volume: "0.50 L",
        how: "60 ml syringe",
      },
      level("outboard-lower"),
      dry(port),
      dry("outboard-vent"),
      paper,
      released,
    ),
    ...at(on(-101, "10:00"), seenDry(port, "oil clear")),
    ...at(ago(200), seenDry(port, "oil clear at its service")),
  ];
}
