/** A rectangle in pixels of the whole photo. */
export type Rectangle = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

/** A rectangle of a photo, row by row; `channels` bytes a pixel, the first three red, green and blue. */
export type Pixels = Rectangle & { readonly channels: 3 | 4; readonly bytes: Uint8Array | Uint8ClampedArray };
