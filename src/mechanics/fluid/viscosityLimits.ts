import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm2_s, type Unit } from "../quantity/unit.ts";

/** A figure outside the limits that its source sets. Figures are on the scale of `unit`; null leaves an end open. */
export type OutsideLimits = {
  readonly type: "OutsideLimits";
  readonly symbol: string;
  readonly unit: string;
  readonly given: number;
  readonly least: number | null;
  readonly most: number | null;
  readonly source: string;
};

/** Limits of validity, both ends included, on the scale of `unit`. */
export type Limits = {
  readonly symbol: string;
  readonly unit: Unit;
  readonly least: number | null;
  readonly most: number | null;
  readonly source: string;
};

/** Viscosities for which ASTM D341 gives the full form of its equation. */
export const d341Limits: Limits = {
  symbol: "nu",
  unit: mm2_s,
  least: 0.21,
  most: 2e7,
  source: "ASTM D341-20, limits of the full equation (from memory)",
};

/** What is wrong with `q` under `limits`; null if nothing is. */
export function outside(q: Quantity, { symbol, unit, least, most, source }: Limits): OutsideLimits | null {
  const given = asEntered(unit, q);
  if (given >= (least ?? Number.NEGATIVE_INFINITY) && given <= (most ?? Number.POSITIVE_INFINITY)) return null;
  return { type: "OutsideLimits", symbol, unit: unit.symbol, given, least, most, source };
}

/** The value of `q` as it was entered: what SI and back added in the last digits is taken off, so 13.5 stays 13.5. */
export const asEntered = (unit: Unit, q: Quantity): number => Number(valueIn(unit, q).toPrecision(12));
