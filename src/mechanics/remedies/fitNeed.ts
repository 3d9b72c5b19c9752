import { formula } from "../quantity/formula.ts";
import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";

/** What a method needs of the port, and whether it is there. */
export type Need = {
  readonly what: NeedOf;
  /** Doubtful within two standard uncertainties either way; what nobody measured is not known, and never guessed. */
  readonly state: "met" | "doubtful" | "not met" | "not known";
  readonly has: Quantity | null;
  readonly least: Quantity;
};

export type NeedOf =
  | "depth"
  | "wall left"
  | "wall left by the quarter rule"
  | "wall left by the trade's rule"
  | "room behind for the tap"
  | "room in front for the tap"
  | "wall of the bush"
  | "turns of a healthy port";

const margin = formula("m_f = x - x_0", { x: mm, x_0: mm, m_f: mm }, "what is there less what is needed");

/** Whether a length is there, with its uncertainty. */
export function need(what: NeedOf, has: Quantity | null, least: Quantity): Need {
  if (!has) return { what, state: "not known", has, least };
  const m = margin({ x: has, x_0: least });
  const twice = 2 * standardUncertainty(m);
  const state = m.value >= twice - 1e-12 ? "met" : m.value < -twice ? "not met" : "doubtful";
  return { what, state, has, least };
}
