import { formula } from "../quantity/formula.ts";
import { one } from "../quantity/unit.ts";
import type { ComebackPrior } from "../tables/methodEstimates.ts";
import { failed, type HeldCase, watched } from "./heldCases.ts";
import { jeffreysOfExposed } from "./proportion.ts";

/** The share that comes back within a year, and whether it is a gut figure or the workshop's own record. */
export type Comeback = ComebackPrior & {
  readonly basis: "estimate" | "estimate and own record" | "own record";
  readonly cases: number;
  readonly cameBack: number;
};

/** How many cases of one's own a gut figure is worth (judgement). */
const worthOfPrior = 4;

/** From this many cases the own record stands alone (judgement, with the small numbers of the record itself). */
const ownFrom = 20;

/** The estimate drawn towards the own record as its cases grow. */
const towardsOwn = formula(
  "p = (n_0 * p_0 + x) / (n_0 + n)",
  { n_0: one, p_0: one, x: one, n: one, p: one },
  "mean of a beta distribution: the estimate as n_0 cases, then those of one's own",
);

const withinAYear_days = 365;

/**
 * The share of a method's repairs that come back within a year: its prior where the workshop has no case of its own,
 * drawn towards the own record as that grows, and the own record alone from 20 cases. A case that still holds before its
 * year is over counts as the part of the year it was watched for, or those that came back early would count alone; the
 * limits beside own cases are those of Jeffreys at 95 %.
 *
 * Source: the actuarial estimate with its exposed to risk (D. London, Survival Models and Their Estimation, 1988; from
 * memory).
 */
export function comeback(prior: ComebackPrior, method: string, cases: readonly HeldCase[]): Comeback {
  const seen = cases.filter((it) => it.method === method).flatMap((it) => told(it));
  const x = seen.filter(({ cameBack }) => cameBack).length;
  const n = seen.reduce((sum, { exposed }) => sum + exposed, 0);
  if (seen.length === 0) return { ...prior, basis: "estimate", cases: 0, cameBack: 0 };
  const n_0 = n >= ownFrom ? 0 : worthOfPrior;
  const likely = towardsOwn.over({ n_0, p_0: prior.likely, x, n })[0] as number;
  const [low, high] = jeffreysOfExposed(x, n, 0.95);
  return {
    low: Math.min(likely, n_0 === 0 ? low : Math.max(low, prior.low)),
    likely,
    high: Math.max(likely, high),
    basis: n_0 === 0 ? "own record" : "estimate and own record",
    cases: seen.length,
    cameBack: x,
  };
}

type Told = { readonly cameBack: boolean; readonly exposed: number };

/** Whether a case came back within the year; nothing where nobody looked, or only after a check on either side of the year. */
function told(it: HeldCase): readonly Told[] {
  const seen = watched(it);
  if (!seen) return [];
  if (!failed(seen)) return [{ cameBack: false, exposed: Math.min(1, seen.t / withinAYear_days) }];
  const [from, by] = seen.type === "failed at" ? [seen.t, seen.t] : [seen.from, seen.to];
  if (by <= withinAYear_days) return [{ cameBack: true, exposed: 1 }];
  return from >= withinAYear_days ? [{ cameBack: false, exposed: 1 }] : [];
}
