import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { unifiedSizes } from "../tables/asmeB1Sizes.ts";
import { taperPipeSizes } from "../tables/iso7.ts";
import { pipeSizes } from "../tables/iso228.ts";
import { metricSizes } from "../tables/iso261.ts";
import { nptSizes } from "../tables/nptSizes.ts";
import { type HoleLimits, limits, type PlugLimits } from "./metricLimits.ts";
import { metricThreadFromText } from "./metricText.ts";
import { metricThread } from "./metricThread.ts";
import { metricPrior, pipePrior, unifiedPrior } from "./namingPriors.ts";
import { nptThread } from "./nptThread.ts";
import { gaugePlane, gLimits, parallelHole } from "./pipeLimits.ts";
import { pipeThreadFromText } from "./pipeText.ts";
import { PIPE_TAPER, type PipeThread, parallelPipeThread, taperPipeThread } from "./pipeThread.ts";
import type { HoleClass, PlugClass } from "./toleranceClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "./unifiedLimits.ts";
import { unifiedThreadFromText } from "./unifiedText.ts";
import { unifiedThread } from "./unifiedThread.ts";

/** A thread that an unknown one may be, by what can be measured of it. Ranges are low and high, mm. */
export type CandidateThread = {
  readonly designation: string;
  readonly family: "metric" | "unified" | "G" | "R" | "Rp" | "NPT";
  /** How likely it is before anything is measured, against the others. */
  readonly weight: number;
  readonly P_mm: number;
  /** Growth of diameter along the thread of the plug and of the hole: 0 or 1/16. */
  readonly taper: number;
  readonly holeTaper: number;
  /** Over the middle threads of a sound plug. */
  readonly outside_mm: Range;
  /** Pitch diameter of the plug, of a taper one at its small end. */
  readonly plugPitch_mm: Range;
  /** Minor diameter and pitch diameter of the hole, of a taper one at its mouth. */
  readonly bore_mm: Range;
  readonly holePitch_mm: Range;
};

export type Range = readonly [low: number, high: number];

/**
 * Every thread that is looked for: ISO 261 from M5 to M64 as 6g/6H, unified from #10 to 2 1/2 as 2A/2B, G as class B,
 * R and NPT to size 2. Made at the first call and kept.
 */
export function namingCandidates(): readonly CandidateThread[] {
  known ??= [...metric(), ...unified(), ...pipes()];
  return known;
}

/**
 * Those, and what only a hole may be: Rp, the parallel hole of ISO 7-1. No plug has that thread: the one that closes it is an R, so
 * that nothing read of a plug tells the two from each other.
 */
export function candidatesOfHole(): readonly CandidateThread[] {
  withHoles ??= [...namingCandidates(), ...parallelHoles()];
  return withHoles;
}

/** The candidate of that designation. @throws RangeError if there is none: put texts through `knownDesignation` first. */
export function candidateNamed(designation: string): CandidateThread {
  byName ??= new Map(candidatesOfHole().map((it) => [it.designation, it]));
  const found = byName.get(designation);
  if (!found) throw new RangeError(`${designation} is not among the threads that are looked for`);
  return found;
}

/** The designation of the candidate that `text` names in any accepted spelling, or null. Rc goes with R. */
export function knownDesignation(text: string): string | null {
  const reads = [metricThreadFromText(text), unifiedThreadFromText(text), pipeThreadFromText(text)];
  const designation = reads.find((it) => it.ok)?.thread.designation.replace(/^Rc /, "R ");
  return candidatesOfHole().find((it) => it.designation === designation)?.designation ?? null;
}

let known: readonly CandidateThread[] | undefined;
let withHoles: readonly CandidateThread[] | undefined;
let byName: ReadonlyMap<string, CandidateThread> | undefined;

const class6g: PlugClass = {
  designation: "6g",
  pitch: { grade: 6, deviation: "g" },
  major: { grade: 6, deviation: "g" },
};
const class6H: HoleClass = {
  designation: "6H",
  pitch: { grade: 6, deviation: "H" },
  minor: { grade: 6, deviation: "H" },
};

const metric = (): CandidateThread[] =>
  metricSizes
    .filter(({ d_mm, series }) => d_mm >= 5 && series !== "outside ISO 261")
    .map((size) => {
      const thread = metricThread(size.d_mm, size.P_mm);
      return parallel("metric", thread, metricPrior(size), limits(thread, class6g, class6H));
    });

