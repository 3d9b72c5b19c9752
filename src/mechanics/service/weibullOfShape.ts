import { formula } from "../quantity/formula.ts";
import { gammaQuantile } from "../quantity/gammaFunctions.ts";
import { one } from "../quantity/unit.ts";
import { type FailedAt, failed, type HeldUntil, inOrder, type Watched } from "./heldCases.ts";
import { weibullLikelihood } from "./weibullLikelihood.ts";
import { logTime, middle, scaledBy } from "./weibullTimes.ts";

/** The scale of greatest likelihood of a Weibull distribution whose shape is stated, not fitted. */
export type ScaleOfShape = { readonly scale: number; readonly logLikelihood: number };

/**
 * The scale of greatest likelihood of a Weibull distribution of a stated `shape`; with shape 1 it is the mean life of an
 * exponential distribution. Null without a failure, with one at 0, or where all were found at a first check.
 */
export function weibullOfShape(watches: readonly Watched[], shape: number): ScaleOfShape | null {
  if (!watches.some(failed) || watches.some((it) => it.type === "failed at" && it.t === 0)) return null;
  if (watches.every((it) => it.type === "failed between" && it.from === 0)) return null;
  const unit = middle(watches);
  const scaled = inOrder(watches).map((it) => scaledBy(1 / unit, it));
  const total = scaled.reduce((sum, it) => sum + Math.exp(shape * logTime(it)), 0);
  let delta = Math.log(total / watches.filter(failed).length);
  for (let round = 0; round < 100; round++) {
    const { slope, curvature } = weibullLikelihood(scaled, { beta: shape, delta });
    const step = -slope[1] / curvature[2];
    delta += Math.min(1, Math.max(-1, step));
    if (Math.abs(step) < 1e-15) break;
  }
  const { value } = weibullLikelihood(scaled, { beta: shape, delta });
  const perUnit = watches.filter(({ type }) => type === "failed at").length * Math.log(unit);
  return { scale: unit * Math.exp(delta / shape), logLikelihood: value - perUnit };
}

/**
 * The lowest scale of a Weibull distribution of a stated `shape` that fits the cases at a one-sided `confidence`; it needs
 * no failure at all. With shape 1 it is the least mean life of an exponential distribution watched for a set time. Null
 * where nothing held for any time.
 */
export function leastScaleOfShape(
  watches: readonly (FailedAt | HeldUntil)[],
  shape: number,
  confidence: number,
): number | null {
  return scaleLimit(watches, shape, watches.filter(failed).length + 1, confidence);
}

/** The highest such scale at a one-sided `confidence`; null without a failure too, as nothing then bounds it. */
export function greatestScaleOfShape(
  watches: readonly (FailedAt | HeldUntil)[],
  shape: number,
  confidence: number,
): number | null {
  const failures = watches.filter(failed).length;
  return failures === 0 ? null : scaleLimit(watches, shape, failures, 1 - confidence);
}

function scaleLimit(watches: readonly (FailedAt | HeldUntil)[], beta: number, k: number, p: number): number | null {
  const held = watches.filter(({ t }) => t > 0);
  if (held.length === 0) return null;
  const unit = middle(held);
  const T = inOrder(held)
    .map((it) => only(powered.over({ t: it.t / unit, beta })))
    .reduce((sum, it) => sum + it, 0);
  return unit * only(limit.over({ T, chi2: 2 * gammaQuantile(p, k), beta }));
}

const SOURCE =
  "Abernethy, The New Weibull Handbook, 5th ed. (2006), 6 (from memory), on Epstein and Sobel, JASA 48 (1953), 486";

const powered = formula("x = t^beta", { t: one, beta: one, x: one }, SOURCE);

/** chi2 has twice as many degrees of freedom as failures are counted. */
const limit = formula("eta = (2 * T / chi2)^(1 / beta)", { T: one, chi2: one, beta: one, eta: one }, SOURCE);

const only = (column: Float64Array): number => column[0] as number;
