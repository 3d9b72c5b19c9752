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
 * The crest line of each side of a segment that has one, where the periodic signal ends and not where a brightness does:
 * shadows and gradients do not repeat. At a crest of width P/8 the first harmonic is sin(pi/8) = 0.38 of its greatest value
 * and beyond it nothing, so however blurred the picture is, half of that is the crest. Two rules say where that is; the one
 * whose signal falls off more steeply is believed. Searched between `nearest` and `farthest` from the axis.
 */
export function crestEdges(
  strip: Strip,
  { s, at }: Amplitudes,
  period: number,
  [nearest, farthest]: readonly [number, number],
): readonly CrestEdge[] {
  const strong = greatest(strip, at, nearest * 0.4, farthest);
  const noise = noiseBeyond(strip, at, farthest);
  const least = Math.max(4 * noise, 0.12 * strong, 1);
  return ([-1, 1] as const).flatMap((side) => {
    const heard = { at, x0: strip.x0, across: strip.across, period, side, noise, least };
    return crestEdge(heard, s, nearest, farthest) ?? [];
  });
}

/** What is heard of the repeating signal of a segment on one side of the axis. */
type Heard = {
  readonly at: Float64Array;
  readonly x0: number;
  readonly across: number;
  readonly period: number;
  readonly side: -1 | 1;
  readonly noise: number;
  /** What a crest line has inside of it at least. */
  readonly least: number;
};

function crestEdge(heard: Heard, s: number, nearest: number, farthest: number): CrestEdge | null {
  const { side, period, noise } = heard;
  const a = outermost(heard, inner, 0.2, nearest, farthest);
  const b = outermost(heard, peak, 0.22, nearest, farthest);
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

/** Where, coming from outside, the signal first has that share of its level inside. */
function outermost(
  heard: Heard,
  levelInside: (heard: Heard, distance: number) => number,
  share: number,
  nearest: number,
  farthest: number,
) {
  for (let d = farthest; d > nearest; d -= heard.across / 4) {
    const within = levelInside(heard, d);
    if (within > heard.least && valueAt(heard, d) >= share * within)
      return { distance: d, within, soft: fallOff(heard, d, within) };
  }
  return null;
}

const inner = (heard: Heard, distance: number): number => valueAt(heard, distance - 0.3 * heard.period);

const peak = (heard: Heard, distance: number): number =>
  Math.max(
    valueAt(heard, distance - 0.25 * heard.period),
    valueAt(heard, distance - 0.35 * heard.period),
    valueAt(heard, distance - 0.45 * heard.period),
  );

/** The signal above the noise. */
function valueAt({ at, x0, across, side, noise }: Heard, distance: number): number {
  const place = Math.min(Math.max((side * distance - x0) / across, 0), at.length - 1.001);
  const low = Math.floor(place);
  const before = at[low] as number;
  return Math.max(0, before + (place - low) * ((at[low + 1] as number) - before) - noise);
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
function fallOff(heard: Heard, distance: number, within: number): number {
  const { period } = heard;
  const step = period / 60;
  let [outer, inside] = [distance, distance];
  while (outer < distance + period && valueAt(heard, outer) > 0.08 * within) outer += step;
  while (inside > distance - period && valueAt(heard, inside) < 0.6 * within) inside -= step;
  return (outer - inside) / period;
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
  const outside = new Float64Array(at.length);
  let count = 0;
  for (let row = 0; row < at.length; row++)
    if (Math.abs(strip.x0 + row * strip.across) > farthest * 0.98) outside[count++] = Math.abs(at[row] as number);
  return outside.subarray(0, count).sort()[Math.floor(count / 4)] ?? 0;
}