const unified = (): CandidateThread[] =>
  unifiedSizes
    .filter(({ D_in }) => D_in >= 0.19)
    .map((size) => {
      const thread = unifiedThread(size);
      const both = { ...unifiedPlugLimits(thread, "2A"), ...unifiedHoleLimits(thread, "2B") };
      return parallel("unified", thread, unifiedPrior(size), both);
    });

const pipes = (): CandidateThread[] => [
  ...pipeSizes.map((size) => {
    const thread = parallelPipeThread(size);
    return parallel("G", thread, pipePrior("G", size.size), gLimits(thread, "B"));
  }),
  ...taperPipeSizes.map((size) => {
    const thread = taperPipeThread("R", size);
    const [d_mm, P_mm] = [valueIn(mm, thread.d), valueIn(mm, thread.P)];
    const small_mm = d_mm - PIPE_TAPER * valueIn(mm, thread.gaugeLength);
    return tapered("R", thread, pipePrior("R", size.size), [small_mm, d_mm + PIPE_TAPER * MAKE_UP_TURNS * P_mm]);
  }),
  ...nptSizes.map((size) => {
    const thread = nptThread(size);
    const small_mm = valueIn(mm, thread.E_0) + valueIn(mm, thread.h);
    return tapered("NPT", thread, pipePrior("NPT", size.size), [small_mm, valueIn(mm, thread.d)]);
  }),
];

/** The sizes and limits of an Rp hole, with the R plug that closes it. */
const parallelHoles = (): CandidateThread[] =>
  taperPipeSizes.map((size) => {
    const { designation, ...thread } = taperPipeThread("Rp", size);
    const { D1_min, D1_max, D2_min, D2_max } = parallelHole(thread);
    const plug = namingCandidates().find((it) => it.designation === `R ${size.size}`);
    if (!plug) throw new RangeError(`no R plug for ${designation}`);
    return {
      ...plug,
      designation,
      family: "Rp",
      weight: pipePrior("Rp", size.size),
      holeTaper: 0,
      bore_mm: rangeOf(D1_min, D1_max),
      holePitch_mm: rangeOf(D2_min, D2_max),
    };
  });

const rangeOf = (low: Quantity, high: Quantity): Range => [valueIn(mm, low), valueIn(mm, high)];

/** Turns of wrench make-up that a taper plug has beyond its gauge plane; judgement from 2.5 to 3.25. */
const MAKE_UP_TURNS = 2.75;

function parallel(
  family: CandidateThread["family"],
  { designation, P }: { readonly designation: string; readonly P: Quantity },
  weight: number,
  size: PlugLimits & HoleLimits,
): CandidateThread {
  return {
    designation,
    family,
    weight,
    P_mm: valueIn(mm, P),
    taper: 0,
    holeTaper: 0,
    outside_mm: rangeOf(size.d_min, size.d_max),
    plugPitch_mm: rangeOf(size.d2_min, size.d2_max),
    bore_mm: rangeOf(size.D1_min, size.D1_max),
    holePitch_mm: rangeOf(size.D2_min, size.D2_max),
  };
}

/** The gauge plane of either part may lie a turn off, which is a sixteenth of the pitch on the diameter. */
function tapered(family: "R" | "NPT", thread: PipeThread, weight: number, outside_mm: Range): CandidateThread {
  const plane = gaugePlane(thread);
  if (!plane) throw new RangeError(`${thread.designation} has no gauge plane`);
  const P_mm = valueIn(mm, thread.P);
  const d2_mm = valueIn(mm, thread.d_2);
  const around = (x_mm: number): Range => [x_mm - PIPE_TAPER * P_mm, x_mm + PIPE_TAPER * P_mm];
  return {
    designation: thread.designation,
    family,
    weight,
    P_mm,
    taper: PIPE_TAPER,
    holeTaper: PIPE_TAPER,
    outside_mm,
    plugPitch_mm: [
      d2_mm - PIPE_TAPER * valueIn(mm, plane.length_max),
      d2_mm - PIPE_TAPER * valueIn(mm, plane.length_min),
    ],
    bore_mm: around(valueIn(mm, thread.D_1)),
    holePitch_mm: around(d2_mm),
  };
}
