import { connectedFrom } from "./connected.ts";
import type { ThreadGuess } from "./frame.ts";
import { quantiles } from "./robust.ts";
import type { Planes } from "./shrinking.ts";
import type { LinedPlace } from "./tiles.ts";

/**
 * How far the lines of a place reach: the picture around it asked for that wave alone, and what answers more than 40 % as
 * strongly as the strongest point and hangs together with it. Gives the thread as a guess in pixels of the photo.
 */
export function linesAround(planes: Planes, { x, y, kx, ky }: LinedPlace): ThreadGuess | null {
  const period = 1 / Math.hypot(kx, ky);
  const radius = Math.round(Math.max(110, 9 * period));
  const left = Math.max(0, Math.round(x) - radius);
  const top = Math.max(0, Math.round(y) - radius);
  const width = Math.min(planes.width, Math.round(x) + radius) - left;
  const height = Math.min(planes.height, Math.round(y) + radius) - top;
  const cut = new Float32Array(width * height);
  for (let row = 0; row < height; row++)
    cut.set(planes.luminance.subarray((top + row) * planes.width + left).subarray(0, width), row * width);
  const mean = boxBlurred(cut, width, height, Math.max(1, Math.round(0.5 * period)));
  // What answers changes slowly: a long wave's answer is kept in coarser cells.
  const cell = Math.max(1, Math.round(period / 4));
  const [w, h] = [Math.ceil(width / cell), Math.ceil(height / cell)];
  const [re, im] = [new Float32Array(w * h), new Float32Array(w * h)];
  const [cosine, sine] = turning(kx, width);
  const [cosineDown, sineDown] = turning(ky, height);
  for (let row = 0; row < height; row++) {
    const line = { start: row * width, width, cell, to: Math.floor(row / cell) * w };
    demodulated(cut, mean, line, [cosine, sine, cosineDown[row] as number, sineDown[row] as number], re, im);
  }
  const reach = Math.max(1, Math.round((0.6 * period) / cell));
  const twice = (plane: Float32Array): Float32Array => boxBlurred(boxBlurred(plane, w, h, reach), w, h, reach);
  const [a, b] = [twice(re), twice(im)];
  const strength = strengthOf(a, b);
  const points = hangingTogether(strength, w, h, [(x - left) / cell, (y - top) / cell], NEAR / cell);
  if (points.length * cell * cell < 20) return null;
  const corner = [left + (cell - 1) / 2, top + (cell - 1) / 2] as const;
  return guessFrom(points, w, cell, corner, planes.scale, [kx * period, ky * period], period);
}

/** Adds a line of the picture, less its mean and times the wave that is asked for, to the cells that it lies in. */
function demodulated(
  cut: Float32Array,
  mean: Float32Array,
  {
    start,
    width,
    cell,
    to,
  }: { readonly start: number; readonly width: number; readonly cell: number; readonly to: number },
  [cosine, sine, c, s]: readonly [Float64Array, Float64Array, number, number],
  re: Float32Array,
  im: Float32Array,
): void {
  for (let column = 0; column < width; column++) {
    const value = (cut[start + column] as number) - (mean[start + column] as number);
    const off = Math.min(70, Math.max(-70, value));
    const at = to + ((column / cell) | 0);
    const [a, b] = [cosine[column] as number, sine[column] as number];
    re[at] = (re[at] as number) + off * (a * c - b * s);
    im[at] = (im[at] as number) - off * (b * c + a * s);
  }
}

function strengthOf(re: Float32Array, im: Float32Array): Float32Array {
  const strength = new Float32Array(re.length);
  for (let i = 0; i < re.length; i++) strength[i] = Math.sqrt((re[i] as number) ** 2 + (im[i] as number) ** 2);
  return strength;
}

/** How far from a place, in pixels, the strongest point may lie. */
const NEAR = 28;

/** Cosine and sine of `k` cycles a pixel at each of `count` pixels. */
function turning(k: number, count: number): readonly [Float64Array, Float64Array] {
  const [cosine, sine] = [new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    cosine[i] = Math.cos(2 * Math.PI * k * i);
    sine[i] = Math.sin(2 * Math.PI * k * i);
  }
  return [cosine, sine];
}

