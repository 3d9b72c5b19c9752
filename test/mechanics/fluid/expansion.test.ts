import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  densityAt,
  type ExpansionRead,
  expandedVolume,
  expansionCoefficient,
  growth,
  volumeCorrection,
  volumeRatio,
} from "../../../src/mechanics/fluid/expansion.ts";
import { type CaseMetal, growthInCase, levelRise } from "../../../src/mechanics/fluid/expansionInCase.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, degF, kg_m3, L, ml, ml_mm, mm, one, perK } from "../../../src/mechanics/quantity/unit.ts";
import { working } from "../../../src/mechanics/quantity/working.ts";
import { agrees } from "../../published.ts";

const t = (t_degC: number) => exact("t", t_degC, degC);
const rho = (rho_kg_m3: number) => exact("rho_60", rho_kg_m3, kg_m3);
const V = exact("V", 1.2, L);
const warmed = (rho_kg_m3 = 880) => ({ rho_60: rho(rho_kg_m3), from: t(20), to: t(90) });

function of(read: ExpansionRead): Quantity {
  if (!read.ok) throw new Error(read.problem.type);
  return read.result;
}

// API MPMS 11.1, lubricating oils; figures computed apart from this code from its equation.
describe("1.2 L of oil from 20 to 90 °C", () => {
  test("corrects by 0.996826 and 0.946139 at 880 kg/m³", () => {
    agrees(valueIn(one, of(volumeCorrection(rho(880), t(20)))), "0.996826");
    agrees(valueIn(one, of(volumeCorrection(rho(880), t(90)))), "0.946139");
    agrees(valueIn(one, of(volumeRatio(warmed()))), "1.053573");
  });

  test.each([
    [860, "65.9", "7.30e-4"],
    [880, "64.3", "7.13e-4"],
    [900, "62.8", "6.98e-4"],
  ])("of %d kg/m³ grows by %s ml", (rho_kg_m3, grown_ml, alpha) => {
    agrees(valueIn(ml, of(growth(V, warmed(rho_kg_m3)))), grown_ml);
    agrees(valueIn(perK, of(expansionCoefficient(rho(rho_kg_m3)))), alpha);
    const after = of(expandedVolume(V, warmed(rho_kg_m3)));
    agrees(valueIn(ml, after) - 1200, grown_ml);
  });

  test("thins from 877.2 to 832.6 kg/m³", () => {
    agrees(valueIn(kg_m3, of(densityAt(rho(880), t(20)))), "877.2");
    agrees(valueIn(kg_m3, of(densityAt(rho(880), t(90)))), "832.6");
  });

  test("outgrows an aluminium case by 58.5 ml", () =>
    agrees(valueIn(ml, of(growthInCase(V, warmed(), "aluminium"))), "58.5"));

  test.each([
    [12, "4.86"],
    [18, "3.24"],
    [25, "2.33"],
  ])("rises in an aluminium case of %d ml/mm by %s mm", (k, rise_mm) =>
    agrees(valueIn(mm, of(levelRise(V, warmed(), "aluminium", exact("k", k, ml_mm)))), rise_mm),
  );
});

// The constant of the older table 54D is 0.6278 per °C: 0.34878 per °F by 1.8.
test("the coefficient is that of table 54D, 0.6278 by density", () =>
  agrees(valueIn(perK, of(expansionCoefficient(rho(1000)))) * 1000, "0.6278"));

const density = fc.double({ min: 801, max: 1163, noNaN: true });
const temperature = fc.double({ min: -50, max: 150, noNaN: true });

describe("laws", () => {
  test("warmed and cooled again an oil has its volume back", () => {
    fc.assert(
      fc.property(density, temperature, temperature, (d, from, to) => {
        const there = of(expandedVolume(V, { rho_60: rho(d), from: t(from), to: t(to) }));
        const back = of(expandedVolume(there, { rho_60: rho(d), from: t(to), to: t(from) }));
        expect(valueIn(L, back)).toBeCloseTo(1.2, 12);
      }),
    );
  });

  test("an oil grows as it warms", () => {
    fc.assert(
      fc.property(density, fc.double({ min: -50, max: 149, noNaN: true }), (d, from) => {
        return of(volumeRatio({ rho_60: rho(d), from: t(from), to: t(from + 1) })).value > 1;
      }),
    );
  });

  test("mass is kept: volume by density does not change", () => {
    fc.assert(
      fc.property(density, temperature, temperature, (d, from, to) => {
        const before = V.value * of(densityAt(rho(d), t(from))).value;
        const after =
          of(expandedVolume(V, { rho_60: rho(d), from: t(from), to: t(to) })).value *
          of(densityAt(rho(d), t(to))).value;
        expect(after / before).toBeCloseTo(1, 12);
      }),
    );
  });

  test("at 60 °F nothing is corrected", () =>
    expect(of(volumeCorrection(rho(880), exact("t", 60, degF))).value).toBe(1));

  test("an iron case leaves more of the growth than aluminium, and aluminium more than magnesium", () => {
    const left = (metal: CaseMetal) => of(growthInCase(V, warmed(), metal)).value;
    expect(left("iron")).toBeGreaterThan(left("aluminium"));
    expect(left("aluminium")).toBeGreaterThan(left("magnesium"));
    expect(of(growth(V, warmed())).value).toBeGreaterThan(left("iron"));
  });

  test("a cooling oil falls", () =>
    expect(
      of(levelRise(V, { rho_60: rho(880), from: t(55), to: t(20) }, "aluminium", exact("k", 22, ml_mm))).value,
    ).toBeLessThan(0));

  test("the doubt of one thermometer is one doubt: a rise between equal readings has none", () => {
    const same = reading("t", normal(20, 2), degC, "thermometer", "infrared");
    const ratio = of(volumeRatio({ rho_60: rho(880), from: same, to: same }));
    expect(ratio.contributions["thermometer"]).toBeCloseTo(0, 12);
  });
});

test("the working of a rise names API MPMS and the case", () => {
  const steps = working(of(levelRise(V, warmed(), "iron", exact("k", 18, ml_mm))));
  expect(steps.map(({ source }) => source).join("\n")).toContain("API MPMS 11.1");
  expect(steps.some(({ formula }) => formula.startsWith("CTL ="))).toBe(true);
});

describe("refusals", () => {
  test.each([800.8, 1163.6])("%d kg/m³ is no lubricating oil of the standard", (given) =>
    expect(expandedVolume(V, warmed(given))).toMatchObject({
      ok: false,
      problem: { type: "OutsideLimits", symbol: "rho_60", given, least: 800.9, most: 1163.5 },
    }),
  );

  test.each([-51, 151])("%d °C lies outside the standard", (given) => {
    const problem = { symbol: "t", given };
    expect(expandedVolume(V, { rho_60: rho(880), from: t(given), to: t(20) })).toMatchObject({ ok: false, problem });
    expect(growthInCase(V, { rho_60: rho(880), from: t(20), to: t(given) }, "iron")).toMatchObject({ problem });
  });

  test("a level needs a surface", () =>
    expect(levelRise(V, warmed(), "iron", exact("k", 0, ml_mm))).toMatchObject({
      ok: false,
      problem: { symbol: "k" },
    }));
});
