import { formula } from "../quantity/formula.ts";
import { type Quantity, standardUncertainty, valueIn } from "../quantity/quantity.ts";
import { L, ml, ml_mm, mm } from "../quantity/unit.ts";
import { judgement, type Source } from "../tables/source.ts";

/** What a millimetre of level holds, learnt by drawing a known volume. */
export type Calibration =
  | {
      readonly type: "known";
      readonly perHeight: Quantity;
      /** u(k)/k. */
      readonly relative: number;
      readonly strength: "firm" | "weak";
      /** The draw that would have been firm. */
      readonly betterDraw_ml: number;
      readonly plausibility: "as expected" | "ask again";
    }
  | { readonly type: "level did not fall" }
  /** The fall is less than `least_mm`, three of its standard uncertainties, so its quotient means nothing. */
  | { readonly type: "fall too small"; readonly least_mm: number };

/**
 * The volume per height k = dV/dh from a volume `drawn` between two levels against the lip, with its uncertainty; `fill` is
 * the whole fill, or null where nobody knows it.
 */
export function calibration(drawn: Quantity, before: Quantity, after: Quantity, fill: Quantity | null): Calibration {
  const fall = fallOf({ h_1: before, h_2: after });
  if (!(fall.value > 0)) return { type: "level did not fall" };
  const least = 3 * standardUncertainty(fall);
  if (fall.value < least) return { type: "fall too small", least_mm: least / mm.inSI };
  const perHeight = perHeightOf({ V: drawn, Dh: fall });
  const k = valueIn(ml_mm, perHeight);
  const relative = standardUncertainty(perHeight) / perHeight.value;
  const firmDraw_ml = (k * standardUncertainty(fall)) / mm.inSI / FIRM_SHARE;
  return {
    type: "known",
    perHeight,
    relative,
    strength: relative <= FIRM_SHARE ? "firm" : "weak",
    betterDraw_ml: Math.max(LEAST_DRAW_ml, firmDraw_ml),
    plausibility: isPlausible(k, fill) ? "as expected" : "ask again",
  };
}

/** The volumes per height at which nobody asks again, for cases of 1 to 1.5 l. */
const plausiblePerHeight: { readonly low_ml_mm: number; readonly high_ml_mm: number; readonly source: Source } = {
  low_ml_mm: 8,
  high_ml_mm: 35,
  source: judgement("cases of 1 to 1.5 l hold 12 to 25 ml a millimetre; other fills scale with their surface"),
};

const fallOf = formula("Dh = h_1 - h_2", { h_1: mm, h_2: mm, Dh: mm }, "plain difference of two readings");
const perHeightOf = formula(
  "k = V / Dh",
  { V: ml, Dh: mm, k: ml_mm },
  "plain geometry: volume drawn over fall of level",
);

/** A draw of 100 ml from a case of 17 ml/mm gives 12 %; 50 ml give 24 %. */
const FIRM_SHARE = 0.15;
const LEAST_DRAW_ml = 100;

/** Cases of one shape scale as lengths do, so their surface goes with the fill to the power 2/3. */
function isPlausible(k_ml_mm: number, fill: Quantity | null): boolean {
  const fill_L = fill ? valueIn(L, fill) : 1;
  const scale = (fill_L / Math.min(Math.max(fill_L, 1), 1.5)) ** (2 / 3);
  const { low_ml_mm, high_ml_mm } = plausiblePerHeight;
  return k_ml_mm >= low_ml_mm * scale && k_ml_mm <= high_ml_mm * scale;
}
