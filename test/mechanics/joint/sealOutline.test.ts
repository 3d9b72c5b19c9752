import { describe, expect, test } from "vitest";
import { sealParts } from "../../../src/mechanics/joint/sealOutline.ts";
import type { Outline } from "../../../src/mechanics/joint/sectionOutline.ts";

/** Gauss's area of a closed outline, mm². */
const areaOf = (outline: Outline): number =>
  Math.abs(
    outline.reduce((sum, a, i) => {
      const b = outline[(i + 1) % outline.length] ?? a;
      return sum + a.x_mm * b.y_mm - b.x_mm * a.y_mm;
    }, 0) / 2,
  );

const partsOf = (thickness_mm: number) =>
  sealParts({ ...ring, thickness_mm, chamfer_mm: thickness_mm === 0 ? 3.3 : null }, 13.5, 1.5);

const ring = { kind: "O-ring", outside_mm: 25, inside_mm: 20 } as const;

describe("an O-ring where head and face meet", () => {
  // Rubber keeps its volume: a cord of 2.5 mm has 4.91 mm², whatever shape it is pressed to.
  test("has the section of its cord, on both sides of the axis", () => {
    const rubber = partsOf(0).filter(({ material }) => material === "rubber");
    expect(rubber.length).toBe(2);
    for (const { outline } of rubber) expect(areaOf(outline)).toBeCloseTo((Math.PI / 4) * 2.5 ** 2, 1);
  });

  test("lies in a chamfer of 45° below the face, round the thread, and touches all of its sides", () => {
    const [chamfer, , rubber] = partsOf(0);
    const side = (outline: Outline, of: (x_mm: number, y_mm: number) => number) =>
      outline.map(({ x_mm, y_mm }) => of(x_mm, y_mm));
    expect([chamfer?.material, rubber?.material]).toEqual(["chamfer", "rubber"]);
    const leg = Math.max(...side(chamfer?.outline ?? [], (_, y) => y));
    expect(leg).toBe(3.3);
    expect(Math.max(...side(chamfer?.outline ?? [], (x) => x))).toBeCloseTo(10 + leg, 9);
    const pressed = rubber?.outline ?? [];
    expect(Math.min(...side(pressed, (x) => x))).toBeCloseTo(10, 9);
    expect(Math.min(...side(pressed, (_, y) => y))).toBeCloseTo(0, 9);
    expect(Math.max(...side(pressed, (x, y) => x - 10 + y))).toBeCloseTo(leg, 9);
  });

  test("between two faces is as high as the gap", () => {
    const [ring, ...more] = partsOf(2);
    expect([ring?.material, more.length]).toEqual(["rubber", 1]);
    const depths = ring?.outline.map(({ y_mm }) => y_mm) ?? [];
    expect([Math.min(...depths), Math.max(...depths)]).toEqual([expect.closeTo(-2, 9), expect.closeTo(0, 9)]);
  });
});
