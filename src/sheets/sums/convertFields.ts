import type { ConvertField } from "../words/convertBenchWords.ts";
import { choice, type SumField } from "./sumField.ts";

/** What is converted: a quantity as it stands in a book, and the unit where only a number was typed. */
export const convertFields = {
  quantity: { type: "text", common: [] },
  unit: choice("N·m", "lbf·ft", "lbf·in", "kgf·cm", "mm", "in", "bar", "psi", "ml", "L", "US qt", "imp pt", "°C", "°F"),
} as const satisfies Readonly<Record<ConvertField, SumField>>;
