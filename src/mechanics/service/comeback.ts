import { formula } from "../quantity/formula.ts";
import { one } from "../quantity/unit.ts";
import type { ComebackPrior } from "../tables/methodEstimates.ts";
import { failed, type HeldCase, watched } from "./heldCases.ts";
import { jeffreysInterval } from "./proportion.ts";

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
 * drawn towards the own record as that grows, and the own record alone from 20 cases. A case counts once it came back
 * within the year or was seen to hold for one; the limits beside own cases are those of Jeffreys at 95 %.
 */
export function comeback(prior: ComebackPrior, method: string, cases: readonly HeldCase[]): Comeback {
  const seen = cases.filter((it) => it.method === method).flatMap((it) => told(it));
  const [n, x] = [seen.length, seen.filter((it) => it).length];
  if (n === 0) return { ...prior, basis: "estimate", cases: 0, cameBack: 0 };
  const n_0 = n >= ownFrom ? 0 : worthOfPrior;
  const likely = towardsOwn.over({ n_0, p_0: prior.likely, x, n })[0] as number;
  const [low, high] = jeffreysInterval(x, n, 0.95);
  return {
    low: Math.min(likely, n_0 === 0 ? low : Math.max(low, prior.low)),
    likely,
    high: Math.max(likely, high),
    basis: n_0 === 0 ? "own record" : "estimate and own record",
    cases: n,
    cameBack: x,
  };
}

/** Whether a case came back within the year; nothing where it was not watched long enough to tell. */
function told(it: HeldCase): readonly boolean[] {
  const seen = watched(it);
  if (!seen) return [];
  if (failed(seen)) {
    const by = seen.type === "failed at" ? seen.t : seen.to;
    const from = seen.type === "failed at" ? seen.t : seen.from;
    return by <= withinAYear_days ? [true] : from >= withinAYear_days ? [false] : [];
  }
  return seen.t >= withinAYear_days ? [false] : [];
}
