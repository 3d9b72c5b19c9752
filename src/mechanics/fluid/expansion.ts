import { formula, numericalFormula } from "../quantity/formula.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { degC, degF, deltaK, kg_m3, L, ml, one, type Unit } from "../quantity/unit.ts";
import { type Limits, type OutsideLimits, outside } from "./viscosityLimits.ts";

export type ExpansionRead =
  | { readonly ok: true; readonly result: Quantity }
  | { readonly ok: false; readonly problem: OutsideLimits };

/** An oil of the density `rho_60` at 60 °F, warmed or cooled from one temperature to another. */
export type TemperatureChange = { readonly rho_60: Quantity; readonly from: Quantity; readonly to: Quantity };

/**
 * The factor CTL that takes a volume of lubricating oil at `t` to its volume at 60 °F.
 * 800.9 to 1163.5 kg/m³, -50 to 150 °C, at the pressure of the air. Source: API MPMS 11.1, lubricating oils, without
 * the rounding and the shift of temperature scale of its 2004 edition, which come to less than 0.01 % (from memory).
 */
export function volumeCorrection(rho_60: Quantity, t: Quantity): ExpansionRead {
  const problem = outside(rho_60, densities) ?? outside(t, temperatures);
  if (problem) return { ok: false, problem };
  const alpha_60 = coefficient({ rho_60 });
  return { ok: true, result: correction({ alpha_60, dt: above60F({ t, t_60 }) }) };
}

/** The volume r of an oil at `to` by its volume at `from`. */
export function volumeRatio({ rho_60, from, to }: TemperatureChange): ExpansionRead {
  const before = volumeCorrection(rho_60, from);
  if (!before.ok) return before;
  const after = volumeCorrection(rho_60, to);
  if (!after.ok) return after;
  return { ok: true, result: ratio({ CTL_1: as("CTL_1", before.result), CTL_2: as("CTL_2", after.result) }) };
}

/** The volume V_2 at `to` of an oil whose volume is `V` at `from`. */
export function expandedVolume(V: Quantity, change: TemperatureChange): ExpansionRead {
  const r = volumeRatio(change);
  return r.ok ? { ok: true, result: ofVolume({ V_1: as("V_1", V), r: r.result }) } : r;
}

/** The volume dV that an oil of volume `V` gains by itself, as if its case did not grow; negative where it cools. */
export function growth(V: Quantity, change: TemperatureChange): ExpansionRead {
  const r = volumeRatio(change);
  return r.ok ? { ok: true, result: gain({ V_1: as("V_1", V), r: r.result }) } : r;
}

/** The density rho of an oil at `t`. */
export function densityAt(rho_60: Quantity, t: Quantity): ExpansionRead {
  const corrected = volumeCorrection(rho_60, t);
  return corrected.ok ? { ok: true, result: density({ rho_60, CTL: corrected.result }) } : corrected;
}

/** The coefficient of expansion alpha_60 of an oil at 60 °F. */
export const expansionCoefficient = (rho_60: Quantity): ExpansionRead => {
  const problem = outside(rho_60, densities);
  return problem ? { ok: false, problem } : { ok: true, result: coefficient({ rho_60 }) };
};

const MPMS = "API MPMS 11.1 (ASTM D1250), lubricating oils";

const perDegF: Unit = { symbol: "1/°F", inSI: 9 / 5, zero: 0, dimension: [0, 0, 0, -1], kind: "expansion" };

const coefficient = numericalFormula("alpha_60 = 0.34878 / rho_60", { rho_60: kg_m3, alpha_60: perDegF }, MPMS);
const above60F = formula("dt = t - t_60", { t: degC, t_60: degF, dt: deltaK }, MPMS);
const correction = formula(
  "CTL = exp(-alpha_60 * dt * (1 + 0.8 * alpha_60 * dt))",
  { alpha_60: perDegF, dt: deltaK, CTL: one },
  MPMS,
);
const ratio = formula("r = CTL_1 / CTL_2", { CTL_1: one, CTL_2: one, r: one }, MPMS);
const ofVolume = formula("V_2 = V_1 * r", { V_1: L, r: one, V_2: L }, MPMS);
const gain = formula("dV = V_1 * (r - 1)", { V_1: L, r: one, dV: ml }, MPMS);
const density = formula("rho = rho_60 * CTL", { rho_60: kg_m3, CTL: one, rho: kg_m3 }, MPMS);

const t_60 = exact("t_60", 60, degF, MPMS);

const densities: Limits = { symbol: "rho_60", unit: kg_m3, least: 800.9, most: 1163.5, source: MPMS };
const temperatures: Limits = {
  symbol: "t",
  unit: degC,
  least: -50,
  most: 150,
  source: "API MPMS 11.1, range of temperatures (from memory)",
};
