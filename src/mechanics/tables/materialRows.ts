import type { Material } from "./materials.ts";
import type { RangeName } from "./referenceRanges.ts";

/** Which reference ranges a case material uses, and whether it is a light alloy. */
export type MaterialRow = {
  readonly strength: RangeName;
  readonly shearRatio: RangeName;
  readonly sharing: RangeName;
  readonly lightAlloy: boolean;
};

const lightAlloy = (material: Material, shearRatio: RangeName): MaterialRow => ({
  strength: `strength ${material}`,
  shearRatio,
  sharing: "sharing light alloy",
  lightAlloy: true,
});
const ferrous = (material: Material, shearRatio: RangeName, sharing: RangeName): MaterialRow => ({
  strength: `strength ${material}`,
  shearRatio,
  sharing,
  lightAlloy: false,
});

export const materialRows: Readonly<Record<Material, MaterialRow>> = {
  "EN AC-46000": lightAlloy("EN AC-46000", "shear ratio die-cast"),
  "EN AC-46100": lightAlloy("EN AC-46100", "shear ratio die-cast"),
  "EN AC-47100": lightAlloy("EN AC-47100", "shear ratio die-cast"),
  A380: lightAlloy("A380", "shear ratio die-cast"),
  "A356-T6": lightAlloy("A356-T6", "shear ratio A356-T6"),
  "cast aluminium": lightAlloy("cast aluminium", "shear ratio cast aluminium"),
  "unknown light alloy": lightAlloy("unknown light alloy", "shear ratio unknown light alloy"),
  AZ91D: lightAlloy("AZ91D", "shear ratio AZ91D"),
  "EN-GJL-200": ferrous("EN-GJL-200", "shear ratio grey iron", "sharing grey iron"),
  "EN-GJL-250": ferrous("EN-GJL-250", "shear ratio grey iron", "sharing grey iron"),
  "EN-GJS-400-15": ferrous("EN-GJS-400-15", "shear ratio ductile iron", "sharing ductile iron"),
  "pressed steel": ferrous("pressed steel", "shear ratio steel", "sharing steel"),
};
