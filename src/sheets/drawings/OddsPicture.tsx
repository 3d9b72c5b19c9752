import { stripsWord } from "../words/oddsWords.ts";
import { path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { type Label, rounded, wrapped } from "./lettering.ts";

/** What may happen to a hundred joints like this one, pulled to one torque. Probabilities from 0 to 1. */
export type OddsProps = {
  readonly torqueText: string;
  readonly strips: number;
  readonly closes: number;
};

/** A hundred small plugs; the stripped ones are drawn hollow and crossed out. People read counts better than per cents. */
export function OddsPicture({ torqueText, strips, closes }: OddsProps) {
  const stripped = ofHundred(strips);
  const leaking = 100 - ofHundred(closes);
  const plugs = Array.from({ length: 100 }, (_, i): XY => [left + (i % across) * cell.width, place(i)]);
  const caption = `At ${torqueText}: ${countWords(strips)}`;
  const leak = leaking === 0 ? "the seal closes on all of them" : `the seal leaks on ${leaking} of 100`;
  const title = wrapped(caption, width - 2 * left, letter * 1.15, true);
  const top = (0.4 + title.length * 1.3) * letter;
  const below = top + (100 / across) * cell.height + 1.2 * letter;
  const line = (text: string, y: number, size: number, bold: boolean): Label => ({
    text,
    x: left,
    y,
    size,
    anchor: "start",
    bold,
  });
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${rounded(below + 0.6 * letter)}`} font-size={letter} role="img">
      <title>{`${caption}; ${leak}`}</title>
      <rect class="paper" x={0} y={0} width={width} height={rounded(below + 0.6 * letter)} />
      <Lettering labels={title.map((text, i) => line(text, (1.1 + 1.3 * i) * letter, 1.15 * letter, true))} />
      <g font-size={1.9} transform={`translate(0 ${rounded(top)})`}>
        {stripped < 100 && <path class="steel edge" d={plugs.slice(stripped).map(plug).join("")} />}
        {stripped > 0 && <path class="ghost" d={plugs.slice(0, stripped).map(plug).join("")} />}
        {stripped > 0 && <path class="heavy line stop-edge" d={plugs.slice(0, stripped).map(cross).join("")} />}
      </g>
      <Lettering labels={[line(leak, below - 0.1 * letter, letter, false)]} />
    </svg>
  );
}

const width = 100;
const letter = 4;
const left = 2;
const across = 20;
const cell = { width: (width - 2 * left) / across, height: 6.2 } as const;

const place = (i: number): number => Math.floor(i / across) * cell.height;

/** A plug as a small sign: head above, shank with its point below. */
const plug = ([x, y]: XY): string =>
  path(
    [
      [x + 0.5, y + 0.6],
      [x + 4.3, y + 0.6],
      [x + 4.3, y + 1.9],
      [x + 3.4, y + 1.9],
      [x + 3.4, y + 4.6],
      [x + 2.9, y + 5.3],
      [x + 1.9, y + 5.3],
      [x + 1.4, y + 4.6],
      [x + 1.4, y + 1.9],
      [x + 0.5, y + 1.9],
    ],
    true,
  );

const cross = ([x, y]: XY): string =>
  path([
    [x + 0.5, y + 0.7],
    [x + 4.3, y + 5.3],
  ]) +
  path([
    [x + 4.3, y + 0.7],
    [x + 0.5, y + 5.3],
  ]);

/** A count of a hundred. What can happen is never drawn as never, and what can fail to happen never as always. */
const ofHundred = (probability: number): number =>
  probability < 0.001 ? 0 : probability > 0.999 ? 100 : Math.min(99, Math.max(1, Math.round(100 * probability)));

const countWords = (strips: number): string =>
  strips < 0.001
    ? stripsWord(strips)
    : strips < 0.0095
      ? "fewer than 1 in 100 strips"
      : `${ofHundred(strips)} of 100 strip`;
