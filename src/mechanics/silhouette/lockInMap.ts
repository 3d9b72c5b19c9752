import type { ThreadGuess } from "./frame.ts";
import { quantile } from "./robust.ts";
import type { Planes } from "./shrinking.ts";
import type { LinedPlace } from "./tiles.ts";

/**
 * How far the lines of a place reach: the picture around it asked for that wave alone, and what answers more than 40 % as
 * strongly as the strongest point and hangs together with it. Gives the thread as a guess in pixels of the photo.
 */
export function linesAround(planes: Planes, { x, y, kx, ky }: LinedPlace): ThreadGuess | null {
  const period = 1 / Math.hypot(kx, ky);
  const radius = Math.round(Math.max(130, 14 * period));
  const left = Math.max(0, Math.round(x) - radius);
  const top = Math.max(0, Math.round(y) - radius);
  const width = Math.min(planes.width, Math.round(x) + radius) - left;
  const height = Math.min(planes.height, Math.round(y) + radius) - top;
  const cut = new Float32Array(width * height);
  for (let row = 0; row < height; row++)
    cut.set(planes.luminance.subarray((top + row) * planes.width + left).subarray(0, width), row * width);
  const mean = boxBlurred(cut, width, height, Math.max(1, Math.round(0.5 * period)));
  const [re, im] = [new Float32Array(cut.length), new Float32Array(cut.length)];
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const at = row * width + column;
      const off = Math.min(70, Math.max(-70, (cut[at] as number) - (mean[at] as number)));
      const angle = 2 * Math.PI * (kx * column + ky * row);
      re[at] = off * Math.cos(angle);
      im[at] = -off * Math.sin(angle);
    }
  const reach = Math.max(1, Math.round(0.6 * period));
  const twice = (plane: Float32Array): Float32Array =>
    boxBlurred(boxBlurred(plane, width, height, reach), width, height, reach);
  const [a, b] = [twice(re), twice(im)];
  const strength = a.map((it, i) => Math.hypot(it, b[i] as number));
  const points = hangingTogether(strength, width, height, [x - left, y - top]);
  if (points.length < 20) return null;
  return guessFrom(points, width, [left, top], planes.scale, [kx * period, ky * period], period);
}

function guessFrom(
  points: readonly number[],
  width: number,
  [left, top]: readonly [number, number],
  scale: number,
  [ux, uy]: readonly [number, number],
  period: number,
): ThreadGuess {
  const along = points.map((at) => (at % width) * ux + Math.floor(at / width) * uy);
  const across = points.map((at) => -(at % width) * uy + Math.floor(at / width) * ux);
  const [s0, s1] = [quantile(along, 0.03), quantile(along, 0.97)];
  const [x0, x1] = [quantile(across, 0.03), quantile(across, 0.97)];
  const [s, x] = [(s0 + s1) / 2, (x0 + x1) / 2];
  return {
    frame: { x: (left + s * ux - x * uy + 0.5) * scale, y: (top + s * uy + x * ux + 0.5) * scale, ux, uy },
    period: period * scale,
    halfWidth: Math.max(((x1 - x0) / 2) * scale, 1.2 * period * scale),
    halfLength: ((s1 - s0) / 2) * scale,
  };
}

/** The points above 40 % of the strongest near the middle that can be reached from it through such points. */
function hangingTogether(
  strength: Float32Array,
  width: number,
  height: number,
  [x, y]: readonly [number, number],
): readonly number[] {
  let [best, most] = [0, 0];
  const near = 40;
  for (let row = Math.max(0, Math.floor(y - near)); row < Math.min(height, y + near); row++)
    for (let column = Math.max(0, Math.floor(x - near)); column < Math.min(width, x + near); column++) {
      const at = row * width + column;
      if ((strength[at] as number) > most) [best, most] = [at, strength[at] as number];
    }
  const seen = new Uint8Array(strength.length);
  const points: number[] = [];
  const waiting = [best];
  seen[best] = 1;
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    points.push(at);
    const column = at % width;
    const beside = [column > 0 ? at - 1 : -1, column < width - 1 ? at + 1 : -1, at - width, at + width];
    for (const next of beside)
      if (next >= 0 && next < strength.length && !seen[next] && (strength[next] as number) > 0.4 * most) {
        seen[next] = 1;
        waiting.push(next);
      }
  }
  return points;
}

/** The mean over a square of `reach` to every side, cut off at the rim. */
function boxBlurred(plane: Float32Array, width: number, height: number, reach: number): Float32Array {
  const lines = new Float32Array(plane.length);
  const sums = new Float64Array(width + 1);
  for (let row = 0; row < height; row++) {
    const start = row * width;
    for (let i = 0; i < width; i++) sums[i + 1] = (sums[i] as number) + (plane[start + i] as number);
    for (let i = 0; i < width; i++) {
      const low = Math.max(0, i - reach);
      const high = Math.min(width, i + reach + 1);
      lines[start + i] = ((sums[high] as number) - (sums[low] as number)) / (high - low);
    }
  }
  // Down the columns all at once: rows come in below and go out above.
  const out = new Float32Array(plane.length);
  const running = new Float64Array(width);
  const addRow = (row: number, sign: 1 | -1): void => {
    for (let i = 0; i < width; i++) running[i] = (running[i] as number) + sign * (lines[row * width + i] as number);
  };
  for (let row = 0; row < Math.min(reach, height); row++) addRow(row, 1);
  for (let row = 0; row < height; row++) {
    if (row + reach < height) addRow(row + reach, 1);
    if (row - reach - 1 >= 0) addRow(row - reach - 1, -1);
    const count = Math.min(height, row + reach + 1) - Math.max(0, row - reach);
    for (let i = 0; i < width; i++) out[row * width + i] = (running[i] as number) / count;
  }
  return out;
}
