import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Watched } from "../../../src/mechanics/service/heldCases.ts";
import { type HeldCurve, heldCurve } from "../../../src/mechanics/service/heldCurve.ts";
import { HoldingCurve } from "../../../src/sheets/drawings/holding/HoldingCurve.tsx";
import { holdingCurveLayout } from "../../../src/sheets/drawings/holding/holdingCurveLayout.ts";
import { labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { mixedSets } from "../../mechanics/service/heldSets.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";
import { allCameBack, knownToTheDay, lateChecks, noneCameBack, seenAtChecks, threeSealant } from "./exampleHoldings.ts";

const examples: readonly (readonly [string, readonly Watched[], string])[] = [
  ["holding-three", threeSealant, "Sealant without washer"],
  ["holding-checks", seenAtChecks, "Sealant, seen at checks"],
  ["holding-late", lateChecks, "Longer plug, looked at once a year"],
  ["holding-days", knownToTheDay, "Wire insert"],
  ["holding-none", noneCameBack, "Solid bushing"],
  ["holding-all", allCameBack, "Thread restored with a tap"],
];

describe("pinned", () => {
  test.each(examples)("%s.svg is the drawing that was looked at", (name, watches, caption) => {
    expectCommitted(`${name}.svg`, standaloneSvg(<HoldingCurve curve={curveOf(watches)} caption={caption} />));
  });
});

describe("laws", () => {
  const inSheet = (curve: HeldCurve): void => {
    const { view, ...layout } = holdingCurveLayout(curve, "Sealant without washer");
    const { caption, shares, axis, falls, notes, legend, strip } = layout;
    const labels = [
      caption,
      shares.map(({ label }) => label),
      axis,
      falls.map(({ label }) => label),
      notes,
      legend.map(({ label }) => label),
      strip.labels,
    ];
    for (const box of labels.flat().map(labelBox)) {
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(view.width);
      expect(box.y + box.height).toBeLessThanOrEqual(view.height + 0.1);
    }
  };

  test.each(examples)("%s has all its lettering on the sheet and none on other lettering", (_, watches) => {
    const curve = curveOf(watches);
    inSheet(curve);
    const { caption, shares, axis, falls, notes, legend, strip } = holdingCurveLayout(curve, "Sealant");
    const labels = [
      ...caption,
      ...shares.map((it) => it.label),
      ...axis,
      ...falls.map((it) => it.label),
      ...notes,
      ...legend.map((it) => it.label),
      ...strip.labels,
    ];
    const boxes = labels.map((label) => ({ text: label.text, box: labelBox(label) }));
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) expect(overlap(a.box, b.box), `${a.text} on ${b.text}`).toBe(false);
  });

  test("whatever was watched, the lettering stays on the sheet", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        inSheet(curveOf(set));
      }),
    );
  });

  test("whatever was watched, nothing is drawn off the sheet", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        expectInside(standaloneSvg(<HoldingCurve curve={curveOf(set)} caption="Sealant" />));
      }),
    );
  });

  test("whatever was watched, the names of the falls stand clear of each other and of the curve", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const curve = curveOf(set);
        const { falls, x, y } = holdingCurveLayout(curve, "Sealant");
        const boxes = falls.map(({ label }) => labelBox(label));
        boxes.forEach((a, i) => {
          for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
          for (const { from_days, to_days, survival } of curve.levels)
            expect(
              overlap(a, { x: x(from_days), y: y(survival), width: x(to_days) - x(from_days), height: 0.01 }),
            ).toBe(false);
          for (const { at_days, survival } of curve.lastSeen)
            expect(overlap(a, { x: x(at_days), y: y(survival) - 1.8, width: 0.01, height: 3.6 })).toBe(false);
        });
      }),
      { numRuns: 400 },
    );
  });

  test("the days run from the axis to the right edge of the plot, the shares from foot to top", () => {
    const { plot, x, y } = holdingCurveLayout(curveOf(seenAtChecks), "Sealant");
    expect([x(0), x(365)]).toEqual([plot.x, plot.x + plot.width]);
    expect([y(1), y(0)]).toEqual([plot.y, plot.y + plot.height]);
  });

  test("the words tell what the picture shows", () => {
    const svg = standaloneSvg(<HoldingCurve curve={curveOf(seenAtChecks)} caption="Sealant" />);
    expect(svg).toContain("4 of 10 came back.");
    expect(svg).toContain("between 7 and 30 days down to 80 of 100");
    expect(svg).toContain("Still watched: 10 at 0 days, 5 at 90 days");
  });
});

function curveOf(watches: readonly Watched[]): HeldCurve {
  const curve = heldCurve(watches);
  if (!curve) throw new Error("no cases");
  return curve;
}
