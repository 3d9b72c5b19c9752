import type { Quantity } from "../quantity/quantity.ts";
import { mm2_s } from "../quantity/unit.ts";
import { isoGradeReach, isoGrades } from "../tables/iso3448.ts";
import { type EngineHotGrade, engineHotRows } from "../tables/saeJ300.ts";
import { type GearGradeEdition, type GearHotGrade, saeJ306 } from "../tables/saeJ306.ts";
import { asEntered } from "./viscosityLimits.ts";

/** Where a viscosity at 100 °C stands among the gear grades of an edition. */
export type GearGradeFound =
  | {
      readonly type: "gear grade";
      readonly edition: GearGradeEdition;
      readonly grade: GearHotGrade;
      /** Its place in the edition, the thinnest grade at 0. */
      readonly place: number;
      readonly from_mm2_s: number;
      readonly below_mm2_s: number | null;
    }
  | { readonly type: "below every grade"; readonly edition: GearGradeEdition; readonly from_mm2_s: number };

/** The gear grade of an oil with the viscosity `kv100` at 100 °C. SAE J306, table 1, in the edition asked for. */
export function gearGrade(kv100: Quantity, edition: GearGradeEdition): GearGradeFound {
  const nu = asEntered(mm2_s, kv100);
  const { hot } = saeJ306[edition];
  const place = hot.findLastIndex(({ from_mm2_s }) => nu >= from_mm2_s);
  const row = hot[place];
  return row
    ? { type: "gear grade", edition, place, ...row }
    : { type: "below every grade", edition, from_mm2_s: hot[0]?.from_mm2_s ?? Number.NaN };
}

/** The gear grades that viscosities at 100 °C from `least` to `most` fall in, from thin to thick. */
export function gearGradesBetween(least: Quantity, most: Quantity, edition: GearGradeEdition): readonly GearHotGrade[] {
  const [low, high] = [asEntered(mm2_s, least), asEntered(mm2_s, most)];
  return saeJ306[edition].hot
    .filter(({ from_mm2_s, below_mm2_s }) => high >= from_mm2_s && low < (below_mm2_s ?? Number.POSITIVE_INFINITY))
    .map(({ grade }) => grade);
}

/**
 * Every engine grade whose row holds the viscosity `kv100` at 100 °C, from thin to thick; none outside the table.
 * Rows 8 to 20 overlap, so there may be two. SAE J300, table 1.
 */
export function engineGrades(kv100: Quantity): readonly EngineHotGrade[] {
  const nu = asEntered(mm2_s, kv100);
  return engineHotRows
    .filter(({ from_mm2_s, below_mm2_s }) => nu >= from_mm2_s && nu < below_mm2_s)
    .map(({ grade }) => grade);
}

/** Where a viscosity at 40 °C stands among the industrial grades; null where there is no grade on that side. */
export type IsoGradeFound =
  | { readonly type: "ISO VG"; readonly VG_mm2_s: number }
  | { readonly type: "between grades"; readonly below_mm2_s: number | null; readonly above_mm2_s: number | null };

/** The industrial grade whose midpoint lies within 10 % of the viscosity `kv40` at 40 °C. ISO 3448:1992, table 1. */
export function isoGrade(kv40: Quantity): IsoGradeFound {
  const nu = asEntered(mm2_s, kv40);
  const found = isoGrades.find(({ VG_mm2_s }) => Math.abs(nu / VG_mm2_s - 1) <= isoGradeReach + 1e-9);
  if (found) return { type: "ISO VG", VG_mm2_s: found.VG_mm2_s };
  return {
    type: "between grades",
    below_mm2_s: isoGrades.findLast(({ VG_mm2_s }) => VG_mm2_s < nu)?.VG_mm2_s ?? null,
    above_mm2_s: isoGrades.find(({ VG_mm2_s }) => VG_mm2_s > nu)?.VG_mm2_s ?? null,
  };
}
