import { formula } from "../quantity/formula.ts";
import { deg, mm, one } from "../quantity/unit.ts";
import type { HoleTurn } from "./port.ts";

/** A point of an axial section: off the axis (right is positive), and below the case face. */
export type Point = { readonly x_mm: number; readonly y_mm: number };
export type Outline = readonly Point[];
export type Side = "right" | "left";

/** A thread by its sizes, as its standard's tables print them. */
export type ThreadSizes = {
  readonly d_mm: number;
  readonly P_mm: number;
  readonly d2_mm: number;
  readonly D1_mm: number;
  readonly d3_mm: number;
  /** Half of the angle that the flanks enclose. */
  readonly flank_deg: number;
  /** How the thread narrows from the face inward, where it is a taper one; its sizes are then those at the face. */
  readonly taper?: Taper | null;
};

/** The cone that a taper thread lies on. */
export type Taper = {
  /** Growth of the diameter over the length. */
  readonly growth: number;
  /** How far a plug goes in by hand where it and the hole are at their gauges. */
  readonly byHand_mm: number;
  /** The hole is parallel, and only the plug in it a taper one. */
  readonly holeIsParallel: boolean;
};

type Cone = Pick<ThreadSizes, "d_mm" | "taper">;

/** How far off the axis the thread of the hole ends in the wall, at a depth below the face. */
export const boreRadius_mm = (cone: Cone, y_mm: number): number => (cone.d_mm - growthOf(cone, "hole") * y_mm) / 2;

/** How far off the axis the crests of the plug stand, at a depth below the face. */
export const crestRadius_mm = (cone: Cone, y_mm: number): number => (cone.d_mm - growthOf(cone, "plug") * y_mm) / 2;

const growthOf = ({ taper }: Cone, part: "plug" | "hole"): number =>
  !taper || (part === "hole" && taper.holeIsParallel) ? 0 : taper.growth;

/** One turn of the hole where the section cuts it: the metal there is (none when gone) and the tooth a whole one has. */
export type DrawnTurn = {
  readonly side: Side;
  readonly turn: HoleTurn;
  readonly metal: Outline;
  readonly whole: Outline;
};

/**
 * The turns of the hole along one side, cut where the states of `bands` change.
 * They are reckoned from `engaged_mm`, so that the last turn that engages is a whole one on the right; the left side of
 * a helix lies half a pitch further.
 */
export function turnsAlong(
  side: Side,
  bands: readonly HoleTurn[],
  thread: ThreadSizes,
  depth_mm: number,
  engaged_mm: number,
): readonly DrawnTurn[] {
  const { P_mm } = thread;
  const start = engaged_mm + (side === "left" ? P_mm / 2 : 0);
  const first = Math.floor(-start / P_mm);
  const last = Math.ceil((depth_mm - start) / P_mm);
  const cells = Array.from({ length: last - first }, (_, i) => start + (first + i) * P_mm);
  return cells.flatMap((cell) =>
    bands.flatMap((band): readonly DrawnTurn[] => {
      const turn = { ...band, from_mm: Math.max(cell, band.from_mm), to_mm: Math.min(cell + P_mm, band.to_mm) };
      if (turn.to_mm - turn.from_mm < leastDrawn_mm) return [];
      const tooth = (height: number): Outline => between(turn, ridgeOutline(side, cell + P_mm / 2, height, thread));
      return [{ side, turn, metal: turn.height > 0 ? tooth(turn.height) : [], whole: tooth(1) }];
    }),
  );
}

/**
 * The threaded shank from the head at `-seat_mm` to its tip, its two sides half a pitch apart.
 * The last `chamfer_mm` lie under the cone of the point: 45°, and at least down to the root.
 */
