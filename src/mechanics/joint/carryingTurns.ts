import { type Distribution, normal, triangular } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, standardUncertainty } from "../quantity/quantity.ts";
import { mm, turn } from "../quantity/unit.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { Closure, Port } from "./port.ts";

/** A count before its lead-in is taken off: a normal count, a range given by hand, or a figure without doubt. */
export type Count = Extract<Distribution, { type: "exact" | "normal" | "triangular" }>;

/** The turns that one closure catches, and what is known of them. */
export type CarryingTurns = {
  /** Turns caught from first contact to the seat. */
  readonly caught: Quantity;
  readonly count: Count;
  /** The point of the plug stands out behind: its lead-in wastes no turn. */
  readonly passesThrough: boolean;
  readonly basis: "counted" | "reckoned" | "counted and reckoned";
  readonly remarks: readonly TurnsRemark[];
};

export type TurnsRemark =
  /** Turns gained by going deeper hold only while thread is left ahead; nobody measured where it ends. */
  | "thread ahead not measured"
  /** The plug already reaches the end of the thread: going deeper gains nothing. */
  | "thread ends here"
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
  const reckoned = reckonedTurns(port, closure);
  if (counted && reckoned) return combined(counted, reckoned);
  return counted ?? reckoned;
}

function countedTurns(port: Port, asFound: Closure, closure: Closure, ranges: Ranges): CarryingTurns | null {
  const { turns, withWasher } = port.left;
  if (!turns) return null;
  const { gain, remarks } = depthGained(port, asFound, closure, withWasher);
  const caught = gain ? shiftedOf({ n_0: turns, dz: gain, P: port.thread.P }) : turns;
  return {
    caught,
    count: countShape(turns, caught, countUncertainty(port, ranges)),
    passesThrough: passesThrough(port, closure),
    basis: "counted",
    remarks,
  };
}

/** The standard uncertainty of a count by the way it was counted, turns. */
function countUncertainty({ left }: Port, ranges: Ranges): number {
  const names = { "with a dot": "count with a dot", "by eye": "count by eye", felt: "count felt" } as const;
  const { distribution } = ranges[names[left.counting]];
  return distribution.type === "exact" ? distribution.value : 0;
}

/** A count read as one figure takes the uncertainty of its counting; a range given by hand is kept as it is, moved along. */
function countShape(turns: Quantity, caught: Quantity, s: number): Count {
  const given = turns.origin.type === "reading" ? turns.origin.distribution : null;
  const moved = caught.value - turns.value;
  if (given?.type === "triangular")
    return triangular(given.low + moved, given.likely + moved, given.high + moved) as Count;
  const ofLengths = Math.sqrt(Math.max(0, standardUncertainty(caught) ** 2 - standardUncertainty(turns) ** 2));
  return normal(caught.value, Math.hypot(s, ofLengths));
}

type DepthGained = { readonly gain: Quantity | null; readonly remarks: readonly TurnsRemark[] };

/** How much deeper the closure stands than the plug stood when the turns were counted. */
function depthGained(port: Port, asFound: Closure, closure: Closure, withWasher: boolean): DepthGained {
  const samePlug = closure.plug.underHead === asFound.plug.underHead && closure.plug.chamfer === asFound.plug.chamfer;
  const t_0 = withWasher ? asFound.seal.thickness : exact("t_0", 0, mm, "counted without a ring");
  const t = closure.seal.thickness;
  if (samePlug && t.value === t_0.value) return { gain: null, remarks: [] };
  const z_0 = reach(asFound, withWasher);
  const z = reach(closure);
  const advance = samePlug ? ringAdvanceOf({ t_0, t }) : z && z_0 ? advanceOf({ z, z_0 }) : null;
  if (!advance || advance.value <= 0) return { gain: advance, remarks: [] };
  return upToTheEnd(port, z_0, advance);
}

/** Thread is gained only up to its end. */
function upToTheEnd(port: Port, z_0: Quantity | null, advance: Quantity): DepthGained {
  const end = endOfThread(port);
  if (!end || !z_0) return { gain: advance, remarks: ["thread ahead not measured"] };
  if (z_0.value + advance.value <= end.value) return { gain: advance, remarks: [] };
  const ahead = advanceOf({ z: end, z_0 });
  return { gain: ahead.value > 0 ? ahead : null, remarks: ["thread ends here"] };
}

/** Where the thread ends that a plug can still reach: the measured end of the good thread, else that of the hole. */
export const endOfThread = ({ left, threadDepth }: Port): Quantity | null => left.goodTo ?? threadDepth;

function passesThrough(port: Port, closure: Closure): boolean {
  const z = reach(closure);
  const end = endOfThread(port);
  return z !== null && end !== null && z.value >= end.value;
}

function reckonedTurns(port: Port, closure: Closure): CarryingTurns | null {
  const { goodFrom, goodTo } = port.left;
  const z = reach(closure);
  if (!goodFrom || !goodTo || !z) return null;
  const z_e = z.value < goodTo.value ? z : goodTo;
  const caught = reckonedOf({ z_e, z_1: goodFrom, P: port.thread.P });
  const u = standardUncertainty(caught);
  return {
    caught,
    count: u > 0 ? normal(caught.value, u) : { type: "exact", value: caught.value },
    passesThrough: passesThrough(port, closure),
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
  const [a, b] = [counted.count, reckoned.count];
  if (a.type !== "normal" || b.type !== "normal") return counted;
  if (Math.abs(a.mean - b.mean) > 2 * Math.hypot(a.sd, b.sd)) {
    const fewer = a.mean <= b.mean ? counted : reckoned;
    return { ...fewer, remarks: [...fewer.remarks, "count and lengths disagree"] };
  }
  const [w_1, w_2] = [1 / a.sd ** 2, 1 / b.sd ** 2];
  const caught = weighted({
    n_1: counted.caught,
    n_2: reckoned.caught,
    w_1: exact("w_1", w_1, turn, "1/u^2 of the count"),
    w_2: exact("w_2", w_2, turn, "1/u^2 of the lengths"),
  });
  return { ...counted, caught, count: normal(caught.value, 1 / Math.sqrt(w_1 + w_2)), basis: "counted and reckoned" };
}
