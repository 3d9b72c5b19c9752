import { wrapped } from "./lockIn.ts";
import { quantile } from "./robust.ts";
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
  const { step } = strip;
  const near = side > 0 ? edge - 0.95 * period : -edge - 0.45 * period;
  const far = side > 0 ? edge + 0.45 * period : -edge + 0.95 * period;
  const [first, last] = rowsBetween(strip, near, far);
  const rows = last - first + 1;
  if (rows < 6) return null;
  const folded = fold(strip, period, [first, last], [from, to]);
  // Rows are counted from outside inward.
  const at = (c: number, row: number, bin: number): number =>
    folded[c]?.[(side > 0 ? rows - 1 - row : row) * BINS + bin] as number;
  const outside = Math.max(2, Math.floor((0.25 * period) / step));
  const background = [0, 1, 2].map((c) =>
    quantile(
      each(outside, (row, bin) => at(c, row, bin)),
      0.5,
    ),
  );
  const unlike = (row: number, bin: number): number =>
    Math.hypot(...[0, 1, 2].map((c) => at(c, row, bin) - (background[c] as number)));
  const noise = quantile(each(outside, unlike), 0.8);
  const most = Array.from({ length: BINS }, (_, bin) =>
    Math.max(...Array.from({ length: rows }, (_, r) => unlike(r, bin))),
  );
  // One threshold for all: a bright flank does not move the outline of a dull one.
  const least = Math.max(8, 2.5 * noise, 0.4 * quantile(most, 0.3));
  if (quantile(most, 0.2) < least) return null;
  const edges = most.map((_, bin) => {
    let row = 0;
    while (row < rows - 1 && unlike(row, bin) < least) row++;
    const [here, before] = [unlike(row, bin), row > 0 ? unlike(row - 1, bin) : 0];
    return row - (here > before ? Math.min(1, Math.max(0, (here - least) / (here - before))) : 0);
  });
  return harmonic(edges, step / period);
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
  const turnOf = (i: number): number => Math.floor((s0 + i * step) / period);
  const [firstTurn, turns] = [turnOf(low), turnOf(high) - turnOf(low) + 1];
  return raw.map((plane) => {
    const sums = new Float64Array(turns * rows * BINS);
    const counts = new Float64Array(turns * BINS);
    for (let i = low; i <= high; i++) {
      const place = (s0 + i * step) / period;
      const turn = Math.floor(place) - firstTurn;
      const bin = Math.min(BINS - 1, Math.floor((place - Math.floor(place)) * BINS));
      counts[turn * BINS + bin] = (counts[turn * BINS + bin] as number) + 1;
      for (let row = 0; row < rows; row++) {
        const to = (turn * rows + row) * BINS + bin;
        sums[to] = (sums[to] as number) + (plane[(first + row) * columns + i] as number);
      }
    }
    return Float64Array.from({ length: rows * BINS }, (_, at) => {
      const [row, bin] = [Math.floor(at / BINS), at % BINS];
      const seen: number[] = [];
      for (let turn = 0; turn < turns; turn++) {
        const count = counts[turn * BINS + bin] as number;
        if (count > 0) seen.push((sums[(turn * rows + row) * BINS + bin] as number) / count);
      }
      return quantile(seen, 0.5);
    });
  });
}

function each(rows: number, value: (row: number, bin: number) => number): readonly number[] {
  const values: number[] = [];
  for (let row = 0; row < rows; row++) for (let bin = 0; bin < BINS; bin++) values.push(value(row, bin));
  return values;
}
