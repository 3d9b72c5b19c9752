import { type Frame, type Point, pointAt } from "./frame.ts";
import type { Photo } from "./photo.ts";
import type { Pixels, Rectangle } from "./pixels.ts";

/**
 * A part of the photo laid straight: `rows` lines along the thread, the first at `x0` across and `across` pixels apart, each
 * of `columns` samples, the first at `s0` along and `step` pixels apart. `raw` are red, green and blue as they are.
 */
export type Strip = {
  readonly frame: Frame;
  readonly rows: number;
  readonly columns: number;
  readonly step: number;
  readonly across: number;
  readonly s0: number;
  readonly x0: number;
  readonly raw: readonly [Float32Array, Float32Array, Float32Array];
};

/** What of a photo is laid straight: up to `span` along and up to `reach` across from the middle of a frame, both ways, in pixels. */
export type Laying = { readonly span: number; readonly reach: number; readonly step: number; readonly across?: number };

/** A strip about the middle of a frame, its rows as far apart as its columns unless told. Beyond the rim of the photo its last pixels go on. */
export function straightened(photo: Photo, frame: Frame, { span, reach, step, across = step }: Laying): Strip {
  const s0 = -span;
  const columns = Math.max(2, Math.floor((2 * span) / step) + 1);
  const half = Math.max(1, Math.floor(reach / across));
  const rows = 2 * half + 1;
  const x0 = -half * across;
  const cut = photo.cut(around(photo, frame, [s0, s0 + (columns - 1) * step], -x0));
  const raw = [0, 1, 2].map(() => new Float32Array(rows * columns)) as [Float32Array, Float32Array, Float32Array];
  for (let row = 0; row < rows; row++) {
    const start = pointAt(frame, s0, x0 + row * across);
    // The middle of pixel 0 lies at 0.5.
    const from = { x: start.x - cut.left - 0.5, y: start.y - cut.top - 0.5 };
    layLine(cut, from, step * frame.ux, step * frame.uy, raw, row * columns, columns);
  }
  return { frame, rows, columns, step, across, s0, x0, raw };
}

/** Lays `columns` samples of a line, `along` and `down` apart in the photo, into the three colours. */
function layLine(
  { bytes, channels, width, height }: Pixels,
  { x, y }: Point,
  along: number,
  down: number,
  [r, g, b]: Strip["raw"],
  first: number,
  columns: number,
): void {
  const [lastX, lastY] = [width - 1.001, height - 1.001];
  const below = width * channels;
  for (let column = 0; column < columns; column++) {
    const px = Math.min(Math.max(x + column * along, 0), lastX);
    const py = Math.min(Math.max(y + column * down, 0), lastY);
    const ix = px | 0;
    const iy = py | 0;
    const fx = px - ix;
    const fy = py - iy;
    const at = iy * below + ix * channels;
    const under = at + below;
    const to = first + column;
    // Four neighbours by their weights, written out for each colour: this is where most of the time goes.
    const d = fx * fy;
    const b0 = fx - d;
    const c0 = fy - d;
    const a0 = 1 - fx - c0;
    const on = at + channels;
    const onUnder = under + channels;
    r[to] =
      a0 * (bytes[at] as number) +
      b0 * (bytes[on] as number) +
      c0 * (bytes[under] as number) +
      d * (bytes[onUnder] as number);
    g[to] =
      a0 * (bytes[at + 1] as number) +
      b0 * (bytes[on + 1] as number) +
      c0 * (bytes[under + 1] as number) +
      d * (bytes[onUnder + 1] as number);
    b[to] =
      a0 * (bytes[at + 2] as number) +
      b0 * (bytes[on + 2] as number) +
      c0 * (bytes[under + 2] as number) +
      d * (bytes[onUnder + 2] as number);
  }
}

/** The rows of a strip whose distance across lies from `from` to `to`. */
export function rowsBetween({ rows, x0, across }: Strip, from: number, to: number): readonly [number, number] {
  const first = Math.max(0, Math.ceil((from - x0) / across));
  const last = Math.min(rows - 1, Math.floor((to - x0) / across));
  return [first, last];
}

/** The middle rows of a strip, those within `reach`, and of its `signal`; seen in the same memory. */
export function narrowed(strip: Strip, signal: readonly Float32Array[], reach: number) {
  const { frame, columns, step, across, s0 } = strip;
  const half = Math.max(1, Math.floor(reach / across));
  const cut = (strip.rows - 1) / 2 - half;
  if (cut <= 0) return { strip, signal };
  const within = (plane: Float32Array): Float32Array => plane.subarray(cut * columns, (strip.rows - cut) * columns);
  const [r, g, b] = strip.raw;
  const rows = 2 * half + 1;
  return {
    strip: {
      frame,
      rows,
      columns,
      step,
      across,
      s0,
      x0: -half * across,
      raw: [within(r), within(g), within(b)] as const,
    },
    signal: signal.map(within),
  };
}

/**
 * What repeats in a colour of the strip: its rows less their own mean over one period, cut off at `CLIP` grey levels so
 * that one glint does not speak louder than a thread.
 */
export function repeating({ rows, columns, step }: Strip, plane: Float32Array, period: number): Float32Array {
  const out = new Float32Array(rows * columns);
  const sums = new Float64Array(columns + 1);
  for (let row = 0; row < rows; row++) lessMean(plane, row * columns, columns, period / step / 2, sums, out);
  return out;
}

/** One row of it, less its mean over `half` of a period to either side; `sums` is room for its running sums. */
function lessMean(
  plane: Float32Array,
  start: number,
  columns: number,
  half: number,
  sums: Float64Array,
  out: Float32Array,
): void {
  let sum = 0;
  for (let i = 0; i < columns; i++) {
    sum += plane[start + i] as number;
    sums[i + 1] = sum;
  }
  // The same share of a sample is cut at both ends of every window that lies within the row.
  const [a, b] = [Math.floor(0.5 - half), Math.floor(0.5 + half)];
  const [cutLow, cutHigh] = [0.5 - half - a, 0.5 + half - b];
  const firstWhole = Math.min(-a, columns);
  const endWhole = Math.max(columns - b, firstWhole);
  const share = 1 / (2 * half);
  for (let i = firstWhole; i < endWhole; i++) {
    const low = (sums[i + a] as number) + cutLow * (plane[start + i + a] as number);
    const high = (sums[i + b] as number) + cutHigh * (plane[start + i + b] as number);
    out[start + i] = clipped((plane[start + i] as number) - (high - low) * share);
  }
  for (let i = 0; i < firstWhole; i++)
    out[start + i] = clipped((plane[start + i] as number) - meanAbout(i, half, sums));
  for (let i = endWhole; i < columns; i++)
    out[start + i] = clipped((plane[start + i] as number) - meanAbout(i, half, sums));
}

const CLIP = 45;
const clipped = (value: number): number => Math.min(CLIP, Math.max(-CLIP, value));

/** The mean about a sample near an end of the row, of what there is of its window. */
function meanAbout(i: number, half: number, sums: Float64Array): number {
  const low = Math.max(0, i + 0.5 - half);
  const high = Math.min(sums.length - 1, i + 0.5 + half);
  return (sumTo(sums, high) - sumTo(sums, low)) / (high - low);
}

/** The running sum at a place between samples. */
export function sumTo(sums: Float64Array, at: number): number {
  const low = Math.min(Math.floor(at), sums.length - 2);
  const before = sums[low] as number;
  return before + (at - low) * ((sums[low + 1] as number) - before);
}

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
