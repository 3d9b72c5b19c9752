/** A rectangle in the units of the drawing; y grows downward. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** One line of lettering. `x` is where its anchor stands, `y` its baseline. */
export type Label = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: "start" | "middle" | "end";
  readonly bold: boolean;
};

/**
 * Room a text takes at most, in the units of `size`.
 * Widths are those of a wide sans, DejaVu Sans, so that any face of the stack stays inside. They are upper bounds, not metrics.
 */
export function textWidth(text: string, size: number, bold = false): number {
  const em = [...text].reduce((sum, sign) => sum + (widths.find(([signs]) => signs.includes(sign))?.[1] ?? 0.65), 0);
  return em * size * (bold ? boldFactor : 1);
}

/** The room of a label, from a little above its capitals to below its descenders. */
export function labelBox({ text, x, y, size, anchor, bold }: Label): Box {
  const width = textWidth(text, size, bold);
  const left = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  return { x: x - left, y: y - ascent * size, width, height: lineHeight * size };
}

/** Height of a line over its size, and of the baseline below the top of the line. */
export const lineHeight = 1.12;
export const ascent = 0.86;

/** Whether two rectangles share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.x + a.width > b.x + slack &&
  b.x + b.width > a.x + slack &&
  a.y + a.height > b.y + slack &&
  b.y + b.height > a.y + slack;

/** A text broken at spaces into lines no wider than `width`; a word that is too long is cut with an ellipsis. */
export function wrapped(text: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((it) => it !== "")) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last !== undefined && textWidth(longer, size, bold) <= width) lines[lines.length - 1] = longer;
    else lines.push(shortened(word, width, size, bold));
  }
  return lines;
}

/** A text cut with an ellipsis where it would be wider than `width`. */
export function shortened(text: string, width: number, size: number, bold = false): string {
  if (textWidth(text, size, bold) <= width) return text;
  const signs = [...text];
  while (signs.length > 0 && textWidth(`${signs.join("").trimEnd()}…`, size, bold) > width) signs.pop();
  return `${signs.join("").trimEnd()}…`;
}

/** Lengths to one decimal and torques whole, as they are read at the lift. */
export const inTenths = (x: number): string => x.toFixed(1);
export const inWhole = (x: number): string => Math.round(x).toFixed(0);

/** A torque that must be reached, whole and never less; and one that must not be passed, whole and never more. */
export const atLeast = (torque_Nm: number): string => Math.ceil(torque_Nm - 1e-6).toFixed(0);
export const atMost = (torque_Nm: number): string => Math.floor(torque_Nm + 1e-6).toFixed(0);

/** Coordinates to a thousandth, so that a committed drawing reads. */
export const rounded = (x: number): number => Math.round(1000 * x) / 1000 + 0;

const slack = 1e-6;
const boldFactor = 1.16;
const widths: readonly (readonly [signs: string, em: number])[] = [
  ["ijlI.,:;'|!·", 0.33],
  [" ", 0.32],
  ["ftr()[]/-", 0.42],
  ["csvxyzkJL?", 0.6],
  ["mMW…", 1],
  ["wOQN×≥≤±–", 0.85],
  ["ABCDEFGHKPRSTUVXYZ", 0.74],
  ["½¼¾→—", 1],
];
