import { normalCdf, normalDensity } from "../quantity/normal.ts";
import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";

/** No more than another length, but for what the last digit of a sum of lengths leaves, so that no unit decides it. */
export const noMoreThan = (a: Quantity, b: Quantity): boolean => a.value <= b.value + 1e-9;

/**
 * The standard uncertainty, m, of what is gained of the thread ahead, between nothing and the whole advance: that of a
 * normal held between two ends, and the advance's own where it is gained whole. Nothing jumps where the plug comes to the
 * end of the thread.
 */
export function uncertaintyOfGain(advance: Quantity, ahead: Quantity): number {
  const [A, mu, s] = [advance.value, ahead.value, standardUncertainty(ahead)];
  if (s === 0) return noMoreThan(advance, ahead) ? standardUncertainty(advance) : 0;
  const [a, b] = [-mu / s, (A - mu) / s];
  const [below, whole] = [normalCdf(a), 1 - normalCdf(b)];
  const between = 1 - below - whole;
  const [atA, atB] = [normalDensity(a), normalDensity(b)];
  const mean_m = mu * between + s * (atA - atB) + A * whole;
  const square = mu ** 2 * between + 2 * mu * s * (atA - atB) + s ** 2 * (between + a * atA - b * atB) + A ** 2 * whole;
  return Math.sqrt(Math.max(0, square - mean_m ** 2) + whole * standardUncertainty(advance) ** 2);
}

/**
 * The standard uncertainty of the nearer of two depths, m. Near each other either may be the nearer, so the uncertainty
 * passes from one to the other with the probability of that, and nothing jumps where they change places.
 */
export function uncertaintyOfNearer(a: Quantity, b: Quantity): number {
  const [u_a, u_b] = [standardUncertainty(a), standardUncertainty(b)];
  const u = Math.hypot(u_a, u_b);
  if (u === 0) return 0;
  const aIsNearer = normalCdf((b.value - a.value) / u);
  return Math.sqrt(aIsNearer * u_a ** 2 + (1 - aIsNearer) * u_b ** 2);
}
