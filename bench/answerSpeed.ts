import { completed, type GivenCase } from "../src/mechanics/remedies/givenCase.ts";
import { longerPlugs } from "../src/mechanics/remedies/longerPlug.ts";
import { lowerTorque } from "../src/mechanics/remedies/lowerTorque.ts";
import { nextMeasurements } from "../src/mechanics/remedies/nextMeasurement.ts";
import { offerOfRemedy, offerOfRepair } from "../src/mechanics/remedies/offers.ts";
import { otherSeals } from "../src/mechanics/remedies/otherSeal.ts";
import type { PortCase } from "../src/mechanics/remedies/portCase.ts";
import { ranked } from "../src/mechanics/remedies/ranking.ts";
import { repairs } from "../src/mechanics/remedies/repairs.ts";
import { sealantNoWasher } from "../src/mechanics/remedies/sealantNoWasher.ts";
import { weigh } from "../src/mechanics/remedies/weigh.ts";
import { readCase } from "../src/sheets/caseForm/caseDocument.ts";
import { exampleCase } from "../src/sheets/caseForm/exampleCase.ts";
import { checkRuns } from "./checkRuns.ts";
import { weighingOf } from "./givenPort.ts";
import { drawnWindow } from "./monteCarlo.ts";
import { medianOf, timed } from "./timed.ts";

/** How long parts of an answer take, ms: the median of some runs on one core. */
export type AnswerSpeed = {
  readonly example: string;
  readonly windows: number;
  /** Every remedy and repair with its window, and their ranking. */
  readonly remedies_ms: number;
  readonly nextMeasurement_ms: number;
  readonly whole_ms: number;
  /** Plain drawing of 100 000 joints, beside it. */
  readonly drawing_ms: number;
};

const rounds = 41;

/** The example of the house, and two ports that keep the engine busier: more unknown, and more ways that fit. */
const cases = {
  "chain case level, 3.5 turns with a dot": exampleCase,
  "the same with a sealant, counted by eye in an alloy nobody knows": {
    ...exampleCase,
    case: { ...exampleCase.case, material: "unknown light alloy" },
    seal: { kind: "sealant, metal to metal", outside: "26 mm", inside: "20.4 mm" },
    left: { ...exampleCase.left, counted: "by eye" },
  },
  "engine sump M14x1.5, 3 turns by eye, room for every method": {
    ...exampleCase,
    joint: { kind: "engine sump" },
    thread: "M14x1.5",
    case: { material: "A380", threadDepth: "24 mm", thinnestWall: "14 mm", roomBehind: "30 mm" },
    plug: { ...exampleCase.plug, headDiameter: "22 mm" },
    seal: { kind: "flat washer", material: "copper", outside: "20 mm", inside: "14.2 mm", thickness: "1.5 mm" },
    left: { ...exampleCase.left, turns: "3", counted: "by eye" },
    healthyTurns: "8",
  },
};

export function answerSpeed(): readonly AnswerSpeed[] {
  return Object.entries(cases).map(([example, form]) => {
    const read = readCase(form, null);
    if (!read.ok) throw new Error(`${example}: ${JSON.stringify(read)}`);
    return { example, ...speedOf(read.given) };
  });
}

function speedOf(given: GivenCase): Omit<AnswerSpeed, "example"> {
  const { portCase } = completed(given);
  const found = lowerTorque(portCase);
  const measured = found.window ? found : (remediesOf(portCase).find((it) => it.window) ?? found);
  const best = remediesOf(portCase).find((it) => it.window?.open) ?? null;
  const windows = [...remediesOf(portCase), ...repairs(portCase, found).map((it) => it.closed)].filter(
    (it) => it?.window,
  ).length;
  const reference = weighingOf((checkRuns[0] as (typeof checkRuns)[number]).given);
  return {
    windows,
    remedies_ms: medianOf(rounds, () => {
      const offers = [
        ...remediesOf(portCase).map((it) => offerOfRemedy(it, portCase)),
        ...repairs(portCase, found).map(offerOfRepair),
      ];
      ranked(offers, portCase, given.wish, given.record);
    }),
    nextMeasurement_ms: medianOf(rounds, () => nextMeasurements(portCase, measured, best)),
    whole_ms: medianOf(rounds, () => weigh(given)),
    drawing_ms: timed(() => drawnWindow(reference, 100_000, 1)),
  };
}

const remediesOf = (portCase: PortCase) => [
  lowerTorque(portCase),
  ...longerPlugs(portCase).flatMap((it) => (it.offered ? [it.remedy] : [])),
  ...otherSeals(portCase),
  sealantNoWasher(portCase),
];