export function plugOutline(
  thread: ThreadSizes,
  seat_mm: number,
  reach_mm: number,
  chamfer_mm: number,
  engaged_mm: number,
): Outline {
  const { d_mm, P_mm, d3_mm } = thread;
  const growth = growthOf(thread, "plug");
  // A ridge of the plug ends where the ridges of a hole on the same cone begin, to either side of it.
  const ends = ([-1, 1] as const).map((end) =>
    [d_mm, d3_mm].map((D) => P_mm / 2 - halfRidge_mm(D, thread, -end * growth)),
  ) as [[crest: number, root: number], [crest: number, root: number]];
  const tip_mm = reach_mm + chamfer_mm;
  const point = Math.min(d3_mm / 2, d_mm / 2 - chamfer_mm);
  const radius = (y: number, start: number): number => {
    const off = y - start - P_mm * Math.round((y - start) / P_mm);
    const [crest, root] = off < 0 ? ends[0] : ends[1];
    const down = Math.min(1, Math.max(0, (Math.abs(off) - crest) / (root - crest)));
    const cone = chamfer_mm > 0 ? Math.max(0, (y - reach_mm) / chamfer_mm) : 0;
    const narrower = (growth * y) / 2;
    return Math.min(d_mm / 2 - (down * (d_mm - d3_mm)) / 2, d_mm / 2 - cone * (d_mm / 2 - point)) - narrower;
  };
  const flank = (sign: 1 | -1, start: number): Outline => {
    const first = Math.floor((-seat_mm - start) / P_mm);
    const ridges = Array.from({ length: Math.ceil((tip_mm - start) / P_mm) - first + 1 }, (_, i) => first + i);
    const [[crest, root], [crestBelow, rootBelow]] = ends;
    const corners = ridges.flatMap((i) => [-root, -crest, crestBelow, rootBelow].map((off) => start + i * P_mm + off));
    const onPoint = Array.from({ length: 33 }, (_, i) => reach_mm + (i / 32) * chamfer_mm);
    return [-seat_mm, ...corners.filter((y) => y > -seat_mm && y < reach_mm), ...onPoint].map((y) => ({
      x_mm: sign * radius(y, start),
      y_mm: y,
    }));
  };
  return [...flank(1, engaged_mm), ...flank(-1, engaged_mm + P_mm / 2).toReversed()];
}

/** A rectangle between two distances off the axis and two depths. */
export function rectangle(x1_mm: number, x2_mm: number, y1_mm: number, y2_mm: number): Outline {
  return [
    { x_mm: x1_mm, y_mm: y1_mm },
    { x_mm: x2_mm, y_mm: y1_mm },
    { x_mm: x2_mm, y_mm: y2_mm },
    { x_mm: x1_mm, y_mm: y2_mm },
  ];
}

/** Shorter pieces of a turn are rounding, not metal. */
const leastDrawn_mm = 1e-6;

const halfRidge = formula(
  "s_h = P / 4 + (D - d_2) / 2 * tan(alpha) / (1 + T / 2 * tan(alpha))",
  { P: mm, D: mm, d_2: mm, alpha: deg, T: one, s_h: mm },
  "ISO 68-1:1998, 3; ISO 228-1:2000, 3: ridge and groove are equal on the pitch diameter; ISO 7-1:1994, 4 and ASME B1.20.1-2013, 4: the flanks of a taper thread lean alike from the normal to its axis (from memory), and end on its cone",
);

/**
 * Half of the axial thickness of the hole's ridge, which is the plug's groove, on a diameter: from its middle inward, or from
 * its middle toward the face where the growth of the diameter, `growth`, is taken negative.
 */
function halfRidge_mm(diameter_mm: number, { P_mm, d2_mm, flank_deg }: ThreadSizes, growth: number): number {
  const inSI = (value_mm: number): number => value_mm * mm.inSI;
  const alpha = flank_deg * deg.inSI;
  const at = { P: inSI(P_mm), D: inSI(diameter_mm), d_2: inSI(d2_mm), alpha, T: growth };
  return (halfRidge.over(at)[0] as number) / mm.inSI;
}

/** A ridge of the hole about `centre_mm`, worn to a fraction of its height. */
function ridgeOutline(side: Side, centre_mm: number, height: number, thread: ThreadSizes): Outline {
  const sign = side === "right" ? 1 : -1;
  const growth = growthOf(thread, "hole");
  const corner = (diameter_mm: number, end: 1 | -1): Point => {
    const y_mm = centre_mm + end * halfRidge_mm(diameter_mm, thread, end * growth);
    return { x_mm: (sign * (diameter_mm - growth * y_mm)) / 2, y_mm };
  };
  const top = thread.d_mm - height * (thread.d_mm - thread.D1_mm);
  return [corner(thread.d_mm, -1), corner(top, -1), corner(top, 1), corner(thread.d_mm, 1)];
}

const between = ({ from_mm, to_mm }: HoleTurn, outline: Outline): Outline => cut(cut(outline, from_mm, 1), to_mm, -1);

/** What of a convex outline lies below (1) or above (-1) a level. */
function cut(outline: Outline, level_mm: number, keep: 1 | -1): Outline {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const [here, there] = [keep * (a.y_mm - level_mm), keep * (b.y_mm - level_mm)];
    const t = here / (here - there);
    const crossing = here * there < 0 ? [{ x_mm: a.x_mm + t * (b.x_mm - a.x_mm), y_mm: level_mm }] : [];
    return here >= 0 ? [a, ...crossing] : crossing;
  });
}
