import type { CureField } from "../words/cureBenchWords.ts";
import { choice, measured, type SumField } from "./sumField.ts";

/** What is read of a joint sealed with silicone, by field. */
export const cureFields = {
  bead: measured("mm", 0.5, "3"),
  open: choice("one", "both"),
  temperature: { type: "number", unit: "°C", step: 1, start: "20", from: "anywhere" },
  humidity: measured("%", 5, "50"),
  felt: choice("dry", "normal", "damp"),
  closed: { type: "text", common: [] },
  label: measured("h", 1, "24"),
  namesFluid: choice("yes", "no"),
  useBy: { type: "text", common: [] },
} as const satisfies Readonly<Record<CureField, SumField>>;
