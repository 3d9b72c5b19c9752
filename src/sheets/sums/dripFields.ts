import { stopSigns } from "../../mechanics/fluid/stopSigns.ts";
import { leakSights } from "../../mechanics/tables/leakClasses.ts";
import type { DripField } from "../words/dripBenchWords.ts";
import { choice, measured, type SumField } from "./sumField.ts";

/** What is asked and counted of a drip, by field. */
export const dripFields = {
  signs: { type: "several", choices: stopSigns, none: "none" },
  breather: choice("free", "blocked", "none"),
  look: choice(...leakSights),
  drops: { type: "number", unit: "", step: 1, start: "7", from: "nothing" },
  minutes: measured("min", 1, "10"),
  lip: measured("mm", 0.5, "2"),
  toLimit: { type: "number", unit: "mm", step: 1, start: "8", from: "nothing" },
  perMm: measured("ml/mm", 1, "22"),
} as const satisfies Readonly<Record<DripField, SumField>>;
