import { rounded } from "./lettering.ts";

/** A point as a drawing draws it. */
export type XY = readonly [x: number, y: number];

/**
 * Hatching inside a closed outline as the path of its strokes, `spacing` apart, at 45° rising (1) or falling (-1).
 * Strokes are reckoned from the origin, so hatching of neighbours of one material runs through.
 * Real strokes rather than a pattern: they need no id, so two drawings on one page cannot take each other's.
 */
export function hatching(outline: readonly XY[], spacing: number, rise: 1 | -1): string {
  const step = spacing * Math.SQRT2;
  const offsets = outline.map(([x, y]) => y + rise * x);
  const first = Math.ceil(Math.min(...offsets) / step);
  const last = Math.floor(Math.max(...offsets) / step);
  const strokes: string[] = [];
  for (let k = first; k <= last; k++)
    for (const [from, to] of pairs(crossings(outline, k * step, rise)))
      if (to - from > leastStroke) strokes.push(stroke(from, to, k * step, rise));
  return strokes.join("");
}

/** Path of a polyline, closed or open. */
export const path = (points: readonly XY[], closed = false): string =>
  points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${rounded(x)} ${rounded(y)}`).join("") + (closed ? "Z" : "");

/** A line drawn by hand where something is broken off: the points of a flat wave of height `swing`. */
export function brokenEdge([x1, y1]: XY, [x2, y2]: XY, swing: number): readonly XY[] {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [along, across] = [[(x2 - x1) / length, (y2 - y1) / length] as const, swing / 2];
  const count = Math.max(8, Math.round((4 * length) / swing));
  return Array.from({ length: count + 1 }, (_, i) => {
    const s = (length * i) / count;
    const fade = Math.max(0, Math.sin((Math.PI * i) / count)) ** 0.25;
    const off = fade * across * (Math.sin((1.1 * s) / swing) + 0.5 * Math.sin((0.47 * s) / swing + 1));
    return [x1 + along[0] * s - along[1] * off, y1 + along[1] * s + along[0] * off];
  });
}

const leastStroke = 0.02;

/** Where the line y + rise·x = c meets the outline, as x in order. */
function crossings(outline: readonly XY[], c: number, rise: 1 | -1): readonly number[] {
  return outline
    .flatMap(([x1, y1], i) => {
      const [x2, y2] = outline[(i + 1) % outline.length] ?? [x1, y1];
      const [a, b] = [y1 + rise * x1 - c, y2 + rise * x2 - c];
      return a >= 0 === b >= 0 ? [] : [x1 + (a / (a - b)) * (x2 - x1)];
    })
    .toSorted((a, b) => a - b);
}

const pairs = (xs: readonly number[]): readonly (readonly [number, number])[] =>
  xs.flatMap((x, i) => (i % 2 === 1 ? [[xs[i - 1] ?? x, x] as const] : []));

const stroke = (from: number, to: number, c: number, rise: 1 | -1): string =>
  path([
    [from, c - rise * from],
    [to, c - rise * to],
  ]);
