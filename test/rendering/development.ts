import { type Random, splitmix32 } from "../../src/mechanics/quantity/random.ts";
import type { LightPicture } from "./photograph.ts";
import { blurred, cutOut, laidBack, type Plane } from "./plane.ts";
import type { Seen } from "./raster.ts";
import type { Scene } from "./scene.ts";

/**
 * The picture as a camera gives it: blurred while it is still light, exposed, with a tone curve, sharpening and noise.
 * Blurred and sharpened only around what is seen; the background is smooth as it is.
 */
export function developed({ width, height, planes }: LightPicture, scene: Scene, seen: Seen): Uint8Array {
  const { blur, sharpened, noise, random, name } = scene;
  const [left, top] = [Math.max(0, seen.left - MARGIN), Math.max(0, seen.top - MARGIN)];
  const right = Math.min(width, seen.left + seen.width / seen.fine + MARGIN);
  const bottom = Math.min(height, seen.top + seen.height / seen.fine + MARGIN);
  const out = new Uint8Array(width * height * 3);
  const exposure = name === "backlit" ? 0.95 : 1.05;
  const white = [0.97 + 0.06 * random(), 1, 0.97 + 0.06 * random()];
  const next = splitmix32(Math.floor(random() * 2 ** 32));
  const grains = noiseTable(random);
  planes.forEach((plane, c) => {
    const part = blurred(cutOut(plane, left, top, right - left, bottom - top), blur);
    laidBack(plane, part, left, top);
    const gain = exposure * (white[c] as number);
    const toned: Plane = { width, height, at: tonedPlane(plane.at, gain) };
    if (sharpened > 0) {
      const sharp = cutOut(toned, left, top, right - left, bottom - top);
      const soft = blurred(sharp, 1.25);
      laidBack(
        toned,
        { ...sharp, at: sharp.at.map((it, i) => it + sharpened * (it - (soft.at[i] as number))) },
        left,
        top,
      );
    }
    for (let y = 0; y < height; y++) {
      // A row begins anywhere in the table, so that no two rows are alike.
      const start = next();
      for (let x = 0; x < width; x++) {
        const i = y * width + x;
        const value = (toned.at[i] as number) + noise * (grains[(start + x) & 0xffff] as number);
        out[3 * i + c] = value < 0 ? 0 : value > 255 ? 255 : value + 0.5;
      }
    }
  });
  return out;
}

const MARGIN = 14;

const tones = Float32Array.from({ length: 4097 }, (_, i) => 255 * toned(i / 2048));

/** Grey levels of light from 0 to 2. */
function tonedPlane(light: Float32Array, gain: number): Float32Array {
  const out = new Float32Array(light.length);
  for (let i = 0; i < light.length; i++) {
    const at = (light[i] as number) * gain * 2048;
    out[i] = tones[at < 0 ? 0 : at > 4096 ? 4096 : Math.round(at)] as number;
  }
  return out;
}

/** sRGB (IEC 61966-2-1) with a shoulder, so that what is too bright does not end at once. */
function toned(light: number): number {
  const held = light > 0.8 ? 0.8 + 0.2 * Math.tanh((light - 0.8) / 0.35) : light;
  return held <= 0.0031308 ? 12.92 * held : 1.055 * held ** (1 / 2.4) - 0.055;
}

/** Normal grain: four uniform numbers are near enough to it. */
function noiseTable(random: Random): Float32Array {
  return Float32Array.from({ length: 65536 }, () => (random() + random() + random() + random() - 2) * Math.sqrt(3));
}
