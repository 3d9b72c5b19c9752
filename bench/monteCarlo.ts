import { sealForce } from "../src/mechanics/joint/sealForce.ts";
import { forceLeft, stripForce } from "../src/mechanics/joint/stripForce.ts";
import {
  crowding,
  externalStripArea,
  firstTurnShare,
  heightFactor,
  internalStripArea,
  plugYieldForces,
} from "../src/mechanics/joint/stripping.ts";
import { heatFactor } from "../src/mechanics/joint/stripTorque.ts";
import { bearingDiameter, torqueArm } from "../src/mechanics/joint/torque.ts";
import type { Weighing } from "../src/mechanics/joint/window.ts";
import { type Distribution, draw, mean, quantile } from "../src/mechanics/quantity/distribution.ts";
import { distributionOf, exact } from "../src/mechanics/quantity/quantity.ts";
import { type Random, xoshiro128 } from "../src/mechanics/quantity/random.ts";
import { MPa } from "../src/mechanics/quantity/unit.ts";
import { propertyClassRow } from "../src/mechanics/tables/iso898.ts";
import { materialRows } from "../src/mechanics/tables/materialRows.ts";
import { tensileStressArea } from "../src/mechanics/threads/tensileStressArea.ts";

/** Torques, N·m, at which each of many joints strips and closes, sorted upwards. */
export type Drawn = { readonly strips: Float64Array; readonly closes: Float64Array };

/**
 * The torque window by plain drawing: JCGM 101:2008 over the same formulas and ranges, with a seed. It shares nothing with
 * the window's convolution but the formulas' text, so the two check each other.
 */
export function drawnWindow(weighing: Weighing, count: number, seed: number): Drawn {
  const random = xoshiro128(seed);
  const { port, closure, need, ranges, wrench } = weighing;
  const { thread, limits, left } = port;
  const row = materialRows[port.material];
  const column = (d: Distribution): Float64Array => Float64Array.from({ length: count }, () => draw(d, random));
  const within = (low: { value: number }, high: { value: number }): Float64Array =>
    Float64Array.from({ length: count }, () => low.value + random() * (high.value - low.value));

  const n = carrying(weighing, count, random);
  const [P, alpha] = [thread.P.value, thread.alpha.value];
  const length = n.map((it) => it * P);
  const A_n = internalStripArea.over({
    d: within(limits.d_min, limits.d_max),
    D_2: within(limits.D2_min, limits.D2_max),
    L: length,
    P,
    alpha,
  });
  const A_s = externalStripArea.over({
    d_2: within(limits.d2_min, limits.d2_max),
    D_1: within(limits.D1_min, limits.D1_max),
    L: length,
    P,
    alpha,
  });
  const heat = heatFactor(port, ranges);
  const plugStrength = column(ranges["plug strength"].distribution);
  const { R_m_MPa, R_p_MPa } = propertyClassRow(closure.plug.propertyClass, 1e3 * thread.d.value);
  const hole = stripForce.over({
    A: A_n,
    R_m: column(ranges[row.strength].distribution).map((it) => it * 1e6 * heat),
    k: column(ranges[row.shearRatio].distribution),
  });
  const plug = stripForce.over({
    A: A_s,
    R_m: plugStrength.map((it) => it * 1e6 * R_m_MPa),
    k: column(ranges["plug shear ratio"].distribution),
  });

  const condition = left.condition === "gone" ? "height poor" : (`height ${left.condition}` as const);
  const h = column(left.height ? distributionOf(left.height) : ranges[condition].distribution);
  const eta = heightFactor.over({
    h: h.map((it) => Math.min(1, Math.max(0.05, it))),
    s: column(ranges["height effect"].distribution),
  });
  const m = column(ranges["strip model"].distribution);
  const k = quantile(ranges[row.sharing].distribution, 0.5);
  const f_3 = firstTurnShare.over({ k, n: 3 })[0] as number;
  const c = crowding.over({ n, f: firstTurnShare.over({ k, n }), f_3 });
  const a = column(ranges["sharing exponent"].distribution);
  const q = c.map((it, i) => ((n[i] as number) > 3 ? it ** -(a[i] as number) : 1));
  const threads = forceLeft.over({ F_s: hole.map((it, i) => Math.min(it, plug[i] as number)), m, eta, q });

  const mu = column(ranges[`friction ${closure.surface}`].distribution);
  const own = ranges["friction own"].distribution;
  const [own_th, own_b] = [column(own), column(own)];
  const mu_th = mu.map((it, i) => it * (own_th[i] as number));
  const mu_b = mu.map((it, i) => it * (own_b[i] as number));
  const D_b = bearingDiameter(closure.seal.outside, closure.seal.inside).value;
  const arm = torqueArm.over({ P, d_2: thread.d_2.value, alpha, D_b, mu_th, mu_b });
  const yields = plugYieldForces(thread, tensileStressArea(thread), exact("R_p", R_p_MPa, MPa), mu_th);
  const w = column(wrench);

  const range = ranges[need.range];
  const sealMean = sealForce(closure.seal, need, ranges).value / (mean(range.distribution) * range.unit.inSI);
  const pressure = column(range.distribution);
  const torque = (F: number, i: number): number => (F * (arm[i] as number)) / (1 + (w[i] as number));
  return {
    strips: threads.map((F, i) => torque(Math.min(F, (yields[i] as number) * (plugStrength[i] as number)), i)).sort(),
    closes: pressure.map((p, i) => torque(p * range.unit.inSI * sealMean, i)).sort(),
  };
}

/** The torque that a share p of the draws lie below, N·m. */
export const quantileDrawn = (sorted: Float64Array, p: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))] as number;

/** The share of the draws below a torque. */
export function shareBelow(sorted: Float64Array, torque_Nm: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < torque_Nm) low = middle + 1;
    else high = middle;
  }
  return low / sorted.length;
}

/** Turns that carry: the count less its lead-in, none below nothing. */
function carrying({ turns, ranges }: Weighing, count: number, random: Random): Float64Array {
  const leadIn = turns.passesThrough ? null : ranges["lead-in"].distribution;
  return Float64Array.from({ length: count }, () => {
    const caught = draw(turns.count, random);
    return Math.max(0, caught - (leadIn ? draw(leadIn, random) : 0));
  });
}
