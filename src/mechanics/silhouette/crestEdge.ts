import type { Amplitudes } from "./amplitudes.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/** Where, across a strip, the crests end on one side of one segment. */
export type CrestEdge = {
  readonly side: -1 | 1;
  /** The middle of the segment along, and the crest line's distance from the axis there, pixels. */
  readonly s: number;
  readonly distance: number;
  /** How far the repeating signal takes to fall off, in periods; a sharp photo has 0.14 to 0.25. */
  readonly soft: number;
  /** How far the two rules disagree, in periods. */
  readonly gap: number;
  /** The signal inside the crest line over the noise outside. */
  readonly overNoise: number;
};

/**
 * The crest line of one side, where the periodic signal ends and not where a brightness does: shadows and gradients do
 * not repeat. At a crest of width P/8 the first harmonic is sin(pi/8) = 0.38 of its greatest value and beyond it nothing,
 * so however blurred the picture is, half of that is the crest. Two rules say where that is; the one whose signal falls
 * off more steeply is believed. Searched between `nearest` and `farthest` from the axis; null where nothing repeats.
 */
export function crestEdge(
  strip: Strip,
  { s, at }: Amplitudes,
  period: number,
  side: -1 | 1,
  [nearest, farthest]: readonly [number, number],
): CrestEdge | null {
  const strong = greatest(strip, at, nearest * 0.4, farthest);
  const noise = noiseBeyond(strip, at, farthest);
  const value = (distance: number): number => Math.max(0, between(strip, at, side * distance) - noise);
  const inner = (distance: number): number => value(distance - 0.3 * period);
  const peak = (distance: number): number =>
    Math.max(value(distance - 0.25 * period), value(distance - 0.35 * period), value(distance - 0.45 * period));
  const heard = (level: number): boolean => level > Math.max(4 * noise, 0.12 * strong, 1);
  const rules = [
    { share: 0.2, level: inner },
    { share: 0.22, level: peak },
  ].map(({ share, level }) => {
    for (let d = farthest; d > nearest; d -= strip.across / 4) {
      const within = level(d);
      if (heard(within) && value(d) >= share * within)
        return { distance: d, within, soft: fallOff(value, d, within, period) };
    }
    return null;
  });
  const [a, b] = rules;
  const believed = a && b ? (a.soft <= b.soft ? a : b) : (a ?? b);
  if (!believed) return null;
  const gap = a && b ? Math.abs(a.distance - b.distance) / period : 0.5;
  return {
    side,
    s,
    distance: believed.distance - blurBias(believed.soft) * period,
    soft: believed.soft,
    gap,
    overNoise: believed.within / Math.max(noise, 1e-3),
  };
}

/**
 * How far outside the crest both rules read, in periods, by how softly the signal falls off: a blur carries some of the
 * flank's signal across the crest. Half way between the
 * outline of ISO 68-1 under a Gaussian blur and one whose crest is rounded to half of its flat.
 */
function blurBias(soft: number): number {
  const at = blurBiases.findIndex(([known]) => known > soft);
  const [[s0, b0], [s1, b1]] =
    at < 0
      ? lastTwo
      : ([blurBiases[Math.max(0, at - 1)], blurBiases[Math.max(1, at)]] as const as readonly [Pair, Pair]);
  return Math.min(0.12, Math.max(-0.01, b0 - ROUNDED + ((soft - s0) / (s1 - s0)) * (b1 - b0)));
}

const ROUNDED = 0.01;
type Pair = readonly [soft: number, bias: number];
const blurBiases: readonly Pair[] = [
  [0.1, 0],
  [0.13, 0.004],
  [0.15, 0.011],
  [0.17, 0.024],
  [0.2, 0.038],
  [0.22, 0.053],
  [0.25, 0.075],
  [0.28, 0.105],
];
const lastTwo: readonly [Pair, Pair] = [
  [0.25, 0.075],
  [0.28, 0.105],
];

/** From where the signal has 60 % of its level inside to where it has 8 %, in periods. */
function fallOff(value: (distance: number) => number, distance: number, within: number, period: number): number {
  const step = period / 60;
  let [outer, inner] = [distance, distance];
  while (outer < distance + period && value(outer) > 0.08 * within) outer += step;
  while (inner > distance - period && value(inner) < 0.6 * within) inner -= step;
  return (outer - inner) / period;
}

function between({ x0, across }: Strip, at: Float64Array, x: number): number {
  const place = Math.min(Math.max((x - x0) / across, 0), at.length - 1.001);
  const low = Math.floor(place);
  return (at[low] as number) + (place - low) * ((at[low + 1] as number) - (at[low] as number));
}

function greatest(strip: Strip, at: Float64Array, nearest: number, farthest: number): number {
  const [first, last] = rowsBetween(strip, -farthest, farthest);
  let most = 0;
  for (let row = first; row <= last; row++)
    if (Math.abs(strip.x0 + row * strip.across) > nearest) most = Math.max(most, at[row] as number);
  return most;
}

/** The lower quartile of the rows farther out than the search goes, both sides together. */
function noiseBeyond(strip: Strip, at: Float64Array, farthest: number): number {
  const outside = at
    .map(Math.abs)
    .filter((_, row) => Math.abs(strip.x0 + row * strip.across) > farthest * 0.98)
    .sort();
  return outside[Math.floor(outside.length / 4)] ?? 0;
}
