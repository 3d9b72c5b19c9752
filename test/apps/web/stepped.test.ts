import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stepped } from "../../../src/apps/web/kit/stepped.ts";

describe("a stepper goes by the marks of its instrument", () => {
  test.each([
    ["13", 0.05, 1, "13.05"],
    ["13.07", 0.05, 1, "13.1"],
    ["13.07", 0.05, -1, "13.05"],
    ["3.5", 0.25, 1, "3.75"],
    ["3 1/2", 0.25, 1, "3.75"],
    ["2½", 0.25, -1, "2.25"],
    ["12,5", 1, 1, "13"],
    ["12,5", 0.25, 1, "12,75"],
    ["46", 1, 1, "47"],
    ["47", 5, -1, "45"],
    ["0.1", 0.5, -1, "0"],
    ["0", 1, -1, "0"],
  ] as const)("%s by %s, %s: %s", (text, step, direction, next) => {
    expect(stepped(text, step, direction, 0)).toBe(next);
  });

  // A degree less than five below nothing was nothing.
  test.each([
    ["-5", 1, -1, "-6"],
    ["0", 1, -1, "-1"],
    ["−0,5", 0.5, -1, "-1"],
    ["-0.5", 0.5, 1, "0"],
  ] as const)("%s by %s, %s, on a scale that goes below nothing: %s", (text, step, direction, next) => {
    expect(stepped(text, step, direction, Number.NEGATIVE_INFINITY)).toBe(next);
  });

  test.each(["80,5x", "1,234.5", "1/2 in", "13 mm", "", "-", "1e3"])(
    'leaves "%s" alone, for it is no figure on its scale',
    (text) => {
      expect(stepped(text, 0.05, 1, 0)).toBeNull();
    },
  );

  test("a thousand steps carry no dust, and as many back lead to where they began", () => {
    const steps = fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1, 5);
    fc.assert(
      fc.property(steps, fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 300 }), (step, from, count) => {
        const go = (text: string, direction: 1 | -1): string => stepped(text, step, direction, 0) ?? "unread";
        let text = stepped(String(from * 5), step, 1, 0) ?? "unread";
        const start = text;
        for (let i = 0; i < count; i++) text = go(text, 1);
        expect(text).toMatch(/^\d+(\.\d{1,2})?$/);
        expect(Number(text)).toBeCloseTo(Number(start) + count * step, 9);
        for (let i = 0; i < count; i++) text = go(text, -1);
        expect(text).toBe(start);
      }),
      { numRuns: 60 },
    );
  });
});
