import { ascent, type Box, type Label, lineHeight, textWidth } from "./lettering.ts";

/** Lines of lettering kept together, with a plain ground where they stand on hatching. */
export type Block = { readonly id: string; readonly labels: readonly Label[]; readonly box: Box };

/** Lines of lettering under one another about a centre. */
export function blockOf(
  id: string,
  lines: readonly Pick<Label, "text" | "size" | "bold">[],
  x: number,
  centre: number,
  anchor: Label["anchor"],
): Block {
  const width = Math.max(...lines.map(({ text, size, bold }) => textWidth(text, size, bold)));
  const height = blockHeight(lines);
  let top = centre - height / 2;
  const labels = lines.map((line): Label => {
    const y = top + ascent * line.size;
    top += lineHeight * line.size;
    return { ...line, x, y, anchor };
  });
  const left = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  return { id, labels, box: { x: x - left, y: centre - height / 2, width, height } };
}

/** Height of lines set under one another. */
export const blockHeight = (lines: readonly { readonly size: number }[]): number =>
  lines.reduce((sum, { size }) => sum + lineHeight * size, 0);

/** A block moved down. */
export const shifted = (block: Block, by: number): Block => ({
  ...block,
  labels: block.labels.map((label) => ({ ...label, y: label.y + by })),
  box: { ...block.box, y: block.box.y + by },
});
