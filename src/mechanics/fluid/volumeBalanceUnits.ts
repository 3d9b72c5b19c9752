import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";
import {
  cm3,
  imperialGallons,
  imperialPint,
  imperialQuart,
  L,
  m3,
  ml,
  mm3,
  type Unit,
  usGallons,
  usPint,
  usQuart,
} from "../quantity/unit.ts";

/**
 * Two units whose confusion gives a ratio: the volume out was written in `writtenAs` where `meant` was on the scale,
 * or the expected volume was written in `meant` where the book says `writtenAs`.
 */
export type UnitPair = {
  readonly writtenAs: string;
  readonly meant: string;
  /** The ratio that this confusion gives with a case that held what it should. */
  readonly ratio: number;
  /** Whether one of the two readings was written in one of these units, as the confusion asks. */
  readonly asWritten: boolean;
};

/**
 * The confusions of units that explain the ratio of volume out to volume expected, the likeliest first.
 * A share from nothing to `mostResidue` may have stayed in; the ratio itself is taken within twice its uncertainty.
 * `written` are the units of the volume out and of the volume expected.
 */
export function unitPairsFor(
  ratio: Quantity,
  mostResidue: number,
  [outUnit, expectedUnit]: readonly [Unit, Unit],
): { readonly fitsAsRead: boolean; readonly unitPairs: readonly UnitPair[] } {
  if (ratio.value <= 0) return { fitsAsRead: false, unitPairs: [] };
  const doubt = (2 * standardUncertainty(ratio)) / ratio.value;
  const shortfall = -Math.log(1 - mostResidue);
  /** How far the ratio stands beyond what `expected` and the residue explain, in logarithms; 0 is explained. */
  const beyond = (expected: number): number => {
    const off = Math.log(ratio.value / expected);
    return Math.max(0, off - doubt, -off - shortfall - doubt);
  };
  const farOff = (expected: number): number => Math.abs(Math.log(ratio.value / expected) + shortfall / 2);
  const unitPairs = confusions
    .map(([writtenAs, meant]) => ({
      writtenAs: writtenAs.symbol,
      meant: meant.symbol,
      ratio: writtenAs.inSI / meant.inSI,
      asWritten: sameMeasure(writtenAs, outUnit) || sameMeasure(meant, expectedUnit),
    }))
    .filter((it) => beyond(it.ratio) <= ROUNDING)
    .sort((a, b) => Number(b.asWritten) - Number(a.asWritten) || farOff(a.ratio) - farOff(b.ratio));
  return { fitsAsRead: beyond(1) <= ROUNDING, unitPairs };
}

/** A ratio worked from conversions printed to four digits still counts as theirs. */
const ROUNDING = 5e-4;

/** Millilitres and cubic centimetres are marks on a litre jug. */
const sameMeasure = (a: Unit, b: Unit): boolean => a.symbol === (metric.includes(b.symbol) ? L.symbol : b.symbol);
const metric: readonly string[] = [ml.symbol, cm3.symbol, m3.symbol, mm3.symbol];

const units = [L, usPint, usQuart, usGallons, imperialPint, imperialQuart, imperialGallons] as const;

const confusions: readonly (readonly [Unit, Unit])[] = units.flatMap((writtenAs) =>
  units.filter((meant) => meant !== writtenAs).map((meant) => [writtenAs, meant] as const),
);
