import type { HoleTurn } from "../../../mechanics/joint/port.ts";
import type { PortSection } from "../../../mechanics/joint/section.ts";
import { type Block, blockHeight, blockOf } from "../block.ts";
import { stateWord } from "../drawingWords.ts";
import { ascent, inTenths, type Label, lineHeight, textWidth } from "../lettering.ts";
import { pushedApart } from "../pushedApart.ts";

/** The bracket over the turns of one state; its lettering stands at `block`. */
export type Bracket = { readonly band: HoleTurn; readonly x: number; readonly block: Block };

/**
 * The brackets over the states, at `x` beside the turns, lettered on the side of the axis.
 * Blocks are pushed apart where bands are short, and set as columns where `room` is too narrow for rows.
 */
export function bracketsOf(
  section: PortSection,
  x: number,
  letter: number,
  side: 1 | -1,
  room: number,
): readonly Bracket[] {
  const bands = section.bands.filter(
    (band) => carries(band) || band.to_mm - band.from_mm >= leastLettered * section.P_mm,
  );
  const edge = x - side * 0.5 * letter;
  const blockAt = (band: HoleTurn, centre: number): Block => {
    const row = rowOf(band, section, letter, edge, centre, side);
    return row.box.width <= room ? row : columnOf(band, section, letter, edge, centre, side, room);
  };
  const wishes = bands.map((band) => {
    const centre = (band.from_mm + band.to_mm) / 2;
    return { centre, size: blockAt(band, centre).box.height };
  });
  const centres = pushedApart(wishes, 0.1 * letter, section.depth_mm - 0.1 * letter, 0.2 * letter);
  return bands.map((band, i) => ({ band, x, block: blockAt(band, centres[i] ?? 0) }));
}

/** The size of letter, at most `letter`, in which the words of every state of the section go into `room`. */
export function letterWithin(section: PortSection, letter: number, room: number): number {
  const widths = section.bands.flatMap((band) =>
    wordsOf(band, section).map((word) => textWidth(word, letter, carries(band))),
  );
  return letter * Math.min(1, room / Math.max(room, ...widths));
}

/** Bands of fewer turns that carry nothing are drawn, not lettered. */
const leastLettered = 0.5;

const carries = ({ state }: HoleTurn): boolean => state === "sound" || state === "worn";
function wordsOf(band: HoleTurn, section: PortSection): readonly string[] {
  const word = stateWord(band.state, section);
  return carries(band) ? ["turns", word.replace("worn ", "")] : [word];
}
const turnsOf = ({ from_mm, to_mm }: HoleTurn, P_mm: number): string => inTenths((to_mm - from_mm) / P_mm);
const nameOf = ({ state, from_mm }: HoleTurn): string => `${state} from ${inTenths(from_mm)}`;

/** The count with its words beside it: "2.2" large with "turns carry" in two lines, or "4.5 gone". */
function rowOf(
  band: HoleTurn,
  section: PortSection,
  letter: number,
  edge: number,
  centre: number,
  side: 1 | -1,
): Block {
  const main = carries(band);
  const [size, words] = [(main ? 2 : 1.25) * letter, wordsOf(band, section)];
  const count = turnsOf(band, section.P_mm);
  const wordWidth = Math.max(...words.map((word) => textWidth(word, letter, main)));
  const width = textWidth(count, size, main) + 0.35 * letter + wordWidth;
  const left = side === 1 ? edge - width : edge;
  const middle = blockHeight(words.map(() => ({ size: letter }))) / 2;
  const wordX = left + width - wordWidth;
  return {
    id: nameOf(band),
    labels: [
      { text: count, x: wordX - 0.35 * letter, y: centre + 0.36 * size, size, anchor: "end", bold: main },
      ...words.map(
        (text, i): Label => ({
          text,
          x: wordX,
          y: main ? centre - middle + (i * lineHeight + ascent) * letter : centre + 0.36 * size,
          size: letter,
          anchor: "start",
          bold: main,
        }),
      ),
    ],
    box: { x: left, y: centre - (lineHeight * size) / 2, width, height: lineHeight * size },
  };
}

/** The same under one another, the count no wider than the room. */
function columnOf(
  band: HoleTurn,
  section: PortSection,
  letter: number,
  edge: number,
  centre: number,
  side: 1 | -1,
  room: number,
): Block {
  const bold = carries(band);
  const words = wordsOf(band, section);
  const count = turnsOf(band, section.P_mm);
  const wish = (bold ? 2 : 1.25) * letter;
  const size = wish * Math.min(1, room / textWidth(count, wish, bold));
  const lines = [{ text: count, size, bold }, ...words.map((text) => ({ text, size: letter, bold }))];
  return blockOf(nameOf(band), lines, edge, centre, side === 1 ? "end" : "start");
}
