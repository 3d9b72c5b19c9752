import { fromMemory, published, type Source } from "./source.ts";

/** A viscosity grade VG: its midpoint viscosity at 40 °C. */
export type IsoGradeRow = { readonly VG_mm2_s: number; readonly source: Source };

/** How far a grade reaches either side of its midpoint, as a share of it. ISO 3448:1992, table 1. */
export const isoGradeReach = 0.1;

const document = "ISO 3448:1992, table 1";
const SEEN = published(document);
const FROM_MEMORY = fromMemory(document);

const midpoints_mm2_s = [
  2.2, 3.2, 4.6, 6.8, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
] as const;

/** Industrial grades by midpoint viscosity at 40 °C, from thin to thick. There are gaps between them. */
export const isoGrades: readonly IsoGradeRow[] = midpoints_mm2_s.map((VG_mm2_s) => ({
  VG_mm2_s,
  source: VG_mm2_s <= 1000 ? SEEN : FROM_MEMORY,
}));
