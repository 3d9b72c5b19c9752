/** Case materials with a row of reference ranges. */
export const materials = [
  "EN AC-46000",
  "EN AC-46100",
  "EN AC-47100",
  "A380",
  "A356-T6",
  "cast aluminium",
  "unknown light alloy",
  "AZ91D",
  "EN-GJL-200",
  "EN-GJL-250",
  "EN-GJS-400-15",
  "pressed steel",
] as const;
export type Material = (typeof materials)[number];
