import { numberAtStart } from "../../../mechanics/quantity/numberText.ts";

/**
 * The text of a reading one step of its instrument up or down, on the marks of its scale: "13" up by 0.05 is "13.05", "13.07" is
 * "13.1". Its own decimal mark is kept, and nothing goes below `least`. Null where the text does not read as a plain number on
 * the scale beside it: what was typed is then left alone.
 */
export function stepped(text: string, step: number, direction: 1 | -1, least: number): string | null {
  const read = numberAtStart(text);
  if (!read.ok || read.rest !== "") return null;
  const parts = Math.round(1 / step) * step === 1 ? 1 / step : null;
  // Whole marks of the scale, so that no step carries the dust of binary fractions.
  const marks = parts === null ? read.value / step : read.value * parts;
  const near = Math.round(marks);
  const onMark = Math.abs(marks - near) < 1e-6;
  const next = onMark ? near + direction : direction === 1 ? Math.ceil(marks) : Math.floor(marks);
  const value = parts === null ? next * step : next / parts;
  return decimal(Math.max(least, value), text.includes(",") ? "," : ".");
}

/** At most four decimals, and none that say nothing. */
function decimal(value: number, mark: string): string {
  const plain = value.toFixed(4).replace(/\.?0+$/, "");
  return plain.replace(".", mark);
}
