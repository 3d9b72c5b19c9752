import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { inches, one } from "../quantity/unit.ts";
import type { UnifiedHoleClass, UnifiedPlugClass } from "./unifiedClass.ts";
import { roundedTo } from "./unifiedRounding.ts";
import type { UnifiedThread } from "./unifiedThread.ts";

/** Allowance es of the plug: how far its greatest sizes stay below the basic ones. */
export function allowance(thread: UnifiedThread, plugClass: UnifiedPlugClass): Quantity {
  if (plugClass === "3A") return exact("es", 0, inches, FORMULAS);
  return roundedTo("es", allowanceOfClass2({ T_2A: toleranceOfClass2A(thread) }), 4, inches, ROUNDED);
}

/** Tolerance of the plug's major diameter, T_d, unrounded as all tolerances here: the limits are rounded. */
export const majorToleranceUnified = ({ P }: UnifiedThread, plugClass: UnifiedPlugClass): Quantity =>
  (plugClass === "1A" ? majorOfClass1 : majorOfClasses2And3)({ P });

/** Tolerance of the plug's pitch diameter, T_d2. */
export const plugPitchToleranceUnified = (thread: UnifiedThread, plugClass: UnifiedPlugClass): Quantity =>
  plugPitch({ k: exact("k", plugFactors[plugClass], one, FORMULAS), T_2A: toleranceOfClass2A(thread) });

/** Tolerance of the hole's pitch diameter, T_D2. */
export const holePitchToleranceUnified = (thread: UnifiedThread, holeClass: UnifiedHoleClass): Quantity =>
  holePitch({ k: exact("k", holeFactors[holeClass], one, FORMULAS), T_2A: toleranceOfClass2A(thread) });

/** Tolerance of the hole's minor diameter, T_D1, for 4 threads per inch and more. */
export function minorToleranceUnified({ d, P }: UnifiedThread, holeClass: UnifiedHoleClass): Quantity {
  const isClass3 = holeClass === "3B";
  if (!isClass3 && valueIn(inches, d) > 0.2499) return minorFromQuarterInch({ P });
  const least = (isClass3 ? leastMinorOfClass3 : minorFromQuarterInch)({ P });
  const greatest = greatestMinor({ P });
  const middle = minorBySize({ P, d });
  return middle.value < least.value ? least : middle.value > greatest.value ? greatest : middle;
}

const FORMULAS = "ASME B1.1-2003, 5.8 and 8.3 (from memory, checked against its tables)";
const ROUNDED = "ASME B1.30-2002 (from memory, checked against the tables of ASME B1.1)";

/** k of T_d2 and of T_D2. */
const plugFactors: Readonly<Record<UnifiedPlugClass, number>> = { "1A": 1.5, "2A": 1, "3A": 0.75 };
const holeFactors: Readonly<Record<UnifiedHoleClass, number>> = { "1B": 1.95, "2B": 1.3, "3B": 0.975 };

const tolerance2A = numericalFormula(
  "T_2 = 0.0015 * cbrt(d) + 0.0015 * sqrt(L_E) + 0.015 * cbrt(P^2)",
  { d: inches, L_E: inches, P: inches, T_2: inches },
  FORMULAS,
);
const allowanceOfClass2 = formula("es_2 = 0.300 * T_2A", { T_2A: inches, es_2: inches }, FORMULAS);
const plugPitch = formula("T_d2 = k * T_2A", { k: one, T_2A: inches, T_d2: inches }, FORMULAS);
const holePitch = formula("T_D2 = k * T_2A", { k: one, T_2A: inches, T_D2: inches }, FORMULAS);
const majorOfClass1 = numericalFormula("T_d = 0.090 * cbrt(P^2)", { P: inches, T_d: inches }, FORMULAS);
const majorOfClasses2And3 = numericalFormula("T_d = 0.060 * cbrt(P^2)", { P: inches, T_d: inches }, FORMULAS);
const minorFromQuarterInch = numericalFormula("T_D1 = 0.25 * P - 0.40 * P^2", { P: inches, T_D1: inches }, FORMULAS);
const minorBySize = numericalFormula(
  "T_D1 = 0.05 * cbrt(P^2) + 0.03 * P / d - 0.002",
  { P: inches, d: inches, T_D1: inches },
  FORMULAS,
);
const leastMinorOfClass3 = numericalFormula("T_D1 = 0.23 * P - 1.5 * P^2", { P: inches, T_D1: inches }, FORMULAS);
const greatestMinor = numericalFormula("T_D1 = 0.394 * P", { P: inches, T_D1: inches }, FORMULAS);

/** The tolerance that all others are multiples of; the tables follow only if it is rounded to six decimals first. */
const toleranceOfClass2A = ({ d, L_E, P }: UnifiedThread): Quantity =>
  roundedTo("T_2A", tolerance2A({ d, L_E, P }), 6, inches, ROUNDED);
