import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm, um } from "../quantity/unit.ts";
import {
  diameterSteps_mm,
  gradeSteps,
  type HoleDeviation,
  type HolePitchGrade,
  type MajorGrade,
  type MinorGrade,
  type PlugDeviation,
  type PlugPitchGrade,
  printedDeviation,
  printedFrom_mm,
  printedGrade6,
  type ToleranceName,
} from "../tables/iso965.ts";
import { renard40 } from "../tables/renard40.ts";

/** The nominal diameter and the pitch that a tolerance depends on. */
export type NominalSize = { readonly d: Quantity; readonly P: Quantity };

/** Tolerance of the plug's major diameter, T_d. */
export const majorTolerance = ({ P }: NominalSize, grade: MajorGrade): Quantity => {
  const printed = printedGrade6.T_d[key_mm(P)];
  const grade6 = printed === undefined ? majorOfGrade6({ P }) : fromTable("T_d_6", printed);
  return stepped("T_d", grade6, grade, gradeSteps.T_d[grade], P);
};

/** Tolerance of the plug's pitch diameter, T_d2. @throws RangeError if d is not above 0.99 and up to 180 mm. */
export const plugPitchTolerance = (size: NominalSize, grade: PlugPitchGrade): Quantity =>
  stepped("T_d2", pitchOfGrade6(size), grade, gradeSteps.T_d2[grade], size.P);

/** Tolerance of the hole's minor diameter, T_D1. */
export const minorTolerance = ({ P }: NominalSize, grade: MinorGrade): Quantity => {
  const P_mm = key_mm(P);
  const printed = printedGrade6.T_D1[P_mm];
  const computed = P_mm < 1 ? minorOfGrade6Below1 : minorOfGrade6From1;
  const grade6 = printed === undefined ? computed({ P }) : fromTable("T_D1_6", printed);
  return stepped("T_D1", grade6, grade, gradeSteps.T_D1[grade], P);
};

/** Tolerance of the hole's pitch diameter, T_D2. @throws RangeError if d is not above 0.99 and up to 180 mm. */
export const holePitchTolerance = (size: NominalSize, grade: HolePitchGrade): Quantity =>
  stepped("T_D2", pitchOfGrade6(size), grade, gradeSteps.T_D2[grade], size.P);

/** Upper deviation es of the plug's diameters: 0 or below it. */
export function upperDeviation({ P }: NominalSize, deviation: PlugDeviation): Quantity {
  if (deviation === "h") return exact("es", 0, um, DEVIATIONS);
  const printed = printedDeviation[deviation][key_mm(P)];
  if (printed !== undefined)
    return exact("es", -printed, um, deviation === "g" ? SEEN_IN_LIMITS : DEVIATIONS_FROM_MEMORY);
  return rounded("es", upperDeviations[deviation]({ P }), 0, sourceFor("deviation", deviation, P));
}

/** Lower deviation EI of the hole's diameters: 0 or above it. */
export function lowerDeviation({ P }: NominalSize, deviation: HoleDeviation): Quantity {
  if (deviation === "H") return exact("EI", 0, um, DEVIATIONS);
  const printed = printedDeviation.g[key_mm(P)];
  if (printed !== undefined) return exact("EI", printed, um, SEEN_IN_LIMITS);
  return rounded("EI", lowerDeviationG({ P }), 0, sourceFor("deviation", deviation, P));
}

const FORMULAS = "ISO 965-1:2013, 13 (from memory, checked against its tables)";
const FORMULAS_FROM_MEMORY = "ISO 965-1:2013, 13 (from memory)";
const TABLES = "ISO 965-1:2013, tables of tolerances";
const DEVIATIONS = "ISO 965-1:2013, table of fundamental deviations";
const DEVIATIONS_FROM_MEMORY = `${DEVIATIONS} (from memory)`;
const SEEN_IN_LIMITS = "printed tables of limits of ISO 965-2 type";
const ROUNDED = "ISO 965-1:2013, 13 (from memory, checked against its tables); ISO 3:1973, series R40";
const CONTINUED =
  "ISO 965-1:2013, 13, continued below the pitches its tables print (judgement); ISO 3:1973, series R40";

