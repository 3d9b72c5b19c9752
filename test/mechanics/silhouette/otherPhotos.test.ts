import sharp from "sharp";
import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { photoOfPixels } from "../../../src/mechanics/silhouette/photo.ts";
import { threadFromPhoto } from "../../../src/mechanics/silhouette/photoPitch.ts";
import { caliper } from "./caliper.ts";

// Rendered by another program than ours, with rounder crests: what that one and ours agree on does not hang on either.
test.each([
  ["backlit_0002.jpg", "M8x1", 7.859, 1],
  ["backlit_0003.jpg", "M10x1", 9.931, 1],
] as const)("%s shows %s, its pitch within 3 %", async (file, designation, outside_mm, pitch_mm) => {
  const path = new URL(`./photos/${file}`, import.meta.url).pathname;
  const { data, info } = await sharp(path).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  const photo = photoOfPixels({ left: 0, top: 0, width, height, channels: 3, bytes: data });
  const answer = threadFromPhoto(photo, caliper(outside_mm));
  if (answer.verdict === "again") throw new Error(answer.reasons.join());
  expect(answer.naming.candidates[0]?.designation).toBe(designation);
  expect(Math.abs(valueIn(mm, answer.pitch) / pitch_mm - 1)).toBeLessThan(0.03);
});
