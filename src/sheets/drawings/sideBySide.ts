import type { PortSection } from "../../mechanics/joint/section.ts";
import { type Block, blockOf } from "./block.ts";
import { closureText, lengthText } from "./drawingWords.ts";
import { ascent, type Box, type Label, lineHeight, wrapped } from "./lettering.ts";
import { headTopOf, threadHeight, wallDrawn } from "./sectionLayout.ts";
import { type Bracket, bracketsOf } from "./turnBrackets.ts";

/** One half of a pair: a section to the left (-1) or right (1) of the middle, in its own millimetres from its own axis. */
export type Half = {
  readonly section: PortSection;
  readonly side: 1 | -1;
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
  readonly cut: number;
  readonly headTop: number;
  readonly strip: Box;
  readonly halves: readonly [Half, Half];
};

export type Captioned = { readonly section: PortSection; readonly caption: string };

/** The sheet of a joint before and after: `before` cut open to the left, `after` to the right. */
export function pairLayout(before: Captioned, after: Captioned): PairLayout {
  const cut = 0.1 * Math.max(before.section.d_mm, after.section.d_mm);
  const widths = [before, after].map(({ section }) => halfWidth(section)) as [number, number];
  const letter = (2 * Math.max(...widths) + 2.4 * cut) / (lettersPerWidth - 1);
  const edge = 1.2 * cut + Math.max(...widths) + 0.5 * letter;
  const headTop = Math.min(headTopOf(before.section, letter), headTopOf(after.section, letter));
  const room = edge - 0.4 * cut - 0.5 * letter;
  const texts = [before, after].map(({ section, caption }) => ({
    caption: wrapped(caption, room, captionSize * letter, true),
    closure: [section.designation, ...wrapped(closureText(section.underHead_mm, section.seal), room, letter)],
  }));
  const rows = (of: "caption" | "closure"): number => Math.max(...texts.map((it) => it[of].length));
  const top = headTop - (0.9 + captionSize * lineHeight * rows("caption")) * letter;
  const bottom =
    Math.max(...[before, after].map(({ section }) => Math.max(section.behind_mm, section.tip_mm))) + 1.8 * letter;
  const strip = { x: -edge, y: bottom, width: 2 * edge, height: (lineHeight * rows("closure") + 0.9) * letter };
  const half = ({ section }: Captioned, side: 1 | -1, text: (typeof texts)[number]): Half => {
    const x = side === 1 ? 0.4 * cut : -edge + 0.5 * letter;
    return {
      section,
      side,
      axis: side * 1.2 * cut,
      brackets: halfBrackets(section, side, cut, letter),
      behind: behindOf(section, side, letter),
      caption: lettered(text.caption, x, top + 0.15 * letter, captionSize * letter, true),
      closure: lettered(text.closure, x, bottom + 0.45 * letter, letter, false),
    };
  };
  return {
    letter,
    view: { x: -edge, y: top, width: 2 * edge, height: bottom + strip.height - top },
    cut,
    headTop,
    strip,
    halves: [half(before, -1, texts[0] ?? nothing), half(after, 1, texts[1] ?? nothing)],
  };
}

const lettersPerWidth = 24;
const captionSize = 1.15;
const nothing = { caption: [], closure: [] };

const halfWidth = (section: PortSection): number =>
  Math.max(section.d_mm / 2 + wallDrawn(section), section.headRadius_mm, section.seal.outside_mm / 2);

function halfBrackets(section: PortSection, side: 1 | -1, cut: number, letter: number): readonly Bracket[] {
  const x = section.d_mm / 2 - threadHeight * section.P_mm - 0.45 * letter;
  return bracketsOf(section, side * x, letter, side, x - 0.5 * letter + cut);
}

function behindOf(section: PortSection, side: 1 | -1, letter: number): Half["behind"] {
  const { depth_mm, behind_mm } = section;
  const value = section.dimensions.find(({ id }) => id === "behind")?.value_mm ?? null;
  const x = side * (section.d_mm / 2 + wallDrawn(section) - 0.6 * letter);
  const lines = [
    { text: lengthText(value), size: 1.2 * letter, bold: true },
    { text: "behind", size: 0.95 * letter, bold: false },
  ];
  return {
    x,
    block: blockOf("behind", lines, x - side * 0.5 * letter, (depth_mm + behind_mm) / 2, side === 1 ? "end" : "start"),
  };
}

const lettered = (lines: readonly string[], x: number, top: number, size: number, bold: boolean): readonly Label[] =>
  lines.map((text, i) => ({ text, x, y: top + (ascent + lineHeight * i) * size, size, anchor: "start", bold }));
