import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inches, mm, mm2 } from "../quantity/unit.ts";
import type { ThreadForm } from "./threadForm.ts";

/** Nominal stress area A_s of a unified thread. */
export const unifiedStressArea = ({ d, P }: Pick<ThreadForm, "d" | "P">): Quantity => unified({ d, P });

/** ASME prints 0.9743/n; 1/n is the pitch. */
const unified = formula(
  "A_s = pi / 4 * (d - 0.9743 * P)^2",
  { d: inches, P: inches, A_s: mm2 },
  "ASME B1.1-2003, appendix B (from memory, checked against published areas)",
);

/** Nominal stress area A_s of a pipe thread. */
export const pipeStressArea = ({ d_2, d_3 }: Pick<ThreadForm, "d_2" | "d_3">): Quantity => pipe({ d_2, d_3 });

const pipe = formula(
  "A_s = pi / 4 * ((d_2 + d_3) / 2)^2",
  { d_2: mm, d_3: mm, A_s: mm2 },
  "the form of ISO 898-1:2013, 9.1.6.1; ISO 228-1 gives no stress area (judgement)",
);
