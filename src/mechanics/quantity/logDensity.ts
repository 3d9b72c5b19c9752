import { cdf, type Distribution, quantile, support } from "./distribution.ts";
import type { Nodes } from "./quadrature.ts";
import { remembered } from "./remembered.ts";

/**
 * The distribution of a quantity X >= 0 by the probability mass of ln X on a grid: `mass[i]` lies at
 * `first + i * step`, and `zero` is the probability of X = 0. Products of independent quantities are convolutions
 * of such densities: deterministic, smooth in every input, without sampling noise.
 */
export type LogDensity = { readonly first: number; readonly mass: Float64Array; readonly zero: number };

/** The grid of ln X. Fine enough that the figures of the window do not change with it in their printed digits. */
export const step = 0.01;

/** What is left out at each end of a distribution. */
const negligible = 1e-11;

/** The density of a quantity that is 0 without doubt. */
export const nothing: LogDensity = { first: 0, mass: Float64Array.of(0), zero: 1 };

/** The density of a quantity whose distribution is known. Values at or below 0 count as 0. */
export const logDensity: (distribution: Distribution) => LogDensity = remembered((distribution) => {
  const [least, most] = support(distribution);
  if (most <= 0) return nothing;
  if (least === most) return pointMass(Math.log(least));
  const from = Math.max(least, quantile(distribution, negligible));
  const to = quantile(distribution, 1 - negligible);
  if (to <= 0) return nothing;
  const below = from > 0 ? 0 : cdf(distribution, 0);
  return logDensityBelow((x) => cdf(distribution, x), from > 0 ? from : to * Math.exp(-12), to, below);
});

/**
 * The density of a quantity by its distribution function `below`, over the values `from` to `to`.
 * `zero` is the probability of 0; what lies between 0 and `from` is counted there too.
 */
export function logDensityBelow(below: (x: number) => number, from: number, to: number, zero: number): LogDensity {
  const first = Math.log(from);
  const count = Math.max(1, Math.ceil((Math.log(to) - first) / step)) + 1;
  const mass = new Float64Array(count);
  let lower = below(Math.exp(first - step / 2));
  const atZero = Math.max(zero, lower > negligible ? lower : 0);
  for (let i = 0; i < count; i++) {
    const upper = below(Math.exp(first + (i + 0.5) * step));
    mass[i] = upper - lower;
    lower = upper;
  }
  return { first, mass, zero: atZero };
}

/** The density of a quantity given by quadrature nodes of its logarithm. */
export function logDensityOfNodes({ at, weight }: Nodes): LogDensity {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const x of at) {
    if (x < least) least = x;
    if (x > most) most = x;
  }
  const density = emptyDensity(least, most);
  for (let i = 0; i < at.length; i++) spread(density, at[i] as number, weight[i] as number);
  return density;
}

/** A density of nothing yet, with room for masses between `least` and `most`, to be filled by `spread`. */
export function emptyDensity(least: number, most: number): LogDensity {
  const count = Math.ceil((most - least) / step) + 4;
  return { first: least - step, mass: new Float64Array(count), zero: 0 };
}

/**
 * Adds a mass that lies between grid points, shared among the four nearest so that its first three moments stay
 * (Lagrange interpolation, Abramowitz and Stegun, 25.2.13): the grid then widens nothing.
 */
export const spread = (density: LogDensity, at: number, weight: number): void =>
  spreadAll(density, { first: at, mass: unit }, 0, weight);

const unit = Float64Array.of(1);

/** Adds `weight` times a whole density moved by `shift`: every cell lies between grid points by the same fraction. */
export function spreadAll(
  { first, mass }: LogDensity,
  moved: Pick<LogDensity, "first" | "mass">,
  shift: number,
  weight: number,
): void {
  const place = (moved.first + shift - first) / step;
  const from = Math.floor(place);
  const t = place - from;
  addFourTaps(
    mass,
    from - 1,
    moved.mass,
    -(weight * t * (t - 1) * (t - 2)) / 6,
    (weight * (t + 1) * (t - 1) * (t - 2)) / 2,
    -(weight * (t + 1) * t * (t - 2)) / 2,
    (weight * (t + 1) * t * (t - 1)) / 6,
  );
}

/** The density of a product of independent quantities. */
export const product = (...factors: readonly LogDensity[]): LogDensity =>
  factors.reduce((a, b) => trimmed(convolved(a, b)));

