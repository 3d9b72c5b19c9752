import { expect } from "vitest";

/** Asserts that no corner of a path or rectangle of a rendered drawing lies outside its view box. */
export function expectInside(svg: string): void {
  const [x = 0, y = 0, width = 0, height = 0] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? "").split(" ").map(Number);
  const points = drawnPoints(svg);
  expect(points.length).toBeGreaterThan(10);
  const outside = points.filter(
    ([px, py]) => px < x - rounding || px > x + width + rounding || py < y - rounding || py > y + height + rounding,
  );
  expect(outside).toEqual([]);
}

/** Coordinates are printed to a thousandth. */
const rounding = 2e-3;

/** Every corner of every path and rectangle of a rendered drawing, in the units of its view box. */
function drawnPoints(svg: string): readonly (readonly [x: number, y: number])[] {
  const points: [number, number][] = [];
  const shifts: [number, number][] = [[0, 0]];
  for (const line of svg.replace(/<style>.*?<\/style>/s, "").split("\n")) {
    const [x0, y0] = shifts.at(-1) ?? [0, 0];
    if (line.startsWith("<g")) {
      const [, dx = "0", dy = "0"] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(line) ?? [];
      if (!line.endsWith("/>")) shifts.push([x0 + Number(dx), y0 + Number(dy)]);
    }
    if (line.startsWith("</g>")) shifts.pop();
    for (const [, x = "", y = ""] of (/ d="([^"]*)"/.exec(line)?.[1] ?? "").matchAll(/[ML]([-\d.]+) ([-\d.]+)/g))
      points.push([x0 + Number(x), y0 + Number(y)]);
    const [, x, y, width, height] =
      /<rect .*x="([-\d.]+)" y="([-\d.]+)" width="([-\d.]+)" height="([-\d.]+)"/.exec(line) ?? [];
    if (x !== undefined)
      points.push([x0 + Number(x), y0 + Number(y)], [x0 + Number(x) + Number(width), y0 + Number(y) + Number(height)]);
  }
  return points;
}
