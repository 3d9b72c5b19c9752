import { formula } from "../quantity/formula.ts";
import { normalSurvival } from "../quantity/normal.ts";
import { one } from "../quantity/unit.ts";
import type { FailedAt, HeldUntil } from "./heldCases.ts";
import { failureTimes, type KaplanMeierPoint } from "./kaplanMeier.ts";

type Watches = readonly (FailedAt | HeldUntil)[];

/** How unlike two sets of repairs hold, by the log-rank test; p is the chance of a greater difference by luck alone. */
export type LogRank = { readonly chiSquared: number; readonly p: number };

/** The log-rank test of two sets of repairs; null where no time of failure sees both at risk. */
export function logRank(a: Watches, b: Watches): LogRank | null {
  const rows = failureTimes([...a, ...b]).map(({ t, atRisk: n, failures: d }) => ({
    d_1: a.filter((it) => it.type === "failed at" && it.t === t).length,
    n_1: a.filter((it) => it.t >= t).length,
    d,
    n,
  }));
  const sum = (of: (row: (typeof rows)[number]) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const V = sum(({ d, n_1, n }) => (n > 1 ? only(variance.over({ d, n_1, n })) : 0));
  if (!(V > 0)) return null;
  const U = sum(({ d_1, n_1, d, n }) => only(surplus.over({ d_1, n_1, d, n })));
  const chiSquared = only(statistic.over({ U, V }));
  return { chiSquared, p: 2 * normalSurvival(Math.sqrt(chiSquared)) };
}

/** The mean time of holding within the first `horizon`: the area under the curve up to there. */
export function restrictedMean(points: readonly KaplanMeierPoint[], horizon: number): number {
  const within = points.filter(({ t }) => t < horizon);
  return within.reduce((area, { t, survival }, i) => {
    const end = within[i + 1]?.t ?? horizon;
    return area + survival * (end - t);
  }, within[0]?.t ?? horizon);
}

const SOURCE = "Peto and Peto, JRSS A 135 (1972), 185, with the hypergeometric variance (from memory)";

const surplus = formula("U = d_1 - d * n_1 / n", { d_1: one, d: one, n_1: one, n: one, U: one }, SOURCE);

const variance = formula(
  "V = d * n_1 / n * (1 - n_1 / n) * (n - d) / (n - 1)",
  { d: one, n_1: one, n: one, V: one },
  SOURCE,
);

const statistic = formula("X = U^2 / V", { U: one, V: one, X: one }, SOURCE);

const only = (column: Float64Array): number => column[0] as number;