/** The density of `factor` times the quantity. */
export const times = (factor: number, density: LogDensity): LogDensity => ({
  ...density,
  first: density.first + Math.log(factor),
});

/** The probability that the quantity is at most x. */
export function probabilityBelow(density: LogDensity, cumulative: Float64Array, x: number): number {
  if (x <= 0) return density.zero;
  const place = (Math.log(x) - density.first) / step - 0.5;
  const i = Math.floor(place);
  if (i < 0) return density.zero;
  if (i >= cumulative.length - 1) return cumulative[cumulative.length - 1] as number;
  const [low, high] = [cumulative[i] as number, cumulative[i + 1] as number];
  const t = place - i;
  // Straight in the logarithm of the probability, as the tails nearly are.
  return low > 0 ? low * (high / low) ** t : high * t;
}

/** The running sum of a density: the probability of lying below the upper edge of each cell. */
export function cumulated({ mass, zero }: LogDensity): Float64Array {
  const sums = new Float64Array(mass.length);
  let sum = zero;
  for (let i = 0; i < mass.length; i++) {
    sum = Math.max(sum, sum + (mass[i] as number));
    sums[i] = sum;
  }
  return sums;
}

/** The value that the quantity stays below with probability p; 0 where 0 itself is that likely. */
export function quantileOf(density: LogDensity, cumulative: Float64Array, p: number): number {
  if (density.zero >= p) return 0;
  let i = 0;
  while (i < cumulative.length - 1 && (cumulative[i] as number) < p) i++;
  const high = cumulative[i] as number;
  const low = i === 0 ? density.zero : (cumulative[i - 1] as number);
  const t = low > 0 ? Math.log(p / low) / Math.log(high / low) : (p - low) / (high - low);
  return Math.exp(density.first + (i - 0.5 + t) * step);
}

/** The variance of the logarithm, leaving out what is 0. */
export function varianceOfLog({ first, mass }: LogDensity): number {
  let [total, sum, squares] = [0, 0, 0];
  mass.forEach((share, i) => {
    const at = first + i * step;
    total += share;
    sum += share * at;
    squares += share * at * at;
  });
  return Math.max(0, squares / total - (sum / total) ** 2);
}

function pointMass(at: number): LogDensity {
  return { first: at, mass: Float64Array.of(1), zero: 0 };
}

function convolved(a: LogDensity, b: LogDensity): LogDensity {
  const [long, short] = a.mass.length >= b.mass.length ? [a.mass, b.mass] : [b.mass, a.mass];
  const mass = new Float64Array(long.length + short.length - 1);
  // Four rows at a time: each cell of the product is read and written a quarter as often.
  const row = (j: number): number => short[j] ?? 0;
  for (let j = 0; j < short.length; j += 4) addFourTaps(mass, j, long, row(j), row(j + 1), row(j + 2), row(j + 3));
  return { first: a.first + b.first, mass, zero: 1 - (1 - a.zero) * (1 - b.zero) };
}

/**
 * Adds `column` four times, at `offset` and each of the three places after it, times a tap each. One pass that writes
 * every cell once: much of a window's time is spent here. What lies past either end is 0 and is left out; a single touch
 * out there, or three zeros taken out of an array, make every pass twice to three times as slow.
 */
function addFourTaps(
  to: Float64Array,
  offset: number,
  column: Float64Array,
  t0: number,
  t1: number,
  t2: number,
  t3: number,
): void {
  let c1 = 0;
  let c2 = 0;
  let c3 = 0;
  const end = Math.min(column.length + 3, to.length - offset);
  for (let i = 0; i < end; i++) {
    const c0 = i < column.length ? (column[i] as number) : 0;
    const at = offset + i;
    if (at >= 0) to[at] = (to[at] as number) + t0 * c0 + t1 * c1 + t2 * c2 + t3 * c3;
    c3 = c2;
    c2 = c1;
    c1 = c0;
  }
}

/** A cell that holds less adds nothing to odds anybody asks for. */
const tiny = 1e-11;

/** Without the ends that hold nothing; two cells are kept on each side for masses spread onto them later. */
function trimmed({ first, mass, zero }: LogDensity): LogDensity {
  let from = 0;
  let to = mass.length;
  while (from < to - 1 && Math.abs(mass[from] as number) < tiny) from++;
  while (to > from + 1 && Math.abs(mass[to - 1] as number) < tiny) to--;
  from = Math.max(0, from - 2);
  return { first: first + from * step, mass: mass.slice(from, Math.min(mass.length, to + 2)), zero };
}
