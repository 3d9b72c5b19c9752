import type { PortSection } from "../../../mechanics/joint/section.ts";
import { type Block, blockHeight, blockOf } from "../block.ts";
import { closedBy, lengthText } from "../drawingWords.ts";
import { ascent, type Box, type Label, lineHeight, wrapped } from "../lettering.ts";
import { besideTurns, halfWidth, headTopOf, wallDrawn } from "./sectionLayout.ts";
import { type Bracket, bracketsOf } from "./turnBrackets.ts";

/** One half of a pair: a section to the left (-1) or right (1) of the middle, in its own millimetres from its own axis. */
export type Half = {
  readonly section: PortSection;
  readonly side: 1 | -1;
  /** How far across its axis the plug is shown. */
  readonly cut: number;
  /** Where the axis stands on the sheet. */
  readonly axis: number;
  readonly brackets: readonly Bracket[];
  /** The room behind, with its line. */
  readonly behind: { readonly x: number; readonly block: Block };
  readonly caption: readonly Label[];
  readonly closure: readonly Label[];
};

/** Two sections back to back on one scale, their case faces on one line. */
export type PairLayout = {
  readonly letter: number;
  readonly view: Box;
  readonly headTop: number;
  readonly strip: Box;
  readonly halves: readonly [Half, Half];
};

export type Captioned = { readonly section: PortSection; readonly caption: string };

/** The sheet of a joint before and after: `before` cut open to the left, `after` to the right. */
export function pairLayout(before: Captioned, after: Captioned): PairLayout {
  const { letter, cut, edge } = columns(before.section, after.section);
  const headTop = Math.min(headTopOf(before.section, letter), headTopOf(after.section, letter));
  const room = edge - 0.4 * cut - 0.5 * letter;
  const texts = [before, after].map(({ section, caption }) => ({
    caption: wrapped(caption, room, captionSize * letter, true),
    closure: [section.designation, ...wrapped(closedBy(section), room, letter)],
  }));
  const rows = (of: "caption" | "closure"): number => Math.max(...texts.map((it) => it[of].length));
  const top = headTop - (0.9 + captionSize * lineHeight * rows("caption")) * letter;
  const figures = ([-1, 1] as const).map((side, i) => {
    const { section } = i === 0 ? before : after;
    const brackets = halfBrackets(section, side, letter);
    return { brackets, behind: behindOf(section, side, brackets, letter) };
  }) as [Figures, Figures];
  const lowest = [before, after].flatMap(({ section }, i) => [
    section.behind_mm + letter,
    section.tip_mm + letter,
    ...[...(figures[i]?.brackets ?? []), ...(figures[i] ? [figures[i].behind] : [])].map(
      ({ block: { box } }) => box.y + box.height,
    ),
  ]);
  const bottom = Math.max(...lowest) + 0.8 * letter;
  const strip = { x: -edge, y: bottom, width: 2 * edge, height: (lineHeight * rows("closure") + 0.9) * letter };
  const half = ({ section }: Captioned, side: 1 | -1, figure: Figures, text: (typeof texts)[number]): Half => {
    const x = side === 1 ? 0.4 * cut : -edge + 0.5 * letter;
    return {
      section,
      side,
      cut: Math.min(cut, 0.42 * section.d_mm),
      axis: side * 1.2 * cut,
      ...figure,
      caption: lettered(text.caption, x, top + 0.15 * letter, captionSize * letter, true),
      closure: lettered(text.closure, x, bottom + 0.45 * letter, letter, false),
    };
  };
  return {
    letter,
    view: { x: -edge, y: top, width: 2 * edge, height: bottom + strip.height - top },
    headTop,
    strip,
    halves: [half(before, -1, figures[0], texts[0] ?? nothing), half(after, 1, figures[1], texts[1] ?? nothing)],
  };
}

const lettersPerWidth = 24;
const captionSize = 1.15;
type Figures = Pick<Half, "brackets" | "behind">;
const nothing = { caption: [], closure: [] };

/**
 * The size of the lettering, and the room each half has across its axis: enough for what is lettered there. They depend
 * on each other, so they are found together.
 */
function columns(before: PortSection, after: PortSection) {
  const wide = Math.max(halfWidth(before), halfWidth(after));
  const least = 0.1 * Math.max(before.d_mm, after.d_mm);
  let [letter, cut] = [wide / 10, least];
  for (let i = 0; i < 30; i++) {
    letter = (2 * wide + 2.4 * cut) / (lettersPerWidth - 1);
    cut = Math.max(least, 0.3 * letter + across(before, letter), 0.3 * letter + across(after, letter));
  }
  return { letter, cut, edge: 1.2 * cut + wide + 0.5 * letter };
}

/** How far the lettering of the turns goes across the axis. */
const across = (section: PortSection, letter: number): number =>
  Math.max(0, ...halfBrackets(section, 1, letter).map(({ block: { box } }) => -box.x));

function halfBrackets(section: PortSection, side: 1 | -1, letter: number): readonly Bracket[] {
  // Nothing is counted where no plug bites, and lettering would stand on rubber.
  if (section.bung) return [];
  const x = besideTurns(section, letter);
  return bracketsOf(section, side * x, letter, side, x - 0.5 * letter + 0.1 * section.d_mm);
}

/** The room behind, lettered beside its line; under what stands behind, or under the turns, where it is too short. */
function behindOf(section: PortSection, side: 1 | -1, brackets: readonly Bracket[], letter: number): Half["behind"] {
  const { depth_mm, behind_mm } = section;
  const value = section.dimensions.find(({ id }) => id === "behind")?.value_mm ?? null;
  const x = side * (section.d_mm / 2 + wallDrawn(section) - 0.6 * letter);
  const lines = [
    { text: lengthText(value), size: 1.2 * letter, bold: true },
    { text: "behind", size: 0.95 * letter, bold: false },
  ];
  const height = blockHeight(lines);
  const turnsEnd = Math.max(0, ...brackets.map(({ block: { box } }) => box.y + box.height));
  const within = Math.max((depth_mm + behind_mm) / 2, turnsEnd + 0.2 * letter + height / 2);
  const fits = within - height / 2 >= depth_mm && within + height / 2 <= behind_mm;
  const below = Math.max(behind_mm + letter, turnsEnd + 0.2 * letter) + height / 2;
  const anchor = side === 1 ? "end" : "start";
  return { x, block: blockOf("behind", lines, x - side * 0.5 * letter, fits ? within : below, anchor) };
}

const lettered = (lines: readonly string[], x: number, top: number, size: number, bold: boolean): readonly Label[] =>
  lines.map((text, i) => ({ text, x, y: top + (ascent + lineHeight * i) * size, size, anchor: "start", bold }));
