import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { deg, kN, mm, Nm, one } from "../quantity/unit.ts";
import type { ThreadForm } from "../threads/threadForm.ts";

const iso16047 = "ISO 16047:2005, (A.1) solved for the thread and the bearing face (form from memory)";

/** The arm T/F of a joint: what a newton of clamp force costs in torque. ISO 16047 prints it for alpha = 30°. */
export const torqueArm = formula(
  "r = P / (2 * pi) + mu_th * d_2 / (2 * cos(alpha)) + mu_b * D_b / 2",
  { P: mm, d_2: mm, alpha: deg, D_b: mm, mu_th: one, mu_b: one, r: mm },
  iso16047,
);

const torqueOf = formula("T = F * r", { F: kN, r: mm, T: Nm }, iso16047);
const forceOf = formula("F = T / r", { T: Nm, r: mm, F: kN }, iso16047);
const bearing = formula(
  "D_b = (D_o + D_i) / 2",
  { D_o: mm, D_i: mm, D_b: mm },
  "ISO 16047:2005, 3 (mean of the bearing face)",
);

/** What resists the wrench: the thread, the bearing face and the friction of each. */
export type TorquePath = {
  readonly thread: ThreadForm;
  readonly D_b: Quantity;
  readonly mu_th: Quantity;
  readonly mu_b: Quantity;
};

const arm = ({ thread: { P, d_2, alpha }, D_b, mu_th, mu_b }: TorquePath): Quantity =>
  torqueArm({ P, d_2, alpha, D_b, mu_th, mu_b });

/** The tightening torque T that sets up the clamp force `F`. */
export const tighteningTorque = (path: TorquePath, F: Quantity): Quantity => torqueOf({ F, r: arm(path) });

/** The clamp force F that the tightening torque `T` sets up. */
export const clampForce = (path: TorquePath, T: Quantity): Quantity => forceOf({ T, r: arm(path) });

/** The bearing diameter D_b of a ring or a sealed face, by its outside and inside diameters. */
export const bearingDiameter = (D_o: Quantity, D_i: Quantity): Quantity => bearing({ D_o, D_i });
