import { describe, expect, test } from "vitest";
import { ridgeOutline } from "../../../src/mechanics/threads/ridgeOutline.ts";
import { agrees } from "../../published.ts";

const families = ["metric", "unified", "G", "R", "NPT"] as const;
const depth = (family: (typeof families)[number]): number => Math.max(...ridgeOutline(family).map(({ down }) => down));

// Depths of thread in pitches: ISO 68-1:1998 prints 5/8 H = 0.541 265 877; ISO 228-1 0.640 327; ASME B1.20.1 0.8.
test.each([
  ["metric", "0.541265877"],
  ["unified", "0.541265877"],
  ["G", "0.640327"],
  ["R", "0.640327"],
  ["NPT", "0.8000"],
] as const)("a %s thread is %s pitches deep", (family, printed) => agrees(depth(family), printed));

// The widest step of the outline is its flank. ISO 68-1 and ASME B1.20.1: 60°; ISO 228-1 and ISO 7-1: 55°.
test.each([
  ["metric", 60],
  ["unified", 60],
  ["G", 55],
  ["R", 55],
  ["NPT", 60],
] as const)("the flanks of a %s thread enclose %s°", (family, angle) => {
  const points = ridgeOutline(family);
  const flanks = points
    .slice(1)
    .map((b, i) => ({ dx: b.along - (points[i]?.along ?? 0), dy: Math.abs(b.down - (points[i]?.down ?? 0)) }))
    .filter(({ dy }) => dy > depth(family) / 2);
  expect(flanks).toHaveLength(2);
  const enclosed = flanks.reduce((sum, { dx, dy }) => sum + (Math.atan2(dx, dy) * 180) / Math.PI, 0);
  expect(enclosed).toBeCloseTo(angle, 2);
});

describe("every outline", () => {
  test.each(families)("of %s goes from crest to crest, on and never back, the same from either end", (family) => {
    const points = ridgeOutline(family);
    expect([points[0], points.at(-1)]).toEqual([
      { along: 0, down: 0 },
      { along: 1, down: 0 },
    ]);
    points.slice(1).forEach((it, i) => {
      expect(it.along).toBeGreaterThan(points[i]?.along ?? 1);
    });
    points.forEach(({ along, down }, i) => {
      const mirrored = points[points.length - 1 - i];
      expect(1 - along).toBeCloseTo(mirrored?.along ?? 9, 12);
      expect(down).toBeCloseTo(mirrored?.down ?? 9, 12);
    });
  });
});

// ISO 68-1:1998, 3: the ridge is half a pitch wide on the pitch diameter, 3/8 H below the crests.
test.each(["metric", "unified"] as const)("a %s ridge is half a pitch wide on the pitch line", (family) => {
  const points = ridgeOutline(family);
  const [, crest, root] = points;
  if (!crest || !root) throw new Error("a flank");
  const pitchLine = ((3 / 8) * Math.sqrt(3)) / 2;
  const at = crest.along + ((root.along - crest.along) * pitchLine) / root.down;
  expect(2 * at).toBeCloseTo(0.5, 9);
});
