import { completed, type GivenCase } from "../src/mechanics/remedies/givenCase.ts";
import { longerPlugs } from "../src/mechanics/remedies/longerPlug.ts";
import { lowerTorque } from "../src/mechanics/remedies/lowerTorque.ts";
import { nextMeasurements } from "../src/mechanics/remedies/nextMeasurement.ts";
import { offerOfRemedy, offerOfRepair } from "../src/mechanics/remedies/offers.ts";
import { otherSeals } from "../src/mechanics/remedies/otherSeal.ts";
import type { PortCase } from "../src/mechanics/remedies/portCase.ts";
import { ranked } from "../src/mechanics/remedies/ranking.ts";
import type { Remedy } from "../src/mechanics/remedies/remedy.ts";
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

/** Of two passes over all the cases the second: within the first the engine of the language still compiles what they run. */
export function answerSpeed(): readonly AnswerSpeed[] {
  onePass();
  return onePass();
}

function onePass(): readonly AnswerSpeed[] {
  return Object.entries(cases).map(([example, form]) => ({ example, ...speedOf(() => given(example, form)) }));
}

function given(example: string, form: object): GivenCase {
  const read = readCase(form, null);
  if (!read.ok) throw new Error(`${example}: ${JSON.stringify(read)}`);
  return read.given;
}

/** Every run but that of the next measurement has a port of its own: after a press, nobody has weighed the port before. */
function speedOf(read: () => GivenCase): Omit<AnswerSpeed, "example"> {
  const { wish, record } = read();
  const { portCase } = completed(read());
  const found = lowerTorque(portCase);
  const measured = found.window ? found : (remediesOf(portCase).find((it) => it.window) ?? found);
  const best = remediesOf(portCase).find((it) => it.window?.open) ?? null;
  const windows = [...remediesOf(portCase), ...repairs(portCase, found).map((it) => it.closed)].filter(
    (it) => it?.window,
  ).length;
  const reference = weighingOf((checkRuns[0] as (typeof checkRuns)[number]).given);
  return {
    windows,
    remedies_ms: medianOf(
      rounds,
      () => completed(read()).portCase,
      (it) => {
        const remedies = remediesOf(it);
        const offers = [
          ...remedies.map((remedy) => offerOfRemedy(remedy, it)),
          ...repairs(it, remedies[0]).map(offerOfRepair),
        ];
        ranked(offers, it, wish, record);
      },
    ),
    nextMeasurement_ms: medianOf(
      rounds,
      () => portCase,
      (it) => nextMeasurements(it, measured, best),
    ),
    whole_ms: medianOf(rounds, read, weigh),
    drawing_ms: timed(() => drawnWindow(reference, 100_000, 1)),
  };
}

/** What closes the port as it is, first of all the plug that was there. */
const remediesOf = (portCase: PortCase): readonly [Remedy, ...Remedy[]] => [
  lowerTorque(portCase),
  ...longerPlugs(portCase).flatMap((it) => (it.offered ? [it.remedy] : [])),
  ...otherSeals(portCase),
  sealantNoWasher(portCase),
];
