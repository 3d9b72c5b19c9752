import type { Outline, Point } from "../../../src/mechanics/joint/sectionOutline.ts";

/** Whether a point lies inside a convex outline by more than `by`. */
export function inside({ x_mm, y_mm }: Point, outline: Outline, by: number): boolean {
  const sides = outline.map((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const length = Math.hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm);
    return length < 1e-9 ? null : ((b.x_mm - a.x_mm) * (y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (x_mm - a.x_mm)) / length;
  });
  const known = sides.filter((side) => side !== null);
  return known.length > 2 && (known.every((side) => side > by) || known.every((side) => side < -by));
}
