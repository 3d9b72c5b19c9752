import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  reachOf,
  temperatureFor,
  type ViscosityLine,
  viscosityAt,
  viscosityLine,
} from "../../../src/mechanics/fluid/viscosity.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, reading, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, degF, mm2_s } from "../../../src/mechanics/quantity/unit.ts";
import { working } from "../../../src/mechanics/quantity/working.ts";
import { agrees } from "../../published.ts";

const t = (t_degC: number) => exact("t", t_degC, degC);
const nu = (nu_mm2_s: number) => exact("nu", nu_mm2_s, mm2_s);

function line(kv40: number, kv100: number): ViscosityLine {
  const drawn = viscosityLine({ nu: nu(kv40), t: t(40) }, { nu: nu(kv100), t: t(100) });
  if (!drawn.ok) throw new Error(drawn.problem.type);
  return drawn.line;
}

function kv(oil: ViscosityLine, t_degC: number): number {
  const read = viscosityAt(oil, t(t_degC));
  if (!read.ok) throw new Error(read.problem.type);
  return valueIn(mm2_s, read.nu);
}

function celsius(oil: ViscosityLine, nu_mm2_s: number): number {
  const read = temperatureFor(oil, nu(nu_mm2_s));
  if (!read.ok) throw new Error(read.problem.type);
  return valueIn(degC, read.t);
}

// Computed apart from this code, in R 4.2.2, from the equations of ASTM D341 as two public sources quote them.
describe("ASTM D341, computed apart in R", () => {
  test.each([
    [48, 8.0, "8.565291", "3.340892", "1245.1 460.64 229.70 126.31 22.862 12.770 9.985 5.4537"],
    [100, 15.0, "7.644686", "2.942198", "2614.8 986.50 493.39 269.89 46.017 24.787 19.043 9.9073"],
    [140, 14.5, "8.840214", "3.409040", "9764.6 2648.6 1066.5 489.45 54.195 25.968 19.093 9.0532"],
    [350, 26, "8.647207", "3.302223", "43202 9916.5 3539.0 1460.3 117.98 50.718 35.640 15.171"],
    [220, 18.7, "8.895686", "3.416110", "22822 5472.9 2023.2 863.34 78.189 35.147 25.184 11.252"],
  ])("an oil of %d and %d mm²/s", (kv40, kv100, A, B, row) => {
    const oil = line(kv40, kv100);
    agrees(oil.A.value, A);
    agrees(oil.B.value, B);
    const temperatures = [-12, 0, 10, 20, 60, 80, 90, 120];
    for (const [i, printed] of row.split(" ").entries()) agrees(kv(oil, temperatures[i] ?? Number.NaN), printed);
  });

  test("an oil of 100 and 15 mm²/s has 59 055 mm²/s at -40 °C", () => agrees(kv(line(100, 15), -40), "59055"));
});

const oils = fc
  .record({ kv100: fc.double({ min: 2.1, max: 60, noNaN: true }), times: fc.double({ min: 3, max: 18, noNaN: true }) })
  .map(({ kv100, times }) => ({ kv40: kv100 * times, kv100 }));

