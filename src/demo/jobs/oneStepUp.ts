import { asked, byHand, dry, level, loose, out, paper, released, seenDry, torqued, washers } from "../hands.ts";
import { ownerOf, unitsOfDemo } from "../machines.ts";
import { ago, type Calendar, type Line, on, telling } from "../script.ts";

/** The same camper: one step up, half of it charged. */
export function job0301(calendar: Calendar): readonly Line[] {
  const at = telling("0301", "jory");
  const day = -173;
  const port = "camper-fill";
  return [
    ...at(
      on(day, "08:30"),
      {
        type: "JobOpened",
        machine: "camper",
        owner: ownerOf("camper"),
        cameFor: "came back: drip at the fill plug",
        bay: "bay 2",
        meter: { distance: "136700 km" },
      },
      { type: "JobFollows", earlier: "0271" },
      { type: "UnitIdentified", is: unitsOfDemo.camper },
      asked(port, { repairedBefore: { method: "sealant", cause: "too few turns; released early" } }),
      loose(port),
      out(port),
      { type: "LevelDrawnDown", unit: "camper-drive", out: "180 ml" },
      {
        type: "OwnerDecided",
        port,
        decision: { is: "chosen", option: "solid bushing" },
        words: "now the real one",
        by: "signature",
      },
    ),
    ...at(
      on(day, "13:40"),
      {
        type: "RepairMade",
        port,
        method: "solid bushing",
        lasting: true,
        sizes: "shouldered, M24 inside",
        wallLeft: "3.1 mm",
        chips: { caught: true, how: "flushed with 0.3 L through a cloth" },
        leaves: { plug: "original, M24x1.5", seal: "flat washer", material: "aluminium" },
      },
      { type: "UnitFlushed", unit: "camper-drive", poured: "0.3 L", caught: "0.28 L" },
      ...washers(port, 0, 1, "sealant before, washer again"),
      {
        type: "UnitFilled",
        unit: "camper-drive",
        fluid: "F-80W90",
        called: "Gear oil 80W-90 GL-5",
        volume: "0.30 L",
        how: "60 ml syringe",
      },
      level("camper-drive"),
      byHand(port),
      torqued(calendar, day, port, { set: "45 N·m", wrench: "TW-2" }, "jory"),
      dry(port),
      {
        type: "CostsSettled",
        words: "half of the bushing, by what was written and signed on 0271",
        amount: 105,
        borneBy: "shared",
      },
      paper,
      released,
      { type: "FollowUpPlanned", followUp: "0301-year", port, on: calendar.day(192), way: "call" },
    ),
    ...at(on(-159, "17:00"), seenDry(port)),
    ...at(on(-60, "17:00"), seenDry(port)),
    ...at(ago(200), seenDry(port, "owner called: dry")),
  ];
}
