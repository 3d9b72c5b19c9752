import { type Step, working } from "../quantity/working.ts";
import type { HeldByMethod } from "./held.ts";
import { type HeldCase, watched } from "./heldCases.ts";
import { exactFailures, kaplanMeierWorked } from "./kaplanMeier.ts";
import { wilsonWorked } from "./proportion.ts";

/** How every figure of one method was got: the intervals of its share, its curve, and its Weibull distribution. */
export function heldWorking(it: HeldByMethod, cases: readonly HeldCase[]): readonly Step[] {
  if (it.cases === 0) return [];
  const seen = cases.flatMap((one) => (one.method === it.method ? (watched(one) ?? []) : []));
  const exact = exactFailures(seen);
  const { cases: n, cameBack: x } = it;
  return [
    ...working(...wilsonWorked(x, n, LEVEL)),
    betaStep("Jeffreys", it.jeffreys95, [x + 1 / 2, n - x + 1 / 2], [x + 1 / 2, n - x + 1 / 2]),
    betaStep("exact", it.exact95, [x, n - x + 1], [x + 1, n - x]),
    ...(exact ? working(...kaplanMeierWorked(exact, LEVEL)) : []),
    ...(it.turnbull.length > 0 ? [turnbullStep(it)] : []),
    ...(it.weibull ? [weibullStep(it.weibull, n)] : []),
  ];
}

type Beta = readonly [a: number, b: number];

/** A quantile has no line of arithmetic: which one it is, is its working. */
function betaStep(which: "Jeffreys" | "exact", ends: readonly [number, number], low: Beta, high: Beta): Step {
  const beta = ([a, b]: Beta): string => `Beta(${a}, ${b})`;
  const end = (p: string, of: Beta): string => (of[0] > 0 && of[1] > 0 ? `the ${p} quantile of ${beta(of)}` : "none");
  return {
    formula:
      which === "Jeffreys"
        ? "p_z = B(z; x + 1/2, n - x + 1/2)"
        : "p_z = B(2.5 %; x, n - x + 1) to B(97.5 %; x + 1, n - x)",
    substituted: `${end("2.5 %", low)} to ${end("97.5 %", high)}`,
    result: `${figure(ends[0])} to ${figure(ends[1])}`,
    source:
      which === "Jeffreys"
        ? "Brown, Cai, DasGupta, Statistical Science 16 (2001), 101, 4.3 (from memory); 0 for none of n, 1 for all of n"
        : "Clopper, Pearson, Biometrika 26 (1934), 404, by beta quantiles (from memory)",
  };
}

/** What cannot be bettered is shown by its gradient, not by the steps that led there. */
function turnbullStep({ turnbull, turnbullCertificate: proof }: HeldByMethod): Step {
  const falls = turnbull.map(
    ({ from, to, mass }) => `${figure(mass)} ${from === to ? `at ${to}` : `in (${from}, ${to ?? "∞"}]`}`,
  );
  return {
    formula: "sum over the cases of alpha_ij / P_i <= n, and = n where a share lies",
    substituted: falls.join(", "),
    result: `greatest gradient ${figure(proof.greatestGradient)}, least where a share lies ${figure(proof.leastGradientOfMass)}, of 1`,
    source: "Turnbull, JRSS B 38 (1976), 290; proof by Gentleman, Geyer, Biometrika 81 (1994), 618 (from memory)",
  };
}

const weibullStep = ({ shape, scale, logLikelihood }: NonNullable<HeldByMethod["weibull"]>, n: number): Step => ({
  formula:
    "ln L = sum of ln f(t) of failures, ln S(t) of those that hold, ln(S(t_1) - S(t_2)) of those found at a check",
  substituted: `S(t) = exp(-(t / ${figure(scale)})^${figure(shape)}), over ${n} cases`,
  result: `${figure(logLikelihood)}, the greatest there is`,
  source: "Lawless, Statistical Models and Methods for Lifetime Data, 2nd ed. (2003), 5.1 and 2.4 (from memory)",
});

const LEVEL = 0.95;

/** Four digits, as the working of everything else has. */
const figure = (value: number): string => String(Number(value.toPrecision(4)));