describe("laws", () => {
  test("the line goes through the points it was drawn through", () => {
    fc.assert(
      fc.property(oils, ({ kv40, kv100 }) => {
        const oil = line(kv40, kv100);
        // The standard's inverse is itself a fit: below 5 mm²/s it comes back within 0.1 %.
        const close = (a: number, b: number) => Math.abs(a / b - 1) < (b > 5 ? 1e-6 : 1e-3);
        return close(kv(oil, 40), kv40) && close(kv(oil, 100), kv100);
      }),
    );
  });

  test("the viscosity falls as the temperature rises", () => {
    fc.assert(
      fc.property(oils, fc.integer({ min: -20, max: 149 }), ({ kv40, kv100 }, t_degC) => {
        const [cold, hot] = [t_degC, t_degC + 1].map((it) => viscosityAt(line(kv40, kv100), t(it)));
        if (!cold?.ok || !hot?.ok) return true;
        return cold.nu.value > hot.nu.value;
      }),
    );
  });

  test("the temperature for a viscosity has that viscosity", () => {
    fc.assert(
      fc.property(oils, fc.double({ min: -10, max: 130, noNaN: true }), ({ kv40, kv100 }, t_degC) => {
        const oil = line(kv40, kv100);
        const read = viscosityAt(oil, t(t_degC));
        if (!read.ok || read.nu.value < 5e-6) return true;
        return Math.abs(celsius(oil, valueIn(mm2_s, read.nu)) - t_degC) < 1e-4;
      }),
    );
  });

  test("the order of the points and the scale of the temperature change nothing", () => {
    const back = viscosityLine({ nu: nu(15), t: exact("t", 212, degF) }, { nu: nu(100), t: exact("t", 104, degF) });
    if (!back.ok) throw new Error(back.problem.type);
    expect(kv(back.line, 20)).toBeCloseTo(kv(line(100, 15), 20), 9);
    expect(back.line.coldest.value).toBeCloseTo(313.15, 9);
  });

  test("at a measured temperature the uncertainty is that of the measurement there", () => {
    const measured = viscosityLine(
      { nu: reading("nu", normal(100, 1), mm2_s, "kv40", "sheet"), t: t(40) },
      { nu: reading("nu", normal(15, 0.3), mm2_s, "kv100", "sheet"), t: t(100) },
    );
    if (!measured.ok) throw new Error(measured.problem.type);
    const read = viscosityAt(measured.line, t(100));
    if (!read.ok) throw new Error(read.problem.type);
    expect(standardUncertainty(read.nu)).toBeCloseTo(0.3e-6, 10);
    expect(Math.abs(read.nu.contributions["kv40"] ?? 0)).toBeLessThan(1e-12);
  });
});

test("the working shows every equation of the standard with its source", () => {
  const read = viscosityAt(line(100, 15), exact("t", 68, degF));
  if (!read.ok) throw new Error(read.problem.type);
  const steps = working(read.nu);
  expect(steps.map(({ formula }) => formula.slice(0, formula.indexOf("=")).trim())).toEqual(
    expect.arrayContaining(["Z", "W", "B", "A", "nu"]),
  );
  expect(steps.some(({ substituted }) => substituted.includes("log10(20 °C + 273.15)"))).toBe(true);
  for (const { source } of steps) expect(source).toContain("D341");
});

describe("refusals", () => {
  test.each([0.2, 0, -3, 2.1e7])("%d mm²/s lies outside the equation", (given) => {
    const drawn = viscosityLine({ nu: nu(given), t: t(40) }, { nu: nu(1), t: t(100) });
    expect(drawn).toMatchObject({ ok: false, problem: { type: "OutsideLimits", given, least: 0.21, most: 2e7 } });
    expect(temperatureFor(line(100, 15), nu(given)).ok).toBe(false);
  });

  test("two points at one temperature give no line", () =>
    expect(viscosityLine({ nu: nu(100), t: t(40) }, { nu: nu(15), t: t(40) })).toEqual({
      ok: false,
      problem: { type: "SameTemperature" },
    }));

  test.each([15, 14])("an oil of %d mm²/s cold and 15 hot gives no line", (cold) =>
    expect(viscosityLine({ nu: nu(cold), t: t(40) }, { nu: nu(15), t: t(100) })).toEqual({
      ok: false,
      problem: { type: "NotFalling" },
    }),
  );

  test.each([-250, -120, 5000])("at %d °C the oil has left the chart", (t_degC) =>
    expect(viscosityAt(line(100, 15), t(t_degC))).toMatchObject({ ok: false, problem: { type: "OutsideLimits" } }),
  );

  test("below absolute zero there is no viscosity", () =>
    expect(viscosityAt(line(100, 15), t(-300))).toMatchObject({ ok: false, problem: { symbol: "t" } }));
});

test.each([
  [40, "between the points"],
  [70, "between the points"],
  [120, "beyond the points"],
  [20, "beyond the points"],
  [-12, "below 0 °C"],
])("%d °C lies %s of a line from 40 to 100 °C", (t_degC, reach) =>
  expect(reachOf(line(100, 15), t(t_degC))).toBe(reach),
);
