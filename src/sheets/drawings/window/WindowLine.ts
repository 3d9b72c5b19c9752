import type { HoleTurn } from "../../../mechanics/joint/port.ts";
import type { PortSection } from "../../../mechanics/joint/section.ts";
import { closedBy, dimensionName, lengthText, notesOf, stateWord } from "../drawingWords.ts";
import { inTenths, inWhole } from "../lettering.ts";
import { torqueAxis } from "./torqueAxis.ts";
import { torquesOf } from "./windowLayout.ts";
import { edgeFigures, type MarkKind, windowMarks } from "./windowMarks.ts";
import type { WindowProps } from "./windowProps.ts";

/**
 * The torque window in a terminal's characters, no line wider than `width` columns.
 * Dots may leak, strokes may strip, crosses do both; the brackets face each other round an open window.
 */
export function windowLines(props: WindowProps, width = 72): readonly string[] {
  const { limit_Nm, need_Nm, floor_Nm, advice_Nm, wrench } = props;
  const last = width - 8;
  const axis = torqueAxis(torquesOf(props), 0, last, 6);
  const column = (torque_Nm: number): number => Math.round(axis.at(torque_Nm));
  const low_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  const empty = low_Nm > limit_Nm;
  const [low, limit] = [column(low_Nm), column(limit_Nm)];
  const bar = Array.from({ length: last + 1 }, (_, x) => zoneSign(x < low, x > limit));
  const scale = Array.from({ length: last + 1 }, (_, x) => (axis.ticks_Nm.map(column).includes(x) ? "┬" : "─"));
  const numbers = axis.ticks_Nm.reduce((line, tick) => written(line, inWhole(tick), column(tick), width), "");
  const marks = windowMarks(props, axis, { low_Nm, lowLettered: false, limitLettered: false }, 1, width)
    .map(({ id, x, lines }) => ({ x: Math.round(x), text: `${signs[id]} ${lines.map(({ text }) => text).join(", ")}` }))
    .toSorted((a, b) => b.x - a.x);
  bar[low] = "┣";
  bar[limit] = low === limit && !empty ? "╋" : "┫";
  if (!empty && advice_Nm !== null && bar[column(advice_Nm)] === " ") bar[column(advice_Nm)] = "┃";
  const { low: lowText, limit: limitText } = edgeFigures(low_Nm, limit_Nm);
  const head = empty
    ? [`empty: ${low_Nm === need_Nm ? "need" : "floor"} ${lowText} is over careful limit ${limitText}`]
    : advice_Nm === null
      ? []
      : [written("", `┏━━ ${inWhole(advice_Nm)} N·m`, column(advice_Nm), width)];
  return [
    props.caption,
    ...head,
    bar.join(""),
    scale.join(""),
    fitted(`${numbers.padEnd(last + 1)} N·m`, width),
    ...marks.map(({ x, text }, i) =>
      markLine(
        x,
        text,
        marks.slice(i + 1).map((it) => it.x),
        width,
      ),
    ),
    ...(wrench ? wrenchLines(wrench, column, axis.to_Nm, width) : []),
  ].map((line) => fitted(line.trimEnd(), width));
}

/**
 * The turns of a port from the face (left) inward in a terminal's characters, with seal and plug over them, two columns
 * a turn where `width` allows, else one.
 */
export function portLines(section: PortSection, width = 72): readonly string[] {
  const { P_mm, seal, seat_mm, depth_mm, tip_mm, reach_mm, behind_mm, behindKnown, bands } = section;
  const name = 8;
  const perTurn = [2, 1].find((it) => (it * (seat_mm + behind_mm)) / P_mm + name + 3 <= width) ?? 1;
  const columns = (length_mm: number): number => Math.max(0, Math.round((perTurn * length_mm) / P_mm));
  const seatColumns = seat_mm > 0 ? Math.max(1, columns(seat_mm)) : 0;
  const turns = Array.from({ length: columns(depth_mm) }, (_, i) => turnSign(bands, ((i + 0.5) * P_mm) / perTurn));
  const room = " ".repeat(columns(behind_mm - depth_mm));
  const row = (word: string, picture: string): string => `${word.padEnd(name)}${picture}`;
  const counts = bands.map(
    ({ state, from_mm, to_mm }) => `${inTenths((to_mm - from_mm) / P_mm)} ${stateWord(state, section)}`,
  );
  const lengths = section.dimensions.map(
    ({ id, value_mm }) => `${dimensionName(id, seal.kind)} ${lengthText(value_mm)}`,
  );
  return [
    `${section.designation}, ${closedBy(section)}`,
    row("plug", `█${"═".repeat(seatColumns + columns(reach_mm))}${"─".repeat(columns(tip_mm - reach_mm))}╸`),
    ...(seal.thickness_mm > 0 ? [row("seal", ` ${"▓".repeat(seatColumns)}`)] : []),
    row("turns", ` ${" ".repeat(seatColumns)}${turns.join("")}${room}${behindKnown ? "║" : "?"}`),
    `turns: ${counts.join(" · ")}`,
    `${lengths.join(" · ")} mm`,
    ...notesOf(section),
  ].map((line) => fitted(line, width));
}

const signs: { readonly [kind in MarkKind]: string } = {
  book: "▲",
  third: "◇",
  median: "◐",
  floor: "┴",
  need: "┣",
  limit: "┫",
};

const zoneSign = (leaks: boolean, strips: boolean): string => (leaks ? (strips ? "╳" : "·") : strips ? "╱" : " ");

function turnSign(bands: readonly HoleTurn[], y_mm: number): string {
  const state = bands.find(({ from_mm, to_mm }) => y_mm >= from_mm && y_mm <= to_mm)?.state ?? "gone";
  switch (state) {
    case "sound":
      return "█";
    case "worn":
      return "▄";
    case "gone":
      return "╌";
    case "beyond the plug":
      return "░";
    default:
      return state satisfies never;
  }
}

/** Text written into a line at a column, moved left where it would run past `width`. */
function written(line: string, text: string, at: number, width: number): string {
  const start = Math.max(0, Math.min(at, width - [...text].length));
  return `${line.slice(0, start).padEnd(start)}${text}`;
}

/** A mark lettered to the right of its column, or to the left of it where it does not fit, over the leaders of later ones. */
function markLine(x: number, text: string, later: readonly number[], width: number): string {
  const [sign = "", ...rest] = [...text];
  const right = x + rest.length + 1 <= width;
  const tail = rest.join("").trim();
  const start = right ? x : Math.max(0, x - tail.length - 1);
  const own = right ? text : `${fitted(tail, x - 1)} ${sign}`;
  const before = Array.from({ length: start }, (_, i) => (later.includes(i) ? "│" : " ")).join("");
  return before + own;
}

function wrenchLines(
  { name, least_Nm, most_Nm }: NonNullable<WindowProps["wrench"]>,
  column: (torque_Nm: number) => number,
  to_Nm: number,
  width: number,
): readonly string[] {
  const [from, to] = [column(least_Nm), column(most_Nm)];
  const line = `${" ".repeat(from)}└${"─".repeat(Math.max(0, to - from - 1))}${most_Nm > to_Nm ? "▶" : "┘"}`;
  return [line, written("", `${name}: ${inWhole(least_Nm)} to ${inWhole(most_Nm)} N·m`, from, width)];
}

/** A line cut with an ellipsis where it is wider than `width` columns. */
const fitted = (line: string, width: number): string =>
  [...line].length <= width ? line : `${[...line].slice(0, Math.max(0, width - 1)).join("")}…`;
