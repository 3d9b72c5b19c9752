import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  allowedBelowLip,
  fillTargetDoubtful,
  fillTargetSound,
  levellingFactor,
  levelVerdict,
  lip,
  overflow,
  puddleHeight,
  standsAboveLip,
} from "../../../src/mechanics/fluid/levelLip.ts";
import { drawBack } from "../../../src/mechanics/fluid/levelVolumes.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { deg, kg_m3, ml, ml_mm, mm, mm2_s, N_m } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const level = (h_mm: number, u_mm = 0): Quantity =>
  u_mm > 0 ? reading("h", normal(h_mm, u_mm), mm, "h", "wire hook") : exact("h", h_mm, mm);
const puddle_mm = (psi_deg: number): number =>
  valueIn(mm, puddleHeight(exact("gamma", 0.031, N_m), exact("rho", 877, kg_m3), exact("psi", psi_deg, deg)));

describe("published", () => {
  // Puddles of de Gennes et al.; 0.031 N/m and 877 kg/m³; worked apart from this program.
  test.each([
    [10, "0.33"],
    [20, "0.66"],
    [30, "0.98"],
    [90, "2.7"],
  ])("oil at a contact angle of %d° stands this high above the lip", (psi, e) => agrees(puddle_mm(psi), e));

  test("its capillary length is 1.90 mm", () => agrees(puddle_mm(180) / 2, "1.90"));

  // 493.39 mm²/s at 10 °C, 19.043 at 90 °C: ASTM D341 for an oil of 100 and 15 mm²/s.
  test("cold oil takes 26 times as long to find its level as hot oil", () =>
    agrees(levellingFactor(exact("nu", 493.39, mm2_s), exact("nu", 19.043, mm2_s)).value, "26"));

  test.each([
    [12, "60"],
    [25, "125"],
  ])("at %d ml/mm the allowance below the lip holds", (k, V) =>
    agrees(valueIn(ml, drawBack(exact("k", k, ml_mm), lip, allowedBelowLip)), V),
  );
});

describe("design page, not published", () => {
  test("8 mm down with a limit of 8 is at the edge", () =>
    expect(levelVerdict(level(-8, 1), exact("h", -8, mm))).toBe("at the edge"));
});

test("a level is told apart only as well as it was read", () => {
  const verdict = (h: number, u: number) => levelVerdict(level(h, u), allowedBelowLip);
  expect([verdict(-2, 1), verdict(-4.5, 1), verdict(-9, 1), verdict(8, 1)]).toEqual([
    "within",
    "at the edge",
    "below",
    "above the lip",
  ]);
  expect([verdict(-9, 3), verdict(1, 0), verdict(-5, 0)]).toEqual(["at the edge", "within", "within"]);
});

test("a sound seal is filled to the lip; a doubtful one so far that the hot level stays under it, within the allowance", () => {
  expect(valueIn(mm, fillTargetSound.level)).toBe(0);
  const rise = (Dh: number, u: number) => reading("Dh", normal(Dh, u), mm, "rise", "worked");
  const modest = fillTargetDoubtful(rise(2.33, 0.2), allowedBelowLip);
  expect(modest.because).toBe("stays under the lip when hot");
  expect(valueIn(mm, modest.level)).toBeCloseTo(-2.33 - 1.645 * 0.2, 3);
  const large = fillTargetDoubtful(rise(5.2, 0.2), allowedBelowLip);
  expect(large.because).toBe("as low as allowed, reaches the lip when hot");
  expect(valueIn(mm, large.level)).toBeCloseTo(-5, 9);
  expect(fillTargetDoubtful(null, allowedBelowLip)).toEqual({ level: allowedBelowLip, because: "rise not known" });
});

test("what runs over is told before it is poured", () => {
  const k = exact("k", 18, ml_mm);
  const spilt = overflow(k, level(-5), exact("V", 150, ml));
  expect([valueIn(ml, spilt.volume), spilt.verdict]).toEqual([expect.closeTo(60, 9), "runs out"]);
  expect(overflow(k, level(-5), exact("V", 80, ml)).verdict).toBe("none");
  expect(overflow(k, level(-5, 1), exact("V", 80, ml)).verdict).toBe("possible");
});

test("what is left above the lip after running out is what contact angles of 10 to 30° hold", () => {
  const { distribution } = standsAboveLip.origin.type === "taken" ? standsAboveLip.origin : { distribution: null };
  expect(distribution).toEqual({
    type: "uniform",
    low: Number(puddle_mm(10).toFixed(2)),
    high: Number(puddle_mm(30).toFixed(2)),
  });
});

test("more poured never overflows less, and the puddle grows with its angle", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 400, noNaN: true }),
      fc.double({ min: 1, max: 170, noNaN: true }),
      (V, psi) => {
        const over = (V_ml: number) => overflow(exact("k", 18, ml_mm), level(-5), exact("V", V_ml, ml)).volume.value;
        expect(over(V + 1)).toBeGreaterThan(over(V));
        expect(puddle_mm(psi + 1)).toBeGreaterThan(puddle_mm(psi));
      },
    ),
  ));
