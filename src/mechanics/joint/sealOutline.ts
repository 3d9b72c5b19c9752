import type { SealKind } from "./port.ts";
import { type Outline, type Point, rectangle } from "./sectionOutline.ts";

/** A seal by its size as it lies when tightened. */
export type SealSizes = {
  readonly kind: SealKind;
  readonly outside_mm: number;
  readonly inside_mm: number;
  readonly thickness_mm: number;
};

/** A piece of a seal in section. */
export type SealPart = { readonly material: "ring" | "rubber" | "sealant"; readonly outline: Outline };

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
      return [{ material: "rubber", outline: cord((inner + outer) / 2, (outer - inner) / 2, t) }];
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
