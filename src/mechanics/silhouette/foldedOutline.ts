import { wrapped } from "./lockIn.ts";
import { medianOfFew, quantile } from "./robust.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/** The outline of one side with all its turns laid over one another. */
export type FoldedOutline = {
  /** A crest lies at s = (k + phase) * period, for whole k. */
  readonly phase: number;
  /** How deep it is seen between its crests, in periods; 5/8 H of 60 degrees is 0.54, and seen obliquely it fills up. */
  readonly depth: number;
  /** How clear the crests stand in it: the first harmonic of the outline, in periods. A thread of 60 degrees has 0.2. */
  readonly swing: number;
};

/**
 * The outline of a side, followed from outside to where something first differs from the background; so it does not
 * matter what the part looks like behind its rim. Null where part and background are too alike to say.
 */
export function foldedOutline(
  strip: Strip,
  period: number,
  side: -1 | 1,
  edge: number,
  [from, to]: readonly [number, number],
): FoldedOutline | null {
  const { across } = strip;
  const near = side > 0 ? edge - 0.95 * period : -edge - 0.45 * period;
  const far = side > 0 ? edge + 0.45 * period : -edge + 0.95 * period;
  const [first, last] = rowsBetween(strip, near, far);
  const rows = last - first + 1;
  if (rows < 6) return null;
  const folded = fold(strip, period, [first, last], [from, to]);
  const outside = Math.max(2, Math.floor((0.25 * period) / across));
  const unlike = unlikeOutside(folded, rows, outside, side);
  const noise = quantile(unlike.subarray(0, outside * BINS), 0.8);
  const most = new Float64Array(BINS);
  for (let at = 0; at < unlike.length; at++)
    most[at % BINS] = Math.max(most[at % BINS] as number, unlike[at] as number);
  // One threshold for all: a bright flank does not move the outline of a dull one.
  const least = Math.max(8, 2.5 * noise, 0.4 * quantile(most, 0.3));
  if (quantile(most, 0.2) < least) return null;
  const edges = Array.from(most, (_, bin) => {
    const of = (row: number): number => unlike[row * BINS + bin] as number;
    let row = 0;
    while (row < rows - 1 && of(row) < least) row++;
    const [here, before] = [of(row), row > 0 ? of(row - 1) : 0];
    return row - (here > before ? Math.min(1, Math.max(0, (here - least) / (here - before))) : 0);
  });
  return harmonic(edges, across / period);
}

/** How unlike the outermost rows each place of the folded rim is, over all colours, with the rows counted from outside inward. */
function unlikeOutside(folded: readonly Float64Array[], rows: number, outside: number, side: -1 | 1): Float64Array {
  const unlike = new Float64Array(rows * BINS);
  for (const plane of folded) {
    const from = (row: number): number => (side > 0 ? rows - 1 - row : row) * BINS;
    const background = quantile(side > 0 ? plane.subarray(from(outside - 1)) : plane.subarray(0, outside * BINS), 0.5);
    for (let row = 0; row < rows; row++) addOff(plane, from(row), background, unlike, row * BINS);
  }
  return unlike.map(Math.sqrt);
}

/** Adds the squares of what a row from `start` on is off the background by to those from `to` on. */
function addOff(plane: Float64Array, start: number, background: number, unlike: Float64Array, to: number): void {
  for (let bin = 0; bin < BINS; bin++) {
    const off = (plane[start + bin] as number) - background;
    unlike[to + bin] = (unlike[to + bin] as number) + off * off;
  }
}

/** Phase of the crest, depth and swing of an outline whose `edges` are counted inward, one a bin. */
function harmonic(edges: readonly number[], scale: number): FoldedOutline {
  let [re, im] = [0, 0];
  edges.forEach((it, bin) => {
    const angle = (2 * Math.PI * (bin + 0.5)) / BINS;
    re -= it * Math.cos(angle);
    im -= it * Math.sin(angle);
  });
  const swing = (2 * Math.hypot(re, im) * scale) / BINS;
  const depth = (quantile(edges, 0.94) - quantile(edges, 0.06)) * scale;
  return { phase: wrapped(Math.atan2(im, re) / (2 * Math.PI)), depth, swing };
}

const BINS = 16;

/** The median over the turns of what each shows: a finger over one of them does not count. */
function fold(
  { columns, raw, step, s0 }: Strip,
  period: number,
  [first, last]: readonly [number, number],
  [from, to]: readonly [number, number],
): readonly Float64Array[] {
  const low = Math.max(0, Math.ceil((from - s0) / step));
  const high = Math.min(columns - 1, Math.floor((to - s0) / step));
  const rows = last - first + 1;
  // Which sixteenth of which turn each sample belongs to.
  const binOf = (i: number): number => Math.floor(((s0 + i * step) / period) * BINS);
  const firstBin = BINS * Math.floor(binOf(low) / BINS);
  const bins = Int32Array.from({ length: high - low + 1 }, (_, i) => binOf(low + i) - firstBin);
  const turns = Math.floor((bins.at(-1) ?? 0) / BINS) + 1;
  const counts = new Float64Array(turns * BINS);
  for (const bin of bins) counts[bin] = (counts[bin] as number) + 1;
  return raw.map((plane) => {
    const sums = new Float64Array(rows * turns * BINS);
    for (let row = 0; row < rows; row++) addTurns(plane, (first + row) * columns + low, bins, sums, row * turns * BINS);
    return mediansOfTurns(sums, counts, rows);
  });
}

/** Adds the samples of a row from `start` on to the turn and sixteenth of each, those of the row from `to` on. */
function addTurns(plane: Float32Array, start: number, bins: Int32Array, sums: Float64Array, to: number): void {
  for (let i = 0; i < bins.length; i++) {
    const at = to + (bins[i] as number);
    sums[at] = (sums[at] as number) + (plane[start + i] as number);
  }
}

/** The median over the turns of the mean that each sixteenth of a row has in them. */
function mediansOfTurns(sums: Float64Array, counts: Float64Array, rows: number): Float64Array {
  const turns = counts.length / BINS;
  const medians = new Float64Array(rows * BINS);
  const seen = new Float64Array(turns);
  for (let at = 0; at < medians.length; at++) {
    const row = Math.floor(at / BINS);
    const bin = at % BINS;
    let count = 0;
    for (let turn = 0; turn < turns; turn++) {
      const samples = counts[turn * BINS + bin] as number;
      if (samples > 0) seen[count++] = (sums[(row * turns + turn) * BINS + bin] as number) / samples;
    }
    medians[at] = medianOfFew(seen, count);
  }
  return medians;
}
