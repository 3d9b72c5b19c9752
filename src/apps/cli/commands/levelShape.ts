import { type CaseShape, contents, gearShare, netOfGears } from "../../../mechanics/fluid/levelShapes.ts";
import { normal } from "../../../mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { mm } from "../../../mechanics/quantity/unit.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";

export const shapes = ["box", "cylinder", "ellipse", "ball"] as const;

export type ShapeOptions = {
  readonly shape?: (typeof shapes)[number];
  readonly length?: string;
  readonly width?: string;
  readonly height?: string;
  readonly depth?: string;
  readonly gears?: boolean;
};

export type ShapeFound = {
  readonly perHeight: Quantity;
  readonly contents: { readonly volume: Quantity; readonly gears: boolean };
  /** From the middle of the surface to its ends, for a tilt whose hole is not placed. */
  readonly halfLength: Quantity;
  readonly halfWidth: Quantity;
};

/** What a millimetre holds by the inside sizes of a case, and what it holds up to a depth. @throws InputMistake */
export function shapeFound(shape: (typeof shapes)[number], options: ShapeOptions): ShapeFound {
  const depth = sized("--depth", "h", options.depth);
  const found = contents(caseShape(shape, options), depth);
  if (!found.ok)
    throw mistaken("--depth", options.depth ?? null, `less than ${found.problem.most_mm} mm, the height inside`);
  const gears = options.gears ?? false;
  const half = (text: string | undefined): Quantity =>
    exact("x", valueIn(mm, sized("--width", "x", text)) / 2, mm, "half of the case");
  return {
    perHeight: gears ? netOfGears({ ...found.perHeight, symbol: "k_0" }, gearShare) : found.perHeight,
    contents: { volume: found.volume, gears },
    halfLength: half(options.length ?? options.width),
    halfWidth: half(options.width),
  };
}

function caseShape(shape: (typeof shapes)[number], { length, width, height, depth }: ShapeOptions): CaseShape {
  switch (shape) {
    case "box": {
      // A box holds the same at any depth; its height only bounds the depth, and need not be known.
      const bound = height
        ? sized("--height", "H", height)
        : exact("H", 2 * valueIn(mm, sized("--depth", "h", depth)), mm);
      return { type: "box", a: sized("--length", "a", length), b: sized("--width", "b", width), height: bound };
    }
    case "cylinder":
      return { type: "lying cylinder", R: sized("--width", "R", width, 0.5), L: sized("--length", "L", length) };
    case "ellipse":
      return {
        type: "lying ellipse",
        a: sized("--width", "a", width, 0.5),
        b: sized("--height", "b", height, 0.5),
        L: sized("--length", "L", length),
      };
    case "ball":
      return { type: "spherical cap", R: sized("--width", "R", width, 0.5) };
    default:
      return shape satisfies never;
  }
}

/** An inside size, or a share of it; a rule held inside a case tells it to a millimetre (judgement). */
function sized(name: string, symbol: string, text: string | undefined, share = 1): Quantity {
  if (text === undefined) throw mistaken(name, null, `an inside size of the --shape, as "150 mm"`);
  const size_mm = valueIn(mm, positiveOption(name, symbol, "length", "150 mm", text));
  return reading(symbol, normal(share * size_mm, share), mm, name, "rule held inside the case");
}
