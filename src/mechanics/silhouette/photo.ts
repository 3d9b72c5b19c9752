import { type Planes, shrunkPlanes } from "./shrinking.ts";

/** A rectangle in pixels of the whole photo. */
export type Rectangle = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

/** A rectangle of a photo, row by row; `channels` bytes a pixel, the first three red, green and blue. */
export type Pixels = Rectangle & { readonly channels: 3 | 4; readonly bytes: Uint8Array | Uint8ClampedArray };

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
