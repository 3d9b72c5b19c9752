import { fourierTransform, transformed } from "./fourier.ts";
import { type Frame, movedFrame, type ThreadGuess } from "./frame.ts";
import type { Photo } from "./photo.ts";
import { repeating, type Strip, straightened } from "./strip.ts";

/**
 * Threads that may lie along an axis, from the spectra of the lines along it: over all of it, its halves and its thirds,
 * since a head has no period. Two periods of each part, with the half widths given, clearest first.
 */
export function periodsAlong(
  photo: Photo,
  frame: Frame,
  halfLength: number,
  halfWidth: number,
  halfWidths: readonly number[],
): readonly ThreadGuess[] {
  const step = Math.max(1, halfLength / 220);
  const reach = 1.15 * halfWidth;
  const across = Math.max(step, (2 * reach) / LINES);
  const strip = straightened(photo, frame, { span: halfLength, reach, step, across });
  const [least, most] = [Math.max(2.6 * step, 0.03 * halfWidth), Math.min(0.9 * halfWidth, halfLength / 2)];
  const flat = strip.raw.map((plane) => repeating(strip, plane, 2 * most));
  const guesses = parts.flatMap(([from, to]) => {
    const [a, b] = [(2 * from - 1) * halfLength, (2 * to - 1) * halfLength];
    return peaks(strip, flat, a, b, least, Math.min(most, (b - a) / 2.2)).map(({ period, score }) => ({
      period,
      score,
      middle: (a + b) / 2,
      half: (b - a) / 2,
    }));
  });
  guesses.sort((a, b) => b.score - a.score);
  return guesses.flatMap(({ period, middle, half }) =>
    halfWidths.map((it) => ({ frame: movedFrame(frame, middle, 0, 0), period, halfWidth: it, halfLength: half })),
  );
}

/** Along so many lines a thread is looked for. */
const LINES = 70;

/** All of the axis, its halves, its thirds, from 0 to 1. */
const parts: readonly (readonly [number, number])[] = [
  [0, 1],
  [0, 1 / 2],
  [1 / 2, 1],
  [0, 1 / 3],
  [1 / 3, 2 / 3],
  [2 / 3, 1],
];

/** The two strongest periods of a part: the power of every row and colour added, whatever its phase. */
function peaks(strip: Strip, flat: readonly Float32Array[], from: number, to: number, least: number, most: number) {
  const { columns, step, s0 } = strip;
  const first = Math.max(0, Math.round((from - s0) / step));
  const last = Math.min(columns - 1, Math.round((to - s0) / step));
  const count = last - first + 1;
  if (count < 12 || most <= least) return [];
  const all = powerOf(strip, flat, first, count);
  // One apart in frequency, with a line of noughts after it that makes the spectrum finer than the signal needs.
  const spacing = 1 / (2 * (all.length - 1) * step);
  const [low, high] = [Math.max(1, Math.ceil(1 / most / spacing)), Math.floor(1 / least / spacing)];
  // Times the frequency, because shading is stronger the slower it is.
  const power = Array.from(all.subarray(low, high + 1), (it, i) => it * (low + i) * spacing);
  const total = power.reduce((sum, it) => sum + it, 0) * spacing * count * step;
  const found: { period: number; score: number }[] = [];
  for (let i = 1; i < power.length - 1; i++) {
    const [a, b, c] = [power[i - 1] as number, power[i] as number, power[i + 1] as number];
    if (b < a || b < c) continue;
    const shift = (a - c) / (2 * (a - 2 * b + c) || 1);
    const share = b / total;
    found.push({ period: 1 / ((low + i + shift) * spacing), score: Math.sqrt(b) * share * share });
  }
  return found.sort((a, b) => b.score - a.score).slice(0, 2);
}

/** The power of the mean colour of the rows under a Hann window, added, at every frequency up to half of a cycle a sample. */
function powerOf({ rows, columns }: Strip, flat: readonly Float32Array[], first: number, count: number): Float64Array {
  const size = 2 ** Math.max(5, Math.ceil(Math.log2(1.7 * count)));
  const transform = fourierTransform(size);
  const [re, im] = [new Float64Array(size), new Float64Array(size)];
  const power = new Float64Array(size / 2 + 1);
  const window = Float64Array.from(
    { length: count },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count),
  );
  // Two rows at a time, as real and imaginary part; what the two say of a frequency adds up over it and its mirror image.
  for (let row = 0; row < rows; row += 2) {
    fill(re, flat, window, row * columns + first);
    if (row + 1 < rows) fill(im, flat, window, (row + 1) * columns + first);
    else im.fill(0);
    transformed(transform, re, im, 0, 1);
    addPower(re, im, power);
  }
  return power;
}

/** Fills a line with the colours' sum from `start` on under a window, and noughts after it. */
function fill(line: Float64Array, flat: readonly Float32Array[], window: Float64Array, start: number): void {
  line.fill(0);
  for (const plane of flat)
    for (let i = 0; i < window.length; i++)
      line[i] = (line[i] as number) + (window[i] as number) * (plane[start + i] as number);
}

function addPower(re: Float64Array, im: Float64Array, power: Float64Array): void {
  const size = re.length;
  for (let k = 0; k <= size / 2; k++) {
    const mirrored = (size - k) % size;
    const square = (re[k] as number) ** 2 + (im[k] as number) ** 2;
    power[k] = (power[k] as number) + (square + (re[mirrored] as number) ** 2 + (im[mirrored] as number) ** 2) / 2;
  }
}
