import { quantile } from "../quantity/distribution.ts";
import { type LogDensity, logDensity, varianceOfLog } from "../quantity/logDensity.ts";
import { materialRows } from "../tables/materialRows.ts";
import { type CarryingTurns, leadIn } from "./carryingTurns.ts";
import { frictionNodes } from "./frictionNodes.ts";
import { heightDensity, internalAreaDensity, wrenchDensity } from "./stripTorque.ts";
import { bearingDiameter } from "./torque.ts";
import { turnsDensity } from "./turnsDensity.ts";
import type { Weighing } from "./window.ts";

/** What the spread of the strip torque is made of. */
export type StrengthTerm = "strength" | "shear ratio" | "model" | "turns" | "height" | "area" | "friction" | "wrench";

/** The share of each term in the variance of the logarithm of the strip torque, greatest first; they add to 1. */
export type StrengthShare = { readonly term: StrengthTerm; readonly share: number };

/** Where the spread of a closure's strip torque comes from, as long as the thread of the hole is what strips. */
export function strengthShares({ port, closure, turns, wrench, ranges }: Weighing): readonly StrengthShare[] {
  const row = materialRows[port.material];
  const D_b = bearingDiameter(closure.seal.outside, closure.seal.inside);
  const { arm } = frictionNodes(port.thread, D_b, closure.surface, ranges);
  const terms: readonly (readonly [StrengthTerm, LogDensity])[] = [
    ["strength", logDensity(ranges[row.strength].distribution)],
    ["shear ratio", logDensity(ranges[row.shearRatio].distribution)],
    ["model", logDensity(ranges["strip model"].distribution)],
    ["turns", densityOfTurns(turns)],
    ["height", heightDensity(port, ranges)],
    ["area", internalAreaDensity(port)],
    ["friction", arm],
    ["wrench", wrenchDensity(wrench)],
  ];
  const variances = terms.map(([term, density]) => ({ term, variance: varianceOfLog(density) }));
  const total = variances.reduce((sum, { variance }) => sum + variance, 0);
  return variances
    .map(({ term, variance }) => ({ term, share: variance / total }))
    .toSorted((a, b) => b.share - a.share);

  function densityOfTurns(caught: CarryingTurns): LogDensity {
    const k = quantile(ranges[row.sharing].distribution, 0.5);
    return turnsDensity(caught.count, leadIn(caught, ranges), k, ranges["sharing exponent"].distribution);
  }
}
