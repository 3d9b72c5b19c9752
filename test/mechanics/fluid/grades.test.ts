import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { engineGrades, gearGrade, gearGradesBetween, isoGrade } from "../../../src/mechanics/fluid/grades.ts";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { mm2_s } from "../../../src/mechanics/quantity/unit.ts";
import { isoGrades } from "../../../src/mechanics/tables/iso3448.ts";
import { engineHotRows, engineWinterRows } from "../../../src/mechanics/tables/saeJ300.ts";
import { type GearGradeEdition, gearGradeEditions, saeJ306 } from "../../../src/mechanics/tables/saeJ306.ts";

const kv = (nu_mm2_s: number) => exact("nu", nu_mm2_s, mm2_s);

function gear(nu_mm2_s: number, edition: GearGradeEdition): string | null {
  const found = gearGrade(kv(nu_mm2_s), edition);
  return found.type === "gear grade" ? found.grade : null;
}

// SAE J306 (February 2019), table 1: two published copies agree.
describe("SAE J306 of 2019 as printed", () => {
  const { winter, hot } = saeJ306["2019"];
  test.each([
    "65: 3.8 to 5",
    "70: 5 to 6.5",
    "75: 6.5 to 8.5",
    "80: 8.5 to 11",
    "85: 11 to 13.5",
    "90: 13.5 to 18.5",
    "110: 18.5 to 24",
    "140: 24 to 32.5",
    "190: 32.5 to 41",
    "250: 41 to null",
  ])("%s mm²/s", (row) =>
    expect(hot.map(({ grade, from_mm2_s, below_mm2_s }) => `${grade}: ${from_mm2_s} to ${below_mm2_s}`)).toContain(row),
  );
  test.each(["70W: -55, 3.8", "75W: -40, 3.8", "80W: -26, 8.5", "85W: -12, 11"])("%s", (row) =>
    expect(winter.map((it) => `${it.grade}: ${it.thickest_degC}, ${it.from_mm2_s}`)).toContain(row),
  );
});

// The 2005 edition from memory.
test.each([
  [7.5, "2019", "75"],
  [7.5, "2005", "80"],
  [4.5, "2019", "65"],
  [4.5, "2005", null],
  [13.5, "2019", "90"],
  [13.499, "2019", "85"],
  [18.5, "2005", "110"],
  [1000, "2019", "250"],
  [3.79, "2019", null],
] as const)("%d mm²/s under the edition of %s is %s", (nu, edition, grade) => expect(gear(nu, edition)).toBe(grade));

test("the edition is named in the answer", () => {
  expect(gearGrade(kv(15), "2005")).toMatchObject({ type: "gear grade", edition: "2005", grade: "90" });
  expect(gearGrade(kv(2), "2019")).toEqual({ type: "below every grade", edition: "2019", from_mm2_s: 3.8 });
});

describe("laws", () => {
  test("gear grades part the axis: from the thinnest on, every viscosity is in exactly one row", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 80, noNaN: true }),
        fc.constantFrom(...gearGradeEditions),
        (nu, edition) => {
          const { hot } = saeJ306[edition];
          const rows = hot.filter((it) => nu >= it.from_mm2_s && nu < (it.below_mm2_s ?? Number.POSITIVE_INFINITY));
          expect(rows.length).toBe(nu >= (hot[0]?.from_mm2_s ?? 0) ? 1 : 0);
          expect(gear(nu, edition)).toBe(rows[0]?.grade ?? null);
        },
      ),
    );
  });

  test("each gear row starts where the one before it ends, and its start belongs to it", () => {
    for (const edition of gearGradeEditions)
      saeJ306[edition].hot.forEach((row, place, hot) => {
        if (place > 0) expect(hot[place - 1]?.below_mm2_s).toBe(row.from_mm2_s);
        expect(gearGrade(kv(row.from_mm2_s), edition)).toMatchObject({ grade: row.grade, place });
      });
  });

  test("the grades between a viscosity and itself are its grade", () => {
    fc.assert(
      fc.property(fc.double({ min: 3.8, max: 80, noNaN: true }), (nu) => {
        expect(gearGradesBetween(kv(nu), kv(nu), "2019")).toEqual([gear(nu, "2019")]);
      }),
    );
  });
});

test("viscosities from 13 to 19 mm²/s fall in three gear grades", () =>
  expect(gearGradesBetween(kv(13), kv(19), "2019")).toEqual(["85", "90", "110"]));

// SAE J300, main rows: three quoted tables agree; row 12 from memory.
describe("SAE J300", () => {
  test.each([
    [12.5, ["40"]],
    [16.29, ["40"]],
    [16.3, ["50"]],
    [10, ["30"]],
    [9.3, ["30"]],
    [9.2, ["20"]],
    [7, ["12", "16", "20"]],
    [5.5, ["8", "12"]],
    [26, ["60"]],
    [26.1, []],
    [3.9, []],
  ])("%d mm²/s is in the rows %j", (nu, grades) => expect(engineGrades(kv(nu))).toEqual(grades));

  test("rows with W begin at the viscosities printed", () =>
    expect(engineWinterRows.map(({ grade, from_mm2_s }) => `${grade} ${from_mm2_s}`).join(", ")).toBe(
      "0W 3.8, 5W 3.8, 10W 4.1, 15W 5.6, 20W 5.6, 25W 9.3",
    ));

  test("from 4.0 to 26.1 mm²/s there is no gap", () => {
    engineHotRows.slice(1).forEach((row, i) => {
      expect(row.from_mm2_s).toBeLessThanOrEqual(engineHotRows[i]?.below_mm2_s ?? 0);
    });
  });

  test("an SAE 90 gear oil spans the engine grades 40 and 50", () => {
    expect(engineGrades(kv(13.5))).toEqual(["40"]);
    expect(engineGrades(kv(18.4))).toEqual(["50"]);
  });
});

// ISO 3448:1992: limits are the midpoint and 10 % either side, as two quoted charts print them.
describe("ISO 3448", () => {
  test.each([
    [61.2, 68],
    [74.8, 68],
    [198, 220],
    [242, 220],
    [9, 10],
    [11, 10],
    [13.5, 15],
    [900, 1000],
  ])("%d mm²/s is VG %d", (nu, VG_mm2_s) => expect(isoGrade(kv(nu))).toEqual({ type: "ISO VG", VG_mm2_s }));

  test.each([
    [12, 10, 15],
    [61.1, 46, 68],
    [74.9, 68, 100],
    [1, null, 2.2],
    [5000, 3200, null],
  ])("%d mm²/s lies between %j and %j", (nu, below_mm2_s, above_mm2_s) =>
    expect(isoGrade(kv(nu))).toEqual({ type: "between grades", below_mm2_s, above_mm2_s }),
  );

  test("no viscosity is in two grades", () => {
    isoGrades.slice(1).forEach(({ VG_mm2_s }, i) => {
      expect((isoGrades[i]?.VG_mm2_s ?? 0) * 1.1).toBeLessThan(VG_mm2_s * 0.9);
    });
  });
});
