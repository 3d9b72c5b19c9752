import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Bead,
  beadSpread,
  squeezedFromThread,
  usualFilm_mm,
  volumeOfBead,
} from "../../../src/mechanics/cure/bead.ts";
import { blowOut, pasteHolds } from "../../../src/mechanics/cure/pasteHold.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { kPa, ml, mm } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const length = (value: number) => exact("x", value, mm);
const bead = (thickness: number, laidOn: number, film = 0.2): Bead => ({
  thickness: length(thickness),
  laidOn: length(laidOn),
  seatInside: length(20.4),
  seatOutside: length(27),
  film: length(film),
});

describe("published", () => {
  // Balance of forces on a plug of Bingham paste, yield stress 200 to 500 Pa (from memory), 3 mm long; worked apart.
  test("uncured paste 3 mm long blows out at 12 to 30 kPa from 0.1 mm and at 2.4 to 6 kPa from 0.5 mm", () => {
    const ends = (gap: number) => blowOut(length(gap), length(3));
    agrees(valueIn(kPa, ends(0.1).least), "12");
    agrees(valueIn(kPa, ends(0.1).most), "30");
    agrees(valueIn(kPa, ends(0.5).least), "2.4");
    agrees(valueIn(kPa, ends(0.5).most), "6");
  });
});

test("paste holds a vented case, may hold 5 kPa in a wide gap, and a blocked breather blows it out", () => {
  const wide = blowOut(length(0.5), length(3));
  const at = (p: number) => pasteHolds(exact("p", p, kPa), wide);
  expect([at(0), at(5), at(31)]).toEqual(["holds", "may hold", "is blown out"]);
});

test("a bead of 2 mm round 24 mm is 0.24 ml", () => {
  // pi/4 * 2^2 * pi * 24 = 236.9 mm³, plain geometry.
  agrees(valueIn(ml, beadSpread(bead(2, 24)).volume), "0.237");
  agrees(valueIn(ml, volumeOfBead(length(3), length(70))), "0.495");
});

describe("where a bead goes", () => {
  test("a thin one laid on the seat stays on it", () => {
    const found = beadSpread(bead(0.7, 23.7));
    // 0.385 mm² over a film of 0.2 mm lies 1.92 mm broad; 1.65 mm are free on either side.
    agrees(valueIn(mm, found.breadth), "1.92");
    expect([found.inward.value, found.outward.value, found.advice]).toEqual([0, 0, "covers too little"]);
  });

  test("a thick one goes inward with the share that reaches past the inner edge", () => {
    const found = beadSpread(bead(2, 23.7));
    const breadth = Math.PI / 0.2;
    expect(found.inward.value).toBeCloseTo(0.5 - 1.65 / breadth, 9);
    expect(found.inward_ml).toBeCloseTo(found.inward.value * valueIn(ml, found.volume), 12);
    expect([found.covers, found.advice]).toEqual(["the whole seat", "thinner, or farther out"]);
  });

  test("one laid toward the outer edge covers without going inward", () => {
    const found = beadSpread(bead(1, 25.5));
    expect([found.inward.value, found.advice]).toEqual([0, "as it should be"]);
    expect(found.outward.value).toBeGreaterThan(0);
  });

  test("one laid on the first turn is not on the seat", () =>
    expect(beadSpread(bead(1, 19)).advice).toBe("not on the seat"));
});

test("a thread holds its clearance and pushes the rest into the case", () => {
  const clearance = exact("V_c", 0.06, ml);
  agrees(valueIn(ml, squeezedFromThread(exact("V", 0.5, ml), clearance)), "0.44");
  expect(squeezedFromThread(exact("V", 0.05, ml), clearance).value).toBe(0);
});

describe("laws", () => {
  const thickness = fc.double({ min: 0.3, max: 4, noNaN: true });
  const circles = fc.double({ min: 20.5, max: 26.9, noNaN: true });

  test("shares are from 0 to 1 and no more than the whole together", () =>
    fc.assert(
      fc.property(
        thickness,
        circles,
        fc.double({ min: usualFilm_mm.low, max: usualFilm_mm.high, noNaN: true }),
        (t, D, film) => {
          const { inward, outward } = beadSpread(bead(t, D, film));
          for (const share of [inward.value, outward.value, inward.value + outward.value]) {
            expect(share).toBeGreaterThanOrEqual(0);
            expect(share).toBeLessThanOrEqual(1);
          }
        },
      ),
    ));

  test("a thicker bead or one laid farther in never goes less inward", () =>
    fc.assert(
      fc.property(thickness, circles, (t, D) => {
        const inward = (a: number, b: number) => beadSpread(bead(a, b)).inward.value;
        expect(inward(t * 1.1, D)).toBeGreaterThanOrEqual(inward(t, D));
        expect(inward(t, D - 0.05)).toBeGreaterThanOrEqual(inward(t, D));
      }),
    ));
});
