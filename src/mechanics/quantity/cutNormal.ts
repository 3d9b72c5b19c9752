import { normalCdf, normalDensity, normalFromCentre, normalQuantile, normalSurvival } from "./normal.ts";

/** The part of the standard normal distribution between `from` and `to`, redrawn until inside; ends may be infinite. */
export type Cut = { readonly from: number; readonly to: number };

/** The share of all standard normal values inside the cut, relative error below 1e-12 down to 1e-300. */
export function share({ from, to }: Cut): number {
  if (!(from < to)) return 0;
  if (to <= 0) return share({ from: -to, to: -from });
  if (from < 0) return normalFromCentre(to) - normalFromCentre(from);
  const above = normalSurvival(from);
  const beyond = normalSurvival(to);
  // Two nearly equal tails cancel, but then the density is smooth enough between them for one panel of Gauss.
  return beyond <= above / 2 ? above - beyond : integral(normalDensity, { from, to }, 1);
}

/** The value that p of the cut's values lie below, within a rounding of z in either tail. */
export function cutQuantile(cut: Cut, p: number): number {
  if (p === 0) return cut.from;
  if (p === 1) return cut.to;
  const inside = share(cut);
  const below = normalCdf(cut.from) + p * inside;
  const above = normalSurvival(cut.to) + (1 - p) * inside;
  const first = clamped(cut, below <= 0.5 ? normalQuantile(below) : -normalQuantile(Math.min(above, 1)));
  if (!Number.isFinite(first)) return first;
  // In a narrow cut the rounding of the shares beside it shows; one step of Newton inside the cut removes it.
  const excess = p < 0.5 ? share({ from: cut.from, to: first }) - p * inside : lacking(cut, first, (1 - p) * inside);
  return clamped(cut, first - excess / normalDensity(first));
}

/** The mean of exp(k z) over the cut, relative error below 1e-11 for |k| up to 3. */
export function cutMeanOfExp(cut: Cut, k: number): number {
  // Shifted by k, the ends of a narrow cut are rounded apart.
  if (cut.to - cut.from < 0.5) return integral((z) => Math.exp(k * z) * normalDensity(z), cut, 8) / share(cut);
  return (Math.exp((k * k) / 2) * share({ from: cut.from - k, to: cut.to - k })) / share(cut);
}

/** The mean of z over the cut, without loss in narrow and in distant cuts. */
export function cutMean(cut: Cut): number {
  const { from, to } = cut;
  if (to === -from) return 0;
  // The difference of the densities is written with expm1, from the end that has the larger one.
  if (Math.abs(to) < Math.abs(from)) return -cutMean({ from: -to, to: -from });
  return (-normalDensity(from) * Math.expm1(-((to - from) * (to + from)) / 2)) / share(cut);
}

/**
 * The variance of z over the cut, relative error below 1e-9.
 * Source: N. L. Johnson, S. Kotz, N. Balakrishnan, "Continuous Univariate Distributions" vol. 1, 2nd ed., ch. 13,
 * section 10.1 (from memory); by quadrature where that form cancels.
 */
export function cutVariance(cut: Cut): number {
  const mean = cutMean(cut);
  const inside = share(cut);
  const atFrom = edge(cut.from) / inside;
  const atTo = edge(cut.to) / inside;
  const closed = 1 + atFrom - atTo - mean * mean;
  const largest = Math.max(1, Math.abs(atFrom), Math.abs(atTo), mean * mean);
  return closed > CANCELLED * largest ? closed : spread(cut, (z) => z - mean);
}

/** The variance of exp(k z) over the cut divided by the square of its mean, within 1e-9, for |k| up to 3. */
export function cutRelativeVarianceOfExp(cut: Cut, k: number): number {
  const mean = cutMeanOfExp(cut, k);
  const closed = cutMeanOfExp(cut, 2 * k) / mean / mean - 1;
  return closed > CANCELLED ? closed : spread(cut, (z) => Math.expm1(k * z - Math.log(mean)));
}

/** A difference that keeps less than this of its terms is taken by quadrature instead. */
const CANCELLED = 1e-3;

/** The mean of the square of a deviation over the cut, by quadrature, for a deviation that is smooth in z. */
function spread(cut: Cut, deviation: (z: number) => number): number {
  const square = (z: number) => deviation(z) ** 2 * normalDensity(z);
  return integral(square, whereItWeighs(cut), 32) / share(cut);
}

function lacking(cut: Cut, z: number, above: number): number {
  return above - share({ from: z, to: cut.to });
}

function clamped(cut: Cut, z: number): number {
  return Math.min(Math.max(z, cut.from), cut.to);
}

function edge(z: number): number {
  return Number.isFinite(z) ? z * normalDensity(z) : 0;
}

/** The part of the cut outside which the density is below e^-40 of its largest value. */
function whereItWeighs({ from, to }: Cut): Cut {
  if (from > 0) return { from, to: Math.min(to, from + Math.min(9, 40 / from)) };
  if (to < 0) return { from: Math.max(from, to - Math.min(9, -40 / to)), to };
  return { from: Math.max(from, -9), to: Math.min(to, 9) };
}

/** The 8-point rule of Gauss and Legendre on equal panels. Source: Abramowitz, Stegun, table 25.4 (from memory). */
function integral(f: (x: number) => number, { from, to }: Cut, panels: number): number {
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + half * (2 * panel + 1);
    for (const [x, weight] of GAUSS_8) sum += weight * (f(middle - half * x) + f(middle + half * x));
  }
  return sum * half;
}

const GAUSS_8 = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;
