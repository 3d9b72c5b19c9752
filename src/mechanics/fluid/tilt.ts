import { normal, uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, reading, standardUncertainty, taken, valueIn } from "../quantity/quantity.ts";
import { deg, mm } from "../quantity/unit.ts";

/** How the machine stands: pitch phi and roll theta, each positive where it lowers the side of the hole. */
export type Tilt = { readonly phi: Quantity; readonly theta: Quantity };

/** Where the hole lies in the free surface, and how far that surface reaches. Null where nobody knows. */
export type FreeSurface = {
  /** From the centroid of the surface to the hole, along the pitch and along the roll. */
  readonly x: Quantity | null;
  readonly y: Quantity | null;
  readonly halfLength: Quantity | null;
  readonly halfWidth: Quantity | null;
  /** From the level surface to the nearest step in the wall, above or below. */
  readonly roomToStep: Quantity | null;
};

export type LevelOnTheLevel =
  | { readonly type: "corrected"; readonly level: Quantity; readonly shift: Quantity }
  /** The offset is not known: the level may lie anywhere within `bound` of the reading. */
  | { readonly type: "bounded"; readonly level: Quantity; readonly bound: Quantity }
  | { readonly type: "too steep"; readonly most_deg: number }
  | { readonly type: "surface reaches a step"; readonly rise_mm: number }
  | { readonly type: "offset not known" };

/**
 * The level that a tilted machine would show standing level, from the level `read` at the hole.
 *
 * First order for upright walls: the volume stays and the surface turns about its centroid. Refused beyond 5°, and where the
 * surface would reach a step in the wall.
 */
export function levelOnTheLevel(read: Quantity, tilt: Tilt, surface: FreeSurface): LevelOnTheLevel {
  const { phi, theta } = tilt;
  if (Math.max(Math.abs(phi.value), Math.abs(theta.value)) > STEEPEST_deg * deg.inSI * (1 + 1e-12))
    return { type: "too steep", most_deg: STEEPEST_deg };
  const [x_far, y_far] = [surface.halfLength ?? surface.x, surface.halfWidth ?? surface.y];
  if (surface.roomToStep && x_far && y_far) {
    const rise = shift({ x: absolute(x_far), y: absolute(y_far), phi: steepest(phi), theta: steepest(theta) });
    if (rise.value > surface.roomToStep.value) return { type: "surface reaches a step", rise_mm: valueIn(mm, rise) };
  }
  if (surface.x && surface.y) {
    const dh = shift({ x: surface.x, y: surface.y, phi, theta });
    return { type: "corrected", level: levelled({ h: read, dh }), shift: dh };
  }
  if (!x_far || !y_far) return { type: "offset not known" };
  const bound = shift({ x: absolute(x_far), y: absolute(y_far), phi: steepest(phi), theta: steepest(theta) });
  const within = valueIn(mm, bound);
  const dh = taken("dh", uniform(-within, within), mm, "tilt, offset of the hole not known");
  return { type: "bounded", level: levelled({ h: read, dh }), bound };
}

/** How far the level at the hole stands above the level at the centroid of the surface, dh. */
export const tiltShift = (x: Quantity, y: Quantity, tilt: Tilt): Quantity => shift({ x, y, ...tilt });

/**
 * An angle by an inclinometer read, turned round and read again in degrees, so that its own error cancels. What is left is
 * 0.3° (judgement). Its own error is given as well.
 */
export function flippedReading(
  symbol: "phi" | "theta",
  first_deg: number,
  turned_deg: number,
  id: string,
): { readonly angle: Quantity; readonly ownError_deg: number } {
  return {
    angle: reading(symbol, normal((first_deg - turned_deg) / 2, LEFT_AFTER_FLIP_deg), deg, id, "inclinometer, flipped"),
    ownError_deg: (first_deg + turned_deg) / 2,
  };
}

const STEEPEST_deg = 5;
const LEFT_AFTER_FLIP_deg = 0.3;

const shift = formula(
  "dh = x * tan(phi) + y * tan(theta)",
  { x: mm, y: mm, phi: deg, theta: deg, dh: mm },
  "plain geometry: a surface of fixed volume turns about its centroid",
);
const levelled = formula("h_level = h - dh", { h: mm, dh: mm, h_level: mm }, "plain difference");

const absolute = (length: Quantity): Quantity => exact(length.symbol, Math.abs(valueIn(mm, length)), mm, "a bound");

/** The angle as far as its reading may be off, two standard uncertainties. */
const steepest = (angle: Quantity): Quantity =>
  exact(angle.symbol, (Math.abs(angle.value) + 2 * standardUncertainty(angle)) / deg.inSI, deg, "a bound");
