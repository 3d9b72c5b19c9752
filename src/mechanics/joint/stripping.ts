import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { deg, kN, MPa, mm, mm2, one, turn } from "../quantity/unit.ts";
import type { ThreadForm } from "../threads/threadForm.ts";

const stripAreas = "FED-STD-H28/2B and ASME B1.1, appendix B: shear areas (wording of Machinery's Handbook)";

/**
 * Shear area A_n of the hole's thread over the engaged length L, on the cylinder of the plug's major diameter.
 * Least material takes d at its minimum and D_2 at its maximum. The sources print it for flanks of alpha = 30°; the flanks
 * are straight there, so half the angle of any other straight flank takes its place (derived).
 */
export const internalStripArea = formula(
  "A_n = pi * d * L / P * (P / 2 + (d - D_2) * tan(alpha))",
  { d: mm, L: mm, P: mm, D_2: mm, alpha: deg, A_n: mm2 },
  stripAreas,
);

/** Shear area A_s of the plug's thread over the engaged length L, on the cylinder of the hole's minor diameter. */
export const externalStripArea = formula(
  "A_s = pi * D_1 * L / P * (P / 2 + (d_2 - D_1) * tan(alpha))",
  { D_1: mm, L: mm, P: mm, d_2: mm, alpha: deg, A_s: mm2 },
  stripAreas,
);

/** The share eta of a turn's strength that is left with the height h of its thread; s is between 0.42 and 1. */
export const heightFactor = formula(
  "eta = 1 - s * (1 - h)",
  { s: one, h: one, eta: one },
  "between crushing in proportion to height and tap-drill practice (judgement)",
);

/** The share f of the load that the first of n turns takes; k grows with the stiffness of the case material. */
export const firstTurnShare = formula(
  "f = 1 - sinh(k * (n - 1)) / sinh(k * n)",
  { k: one, n: turn, f: one },
  "Yamamoto's load distribution in one constant (form from memory)",
);

/** How much more than the mean the first of n turns takes, against three turns. */
export const crowding = formula(
  "c = n * f / (3 * f_3)",
  { n: turn, f: one, f_3: one, c: one },
  "Yamamoto's load distribution in one constant (form from memory)",
);

/** VDI prints 1 / cos(30°) as 1.155. */
const plugYield = formula(
  "F_y = R_p * A_s / sqrt(1 + 3 * (3/2 * d_2 / d_0 * (P / (pi * d_2) + mu / cos(alpha)))^2)",
  { R_p: MPa, A_s: mm2, d_2: mm, d_0: mm, P: mm, mu: one, alpha: deg, F_y: kN },
  "VDI 2230-1:2015, (R8/1), the whole of the yield strength (form from memory)",
);

const stressDiameter = formula(
  "d_0 = sqrt(4 * A_s / pi)",
  { A_s: mm2, d_0: mm },
  "VDI 2230-1:2015, 5.4.1: the diameter of the stress area (form from memory)",
);

const thirdRule = formula(
  "F = pi * d_2 * R_m * k * n * P / 3",
  { d_2: mm, R_m: MPa, k: one, n: turn, P: mm, F: kN },
  "NASA RP-1228 (Barrett), tapped holes: one third of the shear of full turns",
);

/** The force at which the plug's shank yields in tension and torsion together, for its yield strength R_p. */
export const plugYieldForce = ({ d_2, P, alpha }: ThreadForm, A_s: Quantity, R_p: Quantity, mu: Quantity): Quantity =>
  plugYield({ R_p, A_s, d_2, d_0: stressDiameter({ A_s }), P, mu, alpha });

/** The same over a column of frictions, N. */
export const plugYieldForces = (thread: ThreadForm, A_s: Quantity, R_p: Quantity, mu: Float64Array): Float64Array =>
  plugYield.over({
    R_p: R_p.value,
    A_s: A_s.value,
    d_2: thread.d_2.value,
    d_0: stressDiameter({ A_s }).value,
    P: thread.P.value,
    alpha: thread.alpha.value,
    mu,
  });

/** The strip force by the third rule of NASA RP-1228, from a public source, so that nobody has to trust our ranges alone. */
export const thirdRuleForce = (thread: ThreadForm, R_m: Quantity, k: Quantity, n: Quantity): Quantity =>
  thirdRule({ d_2: thread.d_2, R_m, k, n, P: thread.P });
