import type { Levels } from "../tables/levels.ts";
import type { TorqueWindow } from "./window.ts";
import { type Evidence, evidence, figureToSet, marks, usableRange, type Wrench } from "./wrench.ts";

/** The torque to pull, on which wrench, and whether it may be claimed afterwards. */
export type Advice =
  | {
      readonly type: "pull";
      readonly torque_Nm: number;
      readonly wrench: Wrench | null;
      /** What the wrench is set to: the torque, or less with a crow-foot. */
      readonly set_Nm: number;
      readonly evidence: Evidence | null;
    }
  /** The window is empty: no torque is right. */
  | { readonly type: "window empty" }
  /** There is a window, and no wrench at hand has a mark in it. */
  | { readonly type: "no wrench sets this" };

/**
 * The advice on a hurt joint: the smallest mark of the wrench from max(need, floor) up to the middle of the window; failing
 * that the largest mark up to the limit. In date comes before out of date, the smaller wrench before the larger.
 */
export function advice(
  window: TorqueWindow,
  wrenches: readonly Wrench[],
  today: string | null,
  levels: Levels,
): Advice {
  if (!window.open) return { type: "window empty" };
  if (wrenches.length === 0) {
    const torque_Nm = markInWindow(window, null, levels);
    return torque_Nm === null
      ? { type: "no wrench sets this" }
      : { type: "pull", torque_Nm, wrench: null, set_Nm: torque_Nm, evidence: null };
  }
  const pulls = wrenches.flatMap((wrench) => {
    const torque_Nm = markInWindow(window, wrench, levels);
    return torque_Nm === null ? [] : [pull(wrench, torque_Nm, today, levels)];
  });
  return pulls.toSorted(byPreference)[0] ?? { type: "no wrench sets this" };
}

type Pull = Extract<Advice, { type: "pull" }> & { readonly wrench: Wrench; readonly evidence: Evidence };

/** A given torque pulled with a given wrench. */
export function pull(wrench: Wrench, torque_Nm: number, today: string | null, levels: Levels): Pull {
  const set_Nm = figureToSet(wrench, torque_Nm).value;
  return { type: "pull", torque_Nm, wrench, set_Nm, evidence: evidence(wrench, set_Nm, today, levels) };
}

/** The wrench that pulls a figure best: in range and in date first, then the one with the smaller scale. */
export function wrenchFor(
  torque_Nm: number,
  wrenches: readonly Wrench[],
  today: string | null,
  levels: Levels,
): Pull | null {
  return wrenches.map((wrench) => pull(wrench, torque_Nm, today, levels)).toSorted(byPreference)[0] ?? null;
}

function markInWindow(
  { need_Nm, floor_Nm, limit_Nm }: TorqueWindow,
  wrench: Wrench | null,
  levels: Levels,
): number | null {
  const least_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  const usable = wrench ? usableRange(wrench, levels) : { from_Nm: 0, to_Nm: Number.POSITIVE_INFINITY };
  // A crow-foot stretches the scale: its marks reach the plug as larger torques.
  const stretch = 1 / figureToSet(wrench, 1).value;
  const onPlug = marks(wrench, Math.max(least_Nm / stretch, usable.from_Nm), limit_Nm / stretch).map(
    (it) => it * stretch,
  );
  const first = onPlug[0];
  if (first === undefined) return null;
  return first <= (least_Nm + limit_Nm) / 2 ? first : (onPlug.at(-1) ?? null);
}

const order: readonly Evidence[] = ["in range and in date", "date not known", "out of date", "out of range"];

const byPreference = (a: Pull, b: Pull): number =>
  order.indexOf(a.evidence) - order.indexOf(b.evidence) || a.wrench.most.value - b.wrench.most.value;
