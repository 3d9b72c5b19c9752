import { asked, byHand, counted, dry, level, loose, measured, out, torqued, washers } from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { readingsOf } from "../readings.ts";
import { ago, type Calendar, type Line, on, telling } from "../script.ts";
import type { Weigher } from "../weighing.ts";

/**
 * A wrong plug forced into a pipe thread; the right one comes tomorrow, weighed by what is left of the hole, and a bung holds
 * it until then.
 */
export function job0405(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0405", "jory");
  const day = -6;
  const port = "tractor-level";
  return [
    ...at(
      on(day, "10:00"),
      {
        type: "JobOpened",
        machine: "tractor",
        owner: ownerOf("tractor"),
        cameFor: "weep at the rear axle",
        bay: "yard",
        meter: { hours: "6140 h" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.tractor },
      { type: "ConditionFound", port, words: "somebody forced a wrong plug; head stands off on one side" },
      asked(port),
      loose(port, "very tight"),
      out(port),
      { type: "PlugJudged", port, belongs: false, words: "another pitch than the hole" },
      measured(port, "plug outside diameter", "20.85 mm", "caliper, worn or dirty"),
      { type: "ReadingTaken", port, reading: "length over gaps", value: "18.2 mm", how: "rule", over: 10 },
      { type: "ThreadNamed", port, thread: "G 1/2", how: "both ends equal, so not taper", rival: "1/2-14 NPT" },
      { type: "LevelDrawnDown", unit: "tractor-axle", out: "1.2 L", fell: "20 mm" },
      measured(port, "left.goodFrom", "3 mm", "wire hook"),
      measured(port, "left.goodTo", "18 mm", "wire hook"),
      measured(port, "case.threadDepth", "18 mm", "depth rod"),
      { type: "CatchFelt", port, catch: "gritty", condition: "doubtful" },
      weigh("tractor", port, day).fact,
      { type: "PortHeldForNow", port, by: "expanding bung", until: calendar.day(1), words: "do not run" },
      { type: "PartsOrdered", port, words: "G 1/2 plug with bonded seal", arrives: calendar.day(1) },
      { type: "PaperIssued", paper: "bay card", to: "machine" },
    ),
  ];
}

/** The decision of the day: a drain thread torn by an impact tool, three ways, and an owner who has not answered. */
export function job0412(calendar: Calendar, weigh: Weigher): readonly Line[] {
  const at = telling("0412", "jory");
  const port = "chipper-drain";
  return [
    ...at(
      ago(170),
      {
        type: "JobOpened",
        machine: "chipper",
        owner: ownerOf("chipper"),
        cameFor: "oil change in the angle-gear box",
        bay: "bay 1",
        meter: { hours: "640 h" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.chipper },
      {
        type: "ConditionFound",
        port,
        words: "driven in with an impact tool by the hire yard: seat gouged, thread torn, before we touched it",
      },
      asked(port),
    ),
    ...at(
      ago(150),
      loose("chipper-level"),
      out("chipper-level"),
      counted("chipper-level", "9"),
      loose(port, "very tight"),
      out(port),
      {
        type: "UnitDrained",
        unit: "chipper-box",
        out: "2.25 L",
        how: "jug",
        temperature: "22 °C",
        metal: "paste",
        water: "no",
      },
      { type: "WashersOut", port, count: 1 },
    ),
    ...at(ago(120), ...readingsOf("chipper", port), { type: "SeatJudged", port, seat: "gouged" }),
    ...at(
      ago(100),
      ...washers("chipper-level", 1, 1),
      byHand("chipper-level"),
      torqued(calendar, 0, "chipper-level", { set: "46 N·m", wrench: "TW-2" }, "jory"),
    ),
    ...at(
      ago(75),
      weigh("chipper", port, 0).fact,
      {
        type: "OptionsOffered",
        port,
        rows: [
          {
            id: "sealant, no washer",
            inHisWords: "Seal it: two days standing, must be watched.",
            ready: "in two days",
          },
          {
            id: "longer plug, bonded seal",
            inHisWords: "A longer plug with a rubber seal bites in fresh metal.",
            ready: "tomorrow",
          },
          { id: "solid bushing", inHisWords: "New steel thread, as good as new.", ready: "today" },
        ],
        recommended: "longer plug, bonded seal",
      },
      { type: "AlsoNoticed", notice: "0412-belt", words: "drive belt cracked on its inside", look: "today" },
    ),
  ];
}

/** An ordinary oil change, and a plug that stands by hand while somebody was called away. */
export function job0413(weigh: Weigher): readonly Line[] {
  const jory = telling("0413", "jory");
  const sefa = telling("0413", "sefa", "phone-sefa");
  const port = "family-sump";
  return [
    ...jory(
      ago(48),
      {
        type: "JobOpened",
        machine: "family-car",
        owner: ownerOf("family-car"),
        cameFor: "oil change",
        bay: "bay 2",
        meter: { distance: "61700 km" },
      },
      { type: "UnitIdentified", is: unitsOfDemo.familyCar },
    ),
    ...sefa(
      ago(40),
      asked(port),
      loose(port),
      out(port),
      {
        type: "UnitDrained",
        unit: "family-engine",
        out: "4.05 L",
        how: "jug",
        temperature: "52 °C",
        metal: "none",
        water: "no",
      },
      ...readingsOf("familyCar", port),
      ...washers(port, 1, 1),
      weigh("familyCar", port, 0).fact,
    ),
    ...sefa(ago(12), byHand(port)),
  ];
}

/** The family car a year ago, so that its turns have a history. */
export function job0229(calendar: Calendar): readonly Line[] {
  const at = telling("0229", "jory");
  const day = -366;
  const port = "family-sump";
  return at(
    on(day, "10:00"),
    {
      type: "JobOpened",
      machine: "family-car",
      owner: ownerOf("family-car"),
      cameFor: "oil change",
      bay: "bay 2",
      meter: { distance: "45900 km" },
    },
    { type: "UnitIdentified", is: unitsOfDemo.familyCar },
    loose(port),
    out(port),
    { type: "UnitDrained", unit: "family-engine", out: "4.1 L", how: "jug", metal: "none", water: "no" },
    counted(port, "7"),
    ...washers(port, 1, 1),
    byHand(port),
    torqued(calendar, day, port, { set: "34 N·m", wrench: "TW-2" }, "jory"),
    {
      type: "UnitFilled",
      unit: "family-engine",
      fluid: "F-5W30",
      called: "Engine oil 5W-30",
      volume: "4.30 L",
      how: "meter pump",
    },
    level("family-engine"),
    dry(port),
    {
      type: "ServiceLaidDown",
      unit: "family-engine",
      every: { distance: "20000 km", months: 12 },
      source: "service sheet",
    },
    { type: "PaperIssued", paper: "owner's sheet", to: "owner" },
    { type: "MachineReleased" },
    { type: "JobClosed" },
  );
}

/** A caller who wants to drive until the day after tomorrow. */
export const enquiry: readonly Line[] = telling("call-1", "maud")(ago(20), {
  type: "CallTaken",
  words: "it drips; can I drive until the day after tomorrow?",
  seenAt: "under the gearbox, parked",
  drops: { count: 7, within: "10 min" },
});
