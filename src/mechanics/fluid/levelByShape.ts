import { normal } from "../quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { type CaseShape, contents, gearShare, netOfGears } from "./levelShapes.ts";
import type { ShapeName } from "./shapeNames.ts";

/** Inside sizes of a case as a rule tells them, and the depth of the oil above its lowest point. Null where nobody measured. */
export type InsideSizes = {
  readonly [S in "length" | "width" | "height" | "depth"]: Quantity | null;
};

export type ShapeFound = {
  readonly perHeight: Quantity;
  readonly contents: { readonly volume: Quantity; readonly gears: boolean };
  /** From the middle of the surface to its ends, for a tilt whose hole is not placed. */
  readonly halfLength: Quantity;
  readonly halfWidth: Quantity;
};

export type LevelByShape =
  | { readonly ok: true; readonly found: ShapeFound }
  | { readonly ok: false; readonly problem: ShapeProblem };

export type ShapeProblem =
  | { readonly type: "wanted"; readonly sizes: readonly (keyof InsideSizes)[] }
  | { readonly type: "depth outside the shape"; readonly most_mm: number };

/** What a millimetre holds by the inside sizes of a case, less what `gears` usually cut of it, and what it holds up to the depth. */
export function levelByShape(shape: ShapeName, sizes: InsideSizes, gears: boolean): LevelByShape {
  const wanted = wantedOf[shape].filter((it) => sizes[it] === null);
  if (wanted.length > 0) return { ok: false, problem: { type: "wanted", sizes: wanted } };
  const read = (symbol: string, size: keyof InsideSizes, share = 1): Quantity => {
    const value_mm = valueIn(mm, sizes[size] as Quantity);
    return reading(
      symbol,
      normal(share * value_mm, share * RULE_mm),
      mm,
      `${size} inside`,
      "rule held inside the case",
    );
  };
  const found = contents(caseShape(shape, sizes, read), read("h", "depth"));
  if (!found.ok) return found;
  const half = (size: keyof InsideSizes): Quantity =>
    exact("x", valueIn(mm, sizes[size] as Quantity) / 2, mm, "half of the case");
  return {
    ok: true,
    found: {
      perHeight: gears ? netOfGears({ ...found.perHeight, symbol: "k_0" }, gearShare) : found.perHeight,
      contents: { volume: found.volume, gears },
      halfLength: half(sizes.length ? "length" : "width"),
      halfWidth: half("width"),
    },
  };
}

/** A rule held inside a case tells a size to a millimetre (judgement). */
const RULE_mm = 1;

/** A box holds the same at any depth; its height only bounds the depth, and need not be known. */
const wantedOf: Readonly<Record<ShapeName, readonly (keyof InsideSizes)[]>> = {
  box: ["length", "width", "depth"],
  cylinder: ["length", "width", "depth"],
  ellipse: ["length", "width", "height", "depth"],
  ball: ["width", "depth"],
};

function caseShape(
  shape: ShapeName,
  { height, depth }: InsideSizes,
  read: (symbol: string, size: keyof InsideSizes, share?: number) => Quantity,
): CaseShape {
  switch (shape) {
    case "box": {
      const bound = height ? read("H", "height") : exact("H", 2 * valueIn(mm, depth as Quantity), mm);
      return { type: "box", a: read("a", "length"), b: read("b", "width"), height: bound };
    }
    case "cylinder":
      return { type: "lying cylinder", R: read("R", "width", 0.5), L: read("L", "length") };
    case "ellipse":
      return {
        type: "lying ellipse",
        a: read("a", "width", 0.5),
        b: read("b", "height", 0.5),
        L: read("L", "length"),
      };
    case "ball":
      return { type: "spherical cap", R: read("R", "width", 0.5) };
    default:
      return shape satisfies never;
  }
}
