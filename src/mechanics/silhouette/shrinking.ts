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
  const small = blackPlanes(
    Math.max(1, Math.floor(pixels.width / scale)),
    Math.max(1, Math.floor(pixels.height / scale)),
    scale,
  );
  const covered = coveredBy(small.width, scale, pixels.width);
  for (let y = 0; y < pixels.height; y++) {
    const [row, share] = [Math.floor(y / scale), rowShare(y, scale)];
    addLine(small, row, pixels, y, covered, share / (scale * scale));
    if (share < 1) addLine(small, row + 1, pixels, y, covered, (1 - share) / (scale * scale));
  }
  return lit(small);
}

/** The pixels of a line that each small one covers: all from `first` to before `end`, of those two a share only. */
type Covered = {
  readonly first: Int32Array;
  readonly end: Int32Array;
  readonly ofFirst: Float64Array;
  readonly ofEnd: Float64Array;
};

function coveredBy(count: number, scale: number, size: number): Covered {
  const [first, end] = [new Int32Array(count), new Int32Array(count)];
  const [ofFirst, ofEnd] = [new Float64Array(count), new Float64Array(count)];
  for (let x = 0; x < count; x++) {
    const [from, to] = [x * scale, Math.min((x + 1) * scale, size)];
    first[x] = Math.floor(from);
    end[x] = Math.floor(to);
    ofFirst[x] = 1 - (from - Math.floor(from));
    ofEnd[x] = to - Math.floor(to);
  }
  return { first, end, ofFirst, ofEnd };
}

/** The same from planes already shrunk, to half of the size. */
export function halved({ width, height, scale, colours }: Planes): Planes {
  const small = blackPlanes(width >> 1, height >> 1, 2 * scale);
  for (let c = 0; c < 3; c++)
    for (let y = 0; y < small.height; y++)
      halveLine(colours[c] as Float32Array, width, y, small.width, small.colours[c] as Float32Array);
  return lit(small);
}

/** Row `y` of a colour at half of the size, each pixel the mean of four. */
function halveLine(from: Float32Array, width: number, y: number, half: number, to: Float32Array): void {
  for (let x = 0; x < half; x++) {
    const at = 2 * y * width + 2 * x;
    const four =
      (from[at] as number) + (from[at + 1] as number) + (from[at + width] as number) + (from[at + width + 1] as number);
    to[y * half + x] = four / 4;
  }
}

/** What of source row `y` falls into the row of the small picture that it begins in. */
function rowShare(y: number, scale: number): number {
  const end = (Math.floor(y / scale) + 1) * scale;
  return Math.min(1, end - y);
}

/** Adds one source line to a row of the small picture, each of its whole pixels by that share. */
function addLine(
  { width, height, colours: [red, green, blue] }: Planes,
  row: number,
  { width: size, channels, bytes }: Pixels,
  y: number,
  { first, end, ofFirst, ofEnd }: Covered,
  share: number,
): void {
  if (row >= height) return;
  const from = y * size * channels;
  for (let x = 0; x < width; x++) {
    let at = from + (first[x] as number) * channels;
    const last = from + (end[x] as number) * channels;
    const whole = ofFirst[x] as number;
    let r = whole * (bytes[at] as number);
    let g = whole * (bytes[at + 1] as number);
    let b = whole * (bytes[at + 2] as number);
    for (at += channels; at < last; at += channels) {
      r += bytes[at] as number;
      g += bytes[at + 1] as number;
      b += bytes[at + 2] as number;
    }
    const rest = ofEnd[x] as number;
    if (rest > 1e-6) {
      r += rest * (bytes[last] as number);
      g += rest * (bytes[last + 1] as number);
      b += rest * (bytes[last + 2] as number);
    }
    const to = row * width + x;
    red[to] = (red[to] as number) + r * share;
    green[to] = (green[to] as number) + g * share;
    blue[to] = (blue[to] as number) + b * share;
  }
}

function blackPlanes(width: number, height: number, scale: number): Planes {
  const plane = (): Float32Array => new Float32Array(width * height);
  return { width, height, scale, colours: [plane(), plane(), plane()], luminance: plane() };
}

/** With the luminance of its colours. */
function lit(planes: Planes): Planes {
  const [red, green, blue] = planes.colours;
  const { luminance } = planes;
  for (let i = 0; i < luminance.length; i++)
    luminance[i] = 0.3 * (red[i] as number) + 0.59 * (green[i] as number) + 0.11 * (blue[i] as number);
  return planes;
}
