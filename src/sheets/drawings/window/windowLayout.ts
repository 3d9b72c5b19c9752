import { ascent, type Box, inWhole, type Label, lineHeight, shortened, textWidth, wrapped } from "../lettering.ts";
import { type PlacedMark, placedInRows } from "./markRows.ts";
import { type TorqueAxis, torqueAxis } from "./torqueAxis.ts";
import { crossedEdges, type Edge, facingEdges } from "./windowEdges.ts";
import { edgeFigures, type MarkKind, windowMarks } from "./windowMarks.ts";
import type { WindowProps } from "./windowProps.ts";

export type WindowLayout = {
  readonly letter: number;
  readonly view: Box;
  readonly axis: TorqueAxis;
  readonly empty: boolean;
  /** The greater of need and floor, where the window begins. */
  readonly low_Nm: number;
  readonly caption: readonly Label[];
  readonly flag: {
    readonly box: Box;
    readonly x: number;
    readonly side: 1 | -1;
    readonly number: Label;
    readonly unit: number;
  } | null;
  /** The word where an open window has its flag. */
  readonly emptySign: { readonly box: Box; readonly label: Label } | null;
  readonly low: Edge;
  readonly limit: Edge;
  /** Where the lines of the edges begin. */
  readonly edgesFrom: number;
  readonly bar: Box;
  readonly words: readonly Label[];
  readonly ticks: readonly Label[];
  readonly marks: readonly PlacedMark<MarkKind>[];
  readonly bracket: {
    readonly from: number;
    readonly to: number;
    readonly open: boolean;
    readonly y: number;
    readonly label: Label;
  } | null;
};

/** Plain lettering is 4 on a sheet 100 wide: 14 px on a telephone 360 px wide. */
const width = 100;
const letter = 4;
const margin = 0.5 * letter;

/** Where everything of a window bar lies. Its axis shows `alsoShown_Nm` too, so that bars compare. */
export function windowLayout(props: WindowProps, alsoShown_Nm: readonly number[] = []): WindowLayout {
  const { need_Nm, limit_Nm, floor_Nm, advice_Nm } = props;
  const axis = torqueAxis([...torquesOf(props), ...alsoShown_Nm], 1.4 * letter, width - 3.1 * letter, 3.2 * letter);
  const low_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  const empty = low_Nm > limit_Nm;
  const caption = captionOf(props.caption);
  const captionBottom = caption.length === 0 ? 0 : (0.5 + captionSize * lineHeight * caption.length) * letter;
  const signBottom = captionBottom + (empty ? emptyHeight + 0.5 : advice_Nm === null ? 0.2 : flagHeight + 0.5) * letter;
  const flag = empty || advice_Nm === null ? null : flagOf(advice_Nm, axis, captionBottom + 0.3 * letter);
  const rowsBottom = signBottom + edgeRow;
  const barTop = rowsBottom + (empty ? 2.2 : 0.7) * letter;
  const bar = { x: axis.at(0), y: barTop, width: axis.at(axis.to_Nm) - axis.at(0), height: barHeight };
  const figures = edgeFigures(low_Nm, limit_Nm);
  const lowName = `${low_Nm === need_Nm ? "need" : "floor"} ${figures.low}`;
  const limitName = `careful limit ${figures.limit}`;
  const field = { left: margin, right: width - margin, baseline: rowsBottom - 0.4 * letter, letter };
  const { low, limit } = (empty ? crossedEdges : facingEdges)(
    lowName,
    axis.at(low_Nm),
    limitName,
    axis.at(limit_Nm),
    field,
  );
  const ticks = ticksOf(axis, bar.y + bar.height + 0.45 * letter);
  const marksTop = bar.y + bar.height + (0.6 + 1.5 * lineHeight) * letter;
  const marks = placedInRows(
    windowMarks(
      props,
      axis,
      { low_Nm, lowLettered: low.label !== null, limitLettered: limit.label !== null },
      letter,
      0.55 * width,
    ),
    { left: margin, right: width - margin, top: marksTop, row: markRow },
    letter,
  );
  const marksBottom = Math.max(marksTop, ...marks.map(({ box }) => box.y + box.height));
  const bracket = props.wrench && bracketOf(props.wrench, axis, marksBottom + 0.6 * letter);
  const bottom = bracket ? bracket.y + (0.5 + lineHeight + 0.4) * letter : marksBottom + 0.4 * letter;
  return {
    letter,
    view: { x: 0, y: 0, width, height: bottom },
    axis,
    empty,
    low_Nm,
    caption,
    flag,
    emptySign: empty ? emptySignOf(low, limit, captionBottom + 0.3 * letter) : null,
    low,
    limit,
    edgesFrom: rowsBottom,
    bar,
    words: wordsOf(props, low_Nm, axis, bar),
    ticks,
    marks,
    bracket,
  };
}

/** Every torque a bar must show. */
export const torquesOf = (props: WindowProps): readonly number[] => [
  props.need_Nm,
  props.limit_Nm,
  props.cautiousRule_Nm,
  props.medianStrip_Nm,
  props.floor_Nm ?? 0,
  props.advice_Nm ?? 0,
  ...props.bookFigures.map(({ torque_Nm }) => torque_Nm),
];

