/** The value below which the share `q` of `values` lies; 0 of none. Sorts a copy. */
export const quantile = (values: ArrayLike<number>, q: number): number => quantiles(values, [q])[0] as number;

/** The same for several shares at once. */
export function quantiles(values: ArrayLike<number>, shares: readonly number[]): readonly number[] {
  const sorted = Float64Array.from(values).sort();
  return shares.map((q) => {
    if (sorted.length === 0) return 0;
    const at = q * (sorted.length - 1);
    const low = Math.floor(at);
    const [a, b] = [sorted[low] as number, sorted[Math.min(low + 1, sorted.length - 1)] as number];
    return a + (at - low) * (b - a);
  });
}

/** The median of the first `count` values, which are sorted in place by insertion: for a handful of them, many thousand times; 0 of none. */
export function medianOfFew(values: Float64Array, count: number): number {
  for (let i = 1; i < count; i++) {
    const value = values[i] as number;
    let at = i;
    for (; at > 0 && (values[at - 1] as number) > value; at--) values[at] = values[at - 1] as number;
    values[at] = value;
  }
  if (count === 0) return 0;
  return ((values[(count - 1) >> 1] as number) + (values[count >> 1] as number)) / 2;
}

export type Line = { readonly at0: number; readonly slope: number; readonly rms: number; readonly slopeError: number };

/**
 * The straight line through weighted points that outliers hardly move (Tukey's biweight, as in Huber and Ronchetti,
 * Robust Statistics, 2nd edition, 4.8). `rms` is that of the points it keeps.
 */
export function robustLine(at: ArrayLike<number>, values: ArrayLike<number>, weights: ArrayLike<number>): Line {
  let kept = Float64Array.from(weights);
  let line = weightedLine(at, values, kept);
  for (let round = 0; round < 6; round++) {
    const { at0, slope } = line;
    const off = Array.from(values, (value, i) => value - at0 - slope * (at[i] as number));
    const reach = 4.7 * Math.max(1e-6, 1.48 * quantile(off.map(Math.abs), 0.5));
    kept = Float64Array.from(off, (it, i) => {
      const u = it / reach;
      return Math.abs(u) < 1 ? (weights[i] as number) * (1 - u * u) ** 2 : 0;
    });
    line = weightedLine(at, values, kept);
  }
  return line;
}

function weightedLine(at: ArrayLike<number>, values: ArrayLike<number>, weights: ArrayLike<number>): Line {
  let [w, wx, wy] = [0, 0, 0];
  for (let i = 0; i < at.length; i++) {
    const weight = weights[i] as number;
    w += weight;
    wx += weight * (at[i] as number);
    wy += weight * (values[i] as number);
  }
  const [mx, my] = [wx / w, wy / w];
  let [xx, xy] = [0, 0];
  for (let i = 0; i < at.length; i++) {
    const dx = (at[i] as number) - mx;
    xx += (weights[i] as number) * dx * dx;
    xy += (weights[i] as number) * dx * ((values[i] as number) - my);
  }
  const slope = xx > 0 ? xy / xx : 0;
  const at0 = my - slope * mx;
  let square = 0;
  for (let i = 0; i < at.length; i++)
    square += (weights[i] as number) * ((values[i] as number) - at0 - slope * (at[i] as number)) ** 2;
  const rms = w > 0 ? Math.sqrt(square / w) : Number.POSITIVE_INFINITY;
  const spread = w > 0 ? Math.sqrt(xx / w) : 0;
  return { at0, slope, rms, slopeError: spread > 0 ? rms / spread : Number.POSITIVE_INFINITY };
}
