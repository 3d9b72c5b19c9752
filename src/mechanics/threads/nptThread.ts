import { formula, numericalFormula } from "../quantity/formula.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { inches, one } from "../quantity/unit.ts";
import type { NptSize } from "../tables/nptSizes.ts";
import { sourceText } from "../tables/source.ts";
import { pipeStressArea } from "./inchStressArea.ts";
import { flankOf60, type ThreadForm } from "./threadForm.ts";
import { roundedTo } from "./unifiedRounding.ts";

/**
 * An American taper pipe thread, as "1/2-14 NPT". d is the outside diameter D of the pipe, which no crest stands above; d_2
 * and D_1 are those at the gauge plane (E_1, K_1), L_1 is measured from the small end of the plug.
 */
export type NptThread = ThreadForm & {
  readonly type: "NPT";
  readonly size: string;
  /** Pitch diameter at the small end of the plug. */
  readonly E_0: Quantity;
  /** Height of the thread. */
  readonly h: Quantity;
  /** Length of hand-tight engagement, and of all effective thread. */
  readonly L_1: Quantity;
  readonly L_2: Quantity;
  readonly A_s: Quantity;
};

/** The American taper pipe thread of a size of ASME B1.20.1. */
export function nptThread({ size, n, D_in, L_1_in, source }: NptSize): NptThread {
  const given = (symbol: string, value: number, unit = inches) => exact(symbol, value, unit, sourceText(source));
  const D = given("D", D_in);
  const L_1 = given("L_1", L_1_in);
  const perInch = given("n", n, one);
  const P = pitch({ n: perInch });
  const E_0 = roundedTo("E_0", pitchAtSmallEnd({ D, n: perInch }), 5, inches, ROUNDED);
  const E_1 = roundedTo("E_1", pitchAtGaugePlane({ E_0, L_1 }), 5, inches, ROUNDED);
  const h = threadHeight({ P });
  const K_1 = minorAtGaugePlane({ E_1, h });
  const d_3 = as("d_3", K_1);
  return {
    type: "NPT",
    designation: `${size}-${n} NPT`,
    size,
    d: D,
    P,
    E_0,
    d_2: E_1,
    D_1: K_1,
    d_3,
    alpha: flankOf60,
    h,
    L_1,
    L_2: effectiveLength({ D, n: perInch }),
    A_s: pipeStressArea({ d_2: E_1, d_3 }),
  };
}

const SOURCE = "ASME B1.20.1-2013, 4 (from memory, checked against its table 2)";
const ROUNDED = "ASME B1.20.1-2013, table 2 as it rounds";

const pitch = numericalFormula("P = 1 / n", { n: one, P: inches }, SOURCE);
const pitchAtSmallEnd = numericalFormula(
  "E_0u = D - (0.05 * D + 1.1) / n",
  { D: inches, n: one, E_0u: inches },
  SOURCE,
);
const pitchAtGaugePlane = formula("E_1u = E_0 + 0.0625 * L_1", { E_0: inches, L_1: inches, E_1u: inches }, SOURCE);
const threadHeight = formula("h = 0.8 * P", { P: inches, h: inches }, SOURCE);
const minorAtGaugePlane = formula("K_1 = E_1 - h", { E_1: inches, h: inches, K_1: inches }, SOURCE);
const effectiveLength = numericalFormula("L_2 = (0.80 * D + 6.8) / n", { D: inches, n: one, L_2: inches }, SOURCE);