const captionSize = 1.15;
const flagHeight = 3.7;
const emptyHeight = 2.7;
const edgeRow = 1.5 * letter;
const barHeight = 3.4 * letter;
const markRow = 1.35 * letter;

const captionOf = (caption: string): readonly Label[] =>
  wrapped(caption, width - 2 * margin, captionSize * letter, true).map((text, i) => ({
    text,
    x: margin,
    y: (0.15 + ascent * captionSize + i * captionSize * lineHeight) * letter,
    size: captionSize * letter,
    anchor: "start",
    bold: true,
  }));

/** The advice on its pole: the number large, flying to the right unless there is no room. */
function flagOf(advice_Nm: number, axis: TorqueAxis, top: number): WindowLayout["flag"] {
  const [text, x] = [inWhole(advice_Nm), axis.at(advice_Nm)];
  const wish = textWidth(text, 3.3 * letter, true) + textWidth("N·m", 1.3 * letter, true) + 2.6 * letter;
  const [toLeft, toRight] = [x - margin, width - margin - x];
  const side = wish <= toRight || toRight >= toLeft ? 1 : -1;
  const fit = Math.min(1, (side === 1 ? toRight : toLeft) / wish);
  const [size, unit, wide] = [3.3 * letter * fit, 1.3 * letter * fit, wish * fit];
  const left = side === 1 ? x : x - wide;
  const box = { x: left, y: top, width: wide, height: flagHeight * letter };
  const start = left + (side === 1 ? 0.7 : 1.5) * letter * fit;
  const number: Label = { text, x: start, y: top + box.height / 2 + 0.36 * size, size, anchor: "start", bold: true };
  return { box, x, side, number, unit };
}

function emptySignOf(low: Edge, limit: Edge, top: number): WindowLayout["emptySign"] {
  const size = 2 * letter;
  const wide = textWidth("empty", size, true) + 2 * letter;
  const x = Math.min(Math.max((low.head + limit.head - wide) / 2, margin), width - margin - wide);
  const box = { x, y: top, width: wide, height: emptyHeight * letter };
  return {
    box,
    label: { text: "empty", x: x + wide / 2, y: top + box.height / 2 + 0.3 * size, size, anchor: "middle", bold: true },
  };
}

/** What each part of the bar means, where its word fits between the lines that cross the bar. */
function wordsOf(props: WindowProps, low_Nm: number, axis: TorqueAxis, bar: Box): readonly Label[] {
  const lines = torquesOf(props).map(axis.at);
  const word = (text: string, from_Nm: number, to_Nm: number, bold: boolean): readonly Label[] => {
    const [left, right] = [axis.at(from_Nm), axis.at(to_Nm)];
    const stops = [left, ...lines.filter((x) => x > left && x < right), right].toSorted((a, b) => a - b);
    const gaps = stops.slice(1).map((stop, i) => ({ from: stops[i] ?? left, to: stop }));
    const widest = gaps.reduce((best, gap) => (gap.to - gap.from > best.to - best.from ? gap : best), {
      from: left,
      to: left,
    });
    if (textWidth(text, letter, bold) + 0.8 * letter > widest.to - widest.from) return [];
    const x = (widest.from + widest.to) / 2;
    return [{ text, x, y: bar.y + bar.height / 2 + 0.36 * letter, size: letter, anchor: "middle", bold }];
  };
  const { limit_Nm } = props;
  return [
    ...word("may leak", 0, Math.min(low_Nm, limit_Nm), false),
    ...(low_Nm < limit_Nm ? word("window", low_Nm, limit_Nm, true) : []),
    ...word("may strip", Math.max(low_Nm, limit_Nm), axis.to_Nm, false),
  ];
}

function ticksOf(axis: TorqueAxis, top: number): readonly Label[] {
  const y = top + ascent * letter;
  const numbers = axis.ticks_Nm.map(
    (tick): Label => ({ text: inWhole(tick), x: axis.at(tick), y, size: letter, anchor: "middle", bold: false }),
  );
  return [
    ...numbers,
    { text: "N·m", x: width - margin, y: top - 0.8 * letter, size: letter, anchor: "end", bold: false },
  ];
}

/** The range a wrench may be used in; open to the right where it goes on beyond the axis. */
function bracketOf(wrench: NonNullable<WindowProps["wrench"]>, axis: TorqueAxis, y: number): WindowLayout["bracket"] {
  const text = shortened(
    `${wrench.name}: ${inWhole(wrench.least_Nm)} to ${inWhole(wrench.most_Nm)} N·m`,
    width - 2 * margin,
    letter,
  );
  const [from, to] = [axis.at(wrench.least_Nm), axis.at(wrench.most_Nm)];
  const x = Math.min(from, width - margin - textWidth(text, letter));
  return {
    from,
    to,
    open: wrench.most_Nm > axis.to_Nm,
    y,
    label: {
      text,
      x: Math.max(margin, x),
      y: y + (0.45 + ascent) * letter,
      size: letter,
      anchor: "start",
      bold: false,
    },
  };
}
