import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isFraction, numberAtStart } from "../../../src/mechanics/quantity/numberText.ts";

describe("a comma and a point are both the decimal mark", () => {
  test.each([
    ["80,5", 80.5],
    ["80.5", 80.5],
    ["1.234", 1.234],
    ["1,234", 1.234],
    [",5", 0.5],
    [".5", 0.5],
    ["5.", 5],
    ["5,", 5],
    ["0,0", 0],
    ["007", 7],
    ["+12", 12],
    ["-12", -12],
    ["−12", -12],
    ["–12,5", -12.5],
    ["  3 ", 3],
  ])("%j is %d", (text, value) => expect(numberAtStart(text)).toEqual({ ok: true, value, rest: "" }));

  test("whatever number is written, with either of them it is the same", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -99_999, max: 99_999 }),
        fc.nat({ max: 999_999 }),
        fc.nat({ max: 6 }),
        (whole, part, width) => {
          const decimals = String(part).padStart(width, "0");
          const [point, comma] = [numberAtStart(`${whole}.${decimals} mm`), numberAtStart(`${whole},${decimals} mm`)];
          expect(comma).toEqual(point);
          expect(point).toEqual({ ok: true, value: Number(`${whole}.${decimals}`), rest: "mm" });
        },
      ),
    );
  });
});

describe("fractions", () => {
  test.each([
    ["7/16", 7 / 16],
    ["1 1/2", 1.5],
    ["1-1/2", 1.5],
    ["1  1/2", 1.5],
    ["-1 1/2", -1.5],
    ["-3/4", -0.75],
    ["½", 0.5],
    ["2½", 2.5],
    ["2 ½", 2.5],
    ["3 / 8", 0.375],
    ["1¼", 1.25],
    ["1⅞", 1.875],
  ])("%j is %d", (text, value) => {
    expect(numberAtStart(text)).toEqual({ ok: true, value, rest: "" });
    expect(isFraction(text)).toBe(true);
  });

  test("are what they are written as", () => {
    fc.assert(
      fc.property(fc.nat(99), fc.nat(64), fc.integer({ min: 1, max: 64 }), (whole, above, below) => {
        const read = numberAtStart(`${whole} ${above}/${below} in`);
        expect(read.ok && read.value).toBeCloseTo(whole + above / below, 12);
      }),
    );
  });
});

describe("what is refused", () => {
  test.each([
    ["", "empty"],
    ["   ", "empty"],
    ["1,234.5", "several separators"],
    ["1.234,5", "several separators"],
    ["1 000", "several separators"],
    ["1\u00a0000", "several separators"],
    ["1\u202f000", "several separators"],
    ["1\u2009000", "several separators"],
    ["1'000", "several separators"],
    ["1’000", "several separators"],
    ["1.2.3", "several separators"],
    ["1,,2", "several separators"],
    ["12 13", "several separators"],
    ["1.5 1/2", "several separators"],
    ["1 2 1/2", "several separators"],
    ["1e3", "not a number"],
    ["1E3", "not a number"],
    ["1e-3", "not a number"],
    ["1 e3", "not a number"],
    ["--3", "not a number"],
    ["+-3", "not a number"],
    ["- 3", "not a number"],
    ["Infinity", "not a number"],
    ["NaN", "not a number"],
    ["mm", "not a number"],
    ["/2", "not a number"],
    [".", "not a number"],
    ["-", "not a number"],
    ["٣", "not a number"],
    ["1/0", "zero denominator"],
    ["1 1/0", "zero denominator"],
    // Found when this suite was written: the value was Infinity.
    ["9".repeat(400), "not a number"],
    [`${"9".repeat(400)}/${"9".repeat(400)}`, "not a number"],
  ])("%j: %s", (text, type) => {
    const read = numberAtStart(text);
    expect(read.ok ? read.value : read.problem.type).toBe(type);
  });
});

describe("what follows the number is handed on", () => {
  test.each([
    ["12 mm 5", "mm 5"],
    ["0x10", "x10"],
    ["7/16 in", "in"],
    ["12mm", "mm"],
    ["12\u00a0mm", "mm"],
    ["5 / mm", "/ mm"],
    ["1/2/3", "/3"],
    ["1½ 1/2", "1/2"],
    ["½1 in", "1 in"],
    ['5"', '"'],
    // Found when this suite was written: both were read as 3½.
    ["3 -1/2", "-1/2"],
    ["3--1/2", "--1/2"],
  ])("%j leaves %j", (text, rest) => expect(numberAtStart(text)).toMatchObject({ ok: true, rest }));
});

test("no text makes it throw, and every value it gives is finite", () => {
  const bits = fc.constantFrom("1", "9", "0", ".", ",", " ", "-", "−", "/", "½", "'", "\u202f", "e", "E", "mm", "x");
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: "binary" }),
        fc.array(bits).map((it) => it.join("")),
      ),
      (text) => {
        const read = numberAtStart(text);
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
      },
    ),
    { numRuns: 2000 },
  );
});
