import { formula } from "../quantity/formula.ts";
import { kN, MPa, mm, mm2, one, turn } from "../quantity/unit.ts";

/** The force F_s at which an area A strips in a material of tensile strength R_m and shear ratio k. */
export const stripForce = formula(
  "F_s = A * R_m * k",
  { A: mm2, R_m: MPa, k: one, F_s: kN },
  "VDI 2230-1:2015, 5.5.5 (form from memory)",
);

/** What is left of a strip force: the model against castings (m), the height of the turns (eta), their sharing (q). */
export const forceLeft = formula(
  "F = F_s * m * eta * q",
  { F_s: kN, m: one, eta: one, q: one, F: kN },
  "shear model times its scatter, part-height turns and uneven sharing (judgement)",
);

/** The engaged length L of n turns of pitch P. */
export const engagedLength = formula("L = n * P", { n: turn, P: mm, L: mm }, "plain geometry");

/** The turns that carry: those caught less the lead-in. */
export const turnsLessLeadIn = formula(
  "n = n_c - n_l",
  { n_c: turn, n_l: turn, n: turn },
  "VDI 2230-1 loses up to 0.8 P at the ends of the engagement (from memory)",
);
