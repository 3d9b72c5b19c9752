import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { saturationPressure } from "../../../src/mechanics/cure/air.ts";
import { closedCasePressure, pressureVerdict, withFreeWater } from "../../../src/mechanics/fluid/breather.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, degF, kPa, L, ml, one, perK, psi } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const closed = (V_air: number, from: number, to: number, V_oil = 1.2, r = 1.053573, alpha = 23e-6) =>
  closedCasePressure({
    p_1: exact("p_1", 101.325, kPa),
    T_1: exact("T_1", from, degC),
    T_2: exact("T_2", to, degC),
    V_air: exact("V_air", V_air, L),
    V_oil: exact("V_oil", V_oil, L),
    r: exact("r", r, one),
    alpha: exact("alpha", alpha, perK),
  });

describe("published", () => {
  // Ideal gas, 1.2 l of oil of ratio 1.053573, aluminium 23e-6, closed at 20 °C and 101.325 kPa, brought to 90 °C; worked
  // apart from this program.
  test.each([
    [0.5, "40"],
    [1, "31"],
    [2, "27"],
    [4, "25"],
  ])("%d l of air over 1.2 l of oil, closed and brought from 20 to 90 °C", (V_air, p) =>
    agrees(valueIn(kPa, closed(V_air, 20, 90)), p),
  );

  test("a constant volume gains 24.2 kPa; one closed hot and cooled to 20 °C loses 19.5", () => {
    agrees(valueIn(kPa, closed(1, 20, 90, 0, 1, 0)), "24.2");
    agrees(valueIn(kPa, closed(1, 90, 20, 0, 1, 0)), "-19.5");
  });

  // Steam tables: 70.2 kPa at 90 °C; the Magnus formula is 2 % high there.
  test("free water adds up to 70 kPa at 90 °C", () => {
    const p = closed(1, 20, 90);
    const wet = withFreeWater(p, saturationPressure(exact("T", 90, degC)));
    expect(Math.abs((valueIn(kPa, wet) - valueIn(kPa, p)) / 70.2 - 1)).toBeLessThan(0.02);
  });

  // US Army TM 9-2320-272-23-3, WP 0415: 103 kPa is 15 psi, 55 kPa 8 psi.
  test("15 psi are 103 kPa", () => agrees(valueIn(kPa, exact("p", 15, psi)), "103"));
});

describe("laws", () => {
  test("less air over the oil and a hotter end give more pressure", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        fc.double({ min: 30, max: 120, noNaN: true }),
        (V, T) => {
          const r = 1 + 7.65e-4 * (T - 20);
          expect(closed(V, 20, T, 1.2, r).value).toBeGreaterThan(closed(V * 1.1, 20, T, 1.2, r).value);
          expect(closed(V, 20, T + 5, 1.2, r + 5 * 7.65e-4).value).toBeGreaterThan(closed(V, 20, T, 1.2, r).value);
        },
      ),
    ));

  test("units do not matter", () => {
    const inF = closedCasePressure({
      p_1: exact("p_1", 101.325 / (psi.inSI / 1000), psi),
      T_1: exact("T_1", 68, degF),
      T_2: exact("T_2", 194, degF),
      V_air: exact("V_air", 1000, ml),
      V_oil: exact("V_oil", 1.2, L),
      r: exact("r", 1.053573, one),
      alpha: exact("alpha", 23e-6, perK),
    });
    expect(inF.value / closed(1, 20, 90).value).toBeCloseTo(1, 9);
  });
});

test("a case that the oil would fill has no pressure to tell", () =>
  expect(() => closed(0.05, 20, 90)).toThrow(RangeError));

test("what a pressure does to lip seals", () => {
  const verdict = (p: number) => pressureVerdict(exact("p_g", p, kPa));
  expect([0, 20, 31, 60, 104, -2, -20].map(verdict)).toEqual([
    "bears it",
    "bears it",
    "above what a seal on a fast shaft bears",
    "above what a seal on a slow shaft bears",
    "harms seals",
    "bears it",
    "draws water and paste inwards",
  ]);
});
