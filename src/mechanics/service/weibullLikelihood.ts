import { formula } from "../quantity/formula.ts";
import { one } from "../quantity/unit.ts";
import type { FailedAt, FailedBetween, HeldUntil, Watched } from "./heldCases.ts";

/** A Weibull distribution by its shape β and δ = β ln η, in which z is straight and the likelihood concave. */
export type WeibullLine = { readonly beta: number; readonly delta: number };

/** The logarithm of the likelihood with its slopes and curvatures in β and δ. */
export type Likelihood = {
  readonly value: number;
  readonly slope: readonly [beta: number, delta: number];
  readonly curvature: readonly [betaBeta: number, betaDelta: number, deltaDelta: number];
};

/**
 * The likelihood of a Weibull distribution for failures known to the day, failures found at a check and repairs that still
 * hold, all together. It is concave in β and δ: J. Burridge, JRSS B 43 (1981), 41 (from memory).
 */
export function weibullLikelihood(watches: readonly Watched[], at: WeibullLine): Likelihood {
  const terms = watches.map((watch) => term(watch, at));
  const sum = (of: (term: Likelihood) => number): number => terms.reduce((total, it) => total + of(it), 0);
  return {
    value: sum(({ value }) => value),
    slope: [sum(({ slope }) => slope[0]), sum(({ slope }) => slope[1])],
    curvature: [sum((it) => it.curvature[0]), sum((it) => it.curvature[1]), sum((it) => it.curvature[2])],
  };
}

function term(watch: Watched, at: WeibullLine): Likelihood {
  switch (watch.type) {
    case "failed at":
      return failedAt(watch, at);
    case "failed between":
      return failedBetween(watch, at);
    case "held until":
      return heldUntil(watch, at);
    default:
      return watch satisfies never;
  }
}

const SOURCE = "Lawless, Statistical Models and Methods for Lifetime Data, 2nd ed. (2003), 5.1 and 2.4 (from memory)";

/** The line on Weibull paper. */
const line = formula("z = beta * ln(t) - delta", { beta: one, t: one, delta: one, z: one }, SOURCE);

/** ln f(t), of the density. */
const density = formula("l = ln(beta / t) + z - exp(z)", { beta: one, t: one, z: one, l: one }, SOURCE);

/** ln S(t), of the share that still holds. */
const survival = formula("l = -exp(z)", { z: one, l: one }, SOURCE);

/** ln(S(t_1) - S(t_2)). */
const between = formula("l = -exp(z_1) + ln(1 - exp(exp(z_1) - exp(z_2)))", { z_1: one, z_2: one, l: one }, SOURCE);

// The slopes and curvatures below are those of the formulas above, z being straight in β and δ; a test holds them to it.

function failedAt({ t }: FailedAt, { beta, delta }: WeibullLine): Likelihood {
  const x = Math.log(t);
  const z = only(line.over({ beta, t, delta }));
  const w = Math.exp(z);
  return {
    value: only(density.over({ beta, t, z })),
    slope: [1 / beta + x * (1 - w), w - 1],
    curvature: [-1 / beta ** 2 - x * x * w, x * w, -w],
  };
}

function heldUntil({ t }: HeldUntil, { beta, delta }: WeibullLine): Likelihood {
  const x = Math.log(t);
  const z = only(line.over({ beta, t, delta }));
  const w = Math.exp(z);
  return { value: only(survival.over({ z })), slope: [-x * w, w], curvature: [-x * x * w, x * w, -w] };
}

function failedBetween({ from, to }: FailedBetween, { beta, delta }: WeibullLine): Likelihood {
  // A start of 0 lies infinitely far down the line, where its terms vanish.
  const [x1, x2] = [from > 0 ? Math.log(from) : 0, Math.log(to)];
  const z1 = from > 0 ? only(line.over({ beta, t: from, delta })) : Number.NEGATIVE_INFINITY;
  const z2 = only(line.over({ beta, t: to, delta }));
  const [w1, w2] = [Math.exp(z1), Math.exp(z2)];
  const q = 1 / Math.expm1(w2 - w1);
  const [l1, l2] = [-w1 * (1 + q), w2 === Number.POSITIVE_INFINITY ? 0 : w2 * q];
  const c = q * (1 + q);
  const [l11, l12] = [l1 - w1 * w1 * c, w1 * (c === 0 ? 0 : w2 * c)];
  const l22 = l2 - (c === 0 ? 0 : w2 * w2 * c);
  return {
    value: only(between.over({ z_1: z1, z_2: z2 })),
    slope: [x1 * l1 + x2 * l2, -(l1 + l2)],
    curvature: [
      x1 * x1 * l11 + 2 * x1 * x2 * l12 + x2 * x2 * l22,
      -(x1 * l11 + (x1 + x2) * l12 + x2 * l22),
      l11 + 2 * l12 + l22,
    ],
  };
}

const only = (column: Float64Array): number => column[0] as number;
