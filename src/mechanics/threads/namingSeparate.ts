import { normal } from "../quantity/distribution.ts";
import { exact, type Quantity, reading } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import type { CandidateThread, Range } from "./namingCandidates.ts";
import { GREATEST_WEAR_mm, namingJudgement, readingUncertainty_mm, type ThreadEvidence } from "./namingEvidence.ts";
import { explained } from "./namingLikelihood.ts";

/** A measurement that would tell two threads apart. */
export type SeparatingMeasurement = {
  readonly between: readonly [string, string];
  /** The probability of still naming the wrong one of the two, from even odds. */
  readonly wrong: number;
} & (
  | { readonly type: "gaps"; readonly atLeast: number }
  | { readonly type: "outside diameter" }
  | { readonly type: "two diameters"; readonly apart_mm: number }
  | { readonly type: "spin a known plug"; readonly known: string; readonly freeTurns: number }
  | { readonly type: "pitch gauge"; readonly leaves_mm: readonly [number, number] }
  | { readonly type: "bore" }
  | { readonly type: "two bores"; readonly apart_mm: number }
);

/**
 * The measurement, not made yet, that separates two threads: the handiest that names the right one at the odds we ask
 * for, or else the best. Null where none would do better than three in five. A count of gaps is asked for again if crests
 * may have been counted.
 */
export function separatingMeasurement(
  a: CandidateThread,
  b: CandidateThread,
  made: readonly ThreadEvidence[],
  crestsSuspected: boolean,
): SeparatingMeasurement | null {
  const between = [a.designation, b.designation] as const;
  let best: SeparatingMeasurement | null = null;
  for (const { type, way } of ways) {
    const found = type !== null && has(made, type) ? null : way(a, b, made, crestsSuspected);
    if (!found || (best && best.wrong <= found.wrong)) continue;
    best = { ...found, between };
    if (best.wrong <= ENOUGH) return best;
  }
  return best !== null && best.wrong < HARDLY_BETTER ? best : null;
}

/** In order of handiness, each with the evidence that it would repeat. */
const ways = [
  { type: null, way: gaps },
  { type: "outside diameter", way: outside },
  { type: "taper", way: twoDiameters },
  { type: "mesh", way: spin },
  { type: "pitch gauge", way: pitchGauge },
  { type: "bore", way: bore },
  { type: "hole taper", way: twoBores },
] as const;

/** Chances of naming the wrong one: at the odds we ask for, and where measuring would be no use. */
const ENOUGH = 1 / (1 + namingJudgement.oddsToName);
const HARDLY_BETTER = 0.4;
const FEWEST_GAPS = 4;
const APART_mm = 10;
const FREE_TURNS_ASKED = 4;

const has = (made: readonly ThreadEvidence[], type: ThreadEvidence["type"]): boolean =>
  made.some((it) => it.type === type);

/**
 * As few gaps as name the right one at the odds we ask for, or as many as a plug shows, taken as a pitch: who is asked for
 * gaps is shown what a gap is, and does not count crests.
 */
function gaps(a: CandidateThread, b: CandidateThread, made: readonly ThreadEvidence[], crestsSuspected: boolean) {
  const counted = Math.max(0, ...made.map((it) => (it.type === "gaps" ? it.count : 0)));
  const pitches = [Math.min(a.P_mm, b.P_mm), Math.max(a.P_mm, b.P_mm)] as const;
  for (let count = FEWEST_GAPS; ; count++) {
    const u_mm = readingUncertainty_mm["rule, any length"] / count;
    const wrong = overlap(a, b, [pitches[0] - 5 * u_mm, pitches[1] + 5 * u_mm], u_mm / 10, (x) => {
      return { type: "pitch", pitch: read(x, u_mm) };
    });
    if (wrong > ENOUGH && count < namingJudgement.mostGaps) continue;
    if (crestsSuspected) return { type: "gaps", atLeast: Math.max(count, counted), wrong } as const;
    return count <= counted ? null : ({ type: "gaps", atLeast: count, wrong } as const);
  }
}

