import {
  asked,
  byHand,
  dry,
  level,
  loose,
  measured,
  out,
  paper,
  released,
  seenDry,
  torqued,
  washers,
} from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { readingsOf } from "../readings.ts";
import { ago, type Calendar, type Line, on, telling } from "../script.ts";
import type { Weigher } from "../weighing.ts";

/** A rusty coolant drain: five turns after the restorer, a narrow window, and a pressure test that allows for temperature. */
export function job0315(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0315", "jory");
  const day = -149;
  const port = "delivery-drain";
  const weighed = weigh("deliveryVan", port, day);
  const fitted = { plug: "original, M16x1.5", seal: "flat washer", material: "copper", surface: "oiled" } as const;
  return [
    ...at(
      on(day, "08:10"),
      {
        type: "JobOpened",
        machine: "delivery-van",
        owner: ownerOf("delivery-van"),
        cameFor: "coolant change",
        bay: "bay 1",
        meter: { distance: "241000 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.deliveryVan },
      asked(port, { pressure: "1.2 bar" }),
      loose(port, "very tight"),
      {
        type: "UnitDrained",
        unit: "delivery-block",
        out: "6.6 L",
        how: "jug",
        temperature: "18 °C",
        colour: "rusty",
        water: "no",
      },
      out(port),
      {
        type: "RepairMade",
        port,
        method: "first thread cleaned",
        lasting: true,
        sizes: "thread restorer, greased",
        leaves: fitted,
      },
      ...readingsOf("deliveryVan", port),
      weighed.fact,
      ...washers(port, 1, 1),
      byHand(port),
      torqued(calendar, day, port, weighed.pull(null), "jory", fitted),
      {
        type: "UnitFilled",
        unit: "delivery-block",
        fluid: "F-COOL",
        called: "Coolant, premixed",
        volume: "7.0 L",
        how: "meter pump",
      },
      level("delivery-block"),
      {
        type: "PressureHeld",
        port,
        from: "1.20 bar",
        to: "1.19 bar",
        minutes: 15,
        fromTemperature: "18 °C",
        toTemperature: "16 °C",
        verdict: "holds",
        words: "2 °C are 0.015 bar by themselves",
      },
      dry(port),
      paper,
      released,
    ),
    ...at(on(-30, "09:00"), seenDry(port)),
    ...at(ago(200), seenDry(port)),
  ];
}

/** A motorcycle's sump in magnesium: oil that reaches the rear tyre allows no make-do, magnesium no welding; a wire coil. */
export function job0377(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0377", "jory");
  const day = -44;
  const port = "motorcycle-sump";
  return [
    ...at(
      on(day, "09:00"),
      {
        type: "JobOpened",
        machine: "motorcycle",
        owner: ownerOf("motorcycle"),
        cameFor: "drip at the sump",
        bay: "bay 2",
        meter: { distance: "38200 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.motorcycle },
      asked(port, { reaches: ["tyre"] }),
      { type: "MaterialJudged", port, material: "AZ91D", how: "stamped, and the filing fizzes" },
      loose(port, "by hand"),
      out(port),
      {
        type: "UnitDrained",
        unit: "motorcycle-engine",
        out: "1.95 L",
        how: "jug",
        temperature: "55 °C",
        metal: "flakes",
        water: "no",
      },
      ...readingsOf("motorcycle", port),
      weigh("motorcycle", port, day).fact,
      { type: "OwnerDecided", port, decision: { is: "chosen", option: "wire coil" }, words: "yes", by: "message" },
      {
        type: "RepairMade",
        port,
        method: "wire coil",
        lasting: true,
        sizes: "1.5 D, sealed outside, lockwire through the head",
        chips: { caught: true, how: "greased flutes, flushed; magnesium chips wetted with oil, not water" },
        leaves: { plug: "original, drilled for lockwire", seal: "flat washer", material: "aluminium" },
      },
      ...washers(port, 1, 1),
      byHand(port),
      torqued(calendar, day, port, { set: "20 N·m", wrench: "TW-1" }, "jory"),
      {
        type: "UnitFilled",
        unit: "motorcycle-engine",
        fluid: "F-5W30",
        called: "Engine oil 5W-30",
        volume: "2.10 L",
        how: "jug",
      },
      level("motorcycle-engine"),
      dry(port),
      paper,
      released,
    ),
    ...at(on(-30, "18:00"), seenDry(port)),
    ...at(ago(200), seenDry(port)),
  ];
}

/** A spark-plug hole: no sealant whatever is asked, a steel coil by the maker's procedure. */
export function job0288(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0288", "jory");
  const day = -208;
  const port = "estate-hole-3";
  return [
    ...at(
      on(day, "09:10"),
      {
        type: "JobOpened",
        machine: "estate",
        owner: ownerOf("estate"),
        cameFor: "a plug blew out",
        bay: "bay 1",
        meter: { distance: "156900 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.estate },
      { type: "ConditionFound", port, words: "plug lay in the cover; thread came out with it" },
      asked(port),
      loose(port, "by hand"),
      out(port),
      ...readingsOf("estate", port),
      weigh("estate", port, day).fact,
      { type: "NoteWritten", words: "asked whether it can be glued: no, 1.2 kN at every stroke" },
      {
        type: "OwnerDecided",
        port,
        decision: { is: "chosen", option: "solid bushing" },
        words: "then cut it",
        by: "signature",
      },
    ),
    ...at(
      on(day, "13:30"),
      {
        type: "RepairMade",
        port,
        method: "solid bushing",
        lasting: true,
        sizes: "steel bush M18x1 for spark plugs, by its maker's procedure",
        chips: { caught: true, how: "greased tap, valve-open blow-out, camera inside" },
        leaves: { plug: "new, M14x1.25", seal: "crush ring" },
      },
      { type: "WashersOut", port, count: 1 },
      { type: "WashersIn", port, count: 1 },
      byHand(port),
      torqued(calendar, day, port, { set: "25 N·m", wrench: "TW-2" }, "jory"),
      measured(port, "compression", "11.9 bar", "gauge"),
      { type: "CostsSettled", words: "as offered", amount: 340, borneBy: "owner" },
      paper,
      released,
    ),
    ...at(on(-12, "15:00"), seenDry(port, "snug at its service")),
    ...at(ago(200), seenDry(port, "owner called: runs well")),
  ];
}
