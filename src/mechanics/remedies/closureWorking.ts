import { leadIn } from "../joint/carryingTurns.ts";
import { sealForce } from "../joint/sealForce.ts";
import { sealNeed } from "../joint/sealTorque.ts";
import { engagedLength, forceLeft, stripForce, turnsLessLeadIn } from "../joint/stripForce.ts";
import { heightFactor, internalStripArea } from "../joint/stripping.ts";
import { heatFactor } from "../joint/stripTorque.ts";
import { thirdRuleTorque } from "../joint/thirdRule.ts";
import { bearingDiameter, tighteningTorque } from "../joint/torque.ts";
import { exactly, scaled } from "../quantity/distribution.ts";
import { as, exact, type Quantity, taken } from "../quantity/quantity.ts";
import { one, turn } from "../quantity/unit.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { ReferenceRange } from "../tables/referenceRanges.ts";
import { sourceText } from "../tables/source.ts";
import type { PortCase } from "./portCase.ts";
import { clampAt, type WeighedClosure } from "./weighedClosure.ts";

/**
 * The figures behind one closure, worked at the middle of every range with first-order uncertainty: what the turns left
 * bear at least material, the torque that takes, what the seal needs and the torque for it, the third rule, and the clamp
 * of the advice. The window itself convolves the same terms; these lines are for the pencil.
 */
export function closureWorking(
  portCase: PortCase,
  { closure, turns, advice, stop }: WeighedClosure,
): readonly Quantity[] {
  if (!turns) return [];
  const { port, ranges } = portCase;
  const range = (symbol: string, { distribution, unit, source }: ReferenceRange): Quantity =>
    taken(symbol, distribution, unit, sourceText(source));
  const row = materialRows[port.material];
  const strength = ranges[row.strength];
  const heat = heatFactor(port, ranges);

  const n_l = turns.passesThrough
    ? taken("n_l", exactly(0), turn, "the plug passes right through")
    : range("n_l", { ...ranges["lead-in"], distribution: leadIn(turns, ranges) });
  const n = turnsLessLeadIn({ n_c: turns.caught, n_l });
  const { P, alpha } = port.thread;
  const L = engagedLength({ n, P });
  const A = internalStripArea({ d: port.limits.d_min, D_2: port.limits.D2_max, L, P, alpha });
  const R_m = range("R_m", heat === 1 ? strength : { ...strength, distribution: scaled(strength.distribution, heat) });
  const F_s = stripForce({ A, R_m, k: range("k", ranges[row.shearRatio]) });
  const height = port.left.condition === "gone" ? ranges["height poor"] : ranges[`height ${port.left.condition}`];
  const h = port.left.height ?? range("h", height);
  const eta = heightFactor({ s: range("s", ranges["height effect"]), h });
  const q = exact("q", 1, one, "even sharing up to three turns");
  const F = forceLeft({ F_s, m: range("m", ranges["strip model"]), eta, q });

  const { distribution, source } = ranges[`friction ${closure.surface}`];
  const mu = (symbol: string): Quantity => taken(symbol, distribution, one, sourceText(source));
  const D_b = bearingDiameter(closure.seal.outside, closure.seal.inside);
  const path = { thread: port.thread, D_b, mu_th: mu("mu_th"), mu_b: mu("mu_b") };
  const needed = sealNeed(closure.seal);
  const need = needed && sealForce(closure.seal, needed, ranges);
  const clamp = advice?.type === "pull" ? [clampAt(portCase, closure, advice.torque_Nm)] : [];
  return [
    as("T_strip", tighteningTorque(path, F)),
    ...(need ? [as("T_need", tighteningTorque(path, need))] : []),
    thirdRuleTorque(port, closure, turns, ranges),
    ...clamp,
    ...(stop ? [stop.turn] : []),
  ];
}
