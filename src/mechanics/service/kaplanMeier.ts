import { formula } from "../quantity/formula.ts";
import { normalQuantile } from "../quantity/normal.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { one } from "../quantity/unit.ts";
import type { FailedAt, HeldUntil, Watched } from "./heldCases.ts";

/** The Kaplan-Meier curve right after the failures at one time. */
export type KaplanMeierPoint = {
  readonly t: number;
  readonly survival: number;
  /** Greenwood's; null where the last repair at risk has failed, as the formula divides by those left. */
  readonly standardError: number | null;
  /** How many still held right before t. */
  readonly atRisk: number;
  readonly failures: number;
  /** The band by ln(-ln S), which stays from 0 to 1; null as the standard error. */
  readonly low: number | null;
  readonly high: number | null;
};

/** A time by which half have failed, with its limits; null where the curve or its band does not come down to one half. */
export type HoldingMedian = { readonly t: number | null; readonly low: number | null; readonly high: number | null };

/**
 * The share that still holds, at every time something failed, with a pointwise band at a confidence `level`.
 * What failed at a time was at risk together with what was last seen holding at that time.
 */
export function kaplanMeier(watches: readonly (FailedAt | HeldUntil)[], level: number): readonly KaplanMeierPoint[] {
  const z = normalQuantile((1 + level) / 2);
  let [S, G] = [1, 0];
  return failureTimes(watches).map(({ t, atRisk: n, failures: d }) => {
    S = only(productLimit.over({ S_0: S, d, n }));
    if (d === n) return { t, survival: 0, standardError: null, atRisk: n, failures: d, low: null, high: null };
    G = only(greenwood.over({ G_0: G, d, n }));
    return {
      t,
      survival: S,
      standardError: only(standardError.over({ S, G })),
      atRisk: n,
      failures: d,
      low: only(limit.over({ S, G, z: -z })),
      high: only(limit.over({ S, G, z })),
    };
  });
}

/** The same shares, errors and bands as they are worked, failure by failure. */
export function kaplanMeierWorked(watches: readonly (FailedAt | HeldUntil)[], level: number): readonly Quantity[] {
  const z = normalQuantile((1 + level) / 2);
  const count = (symbol: string, value: number, of: string): Quantity => exact(symbol, value, one, of);
  let S = count("S_0", 1, "all hold at first");
  let G = count("G_0", 0, "nothing failed yet");
  return failureTimes(watches).flatMap(({ t, atRisk, failures }) => {
    const [d, n] = [count("d", failures, `failed after ${t}`), count("n", atRisk, `still held before ${t}`)];
    S = productLimit({ S_0: as("S_0", S), d, n });
    if (failures === atRisk) return [S];
    G = greenwood({ G_0: as("G_0", G), d, n });
    const at = { S: as("S", S), G: as("G", G) };
    const ends = [-z, z].map((signed) => limit({ ...at, z: count("z", signed, "deviate of the confidence") }));
    return [S, standardError(at), ...ends];
  });
}

/**
 * The median time of holding: where the curve comes down to one half; half-way along it if it stays there.
 * Its limits are where the band does the same: R. Brookmeyer, J. Crowley, Biometrics 38 (1982), 29 (from memory).
 */
export function holdingMedian(points: readonly KaplanMeierPoint[]): HoldingMedian {
  return {
    t: halfTime(points, ({ survival }) => survival),
    low: halfTime(points, ({ low }) => low),
    high: halfTime(points, ({ high }) => high),
  };
}

/** The cases as this estimate takes them; null if there are none, or a failure is only known to lie between two days. */
export function exactFailures(watches: readonly Watched[]): readonly (FailedAt | HeldUntil)[] | null {
  const exact = watches.filter((it) => it.type !== "failed between");
  return exact.length > 0 && exact.length === watches.length ? exact : null;
}

/** Every time something failed, with how many failed and how many were at risk. */
export function failureTimes(watches: readonly (FailedAt | HeldUntil)[]) {
  const times = new Set(watches.filter(({ type }) => type === "failed at").map(({ t }) => t));
  return [...times]
    .toSorted((a, b) => a - b)
    .map((t) => ({
      t,
      atRisk: watches.filter((it) => it.t >= t).length,
      failures: watches.filter((it) => it.type === "failed at" && it.t === t).length,
    }));
}

const productLimit = formula(
  "S = S_0 * (1 - d / n)",
  { S_0: one, d: one, n: one, S: one },
  "Kaplan and Meier, JASA 53 (1958), 457, eq. (2b) (from memory)",
);

/** The sum in the relative variance of S. */
const greenwood = formula(
  "G = G_0 + d / (n * (n - d))",
  { G_0: one, d: one, n: one, G: one },
  "Greenwood (1926), as in Kaplan and Meier, JASA 53 (1958), 457, eq. (2f) (from memory)",
);

const standardError = formula(
  "s_S = S * sqrt(G)",
  { S: one, G: one, s_S: one },
  "Greenwood (1926), as in Kaplan and Meier, JASA 53 (1958), 457, eq. (2f) (from memory)",
);

/** With z below 0 the lower limit, above 0 the upper one. */
const limit = formula(
  "S_z = S^(exp(z * sqrt(G) / ln(S)))",
  { S: one, G: one, z: one, S_z: one },
  "Kalbfleisch and Prentice, The Statistical Analysis of Failure Time Data, 2nd ed. (2002), 1.4.1 (from memory)",
);

const only = (column: Float64Array): number => column[0] as number;

function halfTime(points: readonly KaplanMeierPoint[], of: (point: KaplanMeierPoint) => number | null): number | null {
  const down = points.findIndex((point) => (of(point) ?? 1) <= 0.5 + SLACK);
  const [first, next] = [points[down], points[down + 1]];
  if (!first) return null;
  return next && Math.abs((of(first) ?? 0) - 0.5) <= SLACK ? (first.t + next.t) / 2 : first.t;
}

/** A product of fractions that is one half may come out a rounding beside it. */
const SLACK = 1e-9;
