import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DimensionError } from "../../../src/mechanics/quantity/dimension.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { formula, numericalFormula } from "../../../src/mechanics/quantity/formula.ts";
import { exact, type Quantity, standardUncertainty, taken, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import {
  degC,
  degF,
  deltaK,
  inSI,
  K,
  kN,
  mm,
  mm2,
  Nm,
  nm,
  one,
  onScale,
  perK,
  type Unit,
  um,
} from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const measured = (symbol: string, value: number, u: number, unit: Unit): Quantity =>
  taken(symbol, normal(value, u), unit, symbol);

describe("JCGM 100:2008, H.1: calibration of an end gauge", () => {
  const length = formula(
    "l = l_S + d - l_S * (delta_alpha * theta + alpha_S * delta_theta)",
    { l_S: nm, d: nm, delta_alpha: perK, theta: deltaK, alpha_S: perK, delta_theta: deltaK, l: nm },
    "JCGM 100:2008, (H.3)",
  );
  // Table H.1: standard uncertainties of the inputs; 0.029 K is printed for the 0.05/√3 of H.1.3.6 that it goes on with.
  const l = length({
    l_S: measured("l_S", 50_000_623, 25, nm),
    d: measured("d", 215, 9.7, nm),
    delta_alpha: measured("delta_alpha", 0, 0.58e-6, perK),
    theta: measured("theta", -0.1, 0.41, deltaK),
    alpha_S: measured("alpha_S", 11.5e-6, 1.2e-6, perK),
    delta_theta: measured("delta_theta", 0, 0.05 / Math.sqrt(3), deltaK),
  });

  test("the gauge is 50 000 838 nm long", () => agrees(valueIn(nm, l), "50000838"));
  test("its standard uncertainty is 32 nm", () => agrees(standardUncertainty(l) / nm.inSI, "32"));

  // Table H.1, last column, nm.
  test.each([
    ["l_S", "25"],
    ["d", "9.7"],
    ["delta_alpha", "2.9"],
    ["theta", "0"],
    ["alpha_S", "0"],
    ["delta_theta", "16.6"],
  ])("%s contributes %s nm", (input, printed) => agrees(Math.abs(l.contributions[input] ?? 0) / nm.inSI, printed));
});

describe("correlation", () => {
  const value = fc.double({ min: -1e3, max: 1e3, noNaN: true });
  const u = fc.double({ min: 1e-6, max: 10, noNaN: true });
  const difference = formula("z = x - y", { x: mm, y: mm, z: mm }, "test");
  const ratio = formula("q = x / y", { x: mm, y: mm, q: one }, "test");

  test("a quantity subtracted from itself has no uncertainty", () => {
    fc.assert(
      fc.property(value, u, (at, spread) => {
        const x = measured("x", at, spread, mm);
        expect(standardUncertainty(difference({ x, y: x }))).toBe(0);
      }),
    );
  });

  test("a quantity divided by itself has none but rounding", () => {
    const x = measured("x", 7, 0.3, mm);
    expect(standardUncertainty(ratio({ x, y: x }))).toBeLessThan(1e-16);
  });

  test("two readings of the same size add in quadrature", () => {
    const z = difference({ x: measured("a", 3, 0.3, mm), y: measured("b", 3, 0.4, mm) });
    expect(standardUncertainty(z)).toBeCloseTo(0.5e-3, 15);
  });

  test("an input met along two ways counts once, with both slopes", () => {
    const x = measured("x", 2, 0.1, mm);
    const square = formula("A = x * y", { x: mm, y: mm, A: mm2 }, "test")({ x, y: x });
    // d(x²) = 2 x dx, not √2 x dx.
    expect(standardUncertainty(square)).toBeCloseTo(2 * 2e-3 * 0.1e-3, 15);
  });
});

// ISO 286-1:2010, table 1, nominal sizes over 18 up to 30 mm; i of annex B (from memory).
describe("numerical value equations", () => {
  const toleranceUnit = numericalFormula("i = 0.45 * cbrt(D) + 0.001 * D", { D: mm, i: um }, "ISO 286-1:2010, annex B");
  const D = exact("D", Math.sqrt(18 * 30), mm);

  test.each([
    ["IT6", 10, "13"],
    ["IT7", 16, "21"],
    ["IT8", 25, "33"],
    ["IT9", 40, "52"],
  ])("%s over 18 up to 30 mm is %s i, printed %s µm", (_, multiple, printed) =>
    agrees(multiple * valueIn(um, toleranceUnit({ D })), printed),
  );

  test("carry uncertainty on their own scales", () => {
    const i = toleranceUnit({ D: measured("D", 27, 0.3, mm) });
    expect(standardUncertainty(i) / um.inSI).toBeCloseTo(0.3 * (0.15 / 9 + 0.001), 12);
  });

  test("take a temperature as the number on its scale, whatever it was read in", () => {
    const twice = numericalFormula("b = 2 * t + 32", { t: degC, b: one }, "test");
    expect(twice({ t: exact("t", 50, degC) }).value).toBeCloseTo(132, 9);
    expect(twice({ t: exact("t", 122, degF) }).value).toBeCloseTo(132, 9);
    expect(twice({ t: exact("t", 323.15, K) }).value).toBeCloseTo(132, 9);
    expect([...twice.over({ t: 323.15 })][0]).toBeCloseTo(132, 9);
  });
});

describe("temperatures", () => {
  // ITS-90: 0 °C is 273.15 K; 32 °F and 212 °F are 0 °C and 100 °C; -40 is the same on both.
  test.each([
    [0, degC, 273.15],
    [-273.15, degC, 0],
    [32, degF, 273.15],
    [212, degF, 373.15],
    [-459.67, degF, 0],
    [-40, degF, 233.15],
  ])("%d on its scale is the right kelvin", (value, unit, kelvin) => {
    expect(inSI(value, unit)).toBeCloseTo(kelvin, 9);
    expect(onScale(kelvin, unit)).toBeCloseTo(value, 9);
  });

  test("a result in degrees takes its zero back", () => {
    const warmer = formula("t_2 = t_1 + dt", { t_1: degC, dt: deltaK, t_2: degC }, "test");
    const t_2 = warmer({ t_1: measured("t_1", 20, 0.5, degC), dt: exact("dt", 60, deltaK) });
    expect(valueIn(degC, t_2)).toBeCloseTo(80, 9);
    expect(valueIn(degF, t_2)).toBeCloseTo(176, 9);
    expect(standardUncertainty(t_2)).toBeCloseTo(0.5, 12);
  });
});

describe("dimensions", () => {
  const [x, F] = [exact("x", 3, mm), exact("F", 2, kN)];
  const refused: readonly (readonly [string, () => unknown])[] = [
    ["a force where a length belongs", () => formula("y = 2 * x", { x: mm, y: mm }, "test")({ x: F })],
    ["a length added to a force", () => formula("y = x + F", { x: mm, F: kN, y: mm }, "test")({ x, F })],
    ["a length with a number taken off", () => formula("y = x - 1", { x: mm, y: mm }, "test")({ x })],
    ["a length given out as a force", () => formula("y = 2 * x", { x: mm, y: kN }, "test")({ x })],
    ["an area given out as a length", () => formula("y = x^2", { x: mm, y: mm }, "test")({ x })],
    ["the sine of a length", () => formula("y = sin(x)", { x: mm, y: one }, "test")({ x })],
    ["a power of a length that is a length", () => formula("y = 2^x", { x: mm, y: one }, "test")({ x })],
    [
      "a length to a power that varies",
      () => formula("y = x^n", { x: mm, n: one, y: mm }, "test")({ x, n: exact("n", 1, one) }),
    ],
    ["a force read as a length", () => valueIn(mm, F)],
  ];
  test.each(refused)("%s is refused", (_, wrong) => expect(wrong).toThrow(DimensionError));

  test("roots and quotients keep theirs", () => {
    const side = formula("s = sqrt(A)", { A: mm2, s: mm }, "test")({ A: exact("A", 49, mm2) });
    expect(valueIn(mm, side)).toBeCloseTo(7, 12);
    const edge = formula("s = cbrt(A * h)", { A: mm2, h: mm, s: mm }, "test");
    expect(valueIn(mm, edge({ A: exact("A", 4, mm2), h: exact("h", 2, mm) }))).toBeCloseTo(2, 12);
    const T = formula("T = F * x", { F: kN, x: mm, T: Nm }, "test")({ F, x });
    expect(valueIn(Nm, T)).toBeCloseTo(6, 12);
  });
});

test("a formula without a value for what was given says which", () => {
  const root = formula("y = sqrt(x)", { x: one, y: one }, "test");
  const share = formula("y = 1 / x", { x: one, y: one }, "test");
  expect(() => root({ x: exact("x", -1, one) })).toThrow(/y = sqrt\(x\)/);
  expect(() => share({ x: exact("x", 0, one) })).toThrow(RangeError);
});

test("a symbol without a unit, or without a value, is named", () => {
  const lame = formula("y = x * w", { x: mm, y: mm } as never, "test") as unknown as (given: object) => Quantity;
  expect(() => lame({ x: exact("x", 1, mm), w: exact("w", 1, one) })).toThrow(/no unit for w/);
  expect(() => lame({ x: exact("x", 1, mm) })).toThrow(/nothing given for w/);
});
