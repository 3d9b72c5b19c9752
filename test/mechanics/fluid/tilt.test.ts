import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { topUp } from "../../../src/mechanics/fluid/levelVolumes.ts";
import {
  type FreeSurface,
  flippedReading,
  levelOnTheLevel,
  type Tilt,
  tiltShift,
} from "../../../src/mechanics/fluid/tilt.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import {
  exact,
  type Quantity,
  reading,
  standardUncertainty,
  valueIn,
} from "../../../src/mechanics/quantity/quantity.ts";
import { deg, ml, ml_mm, mm, radian } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const length = (value: number): Quantity => exact("x", value, mm);
const angle = (symbol: "phi" | "theta", value: number, u = 0): Quantity =>
  u > 0 ? reading(symbol, normal(value, u), deg, symbol, "inclinometer") : exact(symbol, value, deg);
const tilt = (phi: number, theta: number, u = 0): Tilt => ({
  phi: angle("phi", phi, u),
  theta: angle("theta", theta, u),
});
const shift_mm = (x: number, y: number, it: Tilt): number => valueIn(mm, tiltShift(length(x), length(y), it));
const unknown: FreeSurface = { x: null, y: null, halfLength: null, halfWidth: null, roomToStep: null };

describe("published", () => {
  // Plain geometry x tan phi, worked apart from this program.
  test.each([
    [50, 1, "0.87"],
    [80, 1, "1.40"],
    [150, 1, "2.62"],
    [250, 1, "4.36"],
    [80, 0.2, "0.28"],
    [80, 0.5, "0.70"],
  ])("a hole %d mm from the middle of the surface, %d° of tilt", (x, phi, dh) =>
    agrees(shift_mm(x, 0, tilt(phi, 0)), dh),
  );

  test("a road of 3 % shifts a level 80 mm from the middle by 2.4 mm", () =>
    agrees(shift_mm(80, 0, { phi: exact("phi", Math.atan(0.03), radian), theta: angle("theta", 0) }), "2.4"));
});

describe("design page, not published", () => {
  test("140 mm out: 1° is 2.4 mm, 2° is 4.9 mm, and 2.44 mm at 22.2 ml/mm is 54 ml", () => {
    agrees(shift_mm(140, 0, tilt(1, 0)), "2.4");
    agrees(shift_mm(140, 0, tilt(2, 0)), "4.9");
    agrees(valueIn(ml, topUp(exact("k", 22.2, ml_mm), length(0), length(shift_mm(140, 0, tilt(1, 0))))), "54");
  });
});

test("one wheel up is pitch and roll together", () => {
  const level = levelOnTheLevel(length(-4), tilt(1, -2), { ...unknown, x: length(80), y: length(50) });
  if (level.type !== "corrected") throw new Error(level.type);
  const expected = 80 * Math.tan(Math.PI / 180) - 50 * Math.tan(Math.PI / 90);
  expect(valueIn(mm, level.shift)).toBeCloseTo(expected, 9);
  expect(valueIn(mm, level.level)).toBeCloseTo(-4 - expected, 9);
});

test("an offset nobody knows gives a bound by the half sizes of the surface, wide enough for any place in it", () => {
  const sizes = { ...unknown, halfLength: length(90), halfWidth: length(60) };
  const level = levelOnTheLevel(length(-4), tilt(1, 0.5), sizes);
  if (level.type !== "bounded") throw new Error(level.type);
  expect(valueIn(mm, level.level)).toBeCloseTo(-4, 9);
  expect(standardUncertainty(level.level)).toBeCloseTo(level.bound.value / Math.sqrt(3), 12);
  fc.assert(
    fc.property(
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: -60, max: 60, noNaN: true }),
      (x, y) => {
        expect(Math.abs(shift_mm(x, y, tilt(1, 0.5)))).toBeLessThanOrEqual(valueIn(mm, level.bound) + 1e-9);
      },
    ),
  );
  expect(levelOnTheLevel(length(-4), tilt(1, 0.5), unknown)).toEqual({ type: "offset not known" });
});

test("beyond 5°, or where the surface reaches a step, there is no figure", () => {
  const at = { ...unknown, x: length(80), y: length(0) };
  expect(levelOnTheLevel(length(-4), tilt(5, 0), at).type).toBe("corrected");
  expect(levelOnTheLevel(length(-4), tilt(0, -5.1), at)).toEqual({ type: "too steep", most_deg: 5 });
  const stepped = { ...at, halfLength: length(90), halfWidth: length(60), roomToStep: length(5) };
  expect(levelOnTheLevel(length(-4), tilt(3, 1), stepped)).toMatchObject({ type: "surface reaches a step" });
  expect(levelOnTheLevel(length(-4), tilt(1, 1), stepped).type).toBe("corrected");
});

test("turning the inclinometer round takes its own error out", () => {
  const { angle: found, ownError_deg } = flippedReading("phi", 1.4, -0.6, "pitch");
  expect([valueIn(deg, found), ownError_deg]).toEqual([expect.closeTo(1, 12), expect.closeTo(0.4, 12)]);
  expect(standardUncertainty(found) / deg.inSI).toBeCloseTo(0.3, 12);
});

describe("laws", () => {
  const offsets = fc.double({ min: -250, max: 250, noNaN: true });
  const angles = fc.double({ min: -5, max: 5, noNaN: true });

  test("tilting the other way shifts the level the other way", () =>
    fc.assert(
      fc.property(offsets, offsets, angles, angles, (x, y, phi, theta) => {
        expect(shift_mm(x, y, tilt(-phi, -theta))).toBeCloseTo(-shift_mm(x, y, tilt(phi, theta)), 9);
      }),
    ));

  test("a steeper angle on the low side never reads lower", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 250, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (x, phi) => {
          expect(shift_mm(x, 0, tilt(phi + 0.5, 0))).toBeGreaterThan(shift_mm(x, 0, tilt(phi, 0)));
        },
      ),
    ));
});
