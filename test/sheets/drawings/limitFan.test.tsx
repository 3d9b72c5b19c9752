import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { LimitFan } from "../../../src/sheets/drawings/limit/LimitFan.tsx";
import { type FannedLimit, limitFanLayout } from "../../../src/sheets/drawings/limit/limitFanLayout.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const read = (...points: readonly (readonly [number, number])[]) =>
  points.map(([at_km, below_mm]) => ({ at_km, below_mm }));
const cut: FannedLimit = {
  sightings: read([0, 0], [500, 1], [900, 3]),
  limit_mm: 10,
  reached: { likely_km: 3100, earliest_km: 1940, latest_km: 12_600 },
};
const past: FannedLimit = {
  sightings: read([0, 0], [5000, 5], [9000, 11]),
  limit_mm: 10,
  reached: { likely_km: 8510, earliest_km: 7520, latest_km: 9860 },
};

describe("pinned", () => {
  test("limit-fan-cut.svg", () => expectCommitted("limit-fan-cut.svg", standaloneSvg(<LimitFan {...cut} />)));
  test("limit-fan-past.svg", () => expectCommitted("limit-fan-past.svg", standaloneSvg(<LimitFan {...past} />)));
});

describe("laws", () => {
  const distance = fc.integer({ min: 0, max: 60_000 });
  const depth = fc.integer({ min: -3, max: 40 });
  const limits = fc
    .record({
      rows: fc.array(fc.tuple(distance, depth), { minLength: 2, maxLength: 8 }),
      limit_mm: fc.integer({ min: 1, max: 40 }),
      ahead: fc.tuple(distance, distance, distance),
      tells: fc.boolean(),
    })
    .map(({ rows, limit_mm, ahead, tells }): FannedLimit => {
      const [earliest_km = 0, likely_km = 0, latest_km = 0] = ahead
        .toSorted((a, b) => a - b)
        .map((it, i) => it + i + 1);
      return { sightings: read(...rows), limit_mm, reached: tells ? { earliest_km, likely_km, latest_km } : null };
    });

  test("the sheet holds axis, readings and lettering", () => {
    fc.assert(
      fc.property(limits, (limit) => {
        const { width, height, labels, points } = limitFanLayout(limit);
        for (const [x, y] of points) {
          expect(x >= 0 && x <= width && y >= 0 && y <= height).toBe(true);
        }
        for (const box of labels.map(labelBox)) {
          expect(box.x).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(width);
          expect(box.y + box.height).toBeLessThanOrEqual(height);
        }
        expect(
          labels.slice(0, 3).some((a, i) => labels.slice(i + 1).some((b) => overlap(labelBox(a), labelBox(b)))),
        ).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test("nothing lies outside the sheet where a level falls evenly", () => {
    const falling = fc.record({
      step_km: fc.integer({ min: 50, max: 5000 }),
      count: fc.integer({ min: 2, max: 6 }),
      perStep_mm: fc.double({ min: 0.5, max: 3, noNaN: true }),
      spread: fc.double({ min: 0.01, max: 0.9, noNaN: true }),
      far: fc.double({ min: 1, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(falling, ({ step_km, count, perStep_mm, spread, far }) => {
        const sightings = read(...Array.from({ length: count }, (_, i) => [i * step_km, i * perStep_mm] as const));
        const likely_km = (20 / perStep_mm) * step_km;
        const reached = { likely_km, earliest_km: likely_km * (1 - spread), latest_km: likely_km * far };
        expectInside(standaloneSvg(<LimitFan sightings={sightings} limit_mm={20} reached={reached} />));
      }),
      { numRuns: 200 },
    );
  });
});

test("the near edge is rounded down, the far edge up, and a reading past the near edge calls for action now", () => {
  const texts = (limit: FannedLimit): readonly string[] => limitFanLayout(limit).labels.map(({ text }) => text);
  expect(texts(cut)).toEqual(expect.arrayContaining(["limit at 1900 to 13000 km", "act at 1900 km"]));
  expect(texts(past)).toEqual(expect.arrayContaining(["limit at 7500 to 9900 km", "act now"]));
});

test("readings that do not tell have no fan, and a level that rose is said to", () => {
  const flat = limitFanLayout({ sightings: read([0, 0], [500, 1], [900, 1]), limit_mm: 10, reached: null });
  expect([flat.sentence, flat.fan, flat.line]).toEqual(["not enough data", [], []]);
  const risen = limitFanLayout({ sightings: read([900, 1], [0, 9]), limit_mm: 10, reached: null });
  expect(risen.sentence).toBe("the level does not fall");
});
