import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { LevelGauge } from "../../../src/sheets/drawings/level/LevelGauge.tsx";
import { levelGaugeLayout } from "../../../src/sheets/drawings/level/levelGaugeLayout.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const within = { level_mm: -3, lowest_mm: -5, perHeight_ml_mm: 22 };
const below = { level_mm: -8, lowest_mm: -5, perHeight_ml_mm: 22 };
const above = { level_mm: 4, lowest_mm: -5, perHeight_ml_mm: 18 };

describe("pinned", () => {
  test("level-gauge-within.svg", () =>
    expectCommitted("level-gauge-within.svg", standaloneSvg(<LevelGauge {...within} />)));
  test("level-gauge-above.svg", () =>
    expectCommitted("level-gauge-above.svg", standaloneSvg(<LevelGauge {...above} />)));
});

describe("laws", () => {
  const levels = fc.record({
    level_mm: fc.double({ min: -40, max: 20, noNaN: true }),
    lowest_mm: fc.double({ min: -20, max: 0, noNaN: true }),
    perHeight_ml_mm: fc.double({ min: 1, max: 60, noNaN: true }),
  });

  test("nothing lies outside the sheet, lettering included", () => {
    fc.assert(
      fc.property(levels, (level) => {
        expectInside(standaloneSvg(<LevelGauge {...level} />));
        const { width, height, labels } = levelGaugeLayout(level);
        for (const box of labels.map(labelBox)) {
          expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(width);
          expect(box.y + box.height).toBeLessThanOrEqual(height);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("no lettering lies on other lettering", () => {
    fc.assert(
      fc.property(levels, (level) => {
        const boxes = levelGaugeLayout(level).labels.map(labelBox);
        expect(boxes.filter((a, i) => boxes.some((b, j) => j > i && overlap(a, b)))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test("heights on the sheet are to one scale", () => {
    fc.assert(
      fc.property(levels, (level) => {
        const { lipY, levelY, lowestY } = levelGaugeLayout(level);
        expect((levelY - lipY) * level.lowest_mm).toBeCloseTo((lowestY - lipY) * level.level_mm, 6);
      }),
    );
  });
});

test("the next mark of a level below the lowest allowed is the lowest, of one within it the lip", () => {
  const texts = (level: typeof below): readonly string[] => levelGaugeLayout(level).labels.map(({ text }) => text);
  expect(texts(below)).toContain("66 ml");
  expect(texts(below)).toContain("about 180 ml short");
  expect(texts(within)).toContain("66 ml");
  expect(texts(within)).toContain("about 66 ml short");
  expect(texts(above)).toContain("about 72 ml over");
});
