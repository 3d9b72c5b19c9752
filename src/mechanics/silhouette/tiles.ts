import { fourierTransform } from "./fourier.ts";
import { quantile } from "./robust.ts";
import type { Planes } from "./shrinking.ts";

/** A place of the shrunk photo that has lines, with their wave vector in cycles per pixel of it. */
export type LinedPlace = {
  readonly x: number;
  readonly y: number;
  readonly kx: number;
  readonly ky: number;
  readonly score: number;
};

/** Places where the picture is striped, the clearest first, at most four: far apart, or with other lines. */
export function linedPlaces(planes: Planes): readonly LinedPlace[] {
  const tiles = busyTiles(planes);
  const transform = fourierTransform(TILE);
  const [re, im] = [new Float64Array(TILE * TILE), new Float64Array(TILE * TILE)];
  const places: LinedPlace[] = [];
  // Two tiles at a time, as real and imaginary part: the transform of a real picture is its own mirror image.
  for (let i = 0; i < tiles.length; i += 2) {
    const [one, other] = [tiles[i] as Tile, tiles[Math.min(i + 1, tiles.length - 1)] as Tile];
    windowed(planes, one, re);
    windowed(planes, other, im);
    for (let row = 0; row < TILE; row++) transform(re, im, row * TILE, 1);
    for (let column = 0; column < TILE; column++) transform(re, im, column, TILE);
    for (const [tile, sign] of [[one, 1] as const, ...(one === other ? [] : [[other, -1] as const])]) {
      const peak = strongestWave(re, im, sign);
      if (peak) places.push({ x: tile.x + TILE / 2, y: tile.y + TILE / 2, ...peak });
    }
  }
  places.sort((a, b) => b.score - a.score);
  const chosen: LinedPlace[] = [];
  for (const place of places) {
    if (chosen.length === MOST_PLACES) break;
    if (chosen.every((it) => distinct(it, place))) chosen.push(place);
  }
  return chosen;
}

const TILE = 64;
const STRIDE = 20;
const MOST_TILES = 260;
const MOST_PLACES = 4;
/** Cycles a tile: fewer are shading, more are grain. */
const LEAST_CYCLES = 3;
const MOST_CYCLES = 20;

function distinct(a: LinedPlace, b: LinedPlace): boolean {
  if (Math.hypot(a.x - b.x, a.y - b.y) > 70) return true;
  const sign = a.kx * b.kx + a.ky * b.ky < 0 ? -1 : 1;
  return Math.hypot(a.kx - sign * b.kx, a.ky - sign * b.ky) > 0.25 * Math.hypot(a.kx, a.ky);
}

type Tile = { readonly x: number; readonly y: number; readonly mean: number; readonly variance: number };

/** The tiles with most going on, and their mean luminance. */
function busyTiles({ width, height, luminance }: Planes): readonly Tile[] {
  const tiles: Tile[] = [];
  for (let y = 0; y + TILE <= height; y += STRIDE)
    for (let x = 0; x + TILE <= width; x += STRIDE) {
      let [sum, square, count] = [0, 0, 0];
      for (let dy = 0; dy < TILE; dy += 2)
        for (let dx = 0; dx < TILE; dx += 2) {
          const value = luminance[(y + dy) * width + x + dx] as number;
          sum += value;
          square += value * value;
          count++;
        }
      tiles.push({ x, y, mean: sum / count, variance: square / count - (sum / count) ** 2 });
    }
  const quiet = quantile(
    tiles.map(({ variance }) => variance),
    0.15,
  );
  return tiles
    .filter(({ variance }) => variance >= Math.max(10, 3 * quiet))
    .sort((a, b) => b.variance - a.variance)
    .slice(0, MOST_TILES);
}

const hann = Float64Array.from({ length: TILE }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / TILE));

function windowed({ width, luminance }: Planes, { x, y, mean }: Tile, to: Float64Array): void {
  for (let dy = 0; dy < TILE; dy++)
    for (let dx = 0; dx < TILE; dx++) {
      const off = (luminance[(y + dy) * width + x + dx] as number) - mean;
      const cut = Math.min(70, Math.max(-70, off));
      to[dy * TILE + dx] = cut * (hann[dy] as number) * (hann[dx] as number);
    }
}

/**
 * The strongest 3 x 3 peak of the half plane, its middle taken between the bins. The tile is the real part of what was
 * transformed where `sign` is 1, the imaginary where it is -1.
 */
function strongestWave(re: Float64Array, im: Float64Array, sign: 1 | -1): Omit<LinedPlace, "x" | "y"> | null {
  const power = new Float64Array(TILE * TILE);
  let total = 0;
  for (let ky = -MOST_CYCLES - 1; ky <= MOST_CYCLES + 1; ky++)
    for (let kx = -MOST_CYCLES - 1; kx <= MOST_CYCLES + 1; kx++) {
      const k = Math.hypot(kx, ky);
      if (k < LEAST_CYCLES - 1 || k > MOST_CYCLES + 1) continue;
      const at = ((ky + TILE) % TILE) * TILE + ((kx + TILE) % TILE);
      const mirrored = ((TILE - ky) % TILE) * TILE + ((TILE - kx) % TILE);
      const a = (re[at] as number) + sign * (re[mirrored] as number);
      const b = (im[at] as number) - sign * (im[mirrored] as number);
      // The rim of a head has all waves in it, the power of each falling with its square.
      const value = ((a * a + b * b) / 4) * k * k;
      power[at] = value;
      if (k >= LEAST_CYCLES && k <= MOST_CYCLES) total += value;
    }
  let best: { peak: number; kx: number; ky: number } | null = null;
  for (let ky = 0; ky <= MOST_CYCLES; ky++)
    for (let kx = -MOST_CYCLES; kx <= MOST_CYCLES; kx++) {
      const k = Math.hypot(kx, ky);
      if (k < LEAST_CYCLES || k > MOST_CYCLES) continue;
      let [peak, sx, sy] = [0, 0, 0];
      for (let dy = -1; dy <= 1; dy++)
        for (let dx = -1; dx <= 1; dx++) {
          const value = power[((ky + dy + TILE) % TILE) * TILE + ((kx + dx + TILE) % TILE)] as number;
          peak += value;
          sx += value * dx;
          sy += value * dy;
        }
      if (peak > (best?.peak ?? 0)) best = { peak, kx: kx + sx / peak, ky: ky + sy / peak };
    }
  if (!best || total <= 0) return null;
  // Both halves of the plane hold the same peak.
  const share = (2 * best.peak) / total;
  return { kx: best.kx / TILE, ky: best.ky / TILE, score: Math.sqrt(best.peak) * share * share };
}
