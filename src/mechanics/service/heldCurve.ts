import { failed, inOrder, knownToHold, type Watched } from "./heldCases.ts";
import { exactFailures, kaplanMeier } from "./kaplanMeier.ts";
import { jeffreysInterval, type ShareInterval } from "./proportion.ts";
import { turnbull } from "./turnbull.ts";

/** The curve of what still holds, in pieces as they are drawn. Shares are of 1. */
export type HeldCurve = {
  readonly cases: number;
  readonly cameBack: number;
  /** Where the true share of those that come back may lie: Jeffreys, 95 %. */
  readonly cameBack95: ShareInterval;
  /** The last day anything is known of. */
  readonly horizon_days: number;
  readonly levels: readonly HeldLevel[];
  readonly falls: readonly HeldFall[];
  /** When repairs that still hold were last seen, and how many then. */
  readonly lastSeen: readonly { readonly at_days: number; readonly survival: number; readonly count: number }[];
  /** Days for the axis, with how many repairs are known to have held until then. */
  readonly ticks: readonly { readonly at_days: number; readonly watched: number }[];
};

/** The curve between two falls, with its 95 % band where it has one: before the first fall, or all falls dated. */
export type HeldLevel = {
  readonly from_days: number;
  readonly to_days: number;
  readonly survival: number;
  readonly band: ShareInterval | null;
  /** Fewer are known to have held than a curve can be made of. */
  readonly few: boolean;
};

/** A fall of the curve at a time between two days; equal days are the day itself. */
export type HeldFall = {
  readonly from_days: number;
  readonly to_days: number;
  readonly before: number;
  readonly after: number;
  readonly few: boolean;
};

/** With fewer repairs than this still watched the curve says nothing (judgement). */
const fewWatched = 3;

/** The curve of what still holds: Kaplan-Meier's with its band, or Turnbull's; null for no cases. */
export function heldCurve(watches: readonly Watched[]): HeldCurve | null {
  if (watches.length === 0) return null;
  const cameBack = watches.filter(failed).length;
  const horizon = Math.max(...watches.map((it) => (it.type === "failed between" ? it.to : it.t)));
  const fewFrom = watches.map(knownToHold).toSorted((a, b) => b - a)[fewWatched - 1] ?? 0;
  const falls = fallsOf(watches).map((fall) => ({ ...fall, few: fall.to_days > fewFrom }));
  const [first, ...later] = levelsOf(falls, horizon, bandsOf(watches));
  const levels = [...untouched(first, watches), ...later].flatMap((level) => split(level, fewFrom));
  return {
    cases: watches.length,
    cameBack,
    cameBack95: jeffreysInterval(cameBack, watches.length, LEVEL),
    horizon_days: horizon,
    levels,
    falls,
    lastSeen: lastSeenOf(watches, falls),
    ticks: ticksTo(horizon).map((at_days) => ({
      at_days,
      watched: watches.filter((it) => knownToHold(it) >= at_days).length,
    })),
  };
}

const LEVEL = 0.95;

type Fall = Omit<HeldFall, "few">;
type Level = Omit<HeldLevel, "few">;

function fallsOf(watches: readonly Watched[]): readonly Fall[] {
  let before = 1;
  return turnbull(watches).masses.flatMap(({ from, to, mass }) => {
    if (to === null) return [];
    const fall = { from_days: from, to_days: to, before, after: nearNought(before - mass) };
    before = fall.after;
    return [fall];
  });
}

/** What is left after the last failure may be a rounding from nought. */
const nearNought = (share: number): number => (share < 1e-9 ? 0 : share);

/** The band after each fall; none where a failure is not dated. */
function bandsOf(watches: readonly Watched[]): readonly (ShareInterval | null)[] {
  const exact = exactFailures(watches);
  if (!exact) return [];
  return kaplanMeier(exact, LEVEL).map(({ low, high }) => (low === null || high === null ? null : [low, high]));
}

function levelsOf(falls: readonly Fall[], horizon: number, bands: readonly (ShareInterval | null)[]): readonly Level[] {
  const starts = [{ to_days: 0, after: 1 }, ...falls];
  return starts.map(({ to_days, after }, i) => ({
    from_days: to_days,
    to_days: falls[i]?.from_days ?? horizon,
    survival: after,
    band: i === 0 ? null : (bands[i - 1] ?? null),
  }));
}

/**
 * The first level, where nothing has failed yet, parted where somebody was last seen: of those still watched all hold,
 * and that many of as many leave a range too (Jeffreys). The band of Kaplan-Meier has none there, which would look certain.
 */
function untouched(level: Level | undefined, watches: readonly Watched[]): readonly Level[] {
  if (!level) return [];
  const days = watches.map(knownToHold).filter((t) => t > level.from_days && t < level.to_days);
  const ends = [...new Set(days)].toSorted((a, b) => a - b);
  return [...ends, level.to_days].map((to_days, i) => {
    const holding = watches.filter((it) => knownToHold(it) >= to_days).length;
    const band = jeffreysInterval(holding, holding, LEVEL);
    return { ...level, from_days: ends[i - 1] ?? level.from_days, to_days, band };
  });
}

/** Parts a level at the day from which few are watched, and leaves out what has no length. */
function split(level: Level, fewFrom: number): readonly HeldLevel[] {
  const { from_days, to_days } = level;
  const cut = Math.min(Math.max(fewFrom, from_days), to_days);
  return [
    { ...level, to_days: cut, few: false },
    { ...level, from_days: cut, few: true },
  ].filter((it) => it.to_days > it.from_days);
}

function lastSeenOf(watches: readonly Watched[], falls: readonly Fall[]): HeldCurve["lastSeen"] {
  const days = inOrder(watches).flatMap((it) => (it.type === "held until" ? [it.t] : []));
  return [...new Set(days)].map((at_days) => ({
    at_days,
    survival: falls.findLast(({ to_days }) => to_days <= at_days)?.after ?? 1,
    count: days.filter((it) => it === at_days).length,
  }));
}

/** Days to letter along an axis: at most six, a step apart that people count in. */
function ticksTo(horizon: number): readonly number[] {
  const step = STEPS_days.find((it) => horizon / it <= 5) ?? 365 * Math.ceil(horizon / 365 / 5);
  return Array.from({ length: Math.floor(horizon / step) + 1 }, (_, i) => i * step);
}

const STEPS_days = [1, 2, 7, 14, 30, 60, 90, 180, 365, 730];
