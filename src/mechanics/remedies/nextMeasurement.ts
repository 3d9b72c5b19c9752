import type { Closure, Left, Port } from "../joint/port.ts";
import { sealNeed } from "../joint/sealTorque.ts";
import { type StrengthShare, strengthShares } from "../joint/strengthShares.ts";
import type { TorqueWindow } from "../joint/window.ts";
import { wrenchDeviation } from "../joint/wrench.ts";
import { cut, exactly, lognormalByMean, mean, normal } from "../quantity/distribution.ts";
import { reading } from "../quantity/quantity.ts";
import { one, onScale } from "../quantity/unit.ts";
import { shareEvidence } from "../tables/evidence.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { judgement } from "../tables/source.ts";
import type { RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import type { Remedy } from "./remedy.ts";
import { turnsOf, type WeighedClosure, weighedClosure } from "./weighedClosure.ts";

/** A reading taken again by a better means, at the value it has now: what that would do to the careful limit. */
export type Measurement = {
  readonly reading: "left.turns" | "left.height" | "case.material";
  readonly how: "with a dot" | "caliper" | "identified";
  readonly limitNow_Nm: number;
  readonly limitThen_Nm: number;
  /** How much of the variance of the logarithm of the strip torque this reading makes, with all that is not known of it. */
  readonly share: number;
  /** What it does to the limit of the remedy that would be done; null where that is the joint as it is. */
  readonly best: { readonly id: RemedyId; readonly limitNow_Nm: number; readonly limitThen_Nm: number } | null;
  /** Whether the window opens, or opens wider than narrow, by it. */
  readonly opens: boolean;
  /** Worth the walk: it moves the limit by a tenth, or opens the window. */
  readonly worthIt: boolean;
};

export type NextMeasurements = {
  /** Best first, by how far each moves the careful limit. */
  readonly measurements: readonly Measurement[];
  /** Where the spread of the strip torque comes from. */
  readonly shares: readonly StrengthShare[];
};

/**
 * What is worth measuring next on a weighed closure, and what that would do to `best`, the remedy that would be done;
 * nothing where it was refused.
 */
export function nextMeasurements(
  portCase: PortCase,
  weighed: WeighedClosure,
  best: Pick<Remedy, "id" | "closure" | "window"> | null,
): NextMeasurements {
  const { closure, turns, window } = weighed;
  const need = sealNeed(closure.seal);
  if (!window || !turns || !need) return { measurements: [], shares: [] };
  const { port, ranges, levels } = portCase;
  const wrench = wrenchDeviation(null, ranges);
  const shares = strengthShares({ port, closure, turns, need, wrench, ranges, levels });
  const measurements = better(portCase).flatMap(({ reading: name, how, improved }): Measurement[] => {
    const after = windowAfter(improved, closure);
    if (!after) return [];
    const [limitNow_Nm, limitThen_Nm] = [window.limit_Nm, after.limit_Nm];
    const opens = (!window.open && after.open) || (window.narrow && after.open && !after.narrow);
    const then_Nm = best?.window && windowAfter(improved, best.closure)?.limit_Nm;
    const done =
      best?.window && then_Nm ? { id: best.id, limitNow_Nm: best.window.limit_Nm, limitThen_Nm: then_Nm } : null;
    const moved = Math.max(movedBy({ limitNow_Nm, limitThen_Nm }), done ? movedBy(done) : 0);
    const share = shareOf(name, shares);
    const worthIt = opens || moved >= worthAShare;
    return [{ reading: name, how, limitNow_Nm, limitThen_Nm, share, best: done, opens, worthIt }];
  });
  return { measurements: measurements.toSorted((a, b) => gain(b) - gain(a)), shares };
}

function windowAfter(improved: PortCase, closure: Closure): TorqueWindow | null {
  const caught = turnsOf(improved, closure);
  return caught && weighedClosure(improved, closure, caught).window;
}

type Limits = Pick<Measurement, "limitNow_Nm" | "limitThen_Nm">;
const movedBy = ({ limitNow_Nm, limitThen_Nm }: Limits): number =>
  Math.abs(limitThen_Nm - limitNow_Nm) / Math.max(limitNow_Nm, 1);

/** The terms of the strip torque that a reading stands behind. */
const termsOf: Readonly<Record<Measurement["reading"], readonly StrengthShare["term"][]>> = {
  "left.turns": ["turns"],
  "left.height": ["height"],
  "case.material": ["strength", "shear ratio"],
};

const shareOf = (reading: Measurement["reading"], shares: readonly StrengthShare[]): number =>
  shares.filter(({ term }) => termsOf[reading].includes(term)).reduce((sum, { share }) => sum + share, 0);

/** Less of a change in the limit is not worth a walk (judgement). */
const worthAShare = 0.1;

const gain = ({ limitNow_Nm, limitThen_Nm }: Measurement): number => Math.abs(limitThen_Nm - limitNow_Nm);

type Better = Pick<Measurement, "reading" | "how"> & { readonly improved: PortCase };

/** The same case with one reading known by the best means at hand, for each that is not. */
function better(portCase: PortCase): readonly Better[] {
  const { port, ranges } = portCase;
  const { left } = port;
  const found: Better[] = [];
  if (left.turns && (left.counting !== "with a dot" || isRange(left)))
    found.push({
      reading: "left.turns",
      how: "with a dot",
      improved: withLeft(portCase, { ...left, ...countedAgain(left) }),
    });
  if (!left.height && left.condition !== "good" && left.condition !== "gone") {
    const h = mean(ranges[`height ${left.condition}`].distribution);
    const height = reading("h", normal(h, shareEvidence.caliper.u), one, "left.height", "caliper");
    found.push({ reading: "left.height", how: "caliper", improved: withLeft(portCase, { ...left, height }) });
  }
  if (port.material === "unknown light alloy" || port.material === "cast aluminium")
    found.push({
      reading: "case.material",
      how: "identified",
      improved: { ...portCase, ranges: identified(ranges, port) },
    });
  return found;
}

const isRange = ({ turns }: Left): boolean =>
  turns?.origin.type === "reading" && turns.origin.distribution.type === "triangular";

function countedAgain({ turns }: Left): Pick<Left, "turns" | "counting"> {
  if (!turns) return { turns, counting: "with a dot" };
  const figure = exactly(onScale(turns.value, turns.unit));
  return { turns: reading(turns.symbol, figure, turns.unit, "left.turns", "with a dot"), counting: "with a dot" };
}

const withLeft = (portCase: PortCase, left: Left): PortCase => ({ ...portCase, port: { ...portCase.port, left } });

/** An alloy that was identified scatters as one alloy does, about the mean it is taken for now. */
function identified(ranges: Ranges, { material }: Port): Ranges {
  const { strength, shearRatio } = materialRows[material];
  const R_m = mean(wholeOf(ranges[strength].distribution));
  const k = mean(wholeOf(ranges[shearRatio].distribution));
  const source = judgement("one alloy instead of many");
  return {
    ...ranges,
    [strength]: { ...ranges[strength], distribution: cut(lognormalByMean(R_m, 0.1), 0.65 * R_m, null), source },
    [shearRatio]: { ...ranges[shearRatio], distribution: cut(normal(k, 0.04), k - 0.12, k + 0.12), source },
  };
}

const wholeOf = (distribution: Ranges["strip model"]["distribution"]) =>
  distribution.type === "cut" ? distribution.of : distribution;
