import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { inches, mm2 } from "../../../src/mechanics/quantity/unit.ts";
import { unifiedThreadFromText } from "../../../src/mechanics/threads/unifiedText.ts";
import { agrees } from "../../published.ts";

// Tensile stress areas in square inches, SAE J429 and ASTM A307 tables (from memory).
test.each([
  ["#10-24 UNC", "0.0175"],
  ["#10-32 UNF", "0.0200"],
  ["1/4-20 UNC", "0.0318"],
  ["1/4-28 UNF", "0.0364"],
  ["5/16-18 UNC", "0.0524"],
  ["3/8-16 UNC", "0.0775"],
  ["3/8-24 UNF", "0.0878"],
  ["7/16-14 UNC", "0.1063"],
  ["7/16-20 UNF", "0.1187"],
  ["1/2-13 UNC", "0.1419"],
  ["9/16-12 UNC", "0.182"],
  ["9/16-18 UNF", "0.203"],
  ["5/8-11 UNC", "0.226"],
  ["5/8-18 UNF", "0.256"],
  ["3/4-10 UNC", "0.334"],
  ["3/4-16 UNF", "0.373"],
  ["7/8-9 UNC", "0.462"],
  ["7/8-14 UNF", "0.509"],
  ["1-8 UNC", "0.606"],
  ["1-12 UNF", "0.663"],
  ["1 1/8-7 UNC", "0.763"],
  ["1 1/4-7 UNC", "0.969"],
  ["1 3/8-6 UNC", "1.155"],
  ["1 1/2-6 UNC", "1.405"],
])("%s has a stress area of %s in²", (text, printed) => agrees(area_in2(text), printed));

// The same tables cut these off instead of rounding them.
test.each([
  ["5/16-24 UNF", "0.0580"],
  ["1/2-20 UNF", "0.1599"],
  ["1-14 UNS", "0.679"],
])("%s has a stress area that %s in² is the beginning of", (text, printed) =>
  expect(area_in2(text).toFixed(6).startsWith(printed)).toBe(true),
);

function area_in2(text: string): number {
  const read = unifiedThreadFromText(text);
  if (!read.ok) throw new Error(text);
  return valueIn(mm2, read.thread.A_s) / (inches.inSI * 1000) ** 2;
}
