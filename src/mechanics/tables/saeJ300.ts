import { fromMemory, published, type Source } from "./source.ts";

export const engineWinterGrades = ["0W", "5W", "10W", "15W", "20W", "25W"] as const;
export type EngineWinterGrade = (typeof engineWinterGrades)[number];

export const engineHotGrades = ["8", "12", "16", "20", "30", "40", "50", "60"] as const;
export type EngineHotGrade = (typeof engineHotGrades)[number];

export type EngineWinterRow = {
  readonly grade: EngineWinterGrade;
  /** Least viscosity at 100 °C. */
  readonly from_mm2_s: number;
  readonly source: Source;
};

/** Viscosity at 100 °C from, and below. */
export type EngineHotRow = {
  readonly grade: EngineHotGrade;
  readonly from_mm2_s: number;
  readonly below_mm2_s: number;
  readonly source: Source;
};

const document = "SAE J300 (January 2015 or later), table 1";

export const saeJ300: Source = published(document);

const winter = (grade: EngineWinterGrade, from_mm2_s: number): EngineWinterRow => ({
  grade,
  from_mm2_s,
  source: saeJ300,
});
const hot = (grade: EngineHotGrade, from_mm2_s: number, below_mm2_s: number, source = saeJ300): EngineHotRow => ({
  grade,
  from_mm2_s,
  below_mm2_s,
  source,
});

export const engineWinterRows: readonly EngineWinterRow[] = [
  winter("0W", 3.8),
  winter("5W", 3.8),
  winter("10W", 4.1),
  winter("15W", 5.6),
  winter("20W", 5.6),
  winter("25W", 9.3),
];

/**
 * Rows of engine oils by viscosity at 100 °C, from thin to thick. Rows 8 to 20 overlap: the standard tells those apart
 * by viscosity at high shear rate, which no jug shows. Older editions begin row 20 at 5.6.
 */
export const engineHotRows: readonly EngineHotRow[] = [
  hot("8", 4.0, 6.1),
  hot("12", 5.0, 7.1, fromMemory(document)),
  hot("16", 6.1, 8.2),
  hot("20", 6.9, 9.3),
  hot("30", 9.3, 12.5),
  hot("40", 12.5, 16.3),
  hot("50", 16.3, 21.9),
  hot("60", 21.9, 26.1),
];
