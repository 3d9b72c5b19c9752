import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { photoOfPixels } from "../../../src/mechanics/silhouette/photo.ts";
import { threadFromPhoto } from "../../../src/mechanics/silhouette/photoPitch.ts";
import { caliper } from "./caliper.ts";

/** A saw-tooth silhouette, dark on light: its crests on both sides half a period apart, its axis level. */
function sawTooth({ period, width, turns }: { period: number; width: number; turns: number }) {
  const [w, h] = [Math.round(period * (turns + 8)), Math.round(width * 2)];
  const bytes = new Uint8Array(w * h * 3).fill(235);
  const depth = 0.6134 * period;
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      const along = x - 4 * period;
      if (along < 0 || along > turns * period) continue;
      const side = y + 0.5 < h / 2 ? 0 : 0.5;
      const turn = (along + 0.5) / period + side;
      const off = Math.abs(turn - Math.round(turn));
      // Crest flat P/8, flanks of 60 degrees: ISO 68-1:1998.
      const down = Math.min(depth, Math.max(0, (off - 1 / 16) * Math.sqrt(3) * period));
      const inside = width / 2 - down - Math.abs(y + 0.5 - h / 2);
      const share = Math.min(1, Math.max(0, inside + 0.5));
      bytes.fill(Math.round(235 - 195 * share), (y * w + x) * 3, (y * w + x) * 3 + 3);
    }
  return photoOfPixels({ left: 0, top: 0, width: w, height: h, channels: 3, bytes });
}

test("the pitch of a drawn saw-tooth is its period over its width times the diameter", () => {
  const answer = threadFromPhoto(sawTooth({ period: 30, width: 240, turns: 9 }), caliper(11.85));
  expect(answer.reading?.period_px).toBeCloseTo(30, 0);
  expect(answer.reading?.width_px).toBeGreaterThan(240 * 0.98);
  expect(answer.reading?.width_px).toBeLessThan(240 * 1.02);
  if (answer.verdict === "again") throw new Error(answer.reasons.join());
  expect(Math.abs(valueIn(mm, answer.pitch) / (11.85 / 8) - 1)).toBeLessThan(0.02);
  expect(answer.naming.candidates[0]?.designation).toBe("M12x1.5");
});

test("a photo twice as large gives the same pitch", () => {
  const ratios = [22, 44].map((period) => {
    const { reading } = threadFromPhoto(sawTooth({ period, width: 8 * period, turns: 8 }), caliper(11.85));
    return reading ? reading.period_px / reading.width_px : 0;
  });
  expect(Math.abs((ratios[0] as number) / (ratios[1] as number) - 1)).toBeLessThan(0.01);
});

test("an even picture, noise and a picture of one pixel have no thread", () => {
  const noise = Uint8Array.from({ length: 300 * 200 * 3 }, (_, i) => (Math.imul(i + 1, 2654435761) >>> 16) & 255);
  for (const it of [
    { width: 300, height: 200, bytes: new Uint8Array(300 * 200 * 3).fill(200) },
    { width: 300, height: 200, bytes: noise },
    { width: 1, height: 1, bytes: new Uint8Array(3) },
  ])
    expect(threadFromPhoto(photoOfPixels({ left: 0, top: 0, channels: 3, ...it }), caliper(12)).verdict).toBe("again");
});

test("a diameter that no thread of that pitch has is not answered", () => {
  const answer = threadFromPhoto(sawTooth({ period: 30, width: 240, turns: 9 }), caliper(16.8));
  expect(answer.verdict).toBe("again");
  expect(answer.reasons).toContain("fits no thread");
});
