import { formula } from "../quantity/formula.ts";
import { normalQuantile } from "../quantity/normal.ts";
import { one } from "../quantity/unit.ts";
import { failed, inOrder, type Watched } from "./heldCases.ts";
import { type WeibullLine, weibullLikelihood } from "./weibullLikelihood.ts";
import { logTime, middle, scaledBy } from "./weibullTimes.ts";

/** A Weibull distribution of greatest likelihood, its scale in the unit of the times. */
export type WeibullFit = {
  readonly type: "fitted";
  readonly shape: number;
  readonly scale: number;
  readonly logLikelihood: number;
  /** Of the intercept ln(scale) and of the logarithm of 1/shape, from the observed information. */
  readonly covariance: { readonly intercept: number; readonly both: number; readonly logOfReciprocalShape: number };
  readonly failures: number;
  /** Fewer than 5 failures: shape and scale are then little more than a guess. */
  readonly fewFailures: boolean;
};

/** Why a set of cases has no Weibull distribution of greatest likelihood. */
export type WeibullNotFitted = {
  readonly type: "not fitted";
  /**
   * "failure at 0": the distribution has no place for it. "no greatest likelihood": all failures may have come at one
   * moment, or the checks give no sign of failures growing with time.
   */
  readonly reason: "too few failures" | "failure at 0" | "no greatest likelihood";
  readonly failures: number;
};

/**
 * The Weibull distribution of greatest likelihood for failures known to the day, failures found at checks and repairs that
 * still hold, all together.
 */
export function weibull(watches: readonly Watched[]): WeibullFit | WeibullNotFitted {
  const failures = watches.filter(failed).length;
  const refused = (reason: WeibullNotFitted["reason"]) => ({ type: "not fitted", reason, failures }) as const;
  if (failures < LEAST_FAILURES) return refused("too few failures");
  if (watches.some((it) => it.type === "failed at" && it.t === 0)) return refused("failure at 0");
  if (!hasGreatest(watches)) return refused("no greatest likelihood");
  const unit = middle(watches);
  const scaled = inOrder(watches).map((it) => scaledBy(1 / unit, it));
  const best = greatest(scaled);
  if (!best) return refused("no greatest likelihood");
  const { value, curvature } = weibullLikelihood(scaled, best);
  // The density of a known day is per unit of time.
  const perUnit = watches.filter(({ type }) => type === "failed at").length * Math.log(unit);
  return {
    type: "fitted",
    shape: best.beta,
    scale: unit * Math.exp(best.delta / best.beta),
    logLikelihood: value - perUnit,
    covariance: covarianceOf(best, curvature),
    failures,
    fewFailures: failures < FEW_FAILURES,
  };
}

/** The time by which the share p has failed, with limits at a confidence `level` (Wald, on the logarithm of the time). */
export function weibullQuantile({ shape, scale, covariance }: WeibullFit, p: number, level: number) {
  const w = only(standardQuantile.over({ p }));
  const { intercept: V_mu, both: V_mus, logOfReciprocalShape: V_s } = covariance;
  const s = only(quantileDeviation.over({ V_mu, V_mus, V_s, w, beta: shape }));
  const z = normalQuantile((1 + level) / 2);
  const at = (signed: number): number => only(quantileAt.over({ eta: scale, w, beta: shape, z: signed, s }));
  return { t: at(0), low: at(-z), high: at(z) };
}

const SOURCE = "Lawless, Statistical Models and Methods for Lifetime Data, 2nd ed. (2003), 5.2.1 (from memory)";

const standardQuantile = formula("w = ln(-ln(1 - p))", { p: one, w: one }, SOURCE);

const quantileDeviation = formula(
  "s = sqrt(V_mu + 2 * w / beta * V_mus + (w / beta)^2 * V_s)",
  { V_mu: one, V_mus: one, V_s: one, w: one, beta: one, s: one },
  SOURCE,
);

