import type { Pixels, Rectangle } from "./pixels.ts";
import { type Planes, shrunkPlanes } from "./shrinking.ts";

/**
 * A photo that is asked only for what is needed of it: all of it made small, and small parts of it as they are. So a
 * large one need not lie in memory as pixels.
 */
export type Photo = {
  readonly width: number;
  readonly height: number;
  /** The photo with its long side at most that many pixels long, each the mean of what it covers. */
  readonly shrunk: (longSide: number) => Planes;
  readonly cut: (part: Rectangle) => Pixels;
};

/** A photo whose pixels are all at hand. */
export function photoOfPixels(pixels: Pixels): Photo {
  const { width, height } = pixels;
  return { width, height, shrunk: (longSide) => shrunkPlanes(pixels, longSide), cut: () => pixels };
}
