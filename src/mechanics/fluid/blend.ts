import { formula, numericalFormula } from "../quantity/formula.ts";
import { as, type Quantity } from "../quantity/quantity.ts";
import { L, mm2_s, one } from "../quantity/unit.ts";
import type { GearGradeEdition } from "../tables/saeJ306.ts";
import { type GearGradeFound, gearGrade } from "./grades.ts";
import { viscosityOf, waltherOf } from "./viscosity.ts";
import { d341Limits, type Limits, type OutsideLimits, outside } from "./viscosityLimits.ts";

/** An amount V of an oil and its viscosity nu. */
export type OilPart = { readonly V: Quantity; readonly nu: Quantity };

export type BlendRead =
  | { readonly ok: true; readonly nu: Quantity }
  | { readonly ok: false; readonly problem: OutsideLimits };

/**
 * The viscosity of a blend that holds the share `x` of an oil nu_1, the rest nu_2, all three at one temperature.
 * Source: ASTM D7152-11 (means of log10 log10 Z, from memory). Shares by volume and by mass differ little among oils.
 */
export function blendViscosity(nu_1: Quantity, nu_2: Quantity, x: Quantity): BlendRead {
  const problem = partsProblem(nu_1, nu_2, x);
  if (problem) return { ok: false, problem };
  const mean = meanWalther({ x: as("x", x), W_1: as("W_1", waltherOf(nu_1)), W_2: as("W_2", waltherOf(nu_2)) });
  return { ok: true, nu: viscosityOf(mean) };
}

/** The same by the index of Refutas, as a cross check: the two agree to 0.1 % between gear grades. */
export function refutasViscosity(nu_1: Quantity, nu_2: Quantity, x: Quantity): BlendRead {
  const problem = partsProblem(nu_1, nu_2, x);
  if (problem) return { ok: false, problem };
  const index = (symbol: string, nu: Quantity): Quantity => as(symbol, blendingIndex({ nu: as("nu", nu) }));
  const I_m = meanIndex({ x: as("x", x), I_1: index("I_1", nu_1), I_2: index("I_2", nu_2) });
  return { ok: true, nu: ofBlendingIndex({ I_m }) };
}

/** What a top-up makes of the oil in a case. */
export type TopUp = {
  /** The share x of the new oil. */
  readonly share: Quantity;
  readonly kv100: Quantity;
  /** The same viscosity by the index of Refutas. */
  readonly crossCheck: Quantity;
  readonly before: GearGradeFound;
  readonly after: GearGradeFound;
  /** Grades up; one grade down is -1. Null where an end is below every grade. */
  readonly gradesUp: number | null;
};

export type TopUpRead =
  | { readonly ok: true; readonly topUp: TopUp }
  | { readonly ok: false; readonly problem: OutsideLimits };

/**
 * What the amount `added` makes of the oil `inCase`, both with their viscosity at 100 °C, graded by SAE J306.
 * It speaks of viscosity alone: service classes and limited-slip additives mix by no such rule.
 */
export function topUp(inCase: OilPart, added: OilPart, edition: GearGradeEdition): TopUpRead {
  const problem = outside(inCase.V, notNegative) ?? outside(added.V, above0);
  if (problem) return { ok: false, problem };
  const share = shareOf({ V_1: as("V_1", added.V), V_2: as("V_2", inCase.V) });
  const blend = blendViscosity(added.nu, inCase.nu, share);
  if (!blend.ok) return blend;
  const check = refutasViscosity(added.nu, inCase.nu, share);
  if (!check.ok) return check;
  const [before, after] = [gearGrade(inCase.nu, edition), gearGrade(blend.nu, edition)];
  const graded = before.type === "gear grade" && after.type === "gear grade";
  return {
    ok: true,
    topUp: {
      share,
      kv100: as("nu_100", blend.nu),
      crossCheck: as("nu_100", check.nu),
      before,
      after,
      gradesUp: graded ? after.place - before.place : null,
    },
  };
}

const D7152 = "ASTM D7152-11 (from memory)";
const REFUTAS = "Refutas index (Maples, Petroleum Refinery Process Economics, 2nd ed.; from memory)";

const shareOf = formula("x = V_1 / (V_1 + V_2)", { V_1: L, V_2: L, x: one }, "share by volume");
const meanWalther = numericalFormula("W = x * W_1 + (1 - x) * W_2", { x: one, W_1: one, W_2: one, W: one }, D7152);
const blendingIndex = numericalFormula("I = 14.534 * ln(ln(nu + 0.8)) + 10.975", { nu: mm2_s, I: one }, REFUTAS);
const meanIndex = numericalFormula("I_m = x * I_1 + (1 - x) * I_2", { x: one, I_1: one, I_2: one, I_m: one }, REFUTAS);
const ofBlendingIndex = numericalFormula(
  "nu = exp(exp((I_m - 10.975) / 14.534)) - 0.8",
  { I_m: one, nu: mm2_s },
  REFUTAS,
);

const shares: Limits = { symbol: "x", unit: one, least: 0, most: 1, source: "a share" };
const notNegative: Limits = { symbol: "V", unit: L, least: 0, most: null, source: "an amount" };
const above0: Limits = { ...notNegative, least: 1e-6 };

/** Refutas needs ln(nu + 0.8) above 0, which the limits of D341 give. */
const partsProblem = (nu_1: Quantity, nu_2: Quantity, x: Quantity): OutsideLimits | null =>
  outside(nu_1, d341Limits) ?? outside(nu_2, d341Limits) ?? outside(x, shares);
