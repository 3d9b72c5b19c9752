import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC, deltaK, K, kPa, L, one, perK } from "../quantity/unit.ts";
import { published, type Source } from "../tables/source.ts";

/** A case closed at one temperature and brought to another with no way for its air to go. */
export type ClosedCase = {
  /** Outside pressure when it was closed, absolute. */
  readonly p_1: Quantity;
  readonly T_1: Quantity;
  readonly T_2: Quantity;
  readonly V_air: Quantity;
  readonly V_oil: Quantity;
  /** Volume of the oil at T_2 over its volume at T_1. */
  readonly r: Quantity;
  /** Linear expansion of the case. */
  readonly alpha: Quantity;
};

/**
 * The pressure p_g over (or, negative, under) the outside pressure in a case whose breather is blocked.
 *
 * Ideal gas; the oil grows into the air and the case grows round both; dry, for free water adds its vapour pressure.
 * @throws RangeError if the oil would fill the case.
 */
export function closedCasePressure(closed: ClosedCase): Quantity {
  const { p_1, T_1, T_2, V_air, V_oil, r, alpha } = closed;
  const DT = difference({ T_1, T_2 });
  const V_2 = airLeft({ V_air, V_oil, alpha, DT, r });
  if (!(V_2.value > 0)) throw new RangeError("closedCasePressure: the oil would fill the case");
  return gauge({ p_1, T_1: absoluteTemperature(T_1), T_2: absoluteTemperature(T_2), V_air, V_2 });
}

/** A temperature on the absolute scale, so that the working shows it so. */
export const absoluteTemperature = (T: Quantity): Quantity => absolute({ T });

/** The pressure with the vapour pressure of free water at the temperature added. */
export const withFreeWater = (p_g: Quantity, e_s: Quantity): Quantity => wet({ p_g, e_s });

export type PressureVerdict =
  | "bears it"
  | "above what a seal on a fast shaft bears"
  | "above what a seal on a slow shaft bears"
  | "harms seals"
  | "draws water and paste inwards";

/** What a pressure over the outside does to lip seals. Under-pressure counts from 2 kPa. */
export function pressureVerdict(p_g: Quantity): PressureVerdict {
  const p = valueIn(kPa, p_g);
  if (p > sealLimits.harmed_kPa) return "harms seals";
  if (p > sealLimits.slowShaft_kPa) return "above what a seal on a slow shaft bears";
  if (p > sealLimits.fastShaft_kPa) return "above what a seal on a fast shaft bears";
  return p < sealLimits.draws_kPa ? "draws water and paste inwards" : "bears it";
}

/** Pressures that lip seals bear, kPa over the outside. */
const sealLimits: {
  readonly fastShaft_kPa: number;
  readonly slowShaft_kPa: number;
  readonly harmed_kPa: number;
  readonly draws_kPa: number;
  readonly sources: readonly Source[];
} = {
  fastShaft_kPa: 20,
  slowShaft_kPa: 50,
  harmed_kPa: 103,
  draws_kPa: -2,
  sources: [
    { document: "lip seals, 20 kPa on fast shafts to 50 kPa on slow ones", firmness: "common practice, no source" },
    published("US Army TM 9-2320-272-23-3, WP 0415: seals damaged above 103 kPa (15 psi)"),
    { document: "a case draws in from 2 kPa below the outside", firmness: "judgement" },
  ],
};

const idealGas = "ideal gas, with the growth of oil and case";

const absolute = formula("T_K = T", { T: degC, T_K: K }, "definition of the Celsius scale");
const difference = formula("DT = T_2 - T_1", { T_1: degC, T_2: degC, DT: deltaK }, "plain difference");
const airLeft = formula(
  "V_2 = V_air * (1 + alpha * DT)^3 - V_oil * (r - (1 + alpha * DT)^3)",
  { V_air: L, V_oil: L, alpha: perK, DT: deltaK, r: one, V_2: L },
  idealGas,
);
const gauge = formula(
  "p_g = p_1 * T_2 / T_1 * V_air / V_2 - p_1",
  { p_1: kPa, T_1: K, T_2: K, V_air: L, V_2: L, p_g: kPa },
  idealGas,
);
const wet = formula("p_w = p_g + e_s", { p_g: kPa, e_s: kPa, p_w: kPa }, "Dalton's law of partial pressures");
