import { ascent, type Box, type Label, lineHeight, overlap, shortened, textWidth } from "../lettering.ts";

/** Something to be lettered under (or over) a place on an axis. */
export type Mark<Id extends string> = {
  readonly id: Id;
  readonly x: number;
  readonly lines: readonly { readonly text: string; readonly size: number; readonly bold: boolean }[];
};

export type PlacedMark<Id extends string> = {
  readonly mark: Mark<Id>;
  readonly labels: readonly Label[];
  /** The lettering with the sign at its leader. */
  readonly box: Box;
  /** Where the leader ends. */
  readonly foot: number;
};

/** The field that marks are lettered in: rows of `row` height from `top` downward, between `left` and `right`. */
export type Field = { readonly left: number; readonly right: number; readonly top: number; readonly row: number };

/**
 * Letters marks in rows under an axis, each to the right or left of its leader, in the first row where neither lettering
 * nor leader meets what stands already. Lettering never overlaps; where every row is crossed by leaders, a mark takes a
 * row below all others and its leader runs behind lettering.
 *
 * Lettered rightward from the right, or leftward from the left, marks cannot cross; near the ends of the axis only one
 * side has room. So it starts from those two and betters the best of them by moving or turning one mark at a time:
 * fewest crossings first, then fewest rows.
 */
export function placedInRows<Id extends string>(
  marks: readonly Mark<Id>[],
  field: Field,
  letter: number,
): readonly PlacedMark<Id>[] {
  const trial = (order: Order<Id>): Trial<Id> => {
    const placed: PlacedMark<Id>[] = [];
    for (const { mark, side } of order) placed.push(place(mark, side, placed, field, letter));
    const rows = lowest(placed, field.top) / field.row;
    return { order, placed, cost: 1000 * crossings(placed, field.top, letter) + rows };
  };
  const better = (a: Trial<Id>, b: Trial<Id>): Trial<Id> => (b.cost < a.cost - 1e-9 ? b : a);
  const rightward = marks.toSorted((a, b) => b.x - a.x).map((mark) => ({ mark, side: 1 as const }));
  const leftward = rightward.toReversed().map(({ mark }) => ({ mark, side: -1 as const }));
  let best = [rightward, leftward].map(trial).reduce(better);
  for (let round = 0; round < mostRounds; round++) {
    const next = neighbours(best.order).map(trial).reduce(better, best);
    if (next === best) break;
    best = next;
  }
  return best.placed;
}

type Order<Id extends string> = readonly { readonly mark: Mark<Id>; readonly side: 1 | -1 }[];
type Trial<Id extends string> = {
  readonly order: Order<Id>;
  readonly placed: readonly PlacedMark<Id>[];
  readonly cost: number;
};

const mostRounds = 8;

/** Every order with one mark moved, or turned to the other side of its leader. */
const neighbours = <Id extends string>(order: Order<Id>): readonly Order<Id>[] =>
  order.flatMap((it, from) => [
    order.with(from, { mark: it.mark, side: it.side === 1 ? -1 : 1 }),
    ...order.map((_, to) => order.toSpliced(from, 1).toSpliced(to, 0, it)),
  ]);

/** How many letterings a leader runs behind. */
export function crossings<Id extends string>(placed: readonly PlacedMark<Id>[], top: number, letter: number): number {
  return placed.reduce(
    (sum, a) => sum + placed.filter((b) => a !== b && overlap(leaderBox(a, top, letter), b.box)).length,
    0,
  );
}

/** Half the width of the sign where a leader ends, in letters. */
export const signRadius = 0.45;

const lowest = <Id extends string>(placed: readonly PlacedMark<Id>[], top: number): number =>
  Math.max(top, ...placed.map(({ box }) => box.y + box.height)) - top;

/** The first row where a mark is free on its side; on the other where its side has no room in the field. */
function place<Id extends string>(
  mark: Mark<Id>,
  preferred: 1 | -1,
  placed: readonly PlacedMark<Id>[],
  field: Field,
  letter: number,
): PlacedMark<Id> {
  const rows = Math.round(lowest(placed, field.top) / field.row);
  const at = (row: number, side: 1 | -1) => lettered(mark, field.top + row * field.row, side, field, letter);
  const side = ([preferred, preferred === 1 ? -1 : 1] as const).find((it) => inField(at(0, it), field));
  if (side === undefined) return squeezed(mark, field.top + rows * field.row, field, letter);
  const candidates = Array.from({ length: rows }, (_, row) => at(row, side));
  const free = candidates.find((it) => !placed.some((other) => meets(it, other, field.top, letter)));
  return free ?? at(rows, side);
}

const inField = <Id extends string>({ box }: PlacedMark<Id>, { left, right }: Field): boolean =>
  box.x >= left - 1e-9 && box.x + box.width <= right + 1e-9;

function meets<Id extends string>(a: PlacedMark<Id>, b: PlacedMark<Id>, top: number, letter: number): boolean {
  return (
    overlap(a.box, b.box) || overlap(leaderBox(a, top, letter), b.box) || overlap(a.box, leaderBox(b, top, letter))
  );
}

const leaderBox = <Id extends string>({ mark, foot }: PlacedMark<Id>, top: number, letter: number): Box => ({
  x: mark.x - 0.1 * letter,
  y: top,
  width: 0.2 * letter,
  height: foot - top,
});

function lettered<Id extends string>(
  mark: Mark<Id>,
  top: number,
  side: 1 | -1,
  field: Field,
  letter: number,
): PlacedMark<Id> {
  const gap = (signRadius + 0.35) * letter;
  const width = Math.max(...mark.lines.map(({ text, size, bold }) => textWidth(text, size, bold))) + gap;
  const sign = signRadius * letter;
  const rows = mark.lines.length;
  return {
    mark,
    labels: mark.lines.map((line, i) => ({
      ...line,
      x: mark.x + side * gap,
      y: top + i * field.row + (field.row - lineHeight * line.size) / 2 + ascent * line.size,
      anchor: side === 1 ? "start" : "end",
    })),
    box: { x: side === 1 ? mark.x - sign : mark.x - width, y: top, width: width + sign, height: rows * field.row },
    foot: top + field.row / 2,
  };
}

/** Where lettering fits on neither side of its leader: cut short on the roomier side. */
function squeezed<Id extends string>(mark: Mark<Id>, top: number, field: Field, letter: number): PlacedMark<Id> {
  const gap = (signRadius + 0.35) * letter;
  const side = field.right - mark.x >= mark.x - field.left ? 1 : -1;
  const room = (side === 1 ? field.right - mark.x : mark.x - field.left) - gap;
  const lines = mark.lines.map((line) => ({ ...line, text: shortened(line.text, room, line.size, line.bold) }));
  return lettered({ ...mark, lines }, top, side, field, letter);
}
