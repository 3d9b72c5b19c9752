import fc from "fast-check";
import { expect, test } from "vitest";
import { halved, shrunkPlanes } from "../../../src/mechanics/silhouette/shrinking.ts";

test("a shrunk picture has the mean of what it covers", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 40 }),
      fc.integer({ min: 1, max: 5 }),
      fc.infiniteStream(fc.nat(255)),
      (side, factor, greys) => {
        const [width, height] = [side * factor, 2 * factor];
        const bytes = Uint8Array.from({ length: width * height * 3 }, () => greys.next().value as number);
        const mean = bytes.reduce((sum, it) => sum + it, 0) / bytes.length;
        const { colours, scale } = shrunkPlanes(
          { left: 0, top: 0, width, height, channels: 3, bytes },
          Math.max(side, 2),
        );
        const all = colours.flatMap((plane) => [...plane]);
        expect(scale).toBeCloseTo(Math.max(1, Math.max(width, height) / Math.max(side, 2)), 6);
        expect(all.reduce((sum, it) => sum + it, 0) / all.length).toBeCloseTo(mean, 1);
      },
    ),
    { numRuns: 60 },
  );
});

test("halving keeps an even grey and doubles the scale", () => {
  const bytes = new Uint8Array(16 * 8 * 3).fill(77);
  const small = halved(shrunkPlanes({ left: 0, top: 0, width: 16, height: 8, channels: 3, bytes }, 800));
  expect([small.width, small.height, small.scale]).toEqual([8, 4, 2]);
  expect([...small.luminance].every((it) => Math.abs(it - 77) < 0.01)).toBe(true);
});
