import type { PortSection, SectionDimension } from "../../../mechanics/joint/section.ts";
import { boreRadius_mm } from "../../../mechanics/joint/sectionOutline.ts";
import { type Block, blockHeight, blockOf, shifted } from "../block.ts";
import { closedBy, dimensionName, lengthText, notesOf } from "../drawingWords.ts";
import { ascent, type Box, type Label, lineHeight, shortened, textWidth, wrapped } from "../lettering.ts";
import { pushedApart } from "../pushedApart.ts";
import { type Bracket, bracketsOf, letterWithin } from "./turnBrackets.ts";

/** A dimension with its line at `x` between two depths; its lettering stands at `block`. */
export type DimensionLine = {
  readonly dimension: SectionDimension;
  readonly x: number;
  /** Where the extension lines start. */
  readonly from: number;
  readonly arrows: "inside" | "outside";
  /** The lettering stands on the plug. */
  readonly onPlug: boolean;
  /** The plug would touch what stands behind. */
  readonly touches: boolean;
  readonly block: Block;
};

/** Where everything of a section's sheet lies, in millimetres of the section. */
export type SectionLayout = {
  /** Size of the plain lettering. */
  readonly letter: number;
  readonly view: Box;
  /** How far to the left of its axis the plug is shown, and where the head is broken off. */
  readonly cut: number;
  readonly headTop: number;
  readonly caption: readonly Label[];
  readonly brackets: readonly Bracket[];
  readonly lines: readonly DimensionLine[];
  readonly strip: { readonly box: Box; readonly divider: number; readonly labels: readonly Label[] };
};

/** The head is broken off a little above its seat: nobody measured how high it is. */
export const headTopOf = ({ seat_mm, d_mm }: PortSection, letter: number): number =>
  -seat_mm - Math.max(0.24 * d_mm, 2.9 * letter);

/** How far off the axis the brackets over the turns stand: clear of the thread where the hole is narrowest. */
export const besideTurns = (section: PortSection, letter: number): number =>
  boreRadius_mm(section, section.depth_mm) - threadHeight(section) * section.P_mm - 0.45 * letter;

/** Height of the thread over its pitch, a little more than of the basic profile, to keep clear of it; taper threads are higher. */
const threadHeight = ({ taper }: PortSection): number => (taper ? 0.8 : 0.65);

/** Least room for the reach on the plug's left, in letters. */
const reachRoom = 4.2;

/** The plain letter is this part of the sheet's width: 15 px on a telephone 360 px wide. */
const lettersPerWidth = 24;

/** The sheet of one section: the plug's axis upright, its head on top, the half to the right of the axis cut open. */
export function sectionLayout(section: PortSection, caption: string): SectionLayout {
  const cut = 0.4 * section.d_mm;
  const letter = letterOf(section, cut);
  const { lineX, right } = columns(section, letter);
  const view = { x: -cut - 0.5 * letter, width: cut + right + 0.5 * letter };
  const bracketX = besideTurns(section, letter);
  const headTop = headTopOf(section, letter);
  const lines = linesOf(section, cut, lineX, letter);
  const onPlug = lines.filter(({ x }) => x < bracketX).map(({ block: { box } }) => box.x + box.width + 0.2 * letter);
  const room = bracketX - 0.5 * letter - Math.max(reachRoom * letter - cut, ...onPlug);
  const brackets = bracketsOf(section, bracketX, letterWithin(section, letter, room), 1, room);
  const captionLines = [
    ...wrapped(caption, view.width - letter, 1.15 * letter, true).map((text) => ({ text, bold: true })),
    ...notesOf(section)
      .flatMap((note) => wrapped(note, view.width - letter, 1.15 * letter))
      .map((text) => ({ text, bold: false })),
  ];
  const top = headTop - (0.9 + 1.15 * lineHeight * captionLines.length) * letter;
  const lowest = [...brackets, ...lines].map(({ block }) => block.box.y + block.box.height);
  const bottom = Math.max(section.behind_mm + 1.1 * letter, section.tip_mm + letter, ...lowest) + 0.9 * letter;
  const strip = { x: view.x, y: bottom, width: view.width, height: 2.3 * letter };
  return {
    letter,
    view: { ...view, y: top, height: bottom + strip.height - top },
    cut,
    headTop,
    caption: captionLines.map(({ text, bold }, i) => ({
      text,
      bold,
      x: view.x + 0.5 * letter,
      y: top + (0.15 + ascent * 1.15 + 1.15 * lineHeight * i) * letter,
      size: 1.15 * letter,
      anchor: "start",
    })),
    brackets,
    lines,
    strip: titleStrip(section, strip, letter),
  };
}

