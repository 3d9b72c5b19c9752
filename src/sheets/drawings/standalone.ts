import type { VNode } from "preact";
import { render } from "preact-render-to-string";
import { drawingStyles } from "./drawingStyles.ts";

/** A drawing as the text of an SVG file that looks right alone: its styles inside, one element a line. */
export function standaloneSvg(drawing: VNode): string {
  const svg = render(drawing).replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ');
  return `${svg.replace(">", `><style>${drawingStyles}</style>`).replaceAll("><", ">\n<")}\n`;
}
