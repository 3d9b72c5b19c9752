import { inOrder, type Watched } from "./heldCases.ts";
import { innermostIntervals, mayLieIn, type Stretch } from "./turnbullIntervals.ts";

/** The curve of greatest likelihood where failures are only seen at checks, and the proof that there is none greater. */
export type Turnbull = {
  /** The stretches in which the curve falls, each with the share that fails there; how it falls inside is not known. */
  readonly masses: readonly (Stretch & { readonly mass: number })[];
  readonly logLikelihood: number;
  readonly certificate: OptimumCertificate;
};

/**
 * The gradient of every innermost interval: by how much the likelihood would rise per case and unit of share put there. At the
 * optimum none is above 1, and those that bear a share are at 1.
 * Source: R. Gentleman, C. J. Geyer, Biometrika 81 (1994), 618 (from memory).
 */
export type OptimumCertificate = {
  readonly greatestGradient: number;
  /** The least gradient of an interval that bears a share. */
  readonly leastGradientOfMass: number;
  /** No curve has a logarithm of the likelihood greater than this one's by more: n (greatestGradient - 1), as it is concave. */
  readonly shortBy_atMost: number;
};

/** Turnbull's estimate of when repairs fail. The masses add to 1; an open last stretch holds what has not failed. */
export function turnbull(watches: readonly Watched[]): Turnbull {
  const stretches = innermostIntervals(watches);
  const cases = inOrder(watches).map((watch) => stretches.map((it) => mayLieIn(it, watch)));
  const best = greatest(cases, stretches.length);
  const gradient = gradients(cases, best);
  const greatestGradient = Math.max(1, ...gradient);
  return {
    masses: stretches.flatMap((it, j) => (positive(best[j]) ? [{ ...it, mass: best[j] as number }] : [])),
    logLikelihood: logLikelihood(cases, best),
    certificate: {
      greatestGradient,
      leastGradientOfMass: Math.min(1, ...gradient.filter((_, j) => positive(best[j]))),
      shortBy_atMost: cases.length * (greatestGradient - 1),
    },
  };
}

/** Which innermost intervals each case may have failed in, a row a case. */
export type Membership = readonly (readonly boolean[])[];

/** The logarithm of the likelihood of the masses of the innermost intervals: the sum of ln p_i. */
export const logLikelihood = (cases: Membership, masses: readonly number[]): number =>
  chances(cases, masses).reduce((sum, p) => sum + Math.log(p), 0);

/**
 * One step of self-consistency: each case is shared out over the intervals it may have failed in, by their masses. It never
 * lowers the likelihood. Source: B. W. Turnbull, JRSS B 38 (1976), 290, eq. (3.2).
 */
export function selfConsistent(cases: Membership, masses: readonly number[]): readonly number[] {
  const gradient = gradients(cases, masses);
  return scaledTo1(masses.map((s, j) => s * (gradient[j] as number)));
}

/**
 * Self-consistency comes near soon and arrives late, so each of its steps is followed by one of Newton's on the intervals
 * that bear a share, and an interval that would raise it is given a share again. No step lowers the likelihood.
 */
function greatest(cases: Membership, count: number): readonly number[] {
  let masses: readonly number[] = Array.from({ length: count }, () => 1 / count);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    masses = revived(cases, newton(cases, selfConsistent(cases, masses)));
    const gradient = gradients(cases, masses);
    const off = gradient.map((g, j) => (positive(masses[j]) ? Math.abs(g - 1) : Math.max(0, g - 1)));
    if (Math.max(0, ...off) <= CLOSE) break;
  }
  return masses;
}

/**
 * A step of Newton's method on F = sum of ln p_i - n sum of s_j, whose maximum over s_j >= 0 is that of the likelihood with
 * masses that add to 1. It stops at the first mass that it brings to nought, and is halved until the likelihood rises.
 */
function newton(cases: Membership, masses: readonly number[]): readonly number[] {
  const p = chances(cases, masses);
  const bearing = masses.flatMap((s, j) => (s > 0 ? [j] : []));
  const curvature = bearing.map((j) =>
    bearing.map((k) => cases.reduce((sum, row, i) => (row[j] && row[k] ? sum + (p[i] as number) ** -2 : sum), 0)),
  );
  const gradient = gradients(cases, masses);
  const slope = bearing.map((j) => cases.length * ((gradient[j] as number) - 1));
  const step = solved(curvature, slope);
  const direction = masses.map((_, j) => step[bearing.indexOf(j)] ?? 0);
  const whole = Math.min(1, ...direction.map((d, j) => (d < 0 ? (masses[j] as number) / -d : 1)));
  const now = logLikelihood(cases, masses);
  for (let length = whole; length > 1e-6 * whole; length /= 2) {
    const next = scaledTo1(masses.map((s, j) => cleared(s + length * (direction[j] as number))));
    if (logLikelihood(cases, next) > now) return next;
  }
  return masses;
}

/** Gives the interval without a share whose gradient is greatest a share again, as much as raises the likelihood. */
function revived(cases: Membership, masses: readonly number[]): readonly number[] {
  const gradient = gradients(cases, masses).map((g, j) => (positive(masses[j]) ? 0 : g));
  const most = Math.max(...gradient);
  if (!(most > 1 + CLOSE)) return masses;
  const best = gradient.indexOf(most);
  const now = logLikelihood(cases, masses);
  for (let share = 0.1; share > 1e-12; share /= 4) {
    const next = masses.map((s, j) => (1 - share) * s + (j === best ? share : 0));
    if (logLikelihood(cases, next) > now) return next;
  }
  return masses;
}

/** The probability of what was seen of each case. */
const chances = (cases: Membership, masses: readonly number[]): readonly number[] =>
  cases.map((row) => row.reduce((sum, may, j) => (may ? sum + (masses[j] as number) : sum), 0));

function gradients(cases: Membership, masses: readonly number[]): readonly number[] {
  const p = chances(cases, masses);
  return masses.map((_, j) => cases.reduce((sum, row, i) => (row[j] ? sum + 1 / (p[i] as number) : sum), 0) / p.length);
}

/** Solves A x = b by Cholesky's method, for A without negative squares; its diagonal is raised by a breath if singular. */
function solved(A: readonly (readonly number[])[], b: readonly number[]): readonly number[] {
  const L = A.map((row) => row.map(() => 0));
  const entry = (i: number, k: number): number => L[i]?.[k] ?? 0;
  const x = [...b];
  A.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      let rest = (row[j] as number) * (i === j ? 1 + 1e-12 : 1);
      for (let k = 0; k < j; k++) rest -= entry(i, k) * entry(j, k);
      (L[i] as number[])[j] = i === j ? Math.sqrt(Math.max(rest, 1e-13 * (row[i] as number))) : rest / entry(j, j);
    }
    for (let k = 0; k < i; k++) x[i] = (x[i] as number) - entry(i, k) * (x[k] as number);
    x[i] = (x[i] as number) / entry(i, i);
  });
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++) x[i] = (x[i] as number) - entry(k, i) * (x[k] as number);
    x[i] = (x[i] as number) / entry(i, i);
  }
  return x;
}

const MOST_ROUNDS = 500;

/** How near 1 a gradient must come. */
const CLOSE = 1e-11;

/** A mass below this is nought: it is less than the roundings of the others. */
const cleared = (mass: number): number => (mass > 1e-15 ? mass : 0);

const positive = (mass: number | undefined): boolean => mass !== undefined && mass > 0;

function scaledTo1(masses: readonly number[]): readonly number[] {
  const total = masses.reduce((sum, s) => sum + s, 0);
  return masses.map((s) => s / total);
}