/** With z below 0 the lower limit, above 0 the upper one. */
const quantileAt = formula(
  "t_p = eta * exp(w / beta + z * s)",
  { eta: one, w: one, beta: one, z: one, s: one, t_p: one },
  SOURCE,
);

/** Two parameters need two failures. */
const LEAST_FAILURES = 2;
const FEW_FAILURES = 5;

/**
 * Whether the likelihood has a maximum. It has none where one moment lies in all intervals of failure and after all that
 * held (the shape then grows for ever), nor where all failures are in intervals from 0 that end no later, in the mean of
 * their logarithms, than what held was watched (the shape then shrinks to nought). Worked out from the limits of the
 * likelihood in Burridge's line, where it is concave.
 */
function hasGreatest(watches: readonly Watched[]): boolean {
  const fell = watches.filter(failed);
  const begins = watches.map((it) => (it.type === "failed between" ? it.from : it.t));
  const ends = fell.map((it) => (it.type === "failed between" ? it.to : it.t));
  if (Math.max(...begins) <= Math.min(...ends)) return false;
  if (fell.some((it) => it.type === "failed at" || it.from > 0)) return true;
  const held = watches.filter((it) => it.type === "held until").map(({ t }) => t);
  return mean(ends.map(Math.log)) > mean(held.map(Math.log));
}

/** Newton's method on a concave function of two numbers, each step halved until it rises; null where it does not arrive. */
function greatest(watches: readonly Watched[]): WeibullLine | null {
  let at = firstLine(watches);
  for (let round = 0; round < 200; round++) {
    const now = weibullLikelihood(watches, at);
    const [g1, g2] = now.slope;
    const [h11, h12, h22] = now.curvature;
    const det = h11 * h22 - h12 * h12;
    const step = { beta: (h12 * g2 - h22 * g1) / det, delta: (h12 * g1 - h11 * g2) / det };
    const promised = step.beta * g1 + step.delta * g2;
    if (!(det > 0 && promised >= 0)) return null;
    if (promised < ARRIVED) return { beta: at.beta + step.beta, delta: at.delta + step.delta };
    at = halved(at, step, (next) => promised < SURE || weibullLikelihood(watches, next).value > now.value);
  }
  return null;
}

function halved(at: WeibullLine, step: WeibullLine, rises: (next: WeibullLine) => boolean): WeibullLine {
  for (let length = 1; length > 1e-10; length /= 2) {
    const next = { beta: at.beta + length * step.beta, delta: at.delta + length * step.delta };
    if (next.beta > 0 && rises(next)) return next;
  }
  return at;
}

/** What a step promises to raise the logarithm of the likelihood by: below this Newton's method needs no watching. */
const SURE = 1e-6;
const ARRIVED = 1e-22;

/** A shape from the spread of the logarithms of the times, and the scale of greatest likelihood as if all were known. */
function firstLine(watches: readonly Watched[]): WeibullLine {
  const x = watches.map(logTime);
  const spread = Math.sqrt(mean(x.map((it) => (it - mean(x)) ** 2)));
  const beta = Math.PI / Math.sqrt(6) / Math.max(spread, 0.05);
  const total = x.reduce((sum, it) => sum + Math.exp(beta * it), 0);
  return { beta, delta: Math.log(total / watches.filter(failed).length) };
}

/** The inverse of the observed information, carried over to ln η = δ/β and ln(1/β). */
function covarianceOf(
  { beta, delta }: WeibullLine,
  [h11, h12, h22]: readonly [number, number, number],
): WeibullFit["covariance"] {
  const det = h11 * h22 - h12 * h12;
  const [v11, v12, v22] = [-h22 / det, h12 / det, -h11 / det];
  const [a, b, c] = [-delta / beta ** 2, 1 / beta, -1 / beta];
  return {
    intercept: a * a * v11 + 2 * a * b * v12 + b * b * v22,
    both: c * (a * v11 + b * v12),
    logOfReciprocalShape: c * c * v11,
  };
}

const only = (column: Float64Array): number => column[0] as number;
const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;
