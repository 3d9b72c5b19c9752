import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { Nm } from "../quantity/unit.ts";
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

/** What a pull is done with: the wrenches at hand, the torque at which the plug already turns, the day, the levels. */
export type Tools = {
  readonly wrenches: readonly Wrench[];
  /** Prevailing torque over the last turn before the seat; null where the plug turns freely. */
  readonly prevailing: Quantity | null;
  readonly today: string | null;
  readonly levels: Levels;
};

/**
 * The advice on a hurt joint: the smallest mark of the wrench from max(need, floor) up to the middle of the window; failing
 * that the largest mark up to the limit. In date comes before out of date, the smaller wrench before the larger.
 */
export function advice(window: TorqueWindow, tools: Tools): Advice {
  if (!window.open) return { type: "window empty" };
  if (tools.wrenches.length === 0) {
    const torque_Nm = markInWindow(window, null, tools);
    return torque_Nm === null ? { type: "no wrench sets this" } : pullWithoutWrench(torque_Nm, tools);
  }
  const pulls = tools.wrenches.flatMap((wrench) => {
    const torque_Nm = markInWindow(window, wrench, tools);
    return torque_Nm === null ? [] : [pull(wrench, torque_Nm, tools)];
  });
  return pulls.toSorted(byPreference)[0] ?? { type: "no wrench sets this" };
}

/**
 * The pull of a given torque with the wrench that pulls it best: in range and in date first, then the smaller scale. Where
 * there are wrenches and none has it on its scale, the pull names none and is out of range.
 */
export function pullOf(torque_Nm: number, tools: Tools): Advice {
  const pulls = tools.wrenches
    .map((wrench) => pull(wrench, torque_Nm, tools))
    .filter(({ wrench, set_Nm }) => isOnScale(wrench, set_Nm));
  const best = pulls.toSorted(byPreference)[0];
  if (best) return best;
  return { ...pullWithoutWrench(torque_Nm, tools), evidence: tools.wrenches.length > 0 ? "out of range" : null };
}

const isOnScale = ({ least, most }: Wrench, torque_Nm: number): boolean =>
  torque_Nm >= valueIn(Nm, least) - 1e-9 && torque_Nm <= valueIn(Nm, most) + 1e-9;

type Pull = Extract<Advice, { type: "pull" }>;
type WrenchPull = Pull & { readonly wrench: Wrench; readonly evidence: Evidence };

function pull(wrench: Wrench, torque_Nm: number, { prevailing, today, levels }: Tools): WrenchPull {
  const set_Nm = figureToSet(wrench, torque_Nm, prevailing).value;
  return { type: "pull", torque_Nm, wrench, set_Nm, evidence: evidence(wrench, set_Nm, today, levels) };
}

const pullWithoutWrench = (torque_Nm: number, { prevailing }: Tools): Pull => ({
  type: "pull",
  torque_Nm,
  wrench: null,
  set_Nm: figureToSet(null, torque_Nm, prevailing).value,
  evidence: null,
});

function markInWindow(window: TorqueWindow, wrench: Wrench | null, { prevailing, levels }: Tools): number | null {
  const { need_Nm, floor_Nm, limit_Nm } = window;
  const least_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  const usable = wrench ? usableRange(wrench, levels) : { from_Nm: 0, to_Nm: Number.POSITIVE_INFINITY };
  // A mark is set; a joint gets what is left of it after the plug's own resistance, more where a crow-foot lengthens.
  const set = (torque_Nm: number): number => figureToSet(wrench, torque_Nm, prevailing).value;
  const [atNone, perNm] = [set(0), set(1) - set(0)];
  const inReach = marks(wrench, Math.max(set(least_Nm), usable.from_Nm), set(limit_Nm));
  const onJoint = inReach.map((mark) => (mark - atNone) / perNm);
  const first = onJoint[0];
  if (first === undefined) return null;
  return first <= (least_Nm + limit_Nm) / 2 ? first : (onJoint.at(-1) ?? null);
}

const order: readonly Evidence[] = ["in range and in date", "date not known", "out of date", "out of range"];

const byPreference = (a: WrenchPull, b: WrenchPull): number =>
  order.indexOf(a.evidence) - order.indexOf(b.evidence) || a.wrench.most.value - b.wrench.most.value;
