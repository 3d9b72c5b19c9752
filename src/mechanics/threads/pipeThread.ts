import { formula, numericalFormula } from "../quantity/formula.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { deg, mm, one } from "../quantity/unit.ts";
import { iso7GaugeLengths, type TaperPipeSize } from "../tables/iso7.ts";
import type { GTolerances, PipeSize } from "../tables/iso228.ts";
import { pipeRings } from "../tables/pipeRings.ts";
import type { OwnRings } from "../tables/plugRings.ts";
import { commonPractice, type Source, sourceText } from "../tables/source.ts";
import { pipeStressArea } from "./inchStressArea.ts";
import type { NptThread } from "./nptThread.ts";
import type { ThreadForm } from "./threadForm.ts";
import { roundedTo } from "./unifiedRounding.ts";

/** A pipe thread: parallel G (ISO 228-1), taper R in Rc or in parallel Rp (ISO 7-1), or NPT (ASME B1.20.1). */
export type PipeThread = ParallelPipeThread | TaperPipeThread | NptThread;

/** A parallel pipe thread by its basic sizes. */
export type ParallelPipeThread = WhitworthProfile & {
  readonly type: "G";
  readonly tolerances: GTolerances;
  /** The drill that it is tapped from. */
  readonly drill: Quantity;
  readonly source: Source;
};

/** A pipe thread of ISO 7-1, by its basic sizes at the gauge plane: R on the plug, a taper, in the hole Rc, a taper, or Rp, parallel. */
export type TaperPipeThread = WhitworthProfile & {
  readonly type: "R" | "Rc" | "Rp";
  /** From the small end of the plug to the gauge plane, and how far that may be off. */
  readonly gaugeLength: Quantity;
  readonly gaugeTolerance: Quantity;
};

/** The size of "G 1/2", "R 1/2", "Rc 1/2" and "Rp 1/2" is "1/2"; root of the plug and minor diameter of the hole are one. */
type WhitworthProfile = ThreadForm & {
  readonly size: string;
  readonly A_s: Quantity;
  /** The rings that tables list for plugs of this size. */
  readonly rings: OwnRings | null;
};

/** Growth of diameter along R, Rc and NPT threads. ISO 7-1:1994, 5; ASME B1.20.1-2013, 4. */
export const PIPE_TAPER = 1 / 16;

/** The parallel pipe thread of a size of ISO 228-1. */
export const parallelPipeThread = (size: PipeSize): ParallelPipeThread => ({
  type: "G",
  ...profile("G", size),
  tolerances: size.tolerances,
  drill: exact("D_t", size.drill_mm, mm, sourceText(commonPractice)),
  source: size.source,
});

/** The taper pipe thread of a size of ISO 7-1. */
export function taperPipeThread(type: TaperPipeThread["type"], size: TaperPipeSize): TaperPipeThread {
  const length = (symbol: string, value_mm: number): Quantity =>
    exact(symbol, value_mm, mm, sourceText(iso7GaugeLengths));
  return {
    type,
    ...profile(type, size),
    gaugeLength: length("L_g", size.gaugeLength_mm),
    gaugeTolerance: length("T_L", size.tolerance_mm),
  };
}

/** Flanks that enclose 55°, as of all Whitworth threads: G, R, Rc and Rp. */
const flankOf55: Quantity = exact("alpha", 27.5, deg, "ISO 228-1:2000, 3; ISO 7-1:1994, 4");

const PROFILE = "ISO 228-1:2000, 3; ISO 7-1:1994, 4";

const pitch = numericalFormula("P = 25.4 / n", { n: one, P: mm }, PROFILE);
const threadHeight = formula("h_u = 0.640327 * P", { P: mm, h_u: mm }, PROFILE);
const pitchDiameter = formula("d_2 = d - h", { d: mm, h: mm, d_2: mm }, PROFILE);
const minorDiameter = formula("D_1 = d - 2 * h", { d: mm, h: mm, D_1: mm }, PROFILE);

function profile(letters: string, { size, n, d_mm, source }: Pick<PipeSize, "size" | "n" | "d_mm" | "source">) {
  const d = exact("d", d_mm, mm, sourceText(source));
  const P = pitch({ n: exact("n", n, one, sourceText(source)) });
  // The tables subtract the height as they print it: the minor diameter of G 1 would else be 0.001 larger.
  const h = roundedTo("h", threadHeight({ P }), 3, mm, `${PROFILE}, as its tables round`);
  const designation = `${letters} ${size}`;
  const d_2 = pitchDiameter({ d, h });
  const D_1 = minorDiameter({ d, h });
  const d_3 = as("d_3", D_1);
  return {
    designation,
    size,
    d,
    P,
    d_2,
    D_1,
    d_3,
    alpha: flankOf55,
    A_s: pipeStressArea({ d_2, d_3 }),
    rings: pipeRings[size] ?? null,
  };
}
