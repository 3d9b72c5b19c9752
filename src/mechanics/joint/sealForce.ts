import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { kN, MPa, mm, mm2, N_mm } from "../quantity/unit.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { sourceText } from "../tables/source.ts";
import type { Seal } from "./port.ts";
import { meanCircumference, ringArea, type SealNeed } from "./sealTorque.ts";

const pressedSeal = formula(
  "F_need = p * A",
  { p: MPa, A: mm2, F_need: kN },
  "ASME VIII-1, appendix 2: seating stress times the area it acts on",
);
const lineSeal = formula("F_need = q * C", { q: N_mm, C: mm, F_need: kN }, "line load on a lip or a bead (judgement)");

/** The clamp force F_need that closes a seal, with the spread of its range. */
export function sealForce(seal: Seal, need: SealNeed, ranges: Ranges): Quantity {
  const { distribution, unit, source } = ranges[need.range];
  const size = { D_o: seal.outside, D_i: seal.inside };
  return need.acts === "on an area"
    ? pressedSeal({ p: taken("p", distribution, unit, sourceText(source)), A: ringArea(size) })
    : lineSeal({ q: taken("q", distribution, unit, sourceText(source)), C: meanCircumference(size) });
}
