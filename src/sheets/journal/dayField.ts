import { dayAfter } from "../../mechanics/service/dueDate.ts";
import type { SumField } from "../sums/sumField.ts";
import { dayWords } from "../words/afterWords.ts";

/** A day as text with the likely ones under a tap, each so many days from today; and the word on each tap. */
export function dayField(
  today: string,
  days: readonly (keyof typeof dayWords)[],
): { readonly field: SumField; readonly words: Readonly<Record<string, string>> } {
  const taps = days.map((it) => [dayAfter(today, Number(it)), dayWords[it]] as const);
  return {
    field: { type: "text", common: taps.map(([day]) => day) },
    words: Object.fromEntries(taps),
  };
}
