import { formula } from "../quantity/formula.ts";
import { type Quantity, standardUncertainty, valueIn } from "../quantity/quantity.ts";
import { mm, one } from "../quantity/unit.ts";
import type { CandidateThread, Range } from "./namingCandidates.ts";
import { normalDensityAt, readingOfShiftedRange } from "./namingDensity.ts";
import { namingJudgement, type ThreadEvidence } from "./namingEvidence.ts";
import { meshLikelihood } from "./namingMesh.ts";

/**
 * How likely a piece of evidence is if the thread is this one, by what would explain it; in the measure of the reading.
 * `blunder` is the same for every thread, so the sum stays above 0 however far off a reading lies.
 */
export type Explained = { readonly thread: number; readonly crestsCounted: number; readonly blunder: number };

/** The likelihood of a piece of evidence. Readings are taken as normal with their own mean and standard deviation. */
export function explained(evidence: ThreadEvidence, thread: CandidateThread): Explained {
  const { outOfLimits_mm, alongThread_mm } = namingJudgement;
  switch (evidence.type) {
    case "outside diameter": {
      const [x, sd] = read(evidence.diameter, outOfLimits_mm);
      const worn_mm = -valueIn(mm, evidence.wearUpTo);
      return mixed(readingOfShiftedRange(x, thread.outside_mm, worn_mm, sd), 0, 1 / ANY_DIAMETER_mm);
    }
    case "bore": {
      const [x, sd] = read(evidence.diameter, outOfLimits_mm);
      const worn_mm = valueIn(mm, evidence.wearUpTo);
      return mixed(readingOfShiftedRange(x, thread.bore_mm, worn_mm, sd), 0, 1 / ANY_DIAMETER_mm);
    }
    case "gaps": {
      const [x, sd] = read(evidence.length, alongThread_mm);
      const of = (count: number): number => normalDensityAt(x, lengthOf(count, thread), sd);
      const { crestsCounted } = namingJudgement;
      return evidence.count < 2
        ? mixed(of(evidence.count), 0, 1 / ANY_LENGTH_mm)
        : mixed((1 - crestsCounted) * of(evidence.count), crestsCounted * of(evidence.count - 1), 1 / ANY_LENGTH_mm);
    }
    case "travel": {
      const [x, sd] = read(evidence.length, alongThread_mm);
      return mixed(normalDensityAt(x, lengthOf(evidence.turns, thread), sd), 0, 1 / ANY_LENGTH_mm);
    }
    case "pitch": {
      const [x, sd] = read(evidence.pitch, alongThread_mm / namingJudgement.mostGaps);
      return mixed(normalDensityAt(x, thread.P_mm, sd), 0, 1 / ANY_PITCH_mm);
    }
    case "pitch gauge": {
      const seats = leafSeats(valueIn(mm, evidence.leaf), thread);
      return mixed(evidence.seats ? seats : 1 - seats, 0, 0.5);
    }
    case "taper": {
      const [x, sd] = read(evidence.change, alongThread_mm);
      return mixed(normalDensityAt(x, growth(evidence.over, thread.taper), sd), 0, 1 / ANY_CHANGE_mm);
    }
    case "hole taper": {
      const [x, sd] = read(evidence.change, alongThread_mm);
      return mixed(normalDensityAt(x, growth(evidence.over, thread.holeTaper), sd), 0, 1 / ANY_CHANGE_mm);
    }
    case "mesh":
      return { crestsCounted: 0, ...meshLikelihood(evidence, thread) };
    case "hexagon":
      // It speaks of where the plug comes from, not of any thread.
      return { thread: 1, crestsCounted: 0, blunder: 0 };
    default:
      return evidence satisfies never;
  }
}

/** What the thread would have read, low and high in mm, beside what was read; null where no length was. */
export function expectedReading(
  evidence: ThreadEvidence,
  thread: CandidateThread,
): { readonly read_mm: number; readonly expected_mm: Range } | null {
  const single = (q: Quantity, x_mm: number) => ({ read_mm: valueIn(mm, q), expected_mm: [x_mm, x_mm] as const });
  switch (evidence.type) {
    case "outside diameter": {
      const [low, high] = thread.outside_mm;
      return { read_mm: valueIn(mm, evidence.diameter), expected_mm: [low - valueIn(mm, evidence.wearUpTo), high] };
    }
    case "bore": {
      const [low, high] = thread.bore_mm;
      return { read_mm: valueIn(mm, evidence.diameter), expected_mm: [low, high + valueIn(mm, evidence.wearUpTo)] };
    }
    case "gaps":
      return single(evidence.length, lengthOf(evidence.count, thread));
    case "travel":
      return single(evidence.length, lengthOf(evidence.turns, thread));
    case "pitch":
      return single(evidence.pitch, thread.P_mm);
    case "pitch gauge":
      return single(evidence.leaf, thread.P_mm);
    case "taper":
      return single(evidence.change, growth(evidence.over, thread.taper));
    case "hole taper":
      return single(evidence.change, growth(evidence.over, thread.holeTaper));
    case "mesh":
    case "hexagon":
      return null;
    default:
      return evidence satisfies never;
  }
}

/** A blunder may read anything up to here. */
const ANY_DIAMETER_mm = 65;
const ANY_LENGTH_mm = 65;
const ANY_PITCH_mm = 6;
const ANY_CHANGE_mm = 3;

const GEOMETRY = "ISO 68-1:1998, definition of pitch";
/** The length of so many pitches, and the growth of a diameter over a length. */
export const along = formula("L = N * P", { N: one, P: mm, L: mm }, GEOMETRY);
export const taperChange = formula("dd = t * l", { t: one, l: mm, dd: mm }, "ISO 7-1:1994, 5");
const leafFit = formula(
  "p = exp(-1/2 * ((P - P_l) / P * l / s)^2)",
  { P: mm, P_l: mm, l: mm, s: mm, p: one },
  "a leaf is seen to sit until its ends are off by about s (judgement)",
);

const lengthOf = (N: number, { P_mm }: CandidateThread): number =>
  (along.over({ N, P: P_mm / 1000 })[0] as number) * 1000;

const growth = (over: Quantity, taper: number): number =>
  (taperChange.over({ t: taper, l: over.value })[0] as number) * 1000;

function leafSeats(leaf_mm: number, { P_mm }: CandidateThread): number {
  const { leafLength_mm, leafMismatch_mm } = namingJudgement;
  return leafFit.over({ P: P_mm, P_l: leaf_mm, l: leafLength_mm, s: leafMismatch_mm })[0] as number;
}

/** A reading in mm and its standard deviation with what the part itself adds. */
const read = (q: Quantity, part_mm: number): readonly [number, number] => [
  valueIn(mm, q),
  Math.hypot(standardUncertainty(q) * 1000, part_mm),
];

function mixed(thread: number, crestsCounted: number, anything: number): Explained {
  const { blunder } = namingJudgement;
  return { thread: (1 - blunder) * thread, crestsCounted: (1 - blunder) * crestsCounted, blunder: blunder * anything };
}
