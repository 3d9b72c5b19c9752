import {
  asked,
  byHand,
  closed,
  dry,
  level,
  loose,
  out,
  overridden,
  paper,
  released,
  seenDry,
  torqued,
  washers,
} from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { readingsOf } from "../readings.ts";
import { type Calendar, type Line, on, type Told, telling, type When } from "../script.ts";
import type { Cures, Weigher } from "../weighing.ts";

const sealed = (port: string, until: string, cause?: string): Told => ({
  type: "RepairMade",
  port,
  method: "sealant, no washer",
  lasting: false,
  until,
  sealant: "S-A",
  ...(cause === undefined ? {} : { sizes: cause }),
  leaves: { plug: "original", seal: "sealant, metal to metal", surface: "wet sealant" },
});

/** Too few turns, overridden by name, released early, and back after 71 days. */
export function job0271(calendar: Calendar, weigh: Weigher, cures: Cures): readonly Line[] {
  const day = -244;
  const port = "camper-fill";
  const jory = telling("0271", "jory");
  const maud = telling("0271", "maud");
  const closing: When = on(day, "11:40");
  const early = calendar.instant(on(day + 1, "11:40"));
  const weighed = weigh("camper", port, day);
  const rule = weighed.refused("sealant, no washer") ?? "";
  return [
    ...jory(
      on(day, "09:30"),
      {
        type: "JobOpened",
        machine: "camper",
        owner: ownerOf("camper"),
        cameFor: "drip under the final drive",
        bay: "bay 2",
        meter: { distance: "132600 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.camper },
      asked(port),
      loose(port, "by hand"),
      out(port),
      { type: "LevelFound", unit: "camper-drive", belowLip: "6 mm", how: "wire hook", oil: "cold", standsLevel: true },
      ...readingsOf("camper", port),
      weighed.fact,
      {
        type: "OwnerDecided",
        port,
        decision: { is: "refused", option: "solid bushing", instead: "sealant, no washer" },
        words: "not 210 now",
        by: "at the counter",
      },
    ),
    ...maud(on(day, "11:10"), overridden(rule, "owner leaves tomorrow and knows the odds", port)),
    ...jory(
      on(day, "11:30"),
      { type: "PortPrepared", port, dry: true, degreased: true, levelBelow: "20 mm" },
      sealed(port, calendar.day(day + 365)),
      ...washers(port, 1, 0, "sealant in place of the washer"),
      byHand(port),
      torqued(calendar, day, port, { set: "10 N·m", wrench: "TW-1" }, "jory"),
    ),
    ...jory(closing, cures("15 °C", "60 %", port, calendar.instant(closing)), level("camper-drive", "20 mm")),
    ...maud(on(day + 1, "11:30"), overridden("curing", "collected early at the owner's wish", port)),
    ...jory(
      on(day + 1, "11:40"),
      dry(port, "24 h"),
      {
        type: "PortTagged",
        port,
        lines: [
          "REPAIRED PORT - READ",
          "M24x1.5 SEALANT, NO WASHER",
          "SET 10 Nm. DO NOT OPEN.",
          "NEXT STEP: BUSHING",
          "HRW 0271",
        ],
      },
      paper,
      { type: "MachineReleased", words: `released early at ${early}` },
    ),
    ...jory(
      on(-173, "08:20"),
      {
        type: "CameBack",
        port,
        foundAt: calendar.instant(on(-173, "08:20")),
        heldUntil: calendar.instant(on(-173, "08:20")),
        how: "drip",
        cause: "too few turns; released early",
        turnsNow: "1.5",
        meter: { distance: "136700 km" },
        cost: 190,
      },
      closed,
    ),
  ];
}

/** Collected after 55 minutes, back after five days; the same again because the cause is another, and cured this time. */
export function job0340(calendar: Calendar, weigh: Weigher, cures: Cures): readonly Line[] {
  const day = -97;
  const port = "loader-level";
  const jory = telling("0340", "jory");
  const maud = telling("0340", "maud");
  const weighed = weigh("loader", port, day);
  const pull = weighed.pull("sealant, no washer");
  const first: When = on(day, "16:00");
  const second: When = on(-91, "09:00");
  return [
    ...jory(
      on(day, "14:20"),
      {
        type: "JobOpened",
        machine: "loader",
        owner: ownerOf("loader"),
        cameFor: "weep at the chain case",
        bay: "bay 1",
        meter: { hours: "3320 h" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.loader },
      asked(port),
      loose(port, "easy"),
      out(port),
      ...readingsOf("loader", port),
      weighed.fact,
      {
        type: "OwnerDecided",
        port,
        decision: { is: "chosen", option: "sealant, no washer" },
        words: "seal it, the bushing at the next service",
        by: "at the counter",
      },
      { type: "LevelDrawnDown", unit: "loader-chaincase", out: "350 ml", fell: "15 mm" },
      { type: "PortPrepared", port, dry: true, degreased: true, levelBelow: "15 mm" },
      sealed(port, calendar.day(268)),
      ...washers(port, 1, 0, "sealant in place of the washer"),
      byHand(port),
      torqued(calendar, day, port, pull, "jory"),
    ),
    ...jory(
      first,
      cures("9 °C", "70 %", port, calendar.instant(first)),
      level("loader-chaincase", "15 mm"),
      dry(port, "40 min"),
    ),
    ...maud(on(day, "16:50"), overridden("curing", "collected at the owner's wish, signed", port)),
    ...jory(
      on(day, "16:55"),
      {
        type: "PortTagged",
        port,
        lines: [
          "REPAIRED PORT - READ",
          "M20x1.5 SEALANT, NO WASHER",
          `SET ${pull.set.replace("·", "")}. DO NOT OPEN.`,
          "NEXT STEP: BUSHING",
          "HRW 0340",
        ],
      },
      paper,
      released,
    ),
    ...jory(on(-92, "10:00"), {
      type: "CameBack",
      port,
      foundAt: calendar.instant(on(-92, "10:00")),
      heldUntil: calendar.instant(on(-92, "10:00")),
      how: "weep",
      cause: "released early",
      cost: 85,
    }),
    ...jory(
      on(-91, "08:00"),
      {
        type: "JobOpened",
        machine: "loader",
        owner: ownerOf("loader"),
        cameFor: "came back: weep",
        bay: "yard",
        meter: { hours: "3336 h" },
      },
      loose(port),
      out(port),
      { type: "PortPrepared", port, dry: true, degreased: true, levelBelow: "15 mm" },
      sealed(port, calendar.day(268), "the same method again: the cause was early release, not the turns"),
      ...washers(port, 0, 0),
      byHand(port),
      torqued(calendar, -91, port, pull, "jory"),
    ),
    ...jory(second, cures("9 °C", "70 %", port, calendar.instant(second)), level("loader-chaincase", "15 mm")),
    ...jory(on(-88, "15:00"), dry(port, "72 h"), paper, released, {
      type: "FollowUpPlanned",
      followUp: "0340-service",
      port,
      on: calendar.day(90),
      way: "service",
    }),
    ...jory(on(-60, "11:00"), seenDry(port)),
    ...jory(on(-3, "11:00"), seenDry(port)),
  ];
}
