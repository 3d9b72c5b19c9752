import type { Photo } from "../../../mechanics/silhouette/photo.ts";
import type { Pixels, Rectangle } from "../../../mechanics/silhouette/pixels.ts";
import { type Planes, shrunkPlanes } from "../../../mechanics/silhouette/shrinking.ts";

/** A photo that the browser holds: drawn small to look for the thread, and its parts as they are to read it. */
export function browserPhoto(bitmap: ImageBitmap): Photo {
  const { width, height } = bitmap;
  let last: Pixels | null = null;
  return {
    width,
    height,
    shrunk(longSide): Planes {
      const scale = Math.max(1, Math.max(width, height) / longSide);
      const [w, h] = [Math.max(1, Math.floor(width / scale)), Math.max(1, Math.floor(height / scale))];
      const { data } = drawn(bitmap, { left: 0, top: 0, width, height }, w, h);
      const whole = { left: 0, top: 0, width: w, height: h, channels: 4, bytes: data } as const;
      return { ...shrunkPlanes(whole, longSide), scale };
    },
    cut(part): Pixels {
      if (last && holds(last, part)) return last;
      // A little more, because the next round looks a little farther.
      const [left, top] = [Math.max(0, part.left - MORE), Math.max(0, part.top - MORE)];
      const w = Math.min(width, part.left + part.width + MORE) - left;
      const h = Math.min(height, part.top + part.height + MORE) - top;
      const { data } = drawn(bitmap, { left, top, width: w, height: h }, w, h);
      last = { left, top, width: w, height: h, channels: 4, bytes: data };
      return last;
    },
  };
}

const MORE = 40;

const holds = (it: Rectangle, part: Rectangle): boolean =>
  part.left >= it.left &&
  part.top >= it.top &&
  part.left + part.width <= it.left + it.width &&
  part.top + part.height <= it.top + it.height;

function drawn(bitmap: ImageBitmap, { left, top, width, height }: Rectangle, w: number, h: number): ImageData {
  const context = new OffscreenCanvas(w, h).getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("this browser gives no canvas");
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, left, top, width, height, 0, 0, w, h);
  return context.getImageData(0, 0, w, h);
}
