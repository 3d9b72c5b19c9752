import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, normal } from "../../../src/mechanics/quantity/distribution.ts";
import { functions } from "../../../src/mechanics/quantity/expression.ts";
import { formula, numericalFormula } from "../../../src/mechanics/quantity/formula.ts";
import { exact, taken } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, mm, mm2, one, type Unit, um } from "../../../src/mechanics/quantity/unit.ts";

type Calculated = ReturnType<typeof formula<"y", { x: Unit; n: Unit; y: Unit }>>;

const equations: readonly (readonly [string, Calculated])[] = [
  ...Object.keys(functions).map((name) => {
    // acos ends at 1, and tan has a pole where no difference can follow it.
    const argument = name === "acos" || name === "tan" ? "x / 10" : "x";
    const text = `y = n * ${name}(${argument})` as const;
    return [text, formula(text, { x: one, n: one, y: one }, "test")] as const;
  }),
  ...(
    ["sqrt(x) * n", "cbrt(x) - n", "x^n", "n^x", "x^x * n", "x^-2 + n", "-x^2 / n", "1 - 2 / (x - 20 * n)"] as const
  ).map((right) => [right, formula(`y = ${right}`, { x: one, n: one, y: one }, "test")] as const),
];

const given = { x: fc.double({ min: 0.5, max: 5, noNaN: true }), n: fc.double({ min: 0.3, max: 3, noNaN: true }) };

/** The slope by two central differences, the error of the one taken off by the other (Richardson). */
function difference(f: (x: number) => number, x: number): number {
  const central = (h: number): number => (f(x + h) - f(x - h)) / (2 * h);
  return (4 * central(5e-4) - central(1e-3)) / 3;
}

describe.each(equations)("%s", (_, y) => {
  const at = (x: number, n: number): number => y({ x: exact("x", x, one), n: exact("n", n, one) }).value;

  test("has the slopes of its finite differences", () => {
    fc.assert(
      fc.property(given.x, given.n, (x, n) => {
        const { contributions } = y({ x: taken("x", normal(x, 1), one, "x"), n: taken("n", normal(n, 1), one, "n") });
        const scale = 1e-6 * Math.max(1, Math.abs(at(x, n)));
        const [inX, inN] = [difference((it) => at(it, n), x), difference((it) => at(x, it), n)];
        expect(Math.abs((contributions["x"] ?? 0) - inX)).toBeLessThan(scale + 1e-6 * Math.abs(inX));
        expect(Math.abs((contributions["n"] ?? 0) - inN)).toBeLessThan(scale + 1e-6 * Math.abs(inN));
      }),
    );
  });

  test("over columns gives row by row what it gives for estimates", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(given.x, given.n), { minLength: 1, maxLength: 20 }), (rows) => {
        const columns = { x: Float64Array.from(rows, ([x]) => x), n: Float64Array.from(rows, ([, n]) => n) };
        const found = y.over(columns);
        expect(found.length).toBe(rows.length);
        rows.forEach(([x, n], i) => {
          expect(Math.abs((found[i] as number) - at(x, n))).toBeLessThanOrEqual(1e-12 * Math.abs(at(x, n)) + 1e-15);
        });
      }),
    );
  });
});

test("a slope in quantities is the slope of their SI values", () => {
  const f = formula("z = x^3 / (x + y) * cos(0.001 * x / y)", { x: mm, y: mm, z: mm2 }, "test");
  const size = fc.double({ min: 1, max: 50, noNaN: true });
  fc.assert(
    fc.property(size, size, (x, y) => {
      const at = (it: number): number => f({ x: exact("x", 1e3 * it, mm), y: exact("y", y, mm) }).value;
      const { contributions } = f({ x: taken("x", normal(x, 1), mm, "x"), y: exact("y", y, mm) });
      const slope = (contributions["x"] ?? 0) / 1e-3;
      const h = 1e-6;
      const near = (at(1e-3 * x + h) - at(1e-3 * x - h)) / (2 * h);
      expect(Math.abs(slope - near)).toBeLessThan(1e-5 * Math.max(1e-3, Math.abs(slope)));
    }),
  );
});

test("a power that varies still has a value where its base is nought", () => {
  const y = formula("y = x^n", { x: one, n: one, y: one }, "test");
  expect(y({ x: exact("x", 0, one), n: exact("n", 2, one) }).value).toBe(0);
});

describe("columns", () => {
  const scaled = numericalFormula("i = 0.45 * cbrt(D) + t", { D: mm, t: degC, i: um }, "test");

  test("of a numerical value equation are in SI as well", () => {
    const D_m = Float64Array.of(0.008, 0.027, 0.064);
    const t_K = Float64Array.of(273.15, 283.15, 293.15);
    const found = scaled.over({ D: D_m, t: t_K });
    D_m.forEach((D, i) => {
      const one_by_one = scaled({
        D: taken("D", exactly(1e3 * D), mm, "D"),
        t: exact("t", (t_K[i] as number) - 273.15, degC),
      });
      expect(found[i]).toBeCloseTo(one_by_one.value, 15);
    });
  });

  test("a plain number stands for a column of itself", () => {
    const y = formula("y = x - n", { x: one, n: one, y: one }, "test");
    expect([...y.over({ x: Float64Array.of(3, 4), n: 1 })]).toEqual([2, 3]);
    expect([...y.over({ x: 5, n: Float64Array.of(3, 4) })]).toEqual([2, 1]);
    expect([...y.over({ x: 5, n: 1 })]).toEqual([4]);
  });

  test("of different lengths do not go together, and a missing one is named", () => {
    const y = formula("y = x - n", { x: one, n: one, y: one }, "test");
    expect(() => y.over({ x: Float64Array.of(3, 4), n: Float64Array.of(1) })).toThrow(/2 and 1 rows/);
    expect(() => y.over({ x: Float64Array.of(3, 4) } as never)).toThrow(/no column is given for n/);
  });
});