function guessFrom(
  points: Int32Array,
  width: number,
  cell: number,
  [left, top]: readonly [number, number],
  scale: number,
  [ux, uy]: readonly [number, number],
  period: number,
): ThreadGuess {
  const [along, across] = [new Float64Array(points.length), new Float64Array(points.length)];
  for (let i = 0; i < points.length; i++) {
    const column = (points[i] as number) % width;
    const row = Math.floor((points[i] as number) / width);
    along[i] = cell * (column * ux + row * uy);
    across[i] = cell * (row * ux - column * uy);
  }
  const [[s0, s1], [x0, x1]] = [quantiles(along, [0.03, 0.97]), quantiles(across, [0.03, 0.97])] as [Pair, Pair];
  const [s, x] = [(s0 + s1) / 2, (x0 + x1) / 2];
  return {
    frame: { x: (left + s * ux - x * uy + 0.5) * scale, y: (top + s * uy + x * ux + 0.5) * scale, ux, uy },
    period: period * scale,
    halfWidth: Math.max(((x1 - x0) / 2) * scale, 1.2 * period * scale),
    halfLength: ((s1 - s0) / 2) * scale,
  };
}

type Pair = readonly [number, number];

/** The points above 40 % of the strongest near the middle that can be reached from it through such points. */
function hangingTogether(
  strength: Float32Array,
  width: number,
  height: number,
  [x, y]: readonly [number, number],
  near: number,
): Int32Array {
  let [best, most] = [0, 0];
  for (let row = Math.max(0, Math.floor(y - near)); row < Math.min(height, y + near); row++)
    for (let column = Math.max(0, Math.floor(x - near)); column < Math.min(width, x + near); column++) {
      const at = row * width + column;
      if ((strength[at] as number) > most) [best, most] = [at, strength[at] as number];
    }
  const above = { values: strength, width, least: 0.4 * most };
  return connectedFrom(best, above, new Uint8Array(strength.length), new Int32Array(strength.length));
}

/** The mean over a square of `reach` to every side, cut off at the rim. */
function boxBlurred(plane: Float32Array, width: number, height: number, reach: number): Float32Array {
  const lines = new Float32Array(plane.length);
  const sums = new Float64Array(width + 1);
  for (let row = 0; row < height; row++) blurLine(plane, row * width, width, reach, sums, lines);
  // Down the columns all at once: rows come in below and go out above.
  const out = new Float32Array(plane.length);
  const running = new Float64Array(width);
  for (let row = 0; row < Math.min(reach, height); row++) addRow(lines, row * width, 1, running);
  for (let row = 0; row < height; row++) {
    if (row + reach < height) addRow(lines, (row + reach) * width, 1, running);
    if (row - reach - 1 >= 0) addRow(lines, (row - reach - 1) * width, -1, running);
    const count = Math.min(height, row + reach + 1) - Math.max(0, row - reach);
    for (let i = 0; i < width; i++) out[row * width + i] = (running[i] as number) / count;
  }
  return out;
}

function addRow(lines: Float32Array, start: number, sign: 1 | -1, running: Float64Array): void {
  for (let i = 0; i < running.length; i++) running[i] = (running[i] as number) + sign * (lines[start + i] as number);
}

/** The means along one line; `sums` is room for its running sums. */
function blurLine(
  plane: Float32Array,
  start: number,
  width: number,
  reach: number,
  sums: Float64Array,
  lines: Float32Array,
): void {
  let sum = 0;
  for (let i = 0; i < width; i++) {
    sum += plane[start + i] as number;
    sums[i + 1] = sum;
  }
  for (let i = 0; i < width; i++)
    if (i >= reach && i + reach < width)
      lines[start + i] = ((sums[i + reach + 1] as number) - (sums[i - reach] as number)) / (2 * reach + 1);
    else {
      const low = Math.max(0, i - reach);
      const high = Math.min(width, i + reach + 1);
      lines[start + i] = ((sums[high] as number) - (sums[low] as number)) / (high - low);
    }
}
