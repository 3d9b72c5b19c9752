import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { inches, one } from "../quantity/unit.ts";
import type { UnifiedSeries, UnifiedSize } from "../tables/asmeB1Sizes.ts";
import { sourceText } from "../tables/source.ts";
import { unifiedStressArea } from "./inchStressArea.ts";
import { flankOf60, type ThreadForm } from "./threadForm.ts";

/**
 * A unified inch thread by its basic sizes, as "1/4-20 UNC". Symbols as for metric threads, d for the basic major diameter
 * and d_3 for the root of a plug with a rounded one, UNR (from memory; it is drawn, and nothing is reckoned from it).
 */
export type UnifiedThread = ThreadForm & {
  readonly type: "unified";
  readonly series: UnifiedSeries;
  /** Threads per inch. */
  readonly n: Quantity;
  readonly H: Quantity;
  /** The length of engagement that the tolerances are reckoned for. */
  readonly L_E: Quantity;
  readonly A_s: Quantity;
};

const PROFILE = "ASME B1.1-2003, 2 (from memory, checked against its tables)";

const pitch = numericalFormula("P = 1 / n", { n: one, P: inches }, PROFILE);
const triangle = formula("H = sqrt(3) / 2 * P", { P: inches, H: inches }, PROFILE);
const pitchDiameter = formula("d_2 = d - 3/4 * H", { d: inches, H: inches, d_2: inches }, PROFILE);
const minorDiameter = formula("D_1 = d - 5/4 * H", { d: inches, H: inches, D_1: inches }, PROFILE);
const rootDiameter = formula("d_3 = d - 11/8 * H", { d: inches, H: inches, d_3: inches }, PROFILE);

const ENGAGEMENT = "ASME B1.1-2003, 5.8 (from memory, checked against its tables)";
const diameterLong = formula("L_E = d", { d: inches, L_E: inches }, ENGAGEMENT);
const ninePitches = formula("L_E = 9 * P", { P: inches, L_E: inches }, ENGAGEMENT);

/** The basic profile of a standard size. */
export function unifiedThread({ designation, D_in, n, series, source }: UnifiedSize): UnifiedThread {
  const d = exact("d", D_in, inches, sourceText(source));
  const perInch = exact("n", n, one, sourceText(source));
  const P = pitch({ n: perInch });
  const H = triangle({ P });
  return {
    type: "unified",
    designation,
    series,
    d,
    n: perInch,
    P,
    H,
    alpha: flankOf60,
    d_2: pitchDiameter({ d, H }),
    D_1: minorDiameter({ d, H }),
    d_3: rootDiameter({ d, H }),
    L_E: isReckonedByDiameter(series, n) ? diameterLong({ d }) : ninePitches({ P }),
    A_s: unifiedStressArea({ d, P }),
  };
}

/** 4-UN, 6-UN and 8-UN go with the coarse and fine series, and so does 1-14 UNS, a fine thread of earlier editions. */
function isReckonedByDiameter(series: UnifiedSeries, n: number): boolean {
  switch (series) {
    case "UNC":
    case "UNF":
    case "UNS":
      return true;
    case "UNEF":
      return false;
    case "UN":
      return n <= 8;
    default:
      return series satisfies never;
  }
}
