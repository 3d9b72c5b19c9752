import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type LevelSighting,
  type LimitReached,
  limitDay,
  limitDistance,
  limitDistanceAtDeviate,
} from "../../../src/mechanics/fluid/limitDistance.ts";
import { exact, type Quantity, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { cm, d, h, km, miles, mm, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import { working } from "../../../src/mechanics/quantity/working.ts";
import { agrees } from "../../published.ts";

const at = (x: number, y: number, unit: Unit = km): LevelSighting => ({
  at: exact("x", x, unit),
  below: exact("y", y, mm),
});
const s = (mm_: number): Quantity => exact("s", mm_, mm);
const limit = exact("y_L", 15, mm);
const three = [at(0, 2), at(180, 6), at(420, 9)];

function reached(found: LimitReached) {
  if (found.type !== "reached") throw new Error(found.type);
  return found;
}

describe("published", () => {
  // Fieller 1954 as inverse prediction from a line; the example was worked in R 4.2.2, its limits proved by putting back.
  test("levels 2, 6 and 9 mm below the lip at 0, 180 and 420 km reach 15 mm at 767.7 km", () => {
    const found = reached(limitDistance(three, limit, s(0.5), 0.9));
    agrees(found.slope.value / 1e-6, "0.0164414");
    agrees(valueIn(km, found.at), "767.7");
    agrees(valueIn(km, found.left), "348");
  });

  test.each([
    [0.5, "681.8", "886.5"],
    [1, "616.4", "1063.2"],
  ])("read to %d mm, 90 %%: from %s to %s km", (s_mm, low, high) => {
    const found = reached(limitDistance(three, limit, s(s_mm), 0.9));
    agrees(valueIn(km, found.earliest), low);
    agrees(valueIn(km, found.latest), high);
  });

  test("with the error of 0.8137 mm estimated from one degree of freedom, t = 6.314, g is 1.0996: not enough data", () => {
    const found = limitDistanceAtDeviate(three, limit, s(0.8137), 6.3137515);
    if (found.type !== "not enough data") throw new Error(found.type);
    expect(Math.abs((found.g ?? 0) - 1.0996)).toBeLessThan(2e-4);
  });

  test("two levels, read to 1 mm: 780 km, from 625 to 1076", () => {
    const found = reached(limitDistance([at(0, 2), at(420, 9)], limit, s(1), 0.9));
    agrees(valueIn(km, found.at), "780");
    agrees(valueIn(km, found.earliest), "625");
    agrees(valueIn(km, found.latest), "1076");
  });
});

describe("laws", () => {
  const paths = fc
    .tuple(
      fc.array(fc.double({ min: 20, max: 300, noNaN: true }), { minLength: 2, maxLength: 6 }),
      fc.double({ min: 0.01, max: 0.05, noNaN: true }),
    )
    .map(([steps, slope]) => {
      const places = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0));
      return [at(0, 1), ...places.map((x) => at(x, 1 + slope * x))];
    });

  test("the ends put back into the line give the deviate they were made with", () =>
    fc.assert(
      fc.property(paths, (sightings) => {
        const found = limitDistance(sightings, limit, s(0.5), 0.9);
        if (found.type !== "reached") return;
        const x = sightings.map((it) => valueIn(km, it.at));
        const y = sightings.map((it) => valueIn(mm, it.below));
        const n = x.length;
        const x_m = x.reduce((a, b) => a + b) / n;
        const y_m = y.reduce((a, b) => a + b) / n;
        const S = x.reduce((sum, it) => sum + (it - x_m) ** 2, 0);
        const b = found.slope.value / 1e-6;
        for (const end of [found.earliest, found.latest]) {
          const x_0 = valueIn(km, end);
          const u = 0.5 * Math.sqrt(1 / n + (x_0 - x_m) ** 2 / S);
          expect(Math.abs(y_m + b * (x_0 - x_m) - 15) / u).toBeCloseTo(1.6448536, 4);
        }
      }),
    ));

  test("ends are in order and hold the estimate, and better readings draw them in", () =>
    fc.assert(
      fc.property(paths, fc.double({ min: 0.1, max: 0.8, noNaN: true }), (sightings, s_mm) => {
        const [fine, coarse] = [s_mm, s_mm * 1.3].map((it) => limitDistance(sightings, limit, s(it), 0.9));
        if (fine?.type !== "reached" || coarse?.type !== "reached") return;
        const ends = [coarse.earliest, fine.earliest, fine.at, fine.latest, coarse.latest].map((it) => it.value);
        expect(ends).toEqual([...ends].sort((a, b) => a - b));
        expect(coarse.at.value).toBeCloseTo(fine.at.value, 6);
      }),
    ));

  test("units do not matter", () => {
    const inMiles = three.map(({ at: x, below }) => ({ at: exact("x", x.value / miles.inSI, miles), below }));
    const inCm = exact("y_L", 1.5, cm);
    const [a, b] = [reached(limitDistance(three, limit, s(1), 0.9)), reached(limitDistance(inMiles, inCm, s(1), 0.9))];
    expect(b.earliest.value / a.earliest.value).toBeCloseTo(1, 10);
    expect(b.latest.value / a.latest.value).toBeCloseTo(1, 10);
  });

  test("over days the same figures come in days", () => {
    const days = limitDay([at(0, 2, d), at(180 * 24, 6, h), at(420, 9, d)], limit, s(1), 0.9);
    agrees(valueIn(d, reached(days).earliest), "616.4");
    agrees(valueIn(d, reached(days).latest), "1063.2");
  });
});

test("the standard uncertainty of the estimate is that of the line and of its mean", () => {
  const found = reached(limitDistance(three, limit, s(0.5), 0.9));
  const S = 200 ** 2 + 20 ** 2 + 220 ** 2;
  const b = found.slope.value / 1e-6;
  const away = valueIn(km, found.at) - 200;
  const expected = (0.5 / b) * Math.sqrt(1 / 3 + away ** 2 / S);
  expect(standardUncertainty(found.at) / km.inSI).toBeCloseTo(expected, 6);
  expect(working(found.at, found.earliest).map((it) => it.formula)).toContain("d = (y_L - y_m) / b");
});

test("one sighting, sightings in one place, or readings too coarse are not enough data", () => {
  expect(limitDistance([at(0, 2)], limit, s(0.5), 0.9)).toEqual({ type: "not enough data", g: null });
  expect(limitDistance([at(5, 2), at(5, 9)], limit, s(0.5), 0.9)).toEqual({ type: "not enough data", g: null });
  expect(limitDistance([at(0, 2), at(100, 2)], limit, s(0.5), 0.9)).toEqual({ type: "not enough data", g: null });
  const coarse = limitDistance(three, limit, s(5), 0.9);
  expect(coarse.type === "not enough data" ? coarse.g : 0).toBeGreaterThan(1);
});

test("a level that surely rises never reaches the limit below it", () =>
  expect(limitDistance([at(0, 9), at(180, 6), at(420, 2)], limit, s(0.5), 0.9).type).toBe("not falling"));

test("a limit already passed leaves less than nothing", () => {
  const found = reached(limitDistance(three, exact("y_L", 5, mm), s(0.5), 0.9));
  expect(found.left.value).toBeLessThan(0);
  expect(() => limitDistance(three, limit, s(0.5), 1)).toThrow(RangeError);
});
