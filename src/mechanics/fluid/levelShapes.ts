import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { ml, ml_mm, mm, one } from "../quantity/unit.ts";
import { fromMemory, sourceText } from "../tables/source.ts";

/** The hollow of a case, by its inside sizes. A lying shape has its axis level. */
export type CaseShape =
  | { readonly type: "box"; readonly a: Quantity; readonly b: Quantity; readonly height: Quantity }
  | { readonly type: "lying cylinder"; readonly R: Quantity; readonly L: Quantity }
  /** a is the level semi-axis, b the upright one. */
  | { readonly type: "lying ellipse"; readonly a: Quantity; readonly b: Quantity; readonly L: Quantity }
  | { readonly type: "spherical cap"; readonly R: Quantity };

export type Contents =
  | { readonly ok: true; readonly volume: Quantity; readonly perHeight: Quantity }
  | { readonly ok: false; readonly problem: { readonly type: "depth outside the shape"; readonly most_mm: number } };

/** The volume V in a shape filled to `depth` above its lowest point, and the volume k a millimetre of level holds there. */
export function contents(shape: CaseShape, depth: Quantity): Contents {
  const most_mm = valueIn(mm, height(shape));
  const depth_mm = valueIn(mm, depth);
  if (!(depth_mm > 0 && depth_mm < most_mm))
    return { ok: false, problem: { type: "depth outside the shape", most_mm } };
  const h = depth;
  switch (shape.type) {
    case "box": {
      const k = boxPerHeight({ a: shape.a, b: shape.b });
      return { ok: true, volume: boxVolume({ k, h }), perHeight: k };
    }
    case "lying cylinder": {
      const { R, L } = shape;
      return { ok: true, volume: cylinderVolume({ R, L, h }), perHeight: cylinderPerHeight({ R, L, h }) };
    }
    case "lying ellipse": {
      const { a, b, L } = shape;
      const u = ellipseDepth({ h, b });
      return { ok: true, volume: ellipseVolume({ L, a, b, u }), perHeight: ellipsePerHeight({ L, a, u }) };
    }
    case "spherical cap": {
      const { R } = shape;
      return { ok: true, volume: capVolume({ R, h }), perHeight: capPerHeight({ R, h }) };
    }
    default:
      return shape satisfies never;
  }
}

/** The volume a millimetre of level holds once the share s of its surface that gears and shafts cut is taken off. */
export const netOfGears = (perHeight: Quantity, s: Quantity): Quantity => net({ k_0: perHeight, s });

/** The share of the surface that gears and shafts usually cut. */
export const gearShare = taken(
  "s",
  uniform(0.1, 0.3),
  one,
  sourceText(fromMemory("gears and shafts cut 10 to 30 % of the surface")),
);

const geometry = "plain geometry: the volume below a level and its rise, the free surface";

const boxPerHeight = formula("k = a * b", { a: mm, b: mm, k: ml_mm }, geometry);
const boxVolume = formula("V = k * h", { k: ml_mm, h: mm, V: ml }, geometry);
const cylinderVolume = formula(
  "V = L * (R^2 * acos((R - h) / R) - (R - h) * sqrt(2 * R * h - h^2))",
  { L: mm, R: mm, h: mm, V: ml },
  geometry,
);
const cylinderPerHeight = formula("k = 2 * L * sqrt(h * (2 * R - h))", { L: mm, R: mm, h: mm, k: ml_mm }, geometry);
const ellipseDepth = formula("u = 1 - h / b", { h: mm, b: mm, u: one }, geometry);
const ellipseVolume = formula(
  "V = L * a * b * (acos(u) - u * sqrt(1 - u^2))",
  { L: mm, a: mm, b: mm, u: one, V: ml },
  geometry,
);
const ellipsePerHeight = formula("k = 2 * a * L * sqrt(1 - u^2)", { a: mm, L: mm, u: one, k: ml_mm }, geometry);
const capVolume = formula("V = pi * h^2 * (3 * R - h) / 3", { h: mm, R: mm, V: ml }, geometry);
const capPerHeight = formula("k = pi * h * (2 * R - h)", { h: mm, R: mm, k: ml_mm }, geometry);
const net = formula("k = k_0 * (1 - s)", { k_0: ml_mm, s: one, k: ml_mm }, geometry);

const double = formula("D = 2 * r", { r: mm, D: mm }, geometry);

function height(shape: CaseShape): Quantity {
  switch (shape.type) {
    case "box":
      return shape.height;
    case "lying cylinder":
    case "spherical cap":
      return double({ r: shape.R });
    case "lying ellipse":
      return double({ r: shape.b });
    default:
      return shape satisfies never;
  }
}
