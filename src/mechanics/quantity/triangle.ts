/** A triangular density from `low` over its peak at `likely` to `high`, in this order; all equal give one value. */
export type Triangle = { readonly low: number; readonly likely: number; readonly high: number };

/**
 * The probability of a value at most x.
 * Source: C. Forbes et al., "Statistical Distributions", 4th ed., triangular distribution (from memory).
 */
export function triangleBelow(triangle: Triangle, x: number): number {
  if (x >= triangle.high) return 1;
  return x <= triangle.likely ? rise(triangle, x) : 1 - fall(triangle, x);
}

/** The probability of a value above x, without loss where that is small. */
export function triangleAbove(triangle: Triangle, x: number): number {
  if (x >= triangle.high) return 0;
  return x <= triangle.likely ? 1 - rise(triangle, x) : fall(triangle, x);
}

/** The value that p of all values lie below. */
export function triangleQuantile({ low, likely, high }: Triangle, p: number): number {
  const width = high - low;
  return p * width < likely - low
    ? Math.min(low + Math.sqrt(p * width * (likely - low)), likely)
    : Math.max(high - Math.sqrt((1 - p) * width * (high - likely)), likely);
}

/** The standard deviation of all values, from the two sides of the peak so that nothing cancels. */
export function triangleDeviation({ low, likely, high }: Triangle): number {
  const left = likely - low;
  const right = high - likely;
  return Math.sqrt((left * left + left * right + right * right) / 18);
}

/** The area left of x, for x up to the peak. */
function rise({ low, likely, high }: Triangle, x: number): number {
  return x <= low ? 0 : ((x - low) / (high - low)) * ((x - low) / (likely - low));
}

/** The area right of x, for x between the peak and the end. */
function fall({ low, likely, high }: Triangle, x: number): number {
  return ((high - x) / (high - low)) * ((high - x) / (high - likely));
}
