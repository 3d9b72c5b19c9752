import { fourierTransform, transformed } from "./fourier.ts";
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

/** Places where the picture is striped, the clearest first, at most ten: far apart, or with other lines. */
export function linedPlaces(planes: Planes): readonly LinedPlace[] {
  const tiles = busyTiles(planes);
  const transform = fourierTransform(TILE);
  const [re, im] = [new Float64Array(TILE * ROW), new Float64Array(TILE * ROW)];
  const places: LinedPlace[] = [];
  // Two tiles at a time, as real and imaginary part: the transform of a real picture is its own mirror image.
  for (let i = 0; i < tiles.length; i += 2) {
    const [one, other] = [tiles[i] as Tile, tiles[Math.min(i + 1, tiles.length - 1)] as Tile];
    windowed(planes, one, re);
    windowed(planes, other, im);
    for (let row = 0; row < TILE; row++) transformed(transform, re, im, row * ROW, 1);
    // No wave of more cycles is asked for.
    for (let k = -MOST_CYCLES - 1; k <= MOST_CYCLES + 1; k++) transformed(transform, re, im, (k + TILE) % TILE, ROW);
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
/** Rows lie a little farther apart than a power of 2, so that a column does not fall into few lines of the processor's memory. */
const ROW = TILE + 4;
const STRIDE = 20;
const MOST_TILES = 260;
const MOST_PLACES = 10;
/** Cycles a tile: fewer are shading, more are grain. */
const LEAST_CYCLES = 3;
const MOST_CYCLES = 20;

function distinct(a: LinedPlace, b: LinedPlace): boolean {
  if (Math.hypot(a.x - b.x, a.y - b.y) > 70) return true;
  const sign = a.kx * b.kx + a.ky * b.ky < 0 ? -1 : 1;
  return Math.hypot(a.kx - sign * b.kx, a.ky - sign * b.ky) > 0.25 * Math.hypot(a.kx, a.ky);
}

type Tile = { readonly x: number; readonly y: number; readonly mean: number; readonly variance: number };

/** The tiles with most going on, and their mean luminance; from every other pixel of every other row. */
function busyTiles(planes: Planes): readonly Tile[] {
  const { width, height } = planes;
  const [sums, squares] = summedFrom(planes);
  const across = (width >> 1) + 1;
  const count = (TILE / 2) ** 2;
  const tiles: Tile[] = [];
  for (let y = 0; y + TILE <= height; y += STRIDE)
    for (let x = 0; x + TILE <= width; x += STRIDE) {
      const mean = within(sums, across, x, y) / count;
      tiles.push({ x, y, mean, variance: within(squares, across, x, y) / count - mean * mean });
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

/** What lies in the tile at a place, from such sums. */
function within(of: Float64Array, across: number, x: number, y: number): number {
  const from = (y >> 1) * across + (x >> 1);
  const to = ((y + TILE) >> 1) * across + (x >> 1);
  const half = TILE >> 1;
  return (of[to + half] as number) - (of[to] as number) - (of[from + half] as number) + (of[from] as number);
}

/** The sums of the luminance and of its square over all that lies above and left of a place (Crow 1984), at half size. */
function summedFrom({ width, height, luminance }: Planes): readonly [Float64Array, Float64Array] {
  const [w, h] = [width >> 1, height >> 1];
  const [sums, squares] = [new Float64Array((w + 1) * (h + 1)), new Float64Array((w + 1) * (h + 1))];
  for (let y = 0; y < h; y++) {
    let [sum, square] = [0, 0];
    for (let x = 0; x < w; x++) {
      const value = luminance[2 * y * width + 2 * x] as number;
      sum += value;
      square += value * value;
      const at = (y + 1) * (w + 1) + x + 1;
      sums[at] = (sums[at - w - 1] as number) + sum;
      squares[at] = (squares[at - w - 1] as number) + square;
    }
  }
  return [sums, squares];
}

const hann = Float64Array.from({ length: TILE }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / TILE));

function windowed({ width, luminance }: Planes, { x, y, mean }: Tile, to: Float64Array): void {
  for (let dy = 0; dy < TILE; dy++)
    for (let dx = 0; dx < TILE; dx++) {
      const off = (luminance[(y + dy) * width + x + dx] as number) - mean;
      const cut = Math.min(70, Math.max(-70, off));
      to[dy * ROW + dx] = cut * (hann[dy] as number) * (hann[dx] as number);
    }
}

/** A wave that may be asked for: its cycles a tile, where it and its mirror image lie in a transform, and where in `power`. */
type Wave = {
  readonly kx: number;
  readonly ky: number;
  readonly at: number;
  readonly mirrored: number;
  readonly place: number;
  readonly weight: number;
  /** Not one that is only there to be a neighbour. */
  readonly within: boolean;
};

const SIDE = 2 * MOST_CYCLES + 3;

/** The half plane of waves with one row beyond it: a real picture has the same power at the mirrored ones. */
const waves: readonly Wave[] = Array.from({ length: SIDE * (MOST_CYCLES + 3) }, (_, place) => {
  const [kx, ky] = [(place % SIDE) - MOST_CYCLES - 1, Math.floor(place / SIDE) - 1];
  const k = Math.hypot(kx, ky);
  return {
    kx,
    ky,
    at: ((ky + TILE) % TILE) * ROW + ((kx + TILE) % TILE),
    mirrored: ((TILE - ky) % TILE) * ROW + ((TILE - kx) % TILE),
    place,
    // The rim of a head has all waves in it, the power of each falling with its square.
    weight: k < LEAST_CYCLES - 1 || k > MOST_CYCLES + 1 ? 0 : (k * k) / 4,
    within: k >= LEAST_CYCLES && k <= MOST_CYCLES && ky >= 0,
  };
});
const audible = waves.filter(({ weight }) => weight > 0);
const asked = waves.filter(({ within }) => within);

/**
 * The strongest 3 x 3 peak of the half plane, its middle taken between the bins. The tile is the real part of what was
 * transformed where `sign` is 1, the imaginary where it is -1.
 */
function strongestWave(re: Float64Array, im: Float64Array, sign: 1 | -1): Omit<LinedPlace, "x" | "y"> | null {
  const power = new Float64Array(waves.length);
  for (const { at, mirrored, place, weight } of audible) {
    const a = (re[at] as number) + sign * (re[mirrored] as number);
    const b = (im[at] as number) - sign * (im[mirrored] as number);
    power[place] = (a * a + b * b) * weight;
  }
  let [total, most] = [0, 0];
  let best: Wave | null = null;
  for (const wave of asked) {
    const { place, ky } = wave;
    // The waves of no cycles down are their own mirror images.
    total += (power[place] as number) * (ky === 0 ? 1 : 2);
    const peak = three(power, place - SIDE, 1) + three(power, place, 1) + three(power, place + SIDE, 1);
    if (peak > most) [best, most] = [wave, peak];
  }
  if (!best || total <= 0) return null;
  const { place, kx, ky } = best;
  const sx = three(power, place + 1, SIDE) - three(power, place - 1, SIDE);
  const sy = three(power, place + SIDE, 1) - three(power, place - SIDE, 1);
  // Both halves of the plane hold the same peak.
  const share = (2 * most) / total;
  return { kx: (kx + sx / most) / TILE, ky: (ky + sy / most) / TILE, score: Math.sqrt(most) * share * share };
}

const three = (power: Float64Array, at: number, apart: number): number =>
  (power[at - apart] as number) + (power[at] as number) + (power[at + apart] as number);
