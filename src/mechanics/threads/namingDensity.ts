import { normalCdf, normalDensity } from "../quantity/normal.ts";
import { triangularNodes, uniformNodes } from "../quantity/quadrature.ts";
import type { Range } from "./namingCandidates.ts";

/** Density at `x` of a normal reading with standard deviation `sd` about `mean`. */
export const normalDensityAt = (x: number, mean: number, sd: number): number => normalDensity((x - mean) / sd) / sd;

/**
 * Density at `x` of a normal reading with standard deviation `sd` of something uniform over `range`: the rectangle
 * convolved with the normal density. Equal ends give the normal density itself.
 */
export function readingOfRange(x: number, [low, high]: Range, sd: number): number {
  const width = high - low;
  // Narrower than this the rectangle changes nothing, and the difference of two probabilities would lose its digits.
  if (width < 1e-3 * sd) return normalDensityAt(x, (low + high) / 2, sd);
  const [a, b] = [(low - x) / sd, (high - x) / sd];
  // Taken on the side of the smaller tail, where the difference keeps its digits.
  const between = a > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a);
  return between / width;
}

/**
 * The same where the thing has lost or gained something from 0 to `shift` (below 0 for wear off a plug), a little more
 * often than much: the density of the shift falls straight to 0 at its end.
 */
export function readingOfShiftedRange(x: number, [low, high]: Range, shift: number, sd: number): number {
  if (shift === 0) return readingOfRange(x, [low, high], sd);
  let sum = 0;
  for (let i = 0; i < shifts.at.length; i++) {
    const moved = (shifts.at[i] as number) * shift;
    sum += (shifts.weight[i] as number) * readingOfRange(x, [low + moved, high + moved], sd);
  }
  return sum;
}

/** Shares of the shift, made once: every thread that is looked for asks for them. */
const shifts = triangularNodes(0, 0, 1, 8);

/** The probability that a normal reading with standard deviation `sd` of something uniform over `range` is above `x`. */
export function aboveInRange(x: number, [low, high]: Range, sd: number): number {
  const { at, weight } = uniformNodes(low, high, 16);
  return at.reduce((sum, n, i) => sum + (weight[i] as number) * normalCdf((n - x) / sd), 0);
}
