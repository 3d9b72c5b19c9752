import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type AnaerobicJoint,
  anaerobicCure,
  breakawayRange,
  breakawayTorque,
  temperatureFactor,
} from "../../../src/mechanics/cure/anaerobic.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, degF, h, MPa, mm, Nm, um } from "../../../src/mechanics/quantity/unit.ts";
import { anaerobicLimits } from "../../../src/mechanics/tables/cureData.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { agrees } from "../../published.ts";

const joint = (over: Partial<AnaerobicJoint>): AnaerobicJoint => ({
  gap: exact("c", 0.15, mm),
  T: exact("T", 22.5, degC),
  metals: ["steel", "cast iron"],
  activator: false,
  oily: false,
  ...over,
});
const full_h = (T: number): number => {
  const found = anaerobicCure(joint({ T: exact("T", T, degC) }));
  return found.type === "cures" ? valueIn(h, found.full) : Number.NaN;
};
const hindrances = (over: Partial<AnaerobicJoint>) => {
  const found = anaerobicCure(joint(over));
  return found.type === "cures" ? [] : found.hindrances;
};

describe("published", () => {
  // T = tau * pi * d_2² * l / 2, M18x1.5 (a check value only), 10 mm; worked apart from this program.
  test.each([
    [2, "9"],
    [5, "23"],
    [8, "36"],
    [12, "55"],
    [20, "91"],
  ])("a shear strength of %d N/mm² breaks away at %s N·m", (tau, T) =>
    agrees(valueIn(Nm, breakawayTorque(exact("tau", tau, MPa), metricThread(18, 1.5).d_2, exact("l", 10, mm))), T),
  );

  // Petrie, Handbook of Adhesives and Sealants, p. 388: no cure above about 30 mil; full strength in 24 h.
  test("no cure above 0.76 mm, full strength in 24 h at room temperature", () => {
    expect(anaerobicLimits.noCureAbove_mm.value).toBe(Number((30 * 0.0254).toFixed(2)));
    expect(hindrances({ gap: exact("c", 0.77, mm) })).toContain("gap above what cures at all");
    expect(hindrances({ gap: exact("c", 760, um) })).not.toContain("gap above what cures at all");
    agrees(full_h(22.5), "24");
  });
});

test("every hindrance is named: width, oil, cold, and a metal that does not start it", () => {
  expect(hindrances({ gap: exact("c", 0.6, mm) })).toEqual(["gap above what any grade is used for"]);
  expect(hindrances({ oily: true })).toEqual(["oil on the metal"]);
  expect(hindrances({ T: exact("T", 4, degC) })).toEqual(["colder than it cures reliably"]);
  expect(hindrances({ metals: ["steel", "aluminium"] })).toEqual(["needs activator"]);
  expect(hindrances({ metals: ["steel", "aluminium"], activator: true })).toEqual([]);
});

test("a narrow gap takes a locker, a wider one a high-viscosity sealant", () => {
  const grade = (gap: number) => {
    const found = anaerobicCure(joint({ gap: exact("c", gap, mm) }));
    return found.type === "cures" ? found.grade : null;
  };
  expect([grade(0.25), grade(0.26), grade(0.5), grade(0.51)]).toEqual([
    "locker",
    "high-viscosity sealant",
    "high-viscosity sealant",
    null,
  ]);
});

describe("laws", () => {
  test("10 °C colder takes twice as long, and warmth never shortens what was said", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 12, noNaN: true }),
        fc.double({ min: 22.5, max: 40, noNaN: true }),
        (cold, warm) => {
          expect(full_h(cold) / full_h(cold + 10)).toBeCloseTo(2, 9);
          expect(full_h(warm)).toBeCloseTo(24, 9);
          expect(full_h(cold)).toBeGreaterThan(full_h(cold + 1));
        },
      ),
    ));

  test("units of temperature do not matter", () =>
    expect(temperatureFactor(exact("T", 50, degF)).value).toBeCloseTo(
      temperatureFactor(exact("T", 10, degC)).value,
      10,
    ));

  test("a stronger class breaks away later, its ends in order", () => {
    const ends = (["low", "medium", "high"] as const).flatMap((it) => {
      const { low, high } = breakawayRange(it, metricThread(20, 1.5).d_2, exact("l", 10, mm));
      return [low.value, high.value];
    });
    expect(ends).toEqual([...ends].sort((a, b) => a - b));
  });
});
