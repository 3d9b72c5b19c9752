/** A direction in a photo with an origin: `s` runs along (ux, uy), `x` across it, a quarter turn on. All in pixels. */
export type Frame = { readonly x: number; readonly y: number; readonly ux: number; readonly uy: number };

/** Where a thread may lie: half of its width, half of its length and its period, all in pixels of the photo. */
export type ThreadGuess = {
  readonly frame: Frame;
  readonly period: number;
  readonly halfWidth: number;
  readonly halfLength: number;
};

export type Point = { readonly x: number; readonly y: number };

/** The point of the photo that lies `s` along and `x` across. */
export const pointAt = ({ x: ox, y: oy, ux, uy }: Frame, s: number, x: number): Point => ({
  x: ox + s * ux - x * uy,
  y: oy + s * uy + x * ux,
});

/** The frame with its origin moved `s` along and `x` across, then turned so that it follows dx/ds = `slope`. */
export function movedFrame(frame: Frame, s: number, x: number, slope: number): Frame {
  const origin = pointAt(frame, s, x);
  const length = Math.hypot(1, slope);
  const { ux, uy } = frame;
  return { ...origin, ux: (ux - slope * uy) / length, uy: (uy + slope * ux) / length };
}
