import { describe, expect, test } from "vitest";
import { type OilBase, supposedOil, supposedViscosity } from "../../../src/mechanics/fluid/gradesRange.ts";
import { gradeFromText } from "../../../src/mechanics/fluid/gradesText.ts";
import { viscosityIndex } from "../../../src/mechanics/fluid/viscosityIndex.ts";
import { exact, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, mm2_s } from "../../../src/mechanics/quantity/unit.ts";

function read(text: string, base: OilBase, id = "oil") {
  const label = gradeFromText(text);
  if (!label.ok) throw new Error(text);
  return supposedOil(label.label, base, "2019", id);
}

function oil(text: string, base: OilBase, id = "oil") {
  const found = read(text, base, id);
  if (!found.ok) throw new Error(found.problem.type);
  return found.oil;
}

function range(text: string, base: OilBase, t_degC: number) {
  const found = supposedViscosity(oil(text, base), exact("t", t_degC, degC));
  if (!found.ok) throw new Error(found.problem.type);
  return found;
}

describe("an oil of which only the label is known", () => {
  test("SAE 90 lies anywhere in its row, with the index of a mineral oil", () => {
    const { kv100, kv40, VI, corners } = oil("SAE 90", "mineral");
    expect(valueIn(mm2_s, kv100)).toBeCloseTo(16, 9);
    expect(standardUncertainty(kv100)).toBeCloseTo(5e-6 / Math.sqrt(12), 12);
    expect(VI.value).toBeCloseTo(100, 9);
    expect(corners.map(({ kv100_mm2_s }) => kv100_mm2_s)).toEqual([13.5, 13.5, 18.5, 18.5]);
    const index = viscosityIndex(kv40, kv100);
    expect(index.ok && index.VI.value).toBeCloseTo(100, 6);
  });

  test("every corner keeps the index and the row of its label", () => {
    for (const text of ["80W-90", "75W-140", "10W-40", "ISO VG 220", "ISO VG 32"])
      for (const base of ["mineral", "synthetic", "unknown"] as const)
        for (const { kv40_mm2_s, kv100_mm2_s } of oil(text, base).corners) {
          const index = viscosityIndex(exact("U", kv40_mm2_s, mm2_s), exact("Y", kv100_mm2_s, mm2_s));
          const value = index.ok ? index.VI.value : Number.NaN;
          expect(value, text).toBeGreaterThan(94.5);
          expect(value, text).toBeLessThan(170.5);
        }
  });

  test("ISO VG 220 lies within 10 % at 40 °C", () => {
    const { kv40, corners } = oil("ISO VG 220", "mineral");
    expect(valueIn(mm2_s, kv40)).toBeCloseTo(220, 9);
    const at40 = corners.map(({ kv40_mm2_s }) => kv40_mm2_s);
    expect(Math.min(...at40)).toBeCloseTo(198, 6);
    expect(Math.max(...at40)).toBeCloseTo(242, 6);
  });

  test("the range at any temperature holds its middle, and a wider prior gives a wider range", () => {
    for (const t_degC of [0, 20, 90, 120]) {
      const mineral = range("80W-90", "mineral", t_degC);
      const unknown = range("80W-90", "unknown", t_degC);
      const middle = valueIn(mm2_s, mineral.nu);
      expect(middle).toBeGreaterThan(mineral.least_mm2_s);
      expect(middle).toBeLessThan(mineral.most_mm2_s);
      expect(unknown.most_mm2_s / unknown.least_mm2_s).toBeGreaterThan(mineral.most_mm2_s / mineral.least_mm2_s);
    }
  });

  // An oil of 140 and 14.5 mm²/s has an index of 102, so it is one that a mineral 80W-90 may be: 489 mm²/s at 20 °C.
  test("the range of a mineral 80W-90 at 20 °C holds an oil that is one", () => {
    const { least_mm2_s, most_mm2_s } = range("80W-90", "mineral", 20);
    expect(least_mm2_s).toBeLessThan(489.45);
    expect(most_mm2_s).toBeGreaterThan(489.45);
  });

  test("two oils with one label have doubts of their own", () => {
    const keys = (id: string) => Object.keys(oil("SAE 90", "mineral", id).kv40.contributions);
    expect(keys("in the case").some((key) => keys("in the can").includes(key))).toBe(false);
  });

  test("a W row alone and the thickest grade have no upper end", () => {
    expect(read("80W", "mineral")).toEqual({ ok: false, problem: { type: "NoUpperEnd", from_mm2_s: 8.5 } });
    expect(read("SAE 250", "mineral")).toEqual({ ok: false, problem: { type: "NoUpperEnd", from_mm2_s: 41 } });
  });

  test("a grade that the edition does not have is refused", () =>
    expect(
      supposedOil({ type: "gear", winter: null, hot: "75", editions: ["2019"] }, "mineral", "2005", "oil"),
    ).toEqual({ ok: false, problem: { type: "NotInEdition", edition: "2005" } }));
});
