import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC, h, MPa, mm, Nm, one } from "../quantity/unit.ts";
import {
  type AnaerobicMetal,
  type AnaerobicStrength,
  anaerobicLimits,
  anaerobicMetals,
  anaerobicStrengths,
} from "../tables/cureData.ts";
import { sourceText } from "../tables/source.ts";

/** Where an anaerobic is to cure. */
export type AnaerobicJoint = {
  /** Clearance in diameter. */
  readonly gap: Quantity;
  readonly T: Quantity;
  readonly metals: readonly AnaerobicMetal[];
  readonly activator: boolean;
  readonly oily: boolean;
};

export type AnaerobicHindrance =
  | "gap above what cures at all"
  | "gap above what any grade is used for"
  | "oil on the metal"
  | "colder than it cures reliably"
  | "needs activator";

export type AnaerobicCure =
  | {
      readonly type: "cures";
      readonly grade: "locker" | "high-viscosity sealant";
      /** To full strength. */
      readonly full: Quantity;
      readonly factor: Quantity;
    }
  | { readonly type: "does not cure"; readonly hindrances: readonly AnaerobicHindrance[] };

/** Whether an anaerobic cures in a joint, with which grade, and when it is at full strength. */
export function anaerobicCure(joint: AnaerobicJoint): AnaerobicCure {
  const hindrances = hindrancesOf(joint);
  if (hindrances.length > 0) return { type: "does not cure", hindrances };
  const factor = temperatureFactor(joint.T);
  const grade = valueIn(mm, joint.gap) <= anaerobicLimits.locker_mm.value ? "locker" : "high-viscosity sealant";
  return { type: "cures", grade, full: fullTime({ t_0: fullAtRoom, f: factor }), factor };
}

/** How many times longer an anaerobic takes than at room temperature; never less than once. */
export function temperatureFactor(T: Quantity): Quantity {
  const at = exact("T_0", anaerobicLimits.full_h.at_degC, degC, "room temperature");
  const n = exact("a", anaerobicLimits.slowerPer10K.value, one, sourceText(anaerobicLimits.slowerPer10K.source));
  return T.value < at.value ? colder({ a: n, T_0: at, T }) : exact("f", 1, one, "room temperature or warmer");
}

/** The torque T that turns a seatless plug out of a cured anaerobic of shear strength tau, engaged over l. */
export const breakawayTorque = (tau: Quantity, d_2: Quantity, engaged: Quantity): Quantity =>
  breakaway({ tau, d_2, l: engaged });

/** The range of breakaway torques of a strength class. High strength strips a weak boss at the next opening. */
export function breakawayRange(strength: AnaerobicStrength, d_2: Quantity, engaged: Quantity) {
  const { low_MPa, high_MPa } = anaerobicStrengths[strength];
  const at = (tau_MPa: number): Quantity =>
    breakaway({ tau: exact("tau", tau_MPa, MPa, "shear strength of its class (from memory)"), d_2, l: engaged });
  return { low: at(low_MPa), high: at(high_MPa) };
}

function hindrancesOf({ gap, T, metals, activator, oily }: AnaerobicJoint): readonly AnaerobicHindrance[] {
  const gap_mm = valueIn(mm, gap);
  const inactive = metals.some((metal) => anaerobicMetals[metal] === "needs activator");
  const found: readonly (AnaerobicHindrance | false)[] = [
    gap_mm > anaerobicLimits.noCureAbove_mm.value && "gap above what cures at all",
    gap_mm > anaerobicLimits.highViscosity_mm.value &&
      gap_mm <= anaerobicLimits.noCureAbove_mm.value &&
      "gap above what any grade is used for",
    oily && "oil on the metal",
    valueIn(degC, T) < anaerobicLimits.coldest_degC.value && "colder than it cures reliably",
    inactive && !activator && "needs activator",
  ];
  return found.filter((it) => it !== false);
}

const fullAtRoom = exact("t_0", anaerobicLimits.full_h.value, h, sourceText(anaerobicLimits.full_h.source));

const colder = numericalFormula(
  "f = a^((T_0 - T) / 10)",
  { a: one, T_0: degC, T: degC, f: one },
  sourceText(anaerobicLimits.slowerPer10K.source),
);
const fullTime = formula("t = t_0 * f", { t_0: h, f: one, t: h }, "full cure at room temperature times the factor");
const breakaway = formula(
  "T = tau * pi * d_2^2 * l / 2",
  { tau: MPa, d_2: mm, l: mm, T: Nm },
  "shear on the pitch cylinder of a thread without seat",
);
