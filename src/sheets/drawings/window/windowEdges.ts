import { type Label, textWidth } from "../lettering.ts";

/**
 * An edge of the window: its line runs from `head` over the bar to `foot` on it. In an empty window the two lines cross.
 * `label` is null where there is no room for it beside its line; it is then lettered under the bar.
 */
export type Edge = { readonly head: number; readonly foot: number; readonly label: Label | null };
export type Edges = { readonly low: Edge; readonly limit: Edge };

/** The row over the bar in which edges are lettered. */
type Row = { readonly left: number; readonly right: number; readonly baseline: number; readonly letter: number };

/** Edges of an open window stand upright and are lettered outward, so that they never meet each other. */
export function facingEdges(lowName: string, low: number, limitName: string, limit: number, row: Row): Edges {
  const gap = 0.4 * row.letter;
  const lowFits = low - gap - edgeWidth(lowName, row) >= row.left;
  const limitFits = limit + gap + edgeWidth(limitName, row) <= row.right;
  return {
    low: { head: low, foot: low, label: lowFits ? edgeLabel(lowName, low - gap, "end", row) : null },
    limit: { head: limit, foot: limit, label: limitFits ? edgeLabel(limitName, limit + gap, "start", row) : null },
  };
}

/** Edges of an empty window cross: the low one is lettered to the left and stands to the right of the limit. */
export function crossedEdges(lowName: string, low: number, limitName: string, limit: number, row: Row): Edges {
  const gap = 0.4 * row.letter;
  const room = row.right - row.left - edgeWidth(lowName, row) - edgeWidth(limitName, row) - 2 * gap;
  const half = Math.min(Math.max((low - limit) / 2, 1.5 * row.letter), 5 * row.letter, room / 2);
  const least = row.left + edgeWidth(lowName, row) + gap + half;
  const most = row.right - edgeWidth(limitName, row) - gap - half;
  const middle = Math.max(least, Math.min((low + limit) / 2, most));
  return {
    low: { head: middle - half, foot: low, label: edgeLabel(lowName, middle - half - gap, "end", row) },
    limit: { head: middle + half, foot: limit, label: edgeLabel(limitName, middle + half + gap, "start", row) },
  };
}

const edgeSize = 1.2;

const edgeLabel = (text: string, x: number, anchor: "start" | "end", { baseline, letter }: Row): Label => ({
  text,
  x,
  y: baseline,
  size: edgeSize * letter,
  anchor,
  bold: true,
});

const edgeWidth = (text: string, { letter }: Row): number => textWidth(text, edgeSize * letter, true);
