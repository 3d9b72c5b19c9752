import { gaussSolved } from "./crestLines.ts";
import { quantile } from "./robust.ts";
import type { Planes } from "./shrinking.ts";

/**
 * How unlike the background each pixel is: the distance of its colour from a quadratic surface through each colour, fitted
 * in six rounds of which each leaves out what is far from the last, so that the part does not bend it.
 */
export function unlikeBackground({ width, height, colours }: Planes): Float32Array {
  const square = new Float32Array(width * height);
  const stride = Math.max(1, Math.round(Math.sqrt((width * height) / 6000)));
  const places: Place[] = [];
  for (let y = 0; y < height; y += stride)
    for (let x = 0; x < width; x += stride) places.push({ at: y * width + x, terms: terms(x / width, y / height) });
  let kept = places;
  let surfaces: readonly (readonly number[])[] = [];
  for (let round = 0; round < 6; round++) {
    surfaces = surfacesThrough(kept, colours);
    const off = places.map((it) => distance(it.terms, it.at, colours, surfaces));
    const reach = Math.max(6, 2.5 * quantile(off, 0.5));
    const near = places.filter((_, i) => (off[i] as number) < reach);
    if (near.length < 100) break;
    kept = near;
  }
  for (let c = 0; c < 3; c++) addSquares(square, colours[c] as Float32Array, surfaces[c] as readonly number[], width);
  for (let at = 0; at < square.length; at++) square[at] = Math.sqrt(square[at] as number);
  return square;
}

/** Adds the square of what a colour misses its surface by, pixel by pixel. */
function addSquares(square: Float32Array, plane: Float32Array, fitted: readonly number[], width: number): void {
  const height = square.length / width;
  const [a, ax, ay, axx, axy, ayy] = fitted as [number, number, number, number, number, number];
  for (let row = 0; row < height; row++) {
    const y = row / height;
    const [b, bx] = [a + y * (ay + y * ayy), ax + y * axy];
    for (let column = 0; column < width; column++) {
      const x = column / width;
      const off = (plane[row * width + column] as number) - b - x * (bx + x * axx);
      square[row * width + column] = (square[row * width + column] as number) + off * off;
    }
  }
}

const terms = (x: number, y: number): readonly number[] => [1, x, y, x * x, x * y, y * y];

function distance(
  term: readonly number[],
  at: number,
  colours: Planes["colours"],
  surfaces: readonly (readonly number[])[],
): number {
  let square = 0;
  for (let c = 0; c < 3; c++) {
    const fitted = surfaces[c] as readonly number[];
    let off = (colours[c] as Float32Array)[at] as number;
    for (let k = 0; k < 6; k++) off -= (fitted[k] as number) * (term[k] as number);
    square += off * off;
  }
  return Math.sqrt(square);
}

type Place = { readonly at: number; readonly terms: readonly number[] };

/** The surface through each colour by least squares: the same normal equations with three right sides. */
function surfacesThrough(places: readonly Place[], colours: Planes["colours"]): readonly (readonly number[])[] {
  const normal = Array.from({ length: 6 }, () => new Float64Array(9));
  for (const it of places) addTerms(normal, it, colours);
  return colours.map((_, c) =>
    gaussSolved(normal.map((line) => Float64Array.of(...line.subarray(0, 6), line[6 + c] as number))),
  );
}

function addTerms(
  normal: readonly Float64Array[],
  { at, terms: term }: Place,
  [red, green, blue]: Planes["colours"],
): void {
  for (let a = 0; a < 6; a++) {
    const line = normal[a] as Float64Array;
    const here = term[a] as number;
    for (let b = 0; b < 6; b++) line[b] = (line[b] as number) + here * (term[b] as number);
    line[6] = (line[6] as number) + here * (red[at] as number);
    line[7] = (line[7] as number) + here * (green[at] as number);
    line[8] = (line[8] as number) + here * (blue[at] as number);
  }
}
