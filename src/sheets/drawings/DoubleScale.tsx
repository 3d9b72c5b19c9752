import { path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { type Label, rounded } from "./lettering.ts";
import { viewBox } from "./section/PortSection.tsx";

/** One of two scales that read the same thing: a figure on it is `at * perUpper + offset` of a figure on the upper one. */
export type Scale = { readonly symbol: string; readonly figure: string };

export type DoubleScaleProps = {
  readonly upper: Scale;
  readonly lower: Scale;
  /** Where the mark stands on the upper scale. */
  readonly value: number;
  readonly perUpper: number;
  readonly offset: number;
};

const width = 360;
const letter = 15;
const left = 22;
const right = width - 22;
const y = 4.6 * letter;

/** The same reading on two scales, one above the other, as on a wrench that is marked in both. */
export function DoubleScale({ upper, lower, value, perUpper, offset }: DoubleScaleProps) {
  const [from, to] = span(value);
  const x = (on: number): number => left + ((right - left) * (on - from)) / (to - from);
  const height = y + 4.4 * letter;
  const ends = [from * perUpper + offset, to * perUpper + offset] as const;
  const below = roundMarks(ends[0], ends[1]);
  const above = roundMarks(from, to);
  const belowAt = (it: number): number => x((it - offset) / perUpper);
  // A figure under the mark could not be read; the mark has its own.
  const free = (place: number): boolean => Math.abs(place - x(value)) > 1.2 * letter;
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>On two scales</title>
      <desc>{`${upper.figure} ${upper.symbol} beside ${lower.figure} ${lower.symbol}`}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      <path class="steel edge" d={path(box(left - 8, y - 26, right + 8, y + 26), true)} />
      <path class="edge line" d={path([...at(left - 8, y), ...at(right + 8, y)])} />
      {above.map((it) => (
        <path class="thin line" d={path([...at(x(it), y), ...at(x(it), y - 10)])} />
      ))}
      {below.map((it) => (
        <path class="thin line" d={path([...at(belowAt(it), y), ...at(belowAt(it), y + 10)])} />
      ))}
      <path class="heavy line" d={path([...at(x(value), y - 34), ...at(x(value), y + 34)])} />
      <Lettering
        labels={[
          label(`${upper.figure} ${upper.symbol}`, clear(x(value), upper), y - 2.7 * letter, true, 1.1),
          label(`${lower.figure} ${lower.symbol}`, clear(x(value), lower), y + 3.5 * letter, true, 1.1),
          ...above.filter((it) => free(x(it))).map((it) => label(plain(it), x(it), y - 14)),
          ...below.filter((it) => free(belowAt(it))).map((it) => label(plain(it), belowAt(it), y + 22)),
        ]}
      />
    </svg>
  );
}

const at = (x: number, y: number): readonly XY[] => [[x, y]];
const box = (x1: number, y1: number, x2: number, y2: number): readonly XY[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];

/** From nought to a good half beyond the mark; a mark below nought lies between twice itself and nought. */
function span(value: number): readonly [number, number] {
  if (value === 0) return [-10, 10];
  return value > 0 ? [0, 1.5 * value] : [1.5 * value, 0];
}

/** Round figures within a span, four to eight of them. */
function roundMarks(a: number, b: number): readonly number[] {
  const [from, to] = a < b ? [a, b] : [b, a];
  const power = 10 ** Math.floor(Math.log10((to - from) / 4));
  const step = [1, 2, 5, 10].map((it) => it * power).find((it) => (to - from) / it <= 6) ?? 10 * power;
  const first = Math.ceil(from / step - 1e-9);
  return Array.from({ length: Math.floor(to / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
}

const plain = (it: number): string => String(Number(it.toPrecision(6)));

/** The middle of a lettering so that it stays on the sheet. */
function clear(x: number, { figure, symbol }: Scale): number {
  const half = (0.75 * 1.1 * letter * (figure.length + symbol.length + 1)) / 2;
  return Math.min(Math.max(x, half), width - half);
}

const label = (text: string, x: number, y: number, bold = false, size = 0.85): Label => ({
  text,
  x,
  y,
  size: size * letter,
  anchor: "middle",
  bold,
});
