import { failed, type HeldCase, knownToHold, type Watched, watched } from "./heldCases.ts";
import { exactFailures, type KaplanMeierPoint, kaplanMeier } from "./kaplanMeier.ts";
import { clopperPearsonInterval, jeffreysInterval, type ShareInterval, wilsonInterval } from "./proportion.ts";
import { type OptimumCertificate, type Turnbull, turnbull } from "./turnbull.ts";
import { type WeibullFit, type WeibullNotFitted, weibull } from "./weibull.ts";

/** How the repairs of each method have held, in the order of their names. */
export type Held = { readonly methods: readonly HeldByMethod[] };

/**
 * How the repairs of one method have held. Shares are of those that came back, with limits at 95 %; times are in days.
 * What nobody looked at is in no figure but `neverLookedAt`.
 */
export type HeldByMethod = {
  readonly method: string;
  readonly cases: number;
  readonly cameBack: number;
  readonly neverLookedAt: number;
  /** All the time together for which these repairs are known to have held. */
  readonly watched_days: number;
  readonly wilson95: ShareInterval;
  readonly jeffreys95: ShareInterval;
  readonly exact95: ShareInterval;
  /** Null unless every failure is known to the day. */
  readonly kaplanMeier: readonly KaplanMeierPoint[] | null;
  readonly turnbull: Turnbull["masses"];
  readonly turnbullCertificate: OptimumCertificate;
  readonly weibull: WeibullFit | null;
  readonly weibullMissing: WeibullNotFitted["reason"] | null;
  readonly smallNumbers: SmallNumbers | null;
};

/** Too few cases to say more than how many came back, and from where to where the true share may lie (Jeffreys). */
export type SmallNumbers = {
  readonly type: "small numbers";
  readonly cameBack: number;
  readonly cases: number;
  readonly low: number;
  readonly high: number;
};

/** Fewer cases than this are small numbers (judgement: even 18 of 20 leaves a range of more than a quarter). */
export const smallNumbersBelow = 20;

/** How the repairs of each method in `cases` have held. */
export function held(cases: readonly HeldCase[]): Held {
  const methods = [...new Set(cases.map(({ method }) => method))].toSorted();
  return { methods: methods.map((method) => heldBy(method, cases)) };
}

function heldBy(method: string, all: readonly HeldCase[]): HeldByMethod {
  const own = all.filter((it) => it.method === method).map(watched);
  const seen = own.filter((it) => it !== null);
  const [n, x] = [seen.length, seen.filter(failed).length];
  const exact = exactFailures(seen);
  const { masses, certificate } = turnbull(seen);
  const fit = weibull(seen);
  const jeffreys95 = jeffreysInterval(x, n, LEVEL);
  return {
    method,
    cases: n,
    cameBack: x,
    neverLookedAt: own.length - n,
    watched_days: together(seen),
    wilson95: wilsonInterval(x, n, LEVEL),
    jeffreys95,
    exact95: clopperPearsonInterval(x, n, LEVEL),
    kaplanMeier: exact && kaplanMeier(exact, LEVEL),
    turnbull: masses,
    turnbullCertificate: certificate,
    weibull: fit.type === "fitted" ? fit : null,
    weibullMissing: fit.type === "fitted" ? null : fit.reason,
    smallNumbers: n < smallNumbersBelow ? smallNumbers(x, n, jeffreys95) : null,
  };
}

/** The confidence that the names of the figures state. */
const LEVEL = 0.95;

/** Sorted first, so that the last digit does not hang on who came first. */
const together = (watches: readonly Watched[]): number =>
  watches
    .map(knownToHold)
    .toSorted((a, b) => a - b)
    .reduce((sum, t) => sum + t, 0);

const smallNumbers = (cameBack: number, cases: number, [low, high]: ShareInterval): SmallNumbers => ({
  type: "small numbers",
  cameBack,
  cases,
  low,
  high,
});
