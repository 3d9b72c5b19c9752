/**
 * One repair and what is known of how long it held, in days since it was made: the failure lies in (from, to]; equal ends
 * mean it is known to the day; no `to` means it still held when last seen at `from`.
 */
export type HeldCase = { readonly method: string; readonly from_days: number; readonly to_days: number | null };

/** A failure known to the day. Times are in one unit, days or kilometres or hours, all of a set in the same. */
export type FailedAt = { readonly type: "failed at"; readonly t: number };

/** A failure found at a check: it came after `from`, when all was well, and by `to`. */
export type FailedBetween = { readonly type: "failed between"; readonly from: number; readonly to: number };

/** It still held when last seen. */
export type HeldUntil = { readonly type: "held until"; readonly t: number };

/** What watching one repair has shown. */
export type Watched = FailedAt | FailedBetween | HeldUntil;

/** What watching a case has shown; null if nobody ever looked at it, because silence is not success. */
export function watched({ from_days: from, to_days: to }: HeldCase): Watched | null {
  if (to === null) return from > 0 ? { type: "held until", t: from } : null;
  return from === to ? { type: "failed at", t: to } : { type: "failed between", from, to };
}

/** How long a repair is known to have held. */
export const knownToHold = (it: Watched): number => (it.type === "failed between" ? it.from : it.t);

/** Whether the repair came back. */
export const failed = (it: Watched): it is FailedAt | FailedBetween => it.type !== "held until";

/** The same cases in an order that depends on nothing but themselves, so that no sum depends on who came first. */
export const inOrder = <W extends Watched>(watches: readonly W[]): readonly W[] =>
  watches.toSorted((a, b) => knownToHold(a) - knownToHold(b) || end(a) - end(b) || (a.type < b.type ? -1 : 1));

function end(it: Watched): number {
  return it.type === "failed between" ? it.to : it.t;
}
