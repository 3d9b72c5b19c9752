/** Why a text is not a number we may calculate with. */
export type NumberProblem =
  | { readonly type: "empty" }
  | { readonly type: "not a number" }
  /** Two or more separators: one of them would have to be a group separator, and which is not said. */
  | { readonly type: "several separators" }
  /** A fraction where the unit is not read in fractions. */
  | { readonly type: "fraction not accepted" }
  | { readonly type: "zero denominator" };

export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly problem: NumberProblem };

const vulgar: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/**
 * The number at the start of `text`, and what follows it.
 *
 * A comma or a point is the decimal mark and never groups digits: "80,5" is 80.5, "1.234" is 1.234, "1,234.5" is
 * refused. "7/16" and "1 1/2" are read as fractions. Powers of ten ("1e3") are not read.
 */
export function numberAtStart(text: string): NumberRead {
  const plainText = inPlainSigns(text.trim());
  if (plainText === "") return refused({ type: "empty" });
  const fraction =
    plainText.includes("/") && /^([+-]?)(?:(\d+)(?: +|-))?(\d+)\s*\/\s*(\d+)(?![\d.,])\s*(.*)$/s.exec(plainText);
  if (fraction) return mixedNumber(fraction);
  const decimal = /^([+-]?[\d.,'’\u00a0\u202f]*\d[.,]?)(?:\s(?=\d)|\s*)(.*)$/s.exec(plainText);
  if (!decimal) return refused({ type: "not a number" });
  const [, digits = "", rest = ""] = decimal;
  if (/^\d/.test(rest) || !/^[+-]?\d*[.,]?\d*$/.test(digits)) return refused({ type: "several separators" });
  if (/^[eE][+-]?\d/.test(rest)) return refused({ type: "not a number" });
  return finite(Number(digits.replace(",", ".")), rest);
}

/** A minus that is a dash as the sign of the keyboard, and vulgar fractions as what stands for them. */
const inPlainSigns = (text: string): string =>
  /[−–¼½¾⅛⅜⅝⅞]/.test(text)
    ? text
        .replace(/^[−–]/, "-")
        .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign]} `)
        .trim()
    : text;

/** Whether a text is written as a fraction, which only some units are read in. */
export const isFraction = (text: string): boolean => /[¼½¾⅛⅜⅝⅞]|\d\s*\/\s*\d/.test(text);

function mixedNumber([, sign = "", whole = "0", above = "0", below = "1", rest = ""]: RegExpExecArray): NumberRead {
  if (Number(below) === 0) return refused({ type: "zero denominator" });
  const value = Number(whole) + Number(above) / Number(below);
  return finite(sign === "-" ? -value : value, rest);
}

/** Digits without end are more than a number can hold. */
const finite = (value: number, rest: string): NumberRead =>
  Number.isFinite(value) ? { ok: true, value, rest: rest.trim() } : refused({ type: "not a number" });

const refused = (problem: NumberProblem): NumberRead => ({ ok: false, problem });
