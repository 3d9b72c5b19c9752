import { type Distribution, mean, quantile } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { MPa, Nm, one, turn } from "../quantity/unit.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { sourceText } from "../tables/source.ts";
import type { ThreadForm } from "../threads/threadForm.ts";
import { type CarryingTurns, leadIn } from "./carryingTurns.ts";
import type { Closure, Port } from "./port.ts";
import { thirdRuleForce } from "./stripping.ts";
import { heatFactor } from "./stripTorque.ts";
import { bearingDiameter, tighteningTorque } from "./torque.ts";

const fullTurns = formula(
  "n = n_0 - n_l",
  { n_0: turn, n_l: turn, n: turn },
  "full turns only: NASA RP-1228 (Barrett); the lead-in at its mean",
);

/**
 * The torque T at which the third rule of NASA RP-1228 strips, by mean strength, mean shear ratio, the turns less the
 * mean lead-in, and the arm at middle friction of the thread that is turned, which behind an insert is not the thread of
 * the hole. No range of ours but these means enters it.
 */
export function thirdRuleTorque(
  port: Port,
  closure: Closure,
  turns: CarryingTurns,
  ranges: Ranges,
  turned: ThreadForm = port.thread,
): Quantity {
  const row = materialRows[port.material];
  const [strength, ratio] = [ranges[row.strength], ranges[row.shearRatio]];
  const lead = mean(leadIn(turns, ranges));
  const carrying = Math.max(0, turns.caught.value - lead);
  const n_0 = exact("n_0", carrying + lead, turn);
  const n = fullTurns({ n_0, n_l: exact("n_l", lead, turn, sourceText(ranges["lead-in"].source)) });
  const R_m = exact(
    "R_m",
    mean(baseOf(strength.distribution)) * heatFactor(port, ranges),
    MPa,
    sourceText(strength.source),
  );
  const k = exact("k", mean(baseOf(ratio.distribution)), one, sourceText(ratio.source));
  const friction = ranges[`friction ${closure.surface}`];
  const mu = quantile(friction.distribution, 0.5);
  const [mu_th, mu_b] = [exact("mu_th", mu, one), exact("mu_b", mu, one)];
  const D_b = bearingDiameter(closure.seal.outside, closure.seal.inside);
  return tighteningTorque({ thread: turned, D_b, mu_th, mu_b }, thirdRuleForce(port.thread, R_m, k, n));
}

/** The same as a bare number, N·m. */
export const cautiousTorque = (
  port: Port,
  closure: Closure,
  turns: CarryingTurns,
  ranges: Ranges,
  turned: ThreadForm = port.thread,
): number => thirdRuleTorque(port, closure, turns, ranges, turned).value / Nm.inSI;

/** Means are those before a cut. */
const baseOf = (distribution: Distribution): Distribution =>
  distribution.type === "cut" ? distribution.of : distribution;
