import { hannReference, lockedInEach, wrapped } from "./lockIn.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/**
 * The period over a part of a strip, from how the phase of every row runs on over lags of 1/2, 3/2 and 3 periods: the
 * longer the lag, the finer, and each is taken only once the shorter one has said in which turn it lies.
 */
export function coarsePeriod(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  [from, to]: readonly [number, number],
  reach: number,
): number {
  const length = Math.min(2 * period, Math.max(period, (to - from) / 2));
  const hop = period / HOPS;
  const count = Math.max(0, Math.floor((to - from - length) / hop + 1e-6) + 1);
  const windows = Array.from({ length: count }, (_, i) =>
    hannReference(strip, period, from + i * hop, from + i * hop + length),
  );
  const runsOn = lags.filter((lag) => lag < count).map((lag): Run => ({ lag, re: 0, im: 0 }));
  const [re, im] = [new Float64Array(count), new Float64Array(count)];
  const [first, last] = rowsBetween(strip, -reach, reach);
  const stride = Math.max(1, Math.round(period / 10 / strip.across));
  for (const plane of signal)
    for (let row = first; row <= last; row += stride) {
      lockedInEach(plane, row * strip.columns, windows, re, im);
      for (const sum of runsOn) addRun(sum, re, im);
    }
  let refined = period;
  for (const sum of runsOn) {
    const along = sum.lag * hop;
    const expected = along / refined - along / period;
    const turns = expected + wrapped(Math.atan2(sum.im, sum.re) / (2 * Math.PI) - expected);
    const found = 1 / (1 / period + turns / along);
    if (Math.abs(found / period - 1) > 0.3) break;
    refined = found;
  }
  return refined;
}

/** How the phase runs on over a lag, summed. */
type Run = { readonly lag: number; re: number; im: number };

/** Adds what the phases of one row, window after window, say of it. */
function addRun(sum: Run, re: Float64Array, im: Float64Array): void {
  let sumRe = sum.re;
  let sumIm = sum.im;
  for (let here = 0, there = sum.lag; there < re.length; here++, there++) {
    const a = re[here] as number;
    const b = im[here] as number;
    const c = re[there] as number;
    const d = im[there] as number;
    sumRe += a * c + b * d;
    sumIm += a * d - b * c;
  }
  sum.re = sumRe;
  sum.im = sumIm;
}

/** Windows a period, and the lags in windows. */
const HOPS = 2;
const lags = [1, 3, 6] as const;
