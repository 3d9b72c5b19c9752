import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";

/** A count as it is written or said: "8", "eight", "2½", "two and a half", "none". Null where it is none. */
export function countFromText(text: string): number | null {
  const said = text.trim().toLowerCase().replace(/\s+/g, " ");
  const [, whole = "", part] = /^(.*?)(?: and (a half|a quarter|three quarters))?$/.exec(said) ?? [];
  const fraction = part === undefined ? 0 : (fractions[part] ?? 0);
  const word = words.indexOf(whole);
  if (word >= 0) return word + fraction;
  if (part !== undefined) return null;
  if (whole in singles) return singles[whole] ?? null;
  const read = quantityFromText(whole, "turns");
  return read.ok && read.written.value >= 0 ? read.written.value : null;
}

const words: readonly string[] = [
  ...["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"],
  ...["thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"],
];

const fractions: Readonly<Record<string, number>> = { "a half": 0.5, "a quarter": 0.25, "three quarters": 0.75 };

const singles: Readonly<Record<string, number>> = { no: 0, a: 1, half: 0.5, "half a": 0.5, ...fractions };
