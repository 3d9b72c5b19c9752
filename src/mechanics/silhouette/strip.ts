import { type Frame, pointAt } from "./frame.ts";
import type { Photo } from "./photo.ts";
import type { Rectangle } from "./pixels.ts";

/**
 * A part of the photo laid straight: `rows` lines along the thread, the first at `x0` across, each of `columns` samples,
 * the first at `s0` along; all `step` pixels apart. `raw` are red, green and blue as they are.
 */
export type Strip = {
  readonly frame: Frame;
  readonly rows: number;
  readonly columns: number;
  readonly step: number;
  readonly s0: number;
  readonly x0: number;
  readonly raw: readonly [Float32Array, Float32Array, Float32Array];
};

/** From `s0` to `s1` along and from -`reach` to `reach` across. Beyond the rim of the photo its last pixels go on. */
export function straightened(photo: Photo, frame: Frame, s0: number, s1: number, reach: number, step: number): Strip {
  const columns = Math.max(2, Math.floor((s1 - s0) / step) + 1);
  const half = Math.max(1, Math.floor(reach / step));
  const rows = 2 * half + 1;
  const x0 = -half * step;
  const cut = photo.cut(around(photo, frame, [s0, s0 + (columns - 1) * step], -x0));
  const raw = [0, 1, 2].map(() => new Float32Array(rows * columns));
  const [r, g, b] = raw as [Float32Array, Float32Array, Float32Array];
  const { bytes, channels, width, left, top } = cut;
  const [lastX, lastY] = [cut.width - 1.001, cut.height - 1.001];
  for (let row = 0; row < rows; row++) {
    const start = pointAt(frame, s0, x0 + row * step);
    for (let column = 0; column < columns; column++) {
      // The middle of pixel 0 lies at 0.5.
      const px = Math.min(Math.max(start.x + column * step * frame.ux - left - 0.5, 0), lastX);
      const py = Math.min(Math.max(start.y + column * step * frame.uy - top - 0.5, 0), lastY);
      const ix = Math.floor(px);
      const iy = Math.floor(py);
      const fx = px - ix;
      const fy = py - iy;
      const at = (iy * width + ix) * channels;
      const below = at + width * channels;
      const a = (1 - fx) * (1 - fy);
      const c = fx * (1 - fy);
      const d = (1 - fx) * fy;
      const e = fx * fy;
      const to = row * columns + column;
      r[to] = mixed(bytes, at, below, channels, a, c, d, e);
      g[to] = mixed(bytes, at + 1, below + 1, channels, a, c, d, e);
      b[to] = mixed(bytes, at + 2, below + 2, channels, a, c, d, e);
    }
  }
  return { frame, rows, columns, step, s0, x0, raw: [r, g, b] };
}

/** Four neighbours by their weights. */
function mixed(
  bytes: Uint8Array | Uint8ClampedArray,
  at: number,
  below: number,
  next: number,
  a: number,
  c: number,
  d: number,
  e: number,
): number {
  const upper = a * (bytes[at] as number) + c * (bytes[at + next] as number);
  return upper + d * (bytes[below] as number) + e * (bytes[below + next] as number);
}

/** The rows of a strip whose distance across lies from `from` to `to`. */
export function rowsBetween({ rows, x0, step }: Strip, from: number, to: number): readonly [number, number] {
  const first = Math.max(0, Math.ceil((from - x0) / step));
  const last = Math.min(rows - 1, Math.floor((to - x0) / step));
  return [first, last];
}

/**
 * What repeats in a colour of the strip: its rows less their own mean over one period, cut off at `CLIP` grey levels so
 * that one glint does not speak louder than a thread.
 */
export function repeating({ rows, columns, step }: Strip, plane: Float32Array, period: number): Float32Array {
  const out = new Float32Array(rows * columns);
  const sums = new Float64Array(columns + 1);
  const half = period / step / 2;
  for (let row = 0; row < rows; row++) {
    const start = row * columns;
    for (let i = 0; i < columns; i++) sums[i + 1] = (sums[i] as number) + (plane[start + i] as number);
    for (let i = 0; i < columns; i++) {
      const low = Math.max(0, i + 0.5 - half);
      const high = Math.min(columns, i + 0.5 + half);
      const value = (plane[start + i] as number) - (sumTo(sums, high) - sumTo(sums, low)) / (high - low);
      out[start + i] = value > CLIP ? CLIP : Math.max(value, -CLIP);
    }
  }
  return out;
}

/** The running sum at a place between samples. */
export function sumTo(sums: Float64Array, at: number): number {
  const low = Math.min(Math.floor(at), sums.length - 2);
  const before = sums[low] as number;
  return before + (at - low) * ((sums[low + 1] as number) - before);
}

const CLIP = 45;

/** The part of the photo that holds a strip, with a pixel around it. */
function around(photo: Photo, frame: Frame, [s0, s1]: readonly [number, number], reach: number): Rectangle {
  const corners = [s0, s1].flatMap((s) => [-reach, reach].map((x) => pointAt(frame, s, x)));
  const [left, right] = spanned(
    corners.map(({ x }) => x),
    photo.width,
  );
  const [top, bottom] = spanned(
    corners.map(({ y }) => y),
    photo.height,
  );
  return { left, top, width: right - left, height: bottom - top };
}

/** Whole pixels around `values` within the photo; two at least, so that there is a neighbour to mix with. */
function spanned(values: readonly number[], size: number): readonly [number, number] {
  const low = Math.min(Math.max(0, Math.floor(Math.min(...values)) - 2), Math.max(0, size - 3));
  const high = Math.min(size, Math.max(Math.ceil(Math.max(...values)) + 2, low + 3));
  return [low, high];
}
