import fc from "fast-check";
import { unit as mathUnit } from "mathjs";
import { describe, expect, test } from "vitest";
import * as units from "../../../src/mechanics/quantity/unit.ts";
import { inSI, onScale, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const isUnit = (it: unknown): it is Unit => typeof it === "object" && it !== null && "inSI" in it;
const all: readonly Unit[] = Object.values(units).filter(isUnit);

/** Rows with the name of their unit in front, for the title. */
const titled = <Given>(rows: readonly (readonly [Unit, Given])[]) =>
  rows.map(([unit, given]) => [unit.symbol, unit, given] as const);

const relative = (actual: number, expected: number): number => Math.abs(actual / expected - 1);

// NIST SP 811 (2008), appendix B.8: factors in bold type are exact; the others are printed to seven digits.
describe("NIST SP 811, appendix B.8", () => {
  test.each(
    titled([
      [units.inches, "2.54e-2"],
      [units.feet, "3.048e-1"],
      [units.miles, "1.609344e3"],
      [units.kgf, "9.80665"],
      [units.kgf_m, "9.80665"],
      [units.bar, "1e5"],
      [units.mbar, "1e2"],
      [units.mm2_s, "1e-6"],
      [units.mPas, "1e-3"],
      [units.L, "1e-3"],
      [units.h, "3.6e3"],
      [units.d, "8.64e4"],
      [units.lbf, "4.4482216152605"],
    ]),
  )("%s is exactly its factor", (_, { inSI }, factor) => expect(relative(inSI, Number(factor))).toBeLessThan(4e-16));

  test.each(
    titled([
      [units.lbf_ft, "1.355818"],
      [units.lbf_in, "1.129848e-1"],
      [units.psi, "6.894757e3"],
      [units.usGallons, "3.785412e-3"],
      [units.usQuart, "9.463529e-4"],
      [units.usPint, "4.731765e-4"],
      [units.usFluidOunce, "2.957353e-5"],
      [units.imperialGallons, "4.54609e-3"],
      [units.imperialFluidOunce, "2.841306e-5"],
      [units.km_h, "2.777778e-1"],
      [units.deg, "1.745329e-2"],
    ]),
  )("%s is what is printed", (_, { inSI }, factor) => agrees(inSI, factor));
});

// Weights and Measures Act 1985 (UK), schedule 1 (from memory): the gallon is 4.546 09 L, the quart a fourth, the pint an
// eighth of it.
test.each(
  titled([
    [units.imperialPint, 0.56826125e-3],
    [units.imperialQuart, 1.1365225e-3],
    [units.imperialGallons, 4.54609e-3],
  ]),
)("%s is what the Weights and Measures Act says", (_, { inSI }, factor) =>
  expect(relative(inSI, factor)).toBeLessThan(4e-16),
);

describe("mathjs, whose factors are its own", () => {
  // Its psi is rounded at the tenth digit; everything else agrees to the last bits.
  test.each(
    titled([
      [units.Nm, "N m"],
      [units.lbf_ft, "lbf ft"],
      [units.lbf_in, "lbf inch"],
      [units.kgf_m, "kgf m"],
      [units.kgf_cm, "kgf cm"],
      [units.Ncm, "N cm"],
      [units.kNm, "kN m"],
      [units.usPint, "pint"],
      [units.usQuart, "quart"],
      [units.usGallons, "gallon"],
      [units.lbf, "lbf"],
      [units.kgf, "kgf"],
      [units.psi, "psi"],
      [units.bar, "bar"],
      [units.MPa, "N/mm^2"],
      [units.inches, "inch"],
      [units.feet, "foot"],
      [units.miles, "mile"],
      [units.um, "um"],
      [units.cm2, "cm^2"],
      [units.ml, "cm^3"],
      [units.mm3, "mm^3"],
      [units.d, "day"],
      [units.km_h, "km/hour"],
      [units.km_d, "km/day"],
      [units.ml_h, "cm^3/hour"],
      [units.ml_km, "cm^3/km"],
      [units.ml_mm, "cm^3/mm"],
      [units.mm2_s, "mm^2/s"],
      [units.mPas, "mPa s"],
      [units.N_mm, "N/mm"],
      [units.kg_m3, "kg/m^3"],
      [units.deg, "deg"],
    ]),
  )("%s is theirs", (_, { inSI, dimension: [l, m, t] }, theirs) => {
    const coherent = theirs === "deg" ? "rad" : `m^${l} kg^${m} s^${t}`;
    expect(relative(inSI, mathUnit(1, theirs).toNumber(coherent))).toBeLessThan(theirs === "psi" ? 1e-10 : 2e-15);
  });

  test.each([
    ["degC", units.degC, -17.2],
    ["degF", units.degF, 98.6],
  ])("%s has its zero", (theirs, ours, value) =>
    expect(inSI(value, ours)).toBeCloseTo(mathUnit(value, theirs).toNumber("K"), 9),
  );
});

describe("every unit", () => {
  test("is one of many, and none stands twice for the same kind", () => {
    expect(all.length).toBeGreaterThan(60);
    const names = all.map(({ symbol, kind }) => `${kind}: ${symbol}`);
    expect(new Set(names).size).toBe(names.length);
  });

  test("shares its dimension with all units of its kind", () => {
    for (const { kind, dimension, symbol } of all)
      for (const other of all.filter((it) => it.kind === kind)) expect(other.dimension, symbol).toEqual(dimension);
  });

  test("only degrees of temperature start elsewhere than at nought", () =>
    expect(all.filter(({ zero }) => zero !== 0)).toEqual([units.degC, units.degF]));

  test.each(all.map((it) => [it.symbol || "1", it]))("%s goes there and back", (_, unit) => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (thousandths) => {
        const value = thousandths / 1000;
        const back = onScale(inSI(value, unit), unit);
        // A temperature loses what its zero, some 460 of its degrees, takes of the digits.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-15 * Math.abs(value) + (unit.zero === 0 ? 0 : 1e-12));
      }),
    );
  });
});
