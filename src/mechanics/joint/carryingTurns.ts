import {
  type Distribution,
  exactly,
  mean,
  normal,
  scaled,
  standardDeviation,
  support,
} from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, standardUncertainty } from "../quantity/quantity.ts";
import { mm, turn } from "../quantity/unit.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { noMoreThan, uncertaintyOfGain, uncertaintyOfNearer } from "./depthDoubt.ts";
import { chamferDepth } from "./oRingChamfer.ts";
import type { Closure, Port } from "./port.ts";
import { atMost, type Count, countShape } from "./turnsCount.ts";

/** The turns that one closure catches, and what is known of them. */
export type CarryingTurns = {
  /** Turns caught from first contact to the seat. */
  readonly caught: Quantity;
  readonly count: Count;
  /** The full thread of the plug stands out behind: its lead-in wastes no turn. */
  readonly passesThrough: boolean;
  /** The part of the lead-in that still lies in the thread of the hole: 0 where the plug passes right through, else up to 1. */
  readonly leadInShare: number;
  readonly basis: "counted" | "reckoned" | "counted and reckoned";
  readonly remarks: readonly TurnsRemark[];
};

export type TurnsRemark =
  /** Turns gained by going deeper hold only while thread is left ahead; nobody measured where it ends. */
  | "thread ahead not measured"
  /** The plug already reaches the end of the thread: going deeper gains nothing. */
  | "thread ends here"
  /** Turns lie under the chamfer of an O-ring, where they carry nothing. */
  | "under the chamfer"
  /** The count and the measured ends of the thread differ by more than two standard deviations. */
  | "count and lengths disagree";

const geometry = "plain geometry";

const reachOf = formula("z = l - t - c", { l: mm, t: mm, c: mm, z: mm }, geometry);
const reckonedOf = formula("n = (z_e - z_1) / P", { z_e: mm, z_1: mm, P: mm, n: turn }, geometry);
const shiftedOf = formula("n = n_0 + dz / P", { n_0: turn, dz: mm, P: mm, n: turn }, geometry);
const advanceOf = formula("dz = z - z_0", { z: mm, z_0: mm, dz: mm }, geometry);
const ringAdvanceOf = formula("dz = t_0 - t", { t_0: mm, t: mm, dz: mm }, geometry);

/** How deep the plug's full thread reaches below the case face; null where its length is not known. */
export function reach({ plug, seal }: Closure, withRing = true): Quantity | null {
  if (!plug.underHead) return null;
  const t = withRing ? seal.thickness : exact("t", 0, mm, "counted without a ring");
  return reachOf({ l: plug.underHead, t, c: plug.chamfer ?? exact("c", 0, mm, "chamfer not given") });
}

/**
 * The turns that `closure` catches in `port`, from the count made with the closure `asFound` and from the measured ends
 * of the good thread; null where there is neither.
 */
export function carryingTurns(port: Port, asFound: Closure, closure: Closure, ranges: Ranges): CarryingTurns | null {
  const counted = countedTurns(port, asFound, closure, ranges);
  const reckoned = reckonedTurns(port, closure, ranges);
  const turns = counted && reckoned ? combined(counted, reckoned) : (counted ?? reckoned);
  return turns && belowChamfer(turns, port, closure);
}

/** No more turns are caught than lie between the chamfer of an O-ring and the end of the plug or the thread. */
function belowChamfer(turns: CarryingTurns, port: Port, closure: Closure): CarryingTurns {
  const z_1 = chamferDepth(closure.seal);
  const z = reach(closure);
  // A count in a hole that is chamfered began below the chamfer: where the plug was not measured, it stands.
  if (!z_1 || !z) return turns;
  const end = endOfThread(port);
  const room = reckonedOf({ z_e: end && end.value < z.value ? end : z, z_1, P: port.thread.P });
  const count = atMost(turns.count, room);
  if (room.value >= turns.caught.value) return { ...turns, count };
  return { ...turns, caught: room, count, remarks: [...turns.remarks, "under the chamfer"] };
}

/** The turns that the lead-in wastes inside the hole. */
export function leadIn({ leadInShare }: CarryingTurns, ranges: Ranges): Distribution {
  const whole = ranges["lead-in"].distribution;
  if (leadInShare === 1) return whole;
  return leadInShare < 1e-3 ? exactly(0) : scaled(whole, leadInShare);
}

function countedTurns(port: Port, asFound: Closure, closure: Closure, ranges: Ranges): CarryingTurns | null {
  const { turns, withWasher } = port.left;
  if (!turns) return null;
  const { gain, u_m, remarks } = depthGained(port, asFound, closure, withWasher);
  const caught = gain ? shiftedOf({ n_0: turns, dz: gain, P: port.thread.P }) : turns;
  return {
    caught,
    count: countShape(turns, caught.value, Math.hypot(countUncertainty(port, ranges), u_m / port.thread.P.value)),
    ...atItsPoint(port, closure, ranges),
    basis: "counted",
    remarks,
  };
}

/** The standard uncertainty of a count by the way it was counted, turns. */
function countUncertainty({ left }: Port, ranges: Ranges): number {
  const names = { "with a dot": "count with a dot", "by eye": "count by eye", felt: "count felt" } as const;
  return mean(ranges[names[left.counting]].distribution);
}

