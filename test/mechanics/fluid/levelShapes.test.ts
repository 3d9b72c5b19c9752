import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CaseShape, contents, gearShare, netOfGears } from "../../../src/mechanics/fluid/levelShapes.ts";
import { exact, type Quantity, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { inches, ml, ml_mm, mm, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const length = (value: number, unit: Unit = mm): Quantity => exact("x", value, unit);
const cylinder: CaseShape = { type: "lying cylinder", R: length(80), L: length(110) };
const ellipse: CaseShape = { type: "lying ellipse", a: length(90), b: length(70), L: length(120) };
const cap: CaseShape = { type: "spherical cap", R: length(80) };
const box: CaseShape = { type: "box", a: length(150), b: length(120), height: length(200) };

function known(shape: CaseShape, depth: Quantity): { volume_ml: number; perHeight_ml_mm: number } {
  const found = contents(shape, depth);
  if (!found.ok) throw new Error("outside");
  return { volume_ml: valueIn(ml, found.volume), perHeight_ml_mm: valueIn(ml_mm, found.perHeight) };
}

describe("published", () => {
  // Closed forms of plane geometry, worked apart from this program (R 4.2.2). One figure is put right: the ellipse filled
  // to 60 stood at 21.379, where 2 * 90 * 120 * sqrt(48) / 7 = 21 378.456 mm².
  test.each([
    ["cylinder R 80, L 110", cylinder, 70, "930.300", "17.462"],
    ["cylinder R 80, L 110", cylinder, 75, "1017.898", "17.566"],
    ["cylinder R 80, L 110", cylinder, 80, "1105.841", "17.600"],
    ["ellipse 90 by 70, L 120", ellipse, 60, "972.259", "21.378"],
    ["ellipse 90 by 70, L 120", ellipse, 65, "1079.614", "21.545"],
    ["cap R 80", cap, 70, "872.316", "19.792"],
    ["box 150 by 120", box, 70, "1260.0", "18.0"],
  ] as const)("%s filled to a depth holds its volume, %#", (_, shape, depth_mm, volume, perHeight) => {
    const found = known(shape, length(depth_mm));
    agrees(found.volume_ml, volume);
    agrees(found.perHeight_ml_mm, perHeight);
  });
});

describe("laws", () => {
  const sizes = fc.double({ min: 20, max: 200, noNaN: true });
  const shares = fc.double({ min: 0.05, max: 0.94, noNaN: true });
  const shapes: fc.Arbitrary<readonly [CaseShape, number]> = fc
    .tuple(fc.nat(3), sizes, sizes, sizes)
    .map(([kind, a, b, c]) =>
      kind === 0
        ? [{ type: "box", a: length(a), b: length(b), height: length(c) }, c]
        : kind === 1
          ? [{ type: "lying cylinder", R: length(a), L: length(b) }, 2 * a]
          : kind === 2
            ? [{ type: "lying ellipse", a: length(a), b: length(b), L: length(c) }, 2 * b]
            : [{ type: "spherical cap", R: length(a) }, 2 * a],
    );

  test("the volume per height is the slope of the volume", () =>
    fc.assert(
      fc.property(shapes, shares, ([shape, height], share) => {
        const step = height * 1e-4;
        const rise =
          known(shape, length(share * height + step)).volume_ml - known(shape, length(share * height - step)).volume_ml;
        const { perHeight_ml_mm } = known(shape, length(share * height));
        expect(Math.abs(rise / (2 * step) / perHeight_ml_mm - 1)).toBeLessThan(1e-5);
      }),
    ));

  test("an ellipse of equal axes is a cylinder", () =>
    fc.assert(
      fc.property(sizes, sizes, shares, (r, L, share) => {
        const depth = length(2 * r * share);
        const round = known({ type: "lying cylinder", R: length(r), L: length(L) }, depth);
        const oval = known({ type: "lying ellipse", a: length(r), b: length(r), L: length(L) }, depth);
        expect(Math.abs(oval.volume_ml / round.volume_ml - 1)).toBeLessThan(1e-9);
        expect(Math.abs(oval.perHeight_ml_mm / round.perHeight_ml_mm - 1)).toBeLessThan(1e-9);
      }),
    ));

  test("units do not matter", () => {
    const inInches: CaseShape = { type: "lying cylinder", R: length(80 / 25.4, inches), L: length(110 / 25.4, inches) };
    expect(known(inInches, length(70 / 25.4, inches)).volume_ml).toBeCloseTo(known(cylinder, length(70)).volume_ml, 8);
  });

  test("a depth at or beyond the shape has no answer, and says how deep the shape is", () => {
    for (const depth of [0, 160, 200])
      expect(contents(cylinder, length(depth))).toMatchObject({
        ok: false,
        problem: { type: "depth outside the shape" },
      });
    const refused = contents(box, length(200));
    expect(refused.ok ? 0 : refused.problem.most_mm).toBeCloseTo(200, 9);
  });

  test("gears take off their share of the surface and add its doubt", () => {
    const net = netOfGears(exact("k", 20, ml_mm), gearShare);
    expect(valueIn(ml_mm, net)).toBeCloseTo(16, 10);
    expect(standardUncertainty(net) / ml_mm.inSI).toBeCloseTo((20 * 0.2) / Math.sqrt(12), 10);
  });
});
