import type { PortSection as Section } from "../../../mechanics/joint/section.ts";
import { sectionInWords } from "../drawingWords.ts";
import { path } from "../hatch.ts";
import { Lettering, LetteringBlock } from "../LetteringBlock.tsx";
import { type Box, rounded } from "../lettering.ts";
import { SectionFigure } from "./SectionFigure.tsx";
import { type DimensionLine, type SectionLayout, sectionLayout } from "./sectionLayout.ts";
import type { Bracket } from "./turnBrackets.ts";

/** A port with its closure in half section, turn by turn, with its lengths. One unit is one millimetre. */
export function PortSection({ section, caption }: { readonly section: Section; readonly caption: string }) {
  const layout = sectionLayout(section, caption);
  const { view, letter, cut, headTop, strip } = layout;
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={rounded(letter)} role="img">
      <title>{caption}</title>
      <desc>{sectionInWords(section)}</desc>
      <rect class="paper" {...placed(view)} />
      <Lettering labels={layout.caption} />
      <SectionFigure section={section} side={1} cut={cut} headTop={headTop} letter={letter} />
      <path
        class="axis line"
        d={path([
          [0, headTop - 0.3 * letter],
          [0, section.tip_mm + 1.2 * letter],
        ])}
      />
      {layout.lines.map((line) => (
        <Dimension line={line} letter={letter} />
      ))}
      {layout.brackets.map((bracket) => (
        <TurnsBracket bracket={bracket} section={section} letter={letter} side={1} />
      ))}
      <TitleStrip strip={strip} />
    </svg>
  );
}

/** A bracket over the turns of one state, with their count. */
export function TurnsBracket(props: {
  readonly bracket: Bracket;
  readonly section: Section;
  readonly letter: number;
  readonly side: 1 | -1;
}) {
  const { bracket, section, letter, side } = props;
  const { band, x, block } = bracket;
  const [a, b] = [band.from_mm + 0.12 * letter, band.to_mm - 0.12 * letter];
  const serif = x + side * 0.3 * letter;
  const ink = band.state === "gone" ? "ghost" : band.state === "beyond the plug" ? "edge line" : "heavy line";
  return (
    <g>
      <path
        class={ink}
        d={path([
          [serif, a],
          [x, a],
          [x, b],
          [serif, b],
        ])}
      />
      <LetteringBlock block={block} ground="steel" letter={letter} ends={section.tip_mm} />
    </g>
  );
}

export const viewBox = ({ x, y, width, height }: Box): string => [x, y, width, height].map(rounded).join(" ");
export const placed = ({ x, y, width, height }: Box) => ({
  x: rounded(x),
  y: rounded(y),
  width: rounded(width),
  height: rounded(height),
});

function Dimension({ line, letter }: { readonly line: DimensionLine; readonly letter: number }) {
  const { dimension, x, from, arrows, block, onPlug, touches } = line;
  const { from_mm: a, to_mm: b, drawn } = dimension;
  const side = from < x ? 1 : -1;
  const out = 1.1 * letter;
  const ends = arrows === "inside" ? [a, b] : [a - out, b + out];
  const extension = (y: number): string =>
    path([
      [from + side * 0.3 * letter, y],
      [x + side * 0.6 * letter, y],
    ]);
  return (
    <g>
      <path class="thin line" d={extension(a) + extension(b)} />
      <path class={`thin line${drawn === "true" ? "" : " unknown"}`} d={path(ends.map((y) => [x, y]))} />
      <Arrow x={x} y={a} up={arrows === "inside"} letter={letter} />
      <Arrow x={x} y={b} up={arrows === "outside"} letter={letter} />
      <LetteringBlock block={block} ground={onPlug ? "steel" : "paper"} letter={letter} ink={touches ? "stop" : ""} />
    </g>
  );
}

/** An arrowhead with its point at `y`, its body below (`up`) or above. */
export function Arrow(props: {
  readonly x: number;
  readonly y: number;
  readonly up: boolean;
  readonly letter: number;
}) {
  const { x, y, up, letter } = props;
  const back = y + (up ? 0.62 : -0.62) * letter;
  const head = [
    [x, y],
    [x - 0.17 * letter, back],
    [x + 0.17 * letter, back],
  ] as const;
  return <path class="ink bare" d={path(head, true)} />;
}

function TitleStrip({ strip: { box, divider, labels } }: { readonly strip: SectionLayout["strip"] }) {
  return (
    <g>
      <path
        class="edge line"
        d={path([
          [box.x, box.y],
          [box.x + box.width, box.y],
        ])}
      />
      <path
        class="thin line"
        d={path([
          [divider, box.y],
          [divider, box.y + box.height],
        ])}
      />
      <Lettering labels={labels} />
    </g>
  );
}
