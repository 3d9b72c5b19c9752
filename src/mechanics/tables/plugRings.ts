import { fromMemory, judgement, type Source } from "./source.ts";

/** A ring by its sizes as sold, mm; the thickness is as it lies when tightened. */
export type RingSize = {
  readonly outside_mm: number;
  readonly inside_mm: number;
  readonly thickness_mm: number;
  readonly source: Source;
};

const din7603 = fromMemory("DIN 7603:2013, form A");

/** Flat rings by nominal thread diameter, mm: inside, outside, thickness. DIN 7603, from memory. */
const flatRings: Readonly<Record<number, readonly [number, number, number]>> = {
  8: [8, 11.5, 1],
  10: [10, 13.5, 1],
  12: [12, 15.5, 1.5],
  14: [14, 18, 1.5],
  16: [16, 20, 1.5],
  18: [18, 22, 1.5],
  20: [20, 24, 1.5],
  22: [22, 27, 1.5],
  24: [24, 29, 2],
  26: [26, 31, 2],
  27: [27, 32, 2],
  30: [30, 36, 2],
};

/** The diameters that plug threads and their flat rings are made in, mm. */
export const plugDiameters_mm: readonly number[] = Object.keys(flatRings).map(Number);

/** The rings and the collar of plugs of one thread, where tables list them for it; mm. */
export type OwnRings = {
  /** Inside, outside, thickness. */
  readonly flat: readonly [number, number, number];
  readonly bonded: readonly [number, number, number];
  readonly collar: number;
  /** Where the bonded seal is from. */
  readonly bondedSource: Source;
};

/** The flat ring of a plug thread. */
export function flatRing(d_mm: number, own: OwnRings | null): RingSize {
  const known = flatRings[d_mm] ?? own?.flat;
  if (!known) return ring(d_mm, d_mm + 5, 1.5, judgement("5 mm over the thread, as the rings of DIN 7603 run"));
  return ring(known[0], known[1], known[2], din7603);
}

/** The crush ring of a plug thread, after crushing. */
export const crushRing = (d_mm: number): RingSize =>
  ring(d_mm + 0.3, d_mm + 5, 1.5, judgement("as folded rings of plug threads run, crushed to 1.5 mm"));

/** The bonded seal of a plug thread; the thickness is that of its metal ring. */
export function bondedSeal(d_mm: number, own: OwnRings | null): RingSize {
  if (own) return ring(...own.bonded, own.bondedSource);
  return ring(
    d_mm + 0.7,
    d_mm + 8,
    1.5,
    judgement("as bonded seals of plug threads run (18.7 x 26 x 1.5 for 18 mm, from memory)"),
  );
}

/** The O-ring in the chamfer of a plug thread; head and face meet, so it takes no thread. */
export const oRing = (d_mm: number): RingSize =>
  ring(d_mm, d_mm + 5, 0, judgement("a cord of 2.5 mm in a chamfer of 45°"));

/** Collar diameters of plugs by nominal thread diameter, mm. DIN 908 and DIN 910, from memory. */
const collars: Readonly<Record<number, number>> = {
  10: 14,
  12: 17,
  14: 19,
  16: 21,
  18: 23,
  20: 25,
  22: 27,
  24: 29,
  26: 31,
  30: 36,
};

/** The collar diameter of a plug, mm, and where it comes from. */
export function collar(d_mm: number, own: OwnRings | null): { readonly diameter_mm: number; readonly source: Source } {
  const known = collars[d_mm] ?? own?.collar;
  return known
    ? { diameter_mm: known, source: fromMemory("DIN 908 and DIN 910, collar") }
    : { diameter_mm: Math.round(1.2 * d_mm + 1), source: judgement("collars run about 1.2 d + 1 mm") };
}

const ring = (inside_mm: number, outside_mm: number, thickness_mm: number, source: Source): RingSize => ({
  outside_mm,
  inside_mm,
  thickness_mm,
  source,
});