function outside(a: CandidateThread, b: CandidateThread) {
  const range = around(a.outside_mm, b.outside_mm);
  const wrong = overlap(a, b, range, 0.01, (x) => ({
    type: "outside diameter",
    diameter: read(x, readingUncertainty_mm["caliper, clean"]),
    wearUpTo: wear,
  }));
  return { type: "outside diameter", wrong } as const;
}

function twoDiameters(a: CandidateThread, b: CandidateThread) {
  const over = exact("l", APART_mm, mm);
  const u_mm = Math.SQRT2 * readingUncertainty_mm["caliper, clean"];
  const wrong = overlap(a, b, [-0.6, 1.2], 0.01, (x) => ({ type: "taper", change: read(x, u_mm), over }));
  return { type: "two diameters", apart_mm: APART_mm, wrong } as const;
}

function bore(a: CandidateThread, b: CandidateThread) {
  const wrong = overlap(a, b, around(a.bore_mm, b.bore_mm), 0.02, (x) => ({
    type: "bore",
    diameter: read(x, readingUncertainty_mm["inside jaws, bore"]),
    wearUpTo: wear,
  }));
  return { type: "bore", wrong } as const;
}

function twoBores(a: CandidateThread, b: CandidateThread) {
  const over = exact("l", APART_mm, mm);
  const u_mm = Math.SQRT2 * readingUncertainty_mm["inside jaws, bore"];
  const wrong = overlap(a, b, [-1.2, 1.8], 0.02, (x) => ({ type: "hole taper", change: read(x, u_mm), over }));
  return { type: "two bores", apart_mm: APART_mm, wrong } as const;
}

/** The leaves of both pitches are tried; each sits or does not. */
function pitchGauge(a: CandidateThread, b: CandidateThread) {
  const leaves_mm = [a.P_mm, b.P_mm] as const;
  const answers = [true, false].flatMap((first) => [true, false].map((second) => [first, second] as const));
  const wrong = answers.reduce((sum, answer) => {
    const of = (thread: CandidateThread): number =>
      leaves_mm.reduce((product, leaf_mm, i) => {
        const seats = answer[i] as boolean;
        return product * likelihood({ type: "pitch gauge", leaf: exact("P", leaf_mm, mm), seats }, thread);
      }, 1);
    return sum + Math.min(of(a), of(b)) / 2;
  }, 0);
  return { type: "pitch gauge", leaves_mm, wrong } as const;
}

/** A known plug of the likelier thread turned into the hole: it runs free for the turns asked, or binds before. */
function spin(a: CandidateThread, b: CandidateThread) {
  const known = a.designation;
  const turned = (turns: number, felt: "tight" | "free"): ThreadEvidence => {
    return { type: "mesh", unknown: "hole", known, turns, felt };
  };
  const binds = overlap(a, b, [-1, FREE_TURNS_ASKED], 0.05, (x) => turned(x, "tight"));
  const free = turned(FREE_TURNS_ASKED, "free");
  const wrong = Math.min(likelihood(free, a), likelihood(free, b)) / 2 + binds;
  return { type: "spin a known plug", known, freeTurns: FREE_TURNS_ASKED, wrong } as const;
}

/** Half of what two densities of a reading have in common: the least probability of taking one for the other. */
function overlap(
  a: CandidateThread,
  b: CandidateThread,
  [from, to]: Range,
  step: number,
  evidenceAt: (x: number) => ThreadEvidence,
): number {
  const count = Math.max(1, Math.ceil((to - from) / step));
  const width = (to - from) / count;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const evidence = evidenceAt(from + (i + 0.5) * width);
    sum += Math.min(likelihood(evidence, a), likelihood(evidence, b));
  }
  return (sum * width) / 2;
}

function likelihood(evidence: ThreadEvidence, thread: CandidateThread): number {
  const { thread: fits, crestsCounted, blunder } = explained(evidence, thread);
  return fits + crestsCounted + blunder;
}

const wear = exact("w", GREATEST_WEAR_mm, mm);

const read = (x_mm: number, u_mm: number): Quantity => reading("x", normal(x_mm, u_mm), mm, "supposed", "supposed");

const around = (a: Range, b: Range): Range => [Math.min(a[0], b[0]) - 0.6, Math.max(a[1], b[1]) + 0.6];
