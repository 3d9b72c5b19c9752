import type { Strip } from "./strip.ts";

/** The cosines and sines that a signal is multiplied by to ask it for one period, times a window; made once for all rows. */
export type Reference = {
  readonly first: number;
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
  /** The sum of the window. */
  readonly total: number;
};

/** exp(-2 pi i s / period) under a Hann window from `from` to `to` along the strip. */
export function hannReference({ s0, step, columns }: Strip, period: number, from: number, to: number): Reference {
  const first = Math.max(0, Math.ceil((from - s0) / step));
  const last = Math.min(columns - 1, Math.floor((to - s0) / step));
  const count = Math.max(0, last - first + 1);
  const [cosine, sine] = [new Float64Array(count), new Float64Array(count)];
  let total = 0;
  for (let i = 0; i < count; i++) {
    const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count);
    const angle = (2 * Math.PI * (s0 + (first + i) * step)) / period;
    cosine[i] = window * Math.cos(angle);
    sine[i] = -window * Math.sin(angle);
    total += window;
  }
  return { first, cosine, sine, total };
}

export type Complex = readonly [re: number, im: number];

/** The amplitude and phase of one row (from `start` in `plane`) at the period of the reference. */
export function lockedIn(plane: Float32Array, start: number, { first, cosine, sine, total }: Reference): Complex {
  let re = 0;
  let im = 0;
  for (let i = 0; i < cosine.length; i++) {
    const value = plane[start + first + i] as number;
    re += value * (cosine[i] as number);
    im += value * (sine[i] as number);
  }
  return total > 0 ? [(2 * re) / total, (2 * im) / total] : [0, 0];
}

/** The same at each of several windows, into `re` and `im`. */
export function lockedInEach(
  plane: Float32Array,
  start: number,
  windows: readonly Reference[],
  re: Float64Array,
  im: Float64Array,
): void {
  for (let i = 0; i < windows.length; i++) {
    const value = lockedIn(plane, start, windows[i] as Reference);
    re[i] = value[0];
    im[i] = value[1];
  }
}

/** The part of `turns` that lies from -1/2 to 1/2. */
export const wrapped = (turns: number): number => turns - Math.round(turns);
