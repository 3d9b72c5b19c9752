import { fromMemory, published, type Source } from "./source.ts";

/** The editions of SAE J306 whose rows differ; a label on a can may follow either. */
export const gearGradeEditions = ["2019", "2005"] as const;
export type GearGradeEdition = (typeof gearGradeEditions)[number];

export const gearWinterGrades = ["70W", "75W", "80W", "85W"] as const;
export type GearWinterGrade = (typeof gearWinterGrades)[number];

export const gearHotGrades = ["65", "70", "75", "80", "85", "90", "110", "140", "190", "250"] as const;
export type GearHotGrade = (typeof gearHotGrades)[number];

/** A row with W: the least viscosity at 100 °C, and the warmest °C at which 150 000 mPa·s may be reached. */
export type GearWinterRow = {
  readonly grade: GearWinterGrade;
  readonly from_mm2_s: number;
  readonly thickest_degC: number;
};

/** A row without W: viscosity at 100 °C from, and below; null leaves the thickest grade open. */
export type GearHotRow = {
  readonly grade: GearHotGrade;
  readonly from_mm2_s: number;
  readonly below_mm2_s: number | null;
};

/** One edition of the table, rows from thin to thick. */
export type GearGradeTable = {
  readonly edition: GearGradeEdition;
  readonly winter: readonly GearWinterRow[];
  readonly hot: readonly GearHotRow[];
  readonly source: Source;
};

const winter = (grade: GearWinterGrade, thickest_degC: number, from_mm2_s: number): GearWinterRow => ({
  grade,
  from_mm2_s,
  thickest_degC,
});
const hot = (grade: GearHotGrade, from_mm2_s: number, below_mm2_s: number | null): GearHotRow => ({
  grade,
  from_mm2_s,
  below_mm2_s,
});

const from85: readonly GearHotRow[] = [
  hot("85", 11.0, 13.5),
  hot("90", 13.5, 18.5),
  hot("110", 18.5, 24.0),
  hot("140", 24.0, 32.5),
  hot("190", 32.5, 41.0),
  hot("250", 41.0, null),
];

/** Automotive gear lubricants by viscosity, both editions. */
export const saeJ306: Readonly<Record<GearGradeEdition, GearGradeTable>> = {
  "2019": {
    edition: "2019",
    winter: [winter("70W", -55, 3.8), winter("75W", -40, 3.8), winter("80W", -26, 8.5), winter("85W", -12, 11.0)],
    hot: [hot("65", 3.8, 5.0), hot("70", 5.0, 6.5), hot("75", 6.5, 8.5), hot("80", 8.5, 11.0), ...from85],
    source: published("SAE J306 (February 2019), table 1"),
  },
  "2005": {
    edition: "2005",
    winter: [winter("70W", -55, 4.1), winter("75W", -40, 4.1), winter("80W", -26, 7.0), winter("85W", -12, 11.0)],
    hot: [hot("80", 7.0, 11.0), ...from85],
    source: fromMemory("SAE J306 (2005), table 1"),
  },
};
