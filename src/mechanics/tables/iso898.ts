import { published, type Source } from "./source.ts";

export const propertyClasses = ["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "10.9", "12.9"] as const;
export type PropertyClass = (typeof propertyClasses)[number];

/** Least tensile strength and yield (or 0.2 % proof) strength of a property class, MPa. */
export type PropertyClassRow = {
  readonly R_m_MPa: number;
  readonly R_p_MPa: number;
};

/** Where the rows of property classes come from. */
export const iso898: Source = published("ISO 898-1:2013, table 3");

/** The row of a property class for a nominal diameter in mm; class 8.8 steps up above 16 mm. ISO 898-1:2013, table 3. */
export function propertyClassRow(name: PropertyClass, d_mm: number): PropertyClassRow {
  return name === "8.8" && d_mm > 16 ? above16 : rows[name];
}

const above16: PropertyClassRow = { R_m_MPa: 830, R_p_MPa: 660 };

const rows: Readonly<Record<PropertyClass, PropertyClassRow>> = {
  "4.6": { R_m_MPa: 400, R_p_MPa: 240 },
  "4.8": { R_m_MPa: 420, R_p_MPa: 340 },
  "5.6": { R_m_MPa: 500, R_p_MPa: 300 },
  "5.8": { R_m_MPa: 520, R_p_MPa: 420 },
  "6.8": { R_m_MPa: 600, R_p_MPa: 480 },
  "8.8": { R_m_MPa: 800, R_p_MPa: 640 },
  "10.9": { R_m_MPa: 1040, R_p_MPa: 940 },
  "12.9": { R_m_MPa: 1220, R_p_MPa: 1100 },
};
