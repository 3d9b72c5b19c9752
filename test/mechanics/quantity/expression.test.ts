import { describe, expect, test } from "vitest";
import { overColumns } from "../../../src/mechanics/quantity/columns.ts";
import { parse } from "../../../src/mechanics/quantity/expression.ts";

const worked = (text: string, symbols: Readonly<Record<string, number>> = {}): number =>
  overColumns(parse(text), symbols) as number;

// The usual order of precedence: powers bind from the right, and before the sign.
describe("order of precedence", () => {
  test.each([
    ["1 + 2 * 3", 7],
    ["(1 + 2) * 3", 9],
    ["8 / 4 / 2", 1],
    ["8 - 4 - 2", 2],
    ["8 / 4 * 2", 4],
    ["2^3^2", 512],
    ["-2^2", -4],
    ["(-2)^2", 4],
    ["2^-1", 0.5],
    ["2 * -3", -6],
    ["- - 3", 3],
    ["3/4 * 8", 6],
    ["2 * 3^2", 18],
    ["1.5e-3 * 2e3", 3],
    ["sqrt(16) + cbrt(27)", 7],
    ["((((7))))", 7],
  ])("%s is %d", (text, value) => expect(worked(text)).toBeCloseTo(value, 12));
});

describe("what a formula may name", () => {
  test.each([
    ["pi", Math.PI],
    ["tan(45 * deg)", 1],
    ["exp(0)", 1],
    ["ln(exp(2))", 2],
    ["log10(1000)", 3],
    ["sin(30 * deg)", 0.5],
    ["cos(60 * deg)", 0.5],
    ["atan(1)", Math.PI / 4],
    ["acos(0)", Math.PI / 2],
    ["sinh(1)", 1.1752011936438014],
    ["a_1 + A_1", 3],
  ])("%s", (text, value) => expect(worked(text, { a_1: 1, A_1: 2 })).toBeCloseTo(value, 12));
});

describe("mistakes name their place", () => {
  test.each([
    ["a + ", /"a \+ " ends too soon/],
    ["", /"" ends too soon/],
    ["(a + b", /"\)" is missing in "\(a \+ b"/],
    ["a + b)", /unexpected "\)" in "a \+ b\)"/],
    ["a b", /unexpected "b" in "a b"/],
    ["2 a", /unexpected "a" in "2 a"/],
    ["a ** b", /unexpected "\*" in "a \*\* b"/],
    ["a + $", /unexpected "\$" in "a \+ \$"/],
    ["a = b", /unexpected "=" in "a = b"/],
    ["1.2.3", /unexpected "\." in "1.2.3"/],
    ["sin(a", /"\)" is missing in "sin\(a"/],
    ["sin()", /unexpected "\)" in "sin\(\)"/],
    ["root(a)", /no function "root" in "root\(a\)"/],
    // Found when this suite was written: names that every object has were taken for functions.
    ["toString(a)", /no function "toString" in "toString\(a\)"/],
    ["constructor(a)", /no function "constructor"/],
  ])("%s", (text, place) => {
    expect(() => parse(text)).toThrow(SyntaxError);
    expect(() => parse(text)).toThrow(place);
  });
});
