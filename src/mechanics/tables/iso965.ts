/**
 * Steps of series R40 from grade 6 to each grade of a tolerance. Keys are the grades the standard has.
 * Source: ISO 965-1:2013, 13 (from memory, checked against its tables).
 */
export const gradeSteps = {
  /** T_d, major diameter of the plug. */
  T_d: { 4: -8, 6: 0, 8: 8 },
  /** T_d2, pitch diameter of the plug. */
  T_d2: { 3: -12, 4: -8, 5: -4, 6: 0, 7: 4, 8: 8, 9: 12 },
  /** T_D1, minor diameter of the hole. */
  T_D1: { 4: -8, 5: -4, 6: 0, 7: 4, 8: 8 },
  /** T_D2, pitch diameter of the hole, counted from T_d2 of grade 6. */
  T_D2: { 4: -3, 5: 1, 6: 5, 7: 9, 8: 13 },
} as const;

export type ToleranceName = keyof typeof gradeSteps;
export type MajorGrade = keyof typeof gradeSteps.T_d;
export type PlugPitchGrade = keyof typeof gradeSteps.T_d2;
export type MinorGrade = keyof typeof gradeSteps.T_D1;
export type HolePitchGrade = keyof typeof gradeSteps.T_D2;

/** Positions of the tolerance zone of a plug (external thread), and of a hole (internal thread). */
export const plugDeviations = ["e", "f", "g", "h"] as const;
export const holeDeviations = ["G", "H"] as const;
export type PlugDeviation = (typeof plugDeviations)[number];
export type HoleDeviation = (typeof holeDeviations)[number];

/**
 * The steps of diameter over which T_d2 and T_D2 stay the same, in millimetres; the lower end of a step is left out.
 * ISO 965-1 goes on to 355; above 180 its T_D2 departs from the formula, so we stop there.
 */
export const diameterSteps_mm = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180] as const;

/** Tolerances of grade 6 for which the table prints another value than the formula gives. In µm, by pitch in mm. */
export const printedGrade6: {
  readonly T_d: Readonly<Record<number, number>>;
  readonly T_D1: Readonly<Record<number, number>>;
  /** By the upper end of the diameter step in mm, then by pitch. */
  readonly T_d2: Readonly<Record<number, Readonly<Record<number, number>>>>;
} = {
  T_d: { 4: 475 },
  T_D1: { 0.5: 140, 2.5: 450 },
  T_d2: { 5.6: { 0.5: 75 }, 90: { 5: 250 } },
};

/**
 * Fundamental deviations for which the table prints another value than the formula gives. Magnitudes in µm, by pitch
 * in mm. `g` serves G too and was seen in printed tables of limits; `e` and `f` are from memory.
 */
export const printedDeviation: Readonly<Record<"e" | "f" | "g", Readonly<Record<number, number>>>> = {
  e: { 0.5: 50, 0.6: 53, 0.75: 56 },
  f: { 0.45: 35, 0.6: 36, 0.8: 38, 1.25: 42, 1.5: 45, 1.75: 48, 2: 52, 2.5: 58, 3.5: 70 },
  g: { 0.75: 22, 1.12: 27 },
};

/**
 * The smallest pitch for which the standard prints a grade or a deviation, in millimetres; what is not listed is
 * printed from 0.2 on. Below it we continue the formula and say so. From memory.
 */
export const printedFrom_mm: Readonly<Record<ToleranceName | "deviation", Readonly<Record<string, number>>>> = {
  T_d: { 8: 0.8 },
  T_d2: { 7: 0.35, 8: 0.8, 9: 0.8 },
  T_D1: { 5: 0.25, 6: 0.3, 7: 0.5, 8: 0.8 },
  T_D2: { 5: 0.25, 6: 0.3, 7: 0.5, 8: 0.8 },
  deviation: { e: 0.5, f: 0.35 },
};