const majorOfGrade6 = numericalFormula("T_d_6 = 180 * P^(2/3) - 3.15 / sqrt(P)", { P: mm, T_d_6: um }, FORMULAS);
const plugPitchOfGrade6 = numericalFormula("T_d2_6 = 90 * P^0.4 * d_m^0.1", { P: mm, d_m: mm, T_d2_6: um }, FORMULAS);
const minorOfGrade6Below1 = numericalFormula("T_D1_6 = 433 * P - 190 * P^1.22", { P: mm, T_D1_6: um }, FORMULAS);
const minorOfGrade6From1 = numericalFormula("T_D1_6 = 230 * P^0.7", { P: mm, T_D1_6: um }, FORMULAS);
const upperDeviations = {
  e: numericalFormula("es_e = -(50 + 11 * P)", { P: mm, es_e: um }, FORMULAS_FROM_MEMORY),
  f: numericalFormula("es_f = -(30 + 11 * P)", { P: mm, es_f: um }, FORMULAS_FROM_MEMORY),
  g: numericalFormula("es_g = -(15 + 11 * P)", { P: mm, es_g: um }, FORMULAS),
};
const lowerDeviationG = numericalFormula("EI_G = 15 + 11 * P", { P: mm, EI_G: um }, FORMULAS);
const geometricMean = formula("d_m = sqrt(d_low * d_high)", { d_low: mm, d_high: mm, d_m: mm }, FORMULAS);

/** The steps of diameter with their geometric means, made once because every press of a stepper asks for them. */
const diameterSteps = diameterSteps_mm.slice(1).map((high_mm, i) => {
  const d_low = exact("d_low", diameterSteps_mm[i] as number, mm, FORMULAS);
  return { high_mm, d_m: geometricMean({ d_low, d_high: exact("d_high", high_mm, mm, FORMULAS) }) };
});

function pitchOfGrade6({ d, P }: NominalSize): Quantity {
  const d_mm = key_mm(d);
  const step = d_mm > diameterSteps_mm[0] ? diameterSteps.find(({ high_mm }) => d_mm <= high_mm) : undefined;
  if (!step) throw new RangeError(`a pitch-diameter tolerance is not given for a diameter of ${d_mm} mm`);
  const printed = printedGrade6.T_d2[step.high_mm]?.[key_mm(P)];
  return printed === undefined ? plugPitchOfGrade6({ P, d_m: step.d_m }) : fromTable("T_d2_6", printed);
}

/** A size as the key of a table: what SI and back added in the last digits is taken off. */
const key_mm = (size: Quantity): number => Math.round(valueIn(mm, size) * 1e6) / 1e6;

const fromTable = (symbol: string, value_um: number): Quantity => exact(symbol, value_um, um, TABLES);

const stepped = (name: ToleranceName, grade6: Quantity, grade: number, steps: number, P: Quantity): Quantity =>
  rounded(name, grade6, steps, sourceFor(name, `${grade}`, P));

const sourceFor = (name: ToleranceName | "deviation", key: string, P: Quantity): string =>
  key_mm(P) < (printedFrom_mm[name][key] ?? 0) ? CONTINUED : ROUNDED;

/**
 * R40(x, n): the preferred number nearest to x, n steps on. The standard rounds grade 6 and steps from there;
 * multiplying and rounding again misses its tables. Nominal sizes are exact, so no uncertainty is lost by rounding.
 */
function rounded(symbol: string, x: Quantity, steps: number, source: string): Quantity {
  const value = renard40(Number(valueIn(um, x).toPrecision(12)), steps) * um.inSI;
  const inputs = { [x.symbol]: x };
  const origin = { type: "worked", formula: `${symbol} = R40(${x.symbol}, ${steps})`, source, inputs } as const;
  return { symbol, value, unit: um, contributions: {}, origin };
}
