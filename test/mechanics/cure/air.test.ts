import { describe, expect, test } from "vitest";
import {
  humidityFelt,
  humidityRead,
  referenceAir,
  saturationPressure,
  vapourPressure,
} from "../../../src/mechanics/cure/air.ts";
import { exact, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, mbar, Pa } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

describe("published", () => {
  // Magnus as in WMO-No. 8; IAPWS-IF97 beside it.
  test.each([
    [5, "8.717", 8.726],
    [10, "12.260", 12.282],
    [20, "23.326", 23.392],
    [23, "28.025", 28.109],
    [30, "42.337", 42.467],
    [40, "73.675", 73.844],
  ])("saturated air at %d °C holds its vapour pressure, hPa, to 0.35 %% of IF97", (T, magnus, if97) => {
    const e_s = valueIn(mbar, saturationPressure(exact("T", T, degC)));
    agrees(e_s, magnus);
    expect(Math.abs(e_s / if97 - 1)).toBeLessThan(0.0035);
  });

  test("at 23 °C and 50 % the vapour presses with 1401 Pa", () =>
    agrees(valueIn(Pa, vapourPressure(referenceAir)), "1401"));
});

test("humidity is known by a gauge to 7 %, or by a picture", () => {
  expect(standardUncertainty(humidityRead(55, "x"))).toBeCloseTo(0.07, 12);
  expect(humidityFelt("damp", "x").value).toBeCloseTo(0.75, 12);
  expect(humidityFelt("dry", "x").origin).toMatchObject({ type: "reading", evidence: "dry" });
});

test("vapour pressure is not told outside -45 to 100 °C", () => {
  for (const T of [-50, 101]) expect(() => saturationPressure(exact("T", T, degC))).toThrow(RangeError);
});