/** The lettering fixes the columns and the columns the width that fixes the lettering, so the two are found together. */
function letterOf(section: PortSection, cut: number): number {
  let letter = section.d_mm / 16;
  for (let i = 0; i < 30; i++) letter = (cut + columns(section, letter).right + 0.5 * letter) / lettersPerWidth;
  return letter;
}

function columns(section: PortSection, letter: number) {
  const lineX = halfWidth(section) + 2.4 * letter;
  return { lineX, right: lineX + 2.2 * letter };
}

/** How far the drawing of a section goes to one side of its axis. */
export const halfWidth = (section: PortSection): number =>
  Math.max(
    section.d_mm / 2 + wallDrawn(section),
    section.headRadius_mm,
    ...section.sealParts.flatMap(({ outline }) => outline.map(({ x_mm }) => x_mm)),
  );

/** Thickness of wall that is drawn; a thicker one is broken off. */
export const wallDrawn = ({ wall_mm, d_mm }: PortSection): number => Math.min(wall_mm, 0.6 * d_mm);

/** The dimensions of both columns, their lettering pushed apart where they are short. */
function linesOf(section: PortSection, cut: number, lineX: number, letter: number): readonly DimensionLine[] {
  const lines = section.dimensions.map((dimension) => lineOf(section, dimension, cut, lineX, letter));
  return [...new Set(lines.map(({ x }) => x))].flatMap((x) => {
    const column = lines.filter((line) => line.x === x);
    const wishes = column.map(({ block: { box } }) => ({ centre: box.y + box.height / 2, size: box.height }));
    const centres = pushedApart(wishes, -Infinity, Infinity, 0.15 * letter);
    return column.map((line, i) => ({
      ...line,
      block: shifted(line.block, (centres[i] ?? 0) - (wishes[i]?.centre ?? 0)),
    }));
  });
}

function lineOf(
  section: PortSection,
  dimension: SectionDimension,
  cut: number,
  lineX: number,
  letter: number,
): DimensionLine {
  const { id, from_mm, to_mm, value_mm } = dimension;
  const touches = id === "clear" && value_mm !== null && value_mm <= 0;
  const lines = [
    { text: touches ? "touches" : dimensionName(id, section.seal.kind), size: 0.95 * letter, bold: touches },
    { text: lengthText(touches ? -value_mm : value_mm), size: 1.2 * letter, bold: true },
  ];
  const height = blockHeight(lines);
  const inside = to_mm - from_mm >= height + 1.6 * letter;
  const outside = id === "seal" ? from_mm - 0.9 * letter - height / 2 : to_mm + 0.9 * letter + height / 2;
  const left = id === "reach" || id === "clear";
  const x = left ? 2.1 * letter - cut : lineX;
  return {
    dimension,
    x,
    from: left ? 3.7 * letter - cut : section.d_mm / 2 + wallDrawn(section),
    onPlug: id === "reach" && inside,
    touches,
    arrows: inside ? "inside" : "outside",
    block: blockOf(id, lines, x, inside ? (from_mm + to_mm) / 2 : outside, "middle"),
  };
}

/** The strip under the drawing: the thread, and what closes it. */
function titleStrip(section: PortSection, box: Box, letter: number): SectionLayout["strip"] {
  const size = 1.3 * letter;
  const divider = box.x + 1.2 * letter + textWidth(section.designation, size, true);
  const baseline = (of: number): number => box.y + box.height / 2 + 0.36 * of;
  const closure = closedBy(section);
  const room = box.x + box.width - divider - 1.2 * letter;
  const fitted = Math.min(letter, (letter * room) / textWidth(closure, letter));
  const closureSize = Math.max(0.8 * letter, fitted);
  return {
    box,
    divider,
    labels: [
      { text: section.designation, x: box.x + 0.6 * letter, y: baseline(size), size, anchor: "start", bold: true },
      {
        text: shortened(closure, room, closureSize),
        x: divider + 0.6 * letter,
        y: baseline(closureSize),
        size: closureSize,
        anchor: "start",
        bold: false,
      },
    ],
  };
}
