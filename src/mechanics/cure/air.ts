import { type Distribution, normal, uniform } from "../quantity/distribution.ts";
import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity, reading, valueIn } from "../quantity/quantity.ts";
import { degC, mbar, one, Pa, percent } from "../quantity/unit.ts";
import { moistureCure } from "../tables/cureData.ts";

/** The air in the bay: what a moisture-curing sealant lives on. */
export type Air = { readonly T: Quantity; readonly RH: Quantity };

/**
 * The vapour pressure of saturated air over water, e_s.
 *
 * Within 0.3 % of IAPWS-IF97 from 5 to 40 °C, 2 % high at 90 °C.
 * @throws RangeError outside -45 to 100 °C.
 */
export function saturationPressure(T: Quantity): Quantity {
  const T_degC = valueIn(degC, T);
  if (!(T_degC >= -45 && T_degC <= 100))
    throw new RangeError(`saturationPressure: ${T_degC} °C is not from -45 to 100 °C`);
  return magnus({ T });
}

/** The pressure p of the water vapour in the air. */
export const vapourPressure = ({ T, RH }: Air): Quantity => vapour({ RH, e_s: saturationPressure(T) });

/** The air in which sealants are tested, 23 °C and 50 %. */
export const referenceAir: Air = {
  T: exact("T_ref", moistureCure.referenceTemperature_degC, degC, "standard atmosphere 23/50, ISO 291"),
  RH: exact("RH_ref", moistureCure.referenceHumidity, one, "standard atmosphere 23/50, ISO 291"),
};

/** How many times longer cure takes in this air than in the reference air, p_ref/p. */
export const slownessIn = (air: Air): Quantity =>
  slowness({ p_ref: vapourPressure(referenceAir), p: vapourPressure(air) });

/** How humid it is, where there is no gauge. Judgement. */
export const humidityByFeel = {
  dry: uniform(20, 40),
  normal: uniform(40, 60),
  damp: uniform(60, 90),
} as const satisfies Record<string, Distribution>;
export type HumidityByFeel = keyof typeof humidityByFeel;

/** A relative humidity felt, by three pictures. */
export const humidityFelt = (felt: HumidityByFeel, id: string): Quantity =>
  reading("RH", humidityByFeel[felt], percent, id, felt);

/** A relative humidity off a cheap gauge, whose standard uncertainty is 7 % of humidity (judgement: 5 to 10). */
export const humidityRead = (value_percent: number, id: string): Quantity =>
  reading("RH", normal(value_percent, 7), percent, id, "gauge");

/** The humidity of a share that was read off a gauge; null where it is no share of up to 100 %. */
export const humidityOfShare = (share: Quantity, id: string): Quantity | null =>
  share.unit.symbol === "%" && share.value >= 0 && share.value <= 1 ? humidityRead(valueIn(percent, share), id) : null;

const magnus = numericalFormula(
  "e_s = 6.112 * exp(17.62 * T / (243.12 + T))",
  { T: degC, e_s: mbar },
  "WMO-No. 8 (2008), annex 4.B: Magnus formula over water",
);
const vapour = formula("p = RH * e_s", { RH: one, e_s: mbar, p: Pa }, "definition of relative humidity");
const slowness = formula(
  "f = p_ref / p",
  { p_ref: Pa, p: Pa, f: one },
  "cure depth goes with the root of vapour pressure and time: Comyn, Int. J. Adhesion and Adhesives 18 (1998) 247 (from memory)",
);
