import { fromMemory, published, type Source } from "./source.ts";

/** A size of the Whitworth pipe threads that ISO 228-1 (parallel) and ISO 7-1 (taper) share, with its G tolerances. */
export type PipeSize = {
  /** "1/2", "1 1/4". */
  readonly size: string;
  /** Threads per inch. */
  readonly n: number;
  /** Basic major diameter, mm; of a taper thread at the gauge plane. */
  readonly d_mm: number;
  readonly tolerances: GTolerances;
  /** The drill that a parallel thread is tapped from, mm; trade tables of tapping drills (common practice, no source). */
  readonly drill_mm: number;
  readonly source: Source;
};

/**
 * Tolerances in µm: of the plug's major diameter, of the plug's pitch diameter by class and of the hole's minor diameter.
 * The hole's pitch diameter has that of class A (from memory).
 */
export type GTolerances = {
  readonly T_d: number;
  readonly T_d2: { readonly A: number; readonly B: number };
  readonly T_D1: number;
};

const SEEN = published("ISO 228-1:2000, table 1");
const MEMORY = fromMemory("ISO 228-1:2000, table 1");

/** Tolerances by threads per inch; up to size 2 nothing else decides. */
const tolerances: Readonly<Record<28 | 19 | 14 | 11, GTolerances>> = {
  28: { T_d: 214, T_d2: { A: 107, B: 214 }, T_D1: 282 },
  19: { T_d: 250, T_d2: { A: 125, B: 250 }, T_D1: 445 },
  14: { T_d: 284, T_d2: { A: 142, B: 284 }, T_D1: 541 },
  11: { T_d: 360, T_d2: { A: 180, B: 360 }, T_D1: 640 },
};

const row = (size: string, n: 28 | 19 | 14 | 11, d_mm: number, drill_mm: number, source: Source): PipeSize => ({
  size,
  n,
  d_mm,
  tolerances: tolerances[n],
  drill_mm,
  source,
});

/** Sizes 1/16 to 2, from small to large. Some tables drill 45.5 for 1 1/2, which is over the hole's minor diameter. */
export const pipeSizes: readonly PipeSize[] = [
  row("1/16", 28, 7.723, 6.8, MEMORY),
  row("1/8", 28, 9.728, 8.8, SEEN),
  row("1/4", 19, 13.157, 11.8, SEEN),
  row("3/8", 19, 16.662, 15.25, SEEN),
  row("1/2", 14, 20.955, 19, SEEN),
  row("5/8", 14, 22.911, 21, SEEN),
  row("3/4", 14, 26.441, 24.5, SEEN),
  row("7/8", 14, 30.201, 28.25, SEEN),
  row("1", 11, 33.249, 30.75, SEEN),
  row("1 1/8", 11, 37.897, 35.5, MEMORY),
  row("1 1/4", 11, 41.91, 39.5, MEMORY),
  row("1 1/2", 11, 47.803, 45.25, MEMORY),
  row("1 3/4", 11, 53.746, 51, MEMORY),
  row("2", 11, 59.614, 57, MEMORY),
];
