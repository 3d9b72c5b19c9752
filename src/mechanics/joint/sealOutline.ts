import type { SealKind } from "./port.ts";
import { type Outline, type Point, rectangle } from "./sectionOutline.ts";

/** A seal by its size as it lies when tightened. */
export type SealSizes = {
  readonly kind: SealKind;
  readonly outside_mm: number;
  readonly inside_mm: number;
  readonly thickness_mm: number;
  /** Depth of the chamfer that an O-ring lies in; null where it lies in none. */
  readonly chamfer_mm?: number | null;
};

/** A piece of a seal in section, or the room cut out of the case for it. */
export type SealPart = { readonly material: "ring" | "rubber" | "sealant" | "chamfer"; readonly outline: Outline };

/** The pieces of a seal on both sides of the axis, under a head of radius `headRadius_mm`; none for a taper or no seal. */
export function sealParts(seal: SealSizes, headRadius_mm: number, P_mm: number): readonly SealPart[] {
  return rightParts(seal, headRadius_mm, P_mm).flatMap((part) => [
    part,
    { ...part, outline: part.outline.map(({ x_mm, y_mm }) => ({ x_mm: -x_mm, y_mm })) },
  ]);
}

function rightParts(seal: SealSizes, headRadius_mm: number, P_mm: number): readonly SealPart[] {
  const [inner, outer, t] = [seal.inside_mm / 2, seal.outside_mm / 2, seal.thickness_mm];
  switch (seal.kind) {
    case "flat washer":
      return [{ material: "ring", outline: rectangle(inner, outer, -t, 0) }];
    case "crush ring":
      return [{ material: "ring", outline: hollowRing(inner, outer, t) }];
    case "bonded seal": {
      const joint = inner + lipShare * (outer - inner);
      return [
        { material: "ring", outline: rectangle(joint, outer, -t, 0) },
        { material: "rubber", outline: lip(inner, joint, t) },
      ];
    }
    case "O-ring":
      return seal.chamfer_mm
        ? inChamfer(inner, outer - inner, seal.chamfer_mm)
        : [{ material: "rubber", outline: cord((inner + outer) / 2, (outer - inner) / 2, t) }];
    case "sealant, metal to metal":
      return [{ material: "sealant", outline: bead(headRadius_mm, inner, t, 1.5 * P_mm) }];
    case "taper":
    case "none":
      return [];
    default:
      return seal.kind satisfies never;
  }
}

/** The rubber's share of a bonded seal's width, for the eye only. */
const lipShare = 0.35;

function lip(inner: number, joint: number, t: number): Outline {
  return [
    { x_mm: joint, y_mm: -t },
    { x_mm: inner, y_mm: -0.8 * t },
    { x_mm: inner, y_mm: -0.2 * t },
    { x_mm: joint, y_mm: 0 },
  ];
}

/** A folded ring after crushing: a slot open to the inside. */
function hollowRing(inner: number, outer: number, t: number): Outline {
  const [top, bottom, back] = [-0.62 * t, -0.38 * t, outer - 0.3 * (outer - inner)];
  return [
    { x_mm: inner, y_mm: -t },
    { x_mm: outer, y_mm: -t },
    { x_mm: outer, y_mm: 0 },
    { x_mm: inner, y_mm: 0 },
    { x_mm: inner, y_mm: bottom },
    { x_mm: back, y_mm: bottom },
    { x_mm: back, y_mm: top },
    { x_mm: inner, y_mm: top },
  ];
}

/** An O-ring lies between two faces, so its section is an ellipse as high as the gap. */
const cord = (centre: number, width: number, t: number): Outline =>
  arc(0, 2 * Math.PI).map(({ x_mm, y_mm }) => ({ x_mm: centre + (x_mm * width) / 2, y_mm: ((y_mm - 1) * t) / 2 }));

/**
 * Where head and face meet, the ring lies in a chamfer of 45° round the mouth of the hole, `leg` deep, pressed by the head to
 * the shape of it with rounded corners. Its cord of diameter `c` keeps its area.
 */
function inChamfer(inner: number, c: number, leg: number): readonly SealPart[] {
  const corners: Outline = [
    { x_mm: inner, y_mm: 0 },
    { x_mm: inner + leg, y_mm: 0 },
    { x_mm: inner, y_mm: leg },
  ];
  // What three rounded corners take: r² times the sum of their cot(θ/2), less the circle that they make up together.
  const halves = [Math.PI / 4, Math.PI / 8, Math.PI / 8];
  const perSquare = halves.reduce((sum, half) => sum + 1 / Math.tan(half), -Math.PI);
  const r = Math.sqrt(Math.max(0, leg ** 2 / 2 - (Math.PI / 4) * c ** 2) / perSquare);
  return [
    { material: "chamfer", outline: corners },
    { material: "rubber", outline: corners.flatMap((corner, i) => roundedCorner(corner, corners, i, r)) },
  ];
}

/** The arc of radius r that rounds one corner of a polygon, from the edge before it to the edge after. */
function roundedCorner(corner: Point, corners: Outline, i: number, r: number): Outline {
  const toward = (to: Point): Point => {
    const [x, y] = [to.x_mm - corner.x_mm, to.y_mm - corner.y_mm];
    return { x_mm: x / Math.hypot(x, y), y_mm: y / Math.hypot(x, y) };
  };
  const before = toward(corners.at(i - 1) ?? corner);
  const after = toward(corners[(i + 1) % corners.length] ?? corner);
  const half = Math.acos(before.x_mm * after.x_mm + before.y_mm * after.y_mm) / 2;
  const along = r / Math.tan(half);
  const [x, y] = [before.x_mm + after.x_mm, before.y_mm + after.y_mm];
  const off = r / Math.sin(half) / Math.hypot(x, y);
  const centre = { x_mm: corner.x_mm + off * x, y_mm: corner.y_mm + off * y };
  const at = (edge: Point): number =>
    Math.atan2(corner.y_mm + along * edge.y_mm - centre.y_mm, corner.x_mm + along * edge.x_mm - centre.x_mm);
  const [from, to] = [at(before), at(after)];
  const turn = Math.atan2(Math.sin(to - from), Math.cos(to - from));
  return Array.from({ length: 7 }, (_, k) => ({
    x_mm: centre.x_mm + r * Math.cos(from + (k / 6) * turn),
    y_mm: centre.y_mm + r * Math.sin(from + (k / 6) * turn),
  }));
}

/** The fillet of sealant round the head; its size is for the eye, a pitch and a half. */
function bead(headRadius: number, inner: number, t: number, size: number): Outline {
  const hollow = arc(Math.PI / 2, Math.PI).map(({ x_mm, y_mm }) => ({
    x_mm: headRadius + size * (1 + x_mm),
    y_mm: size * (y_mm - 1),
  }));
  const film = t > 0 ? rectangle(inner, headRadius, -t, 0).toReversed() : [{ x_mm: headRadius, y_mm: 0 }];
  return [...film.slice(0, 2), ...hollow, ...film.slice(2)];
}

const arc = (from: number, to: number): readonly Point[] =>
  Array.from({ length: 17 }, (_, i) => {
    const angle = from + (i / 16) * (to - from);
    return { x_mm: Math.cos(angle), y_mm: Math.sin(angle) };
  });