type DepthGained = {
  readonly gain: Quantity | null;
  /** The standard uncertainty of the gain, m. */
  readonly u_m: number;
  readonly remarks: readonly TurnsRemark[];
};
const gained = (gain: Quantity | null, ...remarks: readonly TurnsRemark[]): DepthGained => ({
  gain,
  u_m: gain ? standardUncertainty(gain) : 0,
  remarks,
});

/** How much deeper the closure stands than the plug stood when the turns were counted. */
function depthGained(port: Port, asFound: Closure, closure: Closure, withWasher: boolean): DepthGained {
  const samePlug = closure.plug.underHead === asFound.plug.underHead && closure.plug.chamfer === asFound.plug.chamfer;
  const t_0 = withWasher ? asFound.seal.thickness : exact("t_0", 0, mm, "counted without a ring");
  const t = closure.seal.thickness;
  if (samePlug && noMoreThan(t, t_0) && noMoreThan(t_0, t)) return gained(null);
  const z_0 = reach(asFound, withWasher);
  const z = reach(closure);
  const advance = samePlug ? ringAdvanceOf({ t_0, t }) : z && z_0 ? advanceOf({ z, z_0 }) : null;
  if (!advance || noMoreThan(advance, nothing)) return gained(advance);
  const end = endOfThread(port);
  if (!end || !z_0) return gained(advance, "thread ahead not measured");
  return upToTheEnd(advance, advanceOf({ z: end, z_0 }));
}

const nothing = exact("dz", 0, mm, "no deeper");

/** Thread is gained only up to its end: what is `ahead` of the plug, where it would go beyond. */
function upToTheEnd(advance: Quantity, ahead: Quantity): DepthGained {
  const u_m = uncertaintyOfGain(advance, ahead);
  if (advance.value <= ahead.value) return { gain: advance, u_m, remarks: [] };
  const remarks: readonly TurnsRemark[] = noMoreThan(advance, ahead) ? [] : ["thread ends here"];
  return { gain: ahead.value > 0 ? ahead : null, u_m, remarks };
}

/** Where the thread ends that a plug can still reach: the measured end of the good thread, else that of the hole. */
export const endOfThread = ({ left, threadDepth }: Port): Quantity | null => left.goodTo ?? threadDepth;

/**
 * What the plug's point wastes: its lead-in lies beyond its full thread, and only as much of it as still lies in the
 * thread of the hole wastes turns. So the saving begins before the plug passes right through, and nothing jumps there.
 */
function atItsPoint(
  port: Port,
  closure: Closure,
  ranges: Ranges,
): Pick<CarryingTurns, "passesThrough" | "leadInShare"> {
  const z = reach(closure);
  const end = endOfThread(port);
  if (!z || !end) return { passesThrough: false, leadInShare: 1 };
  const ahead = (end.value - z.value) / port.thread.P.value;
  const [, longest] = support(ranges["lead-in"].distribution);
  if (ahead <= 0 || longest <= 0) return { passesThrough: ahead <= 0, leadInShare: ahead <= 0 ? 0 : 1 };
  return { passesThrough: false, leadInShare: Math.min(1, ahead / longest) };
}

function reckonedTurns(port: Port, closure: Closure, ranges: Ranges): CarryingTurns | null {
  const { goodFrom, goodTo } = port.left;
  const z = reach(closure);
  if (!goodFrom || !goodTo || !z) return null;
  const z_e = z.value < goodTo.value ? z : goodTo;
  const caught = reckonedOf({ z_e, z_1: goodFrom, P: port.thread.P });
  const u = Math.hypot(uncertaintyOfNearer(z, goodTo), standardUncertainty(goodFrom)) / port.thread.P.value;
  return {
    caught,
    count: u > 0 ? normal(caught.value, u) : { type: "exact", value: caught.value },
    ...atItsPoint(port, closure, ranges),
    basis: "reckoned",
    remarks: [],
  };
}

const weighted = formula(
  "n = (n_1 * w_1 + n_2 * w_2) / (w_1 + w_2)",
  { n_1: turn, n_2: turn, w_1: turn, w_2: turn, n: turn },
  "weighted mean by 1/u^2 (ISO 80000 symbols; JCGM 100:2008, H.5)",
);

/** Two ways that agree are weighed by their uncertainties; two that do not are asked about, and the fewer turns count. */
function combined(counted: CarryingTurns, reckoned: CarryingTurns): CarryingTurns {
  const [n_1, n_2] = [mean(counted.count), mean(reckoned.count)];
  const [u_1, u_2] = [standardDeviation(counted.count), standardDeviation(reckoned.count)];
  if (Math.abs(n_1 - n_2) > 2 * Math.hypot(u_1, u_2)) {
    const fewer = n_1 <= n_2 ? counted : reckoned;
    return { ...fewer, remarks: [...fewer.remarks, "count and lengths disagree"] };
  }
  if (u_1 === 0 || u_2 === 0) return u_1 === 0 ? counted : reckoned;
  const [w_1, w_2] = [1 / u_1 ** 2, 1 / u_2 ** 2];
  const caught = weighted({
    n_1: counted.caught,
    n_2: reckoned.caught,
    w_1: exact("w_1", w_1, turn, "1/u^2 of the count"),
    w_2: exact("w_2", w_2, turn, "1/u^2 of the lengths"),
  });
  return { ...counted, caught, count: normal(caught.value, 1 / Math.sqrt(w_1 + w_2)), basis: "counted and reckoned" };
}
