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
  const strip = straightened(photo, frame, -halfLength, halfLength, 1.15 * halfWidth, step);
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
  const { rows, columns, step, s0 } = strip;
  const first = Math.max(0, Math.round((from - s0) / step));
  const last = Math.min(columns - 1, Math.round((to - s0) / step));
  const count = last - first + 1;
  if (count < 12 || most <= least) return [];
  const length = count * step;
  const frequencies: number[] = [];
  for (let f = 1 / most; f <= 1 / least; f += 0.45 / length) frequencies.push(f);
  const stride = Math.max(1, Math.floor(rows / 70));
  const lines = sampledLines(flat, rows, columns, stride, first, count);
  const power = frequencies.map((f) => powerAt(lines, count, step, f));
  const total = power.reduce((sum, it) => sum + it, 0);
  const found: { period: number; score: number }[] = [];
  for (let i = 1; i < power.length - 1; i++) {
    const [a, b, c] = [power[i - 1] as number, power[i] as number, power[i + 1] as number];
    if (b < a || b < c) continue;
    const shift = (a - c) / (2 * (a - 2 * b + c) || 1);
    const f = (frequencies[i] as number) + (shift * 0.45) / length;
    const share = (a + b + c) / total;
    found.push({ period: 1 / f, score: Math.sqrt(b) * share * share });
  }
  return found.sort((a, b) => b.score - a.score).slice(0, 2);
}

/** Under a Hann window, the mean of the three colours of every `stride`th row. */
function sampledLines(
  flat: readonly Float32Array[],
  rows: number,
  columns: number,
  stride: number,
  first: number,
  count: number,
): readonly Float64Array[] {
  const lines: Float64Array[] = [];
  for (let row = 0; row < rows; row += stride) {
    const line = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count);
      let sum = 0;
      for (const plane of flat) sum += plane[row * columns + first + i] as number;
      line[i] = sum * window;
    }
    lines.push(line);
  }
  return lines;
}

/** Power over all lines at a frequency, times the frequency, because shading is stronger the slower it is. */
function powerAt(lines: readonly Float64Array[], count: number, step: number, frequency: number): number {
  const [cosine, sine] = [new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    const angle = 2 * Math.PI * frequency * i * step;
    cosine[i] = Math.cos(angle);
    sine[i] = Math.sin(angle);
  }
  let sum = 0;
  for (const line of lines) {
    let [re, im] = [0, 0];
    for (let i = 0; i < count; i++) {
      re += (line[i] as number) * (cosine[i] as number);
      im += (line[i] as number) * (sine[i] as number);
    }
    sum += re * re + im * im;
  }
  return sum * frequency;
}
