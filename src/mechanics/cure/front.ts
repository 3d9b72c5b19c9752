import { quantile } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { d, h, mm, one, type Unit } from "../quantity/unit.ts";
import { moistureCure } from "../tables/cureData.ts";
import { sourceText } from "../tables/source.ts";
import { type Air, slownessIn } from "./air.ts";

export const mm_sqrt_d: Unit = {
  symbol: "mm/√d",
  inSI: mm.inSI / Math.sqrt(d.inSI),
  zero: 0,
  dimension: [1, 0, -0.5, 0],
  kind: "plain number",
};

/** How fast the front of cure walks inward in the reference air, k: likely, slowest and fastest. */
export type FrontSpeed = { readonly likely: Quantity; readonly slowest: Quantity; readonly fastest: Quantity };

/** The speed of ordinary silicones; a case passes its own where the sealant's sheet gives one. */
export const ordinaryFront: FrontSpeed = (() => {
  const { distribution, source } = moistureCure.depthAfterADay_mm;
  const end = (p: number): Quantity => exact("k", quantile(distribution, p), mm_sqrt_d, sourceText(source));
  return { likely: taken("k", distribution, mm_sqrt_d, sourceText(source)), slowest: end(0), fastest: end(1) };
})();

/** A time with the range that the speed of the front gives it. */
export type CureTime = { readonly likely: Quantity; readonly least: Quantity; readonly most: Quantity };

/** The time t that cure takes to a depth, from one open face. */
export function timeToDepth(depth: Quantity, air: Air, front: FrontSpeed): CureTime {
  const f = slownessIn(air);
  const time = (k: Quantity): Quantity => frontTime({ z: depth, k, f });
  return { likely: time(front.likely), least: time(front.fastest), most: time(front.slowest) };
}

/** The depth z that is cured after a time, from one open face: likely, least and most. */
export function depthAfter(time: Quantity, air: Air, front: FrontSpeed): CureTime {
  const f = slownessIn(air);
  const depth = (k: Quantity): Quantity => frontDepth({ k, t: time, f });
  return { likely: depth(front.likely), least: depth(front.slowest), most: depth(front.fastest) };
}

const comyn =
  "Comyn, Int. J. Adhesion and Adhesives 18 (1998) 247: a front that goes with the root of time (equation from memory)";

const frontTime = formula("t = (z / k)^2 * f", { z: mm, k: mm_sqrt_d, f: one, t: h }, comyn);
const frontDepth = formula("z = k * sqrt(t / f)", { k: mm_sqrt_d, t: h, f: one, z: mm }, comyn);
