import { hannReference, lockedIn } from "./lockIn.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/**
 * The period over a part of a strip, from how the phase of every row runs on over lags of 0.6, 1.5 and 3 periods: the
 * longer the lag, the finer, and each is taken only once the shorter one has said in which turn it lies.
 */
export function coarsePeriod(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  [from, to]: readonly [number, number],
  reach: number,
): number {
  let refined = period;
  for (const lags of [0.6, 1.5, 3]) {
    const lag = lags * refined;
    if (to - from < lag + refined) break;
    const found = fromPhases(strip, signal, refined, [from, to], reach, lag);
    if (Math.abs(found / period - 1) > 0.3) break;
    refined = found;
  }
  return refined;
}

function fromPhases(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  [from, to]: readonly [number, number],
  reach: number,
  lag: number,
): number {
  const window = Math.min(2 * period, to - from - lag);
  const hop = Math.max(period / 4, (to - from - window - lag) / 24);
  const pairs: (readonly [ReturnType<typeof hannReference>, ReturnType<typeof hannReference>])[] = [];
  for (let s = from; s + window + lag <= to + 1e-6; s += hop)
    pairs.push([hannReference(strip, period, s, s + window), hannReference(strip, period, s + lag, s + lag + window)]);
  const [first, last] = rowsBetween(strip, -reach, reach);
  const stride = Math.max(1, Math.round(period / 10 / strip.step));
  let [re, im] = [0, 0];
  for (const plane of signal)
    for (let row = first; row <= last; row += stride)
      for (const [here, there] of pairs) {
        const [a, b] = lockedIn(plane, row * strip.columns, here);
        const [c, d] = lockedIn(plane, row * strip.columns, there);
        re += a * c + b * d;
        im += a * d - b * c;
      }
  const turns = Math.atan2(im, re) / (2 * Math.PI);
  return 1 / (1 / period + turns / lag);
}
