import { type InsideSizes, levelByShape, type ShapeFound } from "../../../mechanics/fluid/levelByShape.ts";
import type { ShapeName } from "../../../mechanics/fluid/shapeNames.ts";
import type { Quantity } from "../../../mechanics/quantity/quantity.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";

export type ShapeOptions = {
  readonly shape?: ShapeName;
  readonly length?: string;
  readonly width?: string;
  readonly height?: string;
  readonly depth?: string;
  readonly gears?: boolean;
};

/** What a millimetre holds by the inside sizes of a case, and what it holds up to a depth. @throws InputMistake */
export function shapeFound(shape: ShapeName, options: ShapeOptions): ShapeFound {
  const sized = (size: keyof InsideSizes): Quantity | null => {
    const text = options[size];
    return text === undefined ? null : positiveOption(`--${size}`, size[0] ?? "", "length", "150 mm", text);
  };
  const sizes = { depth: sized("depth"), length: sized("length"), width: sized("width"), height: sized("height") };
  const read = levelByShape(shape, sizes, options.gears ?? false);
  if (read.ok) return read.found;
  const { problem } = read;
  throw problem.type === "wanted"
    ? mistaken(`--${problem.sizes[0]}`, null, `an inside size of the --shape, as "150 mm"`)
    : mistaken("--depth", options.depth ?? null, `less than ${problem.most_mm} mm, the height inside`);
}
