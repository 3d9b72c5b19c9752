import type { Strip } from "./strip.ts";

/**
 * How strongly each row of a segment repeats, over all colours; below 0 where what one period has and what the next one
 * has cancel out, as noise does half of the time.
 */
export type Amplitudes = {
  /** The middle of the segment along. */
  readonly s: number;
  readonly at: Float64Array;
};

type Segment = { readonly from: number; readonly to: number };

/**
 * Of every segment, from what periods that do not overlap have in common, not from what each has: the rim of a finger is
 * loud in one of them and absent from the next. `signal` are the three colours after `repeating`.
 */
export function amplitudes(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  segments: readonly Segment[],
): readonly Amplitudes[] {
  const windows = segments.map((it) => periodsOf(it, strip, period));
  const first = Math.min(...windows.flat().map((it) => it.first));
  const end = Math.max(...windows.flat().map((it) => it.end));
  const [cosine, sine] = waves(strip, period, first, end);
  // Segments and periods overlap: running sums are taken once for all of them.
  const [re, im] = [new Float64Array(end + 1), new Float64Array(end + 1)];
  const squares = segments.map(() => new Float64Array(strip.rows));
  for (const plane of signal)
    for (let row = 0; row < strip.rows; row++) {
      runningSums(plane, row * strip.columns, first, cosine, sine, re, im);
      addInCommon(squares, row, windows, re, im);
    }
  return segments.map(({ from, to }, i) => ({
    s: (from + to) / 2,
    at: smoothed((squares[i] as Float64Array).map((it) => Math.sign(it) * Math.sqrt(Math.abs(it)))),
  }));
}

/** The running sums of a row times the waves, from `first` on. */
function runningSums(
  plane: Float32Array,
  start: number,
  first: number,
  cosine: Float64Array,
  sine: Float64Array,
  re: Float64Array,
  im: Float64Array,
): void {
  let a = 0;
  let b = 0;
  for (let i = 0; i < cosine.length; i++) {
    const value = plane[start + first + i] as number;
    a += value * (cosine[i] as number);
    b += value * (sine[i] as number);
    re[first + i + 1] = a;
    im[first + i + 1] = b;
  }
}

function addInCommon(
  squares: readonly Float64Array[],
  row: number,
  windows: readonly (readonly Period[])[],
  re: Float64Array,
  im: Float64Array,
): void {
  for (let i = 0; i < windows.length; i++) {
    const square = squares[i] as Float64Array;
    square[row] = (square[row] as number) + inCommon(windows[i] as readonly Period[], re, im);
  }
}

/** The samples of one period, from `first` to before `end`. */
type Period = { readonly first: number; readonly end: number };

/** The periods of a segment, each half of one after the last. */
function periodsOf({ from, to }: Segment, { s0, step, columns }: Strip, period: number): readonly Period[] {
  const halves = Math.max(2, Math.floor((2 * (to - from)) / period + 0.02));
  return Array.from({ length: halves - 1 }, (_, i) => {
    const start = from + (i * period) / 2 - s0;
    const first = Math.max(0, Math.ceil(start / step));
    const last = Math.min(columns - 1, Math.floor((start + period) / step));
    return { first, end: Math.max(first, last) + 1 };
  });
}

/** exp(-2 pi i s / period) at every sample from `first` to before `end`. */
function waves({ s0, step }: Strip, period: number, first: number, end: number) {
  const angles = Float64Array.from(
    { length: end - first },
    (_, i) => (2 * Math.PI * (s0 + (first + i) * step)) / period,
  );
  return [angles.map(Math.cos), angles.map((it) => -Math.sin(it))] as const;
}

/** The mean product of the amplitudes of two periods, over all pairs that do not overlap; of one with itself where none do. */
function inCommon(periods: readonly Period[], re: Float64Array, im: Float64Array): number {
  const apart = periods.length < 3 ? 0 : 2;
  let sum = 0;
  let pairs = 0;
  for (let i = 0; i < periods.length; i++)
    for (let j = i + apart; j < periods.length; j++) {
      const here = periods[i] as Period;
      const there = periods[j] as Period;
      const size = (here.end - here.first) * (there.end - there.first);
      const a = (re[here.end] as number) - (re[here.first] as number);
      const b = (im[here.end] as number) - (im[here.first] as number);
      const c = (re[there.end] as number) - (re[there.first] as number);
      const d = (im[there.end] as number) - (im[there.first] as number);
      sum += (4 * (a * c + b * d)) / size;
      pairs++;
    }
  return sum / pairs;
}

const smoothed = (at: Float64Array): Float64Array =>
  at.map((it, i) => 0.25 * (at[i - 1] ?? it) + 0.5 * it + 0.25 * (at[i + 1] ?? it));
