import { numericalFormula } from "../quantity/formula.ts";
import { as, type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC, mm2_s, one } from "../quantity/unit.ts";
import { d341Limits, type Limits, type OutsideLimits, outside } from "./viscosityLimits.ts";

/** A kinematic viscosity nu measured at a temperature t. */
export type ViscosityPoint = { readonly nu: Quantity; readonly t: Quantity };

/** An oil's straight line on the viscosity-temperature chart, and the temperatures it was drawn through. */
export type ViscosityLine = {
  readonly A: Quantity;
  readonly B: Quantity;
  readonly coldest: Quantity;
  readonly hottest: Quantity;
};

export type ViscosityProblem =
  | OutsideLimits
  /** Two points at one temperature give no line. */
  | { readonly type: "SameTemperature" }
  /** The viscosity does not fall from the colder to the hotter temperature. */
  | { readonly type: "NotFalling" };

export type ViscosityLineRead =
  | { readonly ok: true; readonly line: ViscosityLine }
  | { readonly ok: false; readonly problem: ViscosityProblem };
export type ViscosityRead =
  | { readonly ok: true; readonly nu: Quantity }
  | { readonly ok: false; readonly problem: OutsideLimits };
export type TemperatureRead =
  | { readonly ok: true; readonly t: Quantity }
  | { readonly ok: false; readonly problem: OutsideLimits };

/**
 * The line through two measured points, in any order. 0.21 to 2e7 mm²/s.
 * D341 takes 0.7 where DIN 51563 takes 0.8; between 40 and 100 °C that changes 0.3 % at most.
 */
export function viscosityLine(first: ViscosityPoint, second: ViscosityPoint): ViscosityLineRead {
  const broken = [first, second].map(({ nu, t }) => outside(nu, d341Limits) ?? outside(t, aboveZero)).find(Boolean);
  if (broken) return { ok: false, problem: broken };
  const [cold, hot] = first.t.value <= second.t.value ? [first, second] : [second, first];
  if (cold.t.value === hot.t.value) return { ok: false, problem: { type: "SameTemperature" } };
  if (cold.nu.value <= hot.nu.value) return { ok: false, problem: { type: "NotFalling" } };
  const [t_1, t_2] = [inCelsius(first.t), inCelsius(second.t)];
  const [W_1, W_2] = [waltherOf(first.nu), waltherOf(second.nu)];
  const B = slope({ W_1, W_2, t_1, t_2 });
  const A = intercept({ W_1, B, t_1 });
  return { ok: true, line: { A, B, coldest: inCelsius(cold.t), hottest: inCelsius(hot.t) } };
}

/** The kinematic viscosity nu at the temperature `t`. */
export function viscosityAt({ A, B }: ViscosityLine, t: Quantity): ViscosityRead {
  const cold = outside(t, aboveZero);
  if (cold) return { ok: false, problem: cold };
  const W = onLine({ A, B, t: inCelsius(t) });
  const [least, most] = waltherLimits;
  // Beyond what the chart covers 10^(10^W) soon has no value, so W is looked at before it is undone.
  if (W.value < least || W.value > most) return { ok: false, problem: outsideChart(W.value) };
  return { ok: true, nu: viscosityOf(W) };
}

/** The temperature t at which the kinematic viscosity is `nu`. */
export function temperatureFor({ A, B }: ViscosityLine, nu: Quantity): TemperatureRead {
  const problem = outside(nu, d341Limits);
  if (problem) return { ok: false, problem };
  return { ok: true, t: temperature({ A, B, W: waltherOf(nu) }) };
}

/** How far a temperature asks the line to reach. Below 0 °C wax and polymer make it read too thin. */
export type Reach = "between the points" | "beyond the points" | "below 0 °C";

/** How far `t` asks the line to reach. Below 0 °C it may not declare a W grade: only ASTM D2983 does. */
export function reachOf({ coldest, hottest }: ViscosityLine, t: Quantity): Reach {
  if (t.value >= coldest.value && t.value <= hottest.value) return "between the points";
  return valueIn(degC, t) < 0 ? "below 0 °C" : "beyond the points";
}

/** W = log10 log10 Z of a viscosity, the scale on which oils draw straight lines and blend by share. */
export const waltherOf = (nu: Quantity): Quantity => walther({ Z: enlarged({ nu: as("nu", nu) }) });

/** The viscosity whose log10 log10 Z is `W`. */
export const viscosityOf = (W: Quantity): Quantity => reduced({ Z: enlargedOf({ W: as("W", W) }) });

const D341 = "ASTM D341-20, full equation (MacCoull, Wright)";
const LINE = "ASTM D341-20, line through two points (Walther 1931)";

const enlarged = numericalFormula("Z = nu + 0.7 + exp(-1.47 - 1.84 * nu - 0.51 * nu^2)", { nu: mm2_s, Z: one }, D341);
const walther = numericalFormula("W = log10(log10(Z))", { Z: one, W: one }, D341);
const enlargedOf = numericalFormula("Z = 10^(10^W)", { W: one, Z: one }, D341);
const reduced = numericalFormula(
  "nu = Z - 0.7 - exp(-0.7487 - 3.295 * (Z - 0.7) + 0.6119 * (Z - 0.7)^2 - 0.3193 * (Z - 0.7)^3)",
  { Z: one, nu: mm2_s },
  D341,
);
const slope = numericalFormula(
  "B = (W_1 - W_2) / (log10(t_2 + 273.15) - log10(t_1 + 273.15))",
  { W_1: one, W_2: one, t_1: degC, t_2: degC, B: one },
  LINE,
);
const intercept = numericalFormula("A = W_1 + B * log10(t_1 + 273.15)", { W_1: one, B: one, t_1: degC, A: one }, LINE);
const onLine = numericalFormula("W = A - B * log10(t + 273.15)", { A: one, B: one, t: degC, W: one }, LINE);
const temperature = numericalFormula("t = 10^((A - W) / B) - 273.15", { A: one, B: one, W: one, t: degC }, LINE);

const aboveZero: Limits = {
  symbol: "t",
  unit: degC,
  least: -273.1,
  most: null,
  source: "logarithm of the absolute temperature",
};

/** The equation works in °C + 273.15, so a reading in °F is shown in °C there. */
const inCelsius = (t: Quantity): Quantity => ({ ...t, unit: degC });

const waltherNumber = (nu_mm2_s: number): number => {
  const [W = Number.NaN] = walther.over({ Z: enlarged.over({ nu: nu_mm2_s * mm2_s.inSI }) });
  return W;
};

const [LEAST, MOST] = [d341Limits.least as number, d341Limits.most as number];
const waltherLimits = [waltherNumber(LEAST), waltherNumber(MOST)] as const;

function outsideChart(W: number): OutsideLimits {
  const given = 10 ** (10 ** W) - 0.7;
  const { symbol, unit, least, most, source } = d341Limits;
  return { type: "OutsideLimits", symbol, unit: unit.symbol, given, least, most, source };
}
