import type { Pixels } from "./pixels.ts";

/** Red, green and blue, and their luminance, as floats from 0 to 255; one of its pixels is `scale` pixels of the photo. */
export type Planes = {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly colours: readonly [Float32Array, Float32Array, Float32Array];
  readonly luminance: Float32Array;
};

/** The photo with its long side at most `longSide`, each pixel the mean of the area it covers. */
export function shrunkPlanes(pixels: Pixels, longSide: number): Planes {
  const scale = Math.max(1, Math.max(pixels.width, pixels.height) / longSide);
  const width = Math.max(1, Math.floor(pixels.width / scale));
  const height = Math.max(1, Math.floor(pixels.height / scale));
  const sums = new Float32Array(width * height * 3);
  const shares = Float32Array.from({ length: pixels.width }, (_, x) => rowShare(x, scale) / scale);
  const places = Int32Array.from({ length: pixels.width }, (_, x) => 3 * Math.floor(x / scale));
  // With room for what falls beyond the last whole pixel.
  const line = new Float32Array((Math.floor(pixels.width / scale) + 2) * 3);
  for (let y = 0; y < pixels.height; y++) {
    lineMeans(pixels, y, places, shares, 1 / scale, line);
    const [first, share] = [Math.floor(y / scale), rowShare(y, scale)];
    addLine(sums, first, width, height, line, share / scale);
    if (share < 1) addLine(sums, first + 1, width, height, line, (1 - share) / scale);
  }
  return planesOf(sums, width, height, scale);
}

/** The same from planes already shrunk, to half of the size. */
export function halved({ width, height, scale, colours }: Planes): Planes {
  const [w, h] = [width >> 1, height >> 1];
  const sums = new Float32Array(w * h * 3);
  for (let c = 0; c < 3; c++) {
    const plane = colours[c] as Float32Array;
    for (let y = 0; y < h; y++)
      for (let x = 0; x < w; x++) {
        const at = 2 * y * width + 2 * x;
        const four =
          (plane[at] as number) +
          (plane[at + 1] as number) +
          (plane[at + width] as number) +
          (plane[at + width + 1] as number);
        sums[(y * w + x) * 3 + c] = four / 4;
      }
  }
  return planesOf(sums, w, h, 2 * scale);
}

/** What of source row `y` falls into the row of the small picture that it begins in. */
function rowShare(y: number, scale: number): number {
  const end = (Math.floor(y / scale) + 1) * scale;
  return Math.min(1, end - y);
}

function addLine(
  sums: Float32Array,
  row: number,
  width: number,
  height: number,
  line: Float32Array,
  weight: number,
): void {
  if (row >= height) return;
  const start = row * width * 3;
  for (let i = 0; i < width * 3; i++) sums[start + i] = (sums[start + i] as number) + weight * (line[i] as number);
}

/** The means of one source row: each pixel goes to its place by its share, and the rest of it to the next. */
function lineMeans(
  { width, channels, bytes }: Pixels,
  y: number,
  places: Int32Array,
  shares: Float32Array,
  whole: number,
  line: Float32Array,
): void {
  line.fill(0);
  let from = y * width * channels;
  for (let x = 0; x < width; x++, from += channels) {
    const to = places[x] as number;
    const share = shares[x] as number;
    const rest = whole - share;
    const [r, g, b] = [bytes[from] as number, bytes[from + 1] as number, bytes[from + 2] as number];
    line[to] = (line[to] as number) + share * r;
    line[to + 1] = (line[to + 1] as number) + share * g;
    line[to + 2] = (line[to + 2] as number) + share * b;
    if (rest < 1e-6) continue;
    line[to + 3] = (line[to + 3] as number) + rest * r;
    line[to + 4] = (line[to + 4] as number) + rest * g;
    line[to + 5] = (line[to + 5] as number) + rest * b;
  }
}

function planesOf(sums: Float32Array, width: number, height: number, scale: number): Planes {
  const count = width * height;
  const colours = [new Float32Array(count), new Float32Array(count), new Float32Array(count)] as const;
  const luminance = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    const [r, g, b] = [sums[3 * i] as number, sums[3 * i + 1] as number, sums[3 * i + 2] as number];
    colours[0][i] = r;
    colours[1][i] = g;
    colours[2][i] = b;
    luminance[i] = 0.3 * r + 0.59 * g + 0.11 * b;
  }
  return { width, height, scale, colours, luminance };
}
