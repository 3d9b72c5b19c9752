import type { Condition, HoleTurn, Surface } from "./port.ts";
import { type SealPart, type SealSizes, sealParts } from "./sealOutline.ts";
import {
  boreRadius_mm,
  type DrawnTurn,
  type Outline,
  plugOutline,
  type Taper,
  type ThreadSizes,
  turnsAlong,
} from "./sectionOutline.ts";

/** Plain lengths of one closure of a port. Null where nobody measured it. */
export type SectionInput = ThreadSizes & {
  readonly designation: string;
  readonly threadDepth_mm: number | null;
  readonly thinnestWall_mm: number | null;
  readonly roomBehind_mm: number | null;
  readonly underHead_mm: number | null;
  readonly chamfer_mm: number | null;
  readonly headDiameter_mm: number | null;
  readonly seal: SealSizes;
  /** Turns left with this closure; drawn where `goodFrom_mm` and `goodTo_mm` are both unknown. */
  readonly turnsCarrying: number;
  readonly turnsHealthy: number | null;
  readonly condition: Condition;
  /** Thread height left on the turns that carry, 0 to 1. */
  readonly heightLeft: number;
  readonly goodFrom_mm: number | null;
  readonly goodTo_mm: number | null;
  readonly surface: Surface;
  /** A steel insert around the plug's thread, where there is one. */
  readonly insert?: Insert | null;
};

/** A bush or a coil in the wall of the hole: its outer diameter, and from where to where below the face. */
export type Insert = { readonly outer_mm: number; readonly from_mm: number; readonly to_mm: number };

/**
 * A length along the axis. `drawn` says whether the drawing may be scaled; `value_mm` is null when unknown. "clear" is
 * what is left between a plug that passes through and the thing behind: below 0 the plug would touch it.
 */
export type SectionDimension = {
  readonly id: "seal" | "depth" | "behind" | "reach" | "clear";
  readonly from_mm: number;
  readonly to_mm: number;
  readonly value_mm: number | null;
  readonly drawn: "true" | "shortened" | "unknown";
};

/** Lengths as drawn: measured ones true, unknown ones a plausible minimum. Depths are below the case face. */
type Lengths = {
  /** How far the underside of the head stands over the face: on its ring, or as far as a taper plug holds it up. */
  readonly seat_mm: number;
  /** From the face to the last point of the plug that can engage, and to its tip. */
  readonly reach_mm: number;
  readonly tip_mm: number;
  readonly chamfer_mm: number;
  readonly depth_mm: number;
  /** Where engagement ends: the reach, or the end of the hole. */
  readonly engaged_mm: number;
  readonly wall_mm: number;
  readonly headRadius_mm: number;
  /** Where the nearest thing behind is drawn. */
  readonly behind_mm: number;
};

export type PortSection = Lengths & {
  readonly designation: string;
  readonly d_mm: number;
  readonly P_mm: number;
  readonly taper: Taper | null;
  readonly seal: SealSizes;
  readonly surface: Surface;
  readonly underHead_mm: number | null;
  readonly wallKnown: boolean;
  readonly behindKnown: boolean;
  readonly insert: Insert | null;
  readonly caseRight: Outline;
  readonly caseLeft: Outline;
  readonly plug: Outline;
  readonly sealParts: readonly SealPart[];
  readonly turns: readonly DrawnTurn[];
  /** The states along the depth, from the face inward. */
  readonly bands: readonly HoleTurn[];
  readonly dimensions: readonly SectionDimension[];
  /** Turns of each state along one side. */
  readonly count: { readonly [state in HoleTurn["state"]]: number };
  /** Turns counted that the reach of the plug has no room for: count and lengths disagree. */
  readonly doNotFit_turns: number;
};

/** The axial section of a port with its closure, in millimetres, from what is known and plausible minima for the rest. */
export function portSection(input: SectionInput): PortSection {
  const { designation, d_mm, P_mm, seal, surface, underHead_mm } = input;
  const lengths = resolved(input);
  const { seat_mm, reach_mm, chamfer_mm, engaged_mm, depth_mm, wall_mm, headRadius_mm } = lengths;
  const bands = bandsOf(input, lengths);
  const body = (sign: 1 | -1): Outline =>
    [
      [boreRadius_mm(input, 0), 0] as const,
      [d_mm / 2 + wall_mm, 0] as const,
      [d_mm / 2 + wall_mm, depth_mm] as const,
      [boreRadius_mm(input, depth_mm), depth_mm] as const,
    ].map(([x, y_mm]) => ({ x_mm: sign * x, y_mm }));
  return {
    designation,
    d_mm,
    P_mm,
    taper: input.taper ?? null,
    seal,
    surface,
    underHead_mm,
    ...lengths,
    wallKnown: input.thinnestWall_mm !== null,
    behindKnown: input.roomBehind_mm !== null,
    insert: input.insert ?? null,
    caseRight: body(1),
    caseLeft: body(-1),
    plug: plugOutline(input, seat_mm, reach_mm, chamfer_mm, engaged_mm),
    sealParts: sealParts(seal, headRadius_mm, P_mm),
    turns: (["right", "left"] as const).flatMap((side) => turnsAlong(side, bands, input, depth_mm, engaged_mm)),
    bands,
    dimensions: dimensionsOf(input, lengths),
    count: counted(bands, P_mm),
    doNotFit_turns: measured(input) ? 0 : Math.max(0, input.turnsCarrying - engaged_mm / P_mm),
  };
}

/** Room behind over this many diameters is drawn shortened. */
const farBehind = 0.8;

/** What is not known is drawn as short as the rest allows, so that a drawing never promises length nobody measured. */
function resolved(input: SectionInput): Lengths {
  const { d_mm, P_mm, seal } = input;
  const chamfer_mm = input.chamfer_mm ?? P_mm;
  const least = Math.max(1, input.turnsHealthy ?? 0, input.turnsCarrying) * P_mm;
  const { seat_mm, reach_mm } = wedged(input, chamfer_mm) ?? onTheFace(input, chamfer_mm, least);
  const tip_mm = reach_mm + chamfer_mm;
  const depth_mm = input.threadDepth_mm ?? Math.max(reach_mm, least, input.goodTo_mm ?? 0);
  const beyond_mm = Math.max(0, tip_mm - depth_mm);
  const room_mm = input.roomBehind_mm ?? beyond_mm + 2 * P_mm;
  return {
    seat_mm,
    reach_mm,
    tip_mm,
    chamfer_mm,
    depth_mm,
    engaged_mm: Math.min(reach_mm, depth_mm),
    wall_mm: input.thinnestWall_mm ?? d_mm / 4,
    headRadius_mm: (input.headDiameter_mm ?? Math.max(seal.outside_mm, 1.3 * d_mm)) / 2,
    behind_mm: depth_mm + Math.min(room_mm, Math.max(farBehind * d_mm, beyond_mm + P_mm)),
  };
}

type Stand = Pick<Lengths, "seat_mm" | "reach_mm">;

/** A plug whose head comes down to its ring, or to the face. */
function onTheFace({ underHead_mm, seal: { thickness_mm } }: SectionInput, chamfer_mm: number, least: number): Stand {
  const reach_mm = underHead_mm === null ? least : Math.max(0, underHead_mm - thickness_mm - chamfer_mm);
  return { seat_mm: thickness_mm, reach_mm };
}

/** A taper plug goes in by its turns and no further, whatever its length, so its head stands off; null for any other. */
function wedged(input: SectionInput, chamfer_mm: number): Stand | null {
  const { taper, seal, P_mm, underHead_mm } = input;
  if (!taper || (seal.kind !== "taper" && seal.kind !== "none")) return null;
  const turned_mm = turnsIn(input) * P_mm || taper.byHand_mm;
  if (underHead_mm === null) return { seat_mm: spareTurns * P_mm, reach_mm: turned_mm };
  const thread_mm = Math.max(0, underHead_mm - chamfer_mm);
  const reach_mm = Math.min(turned_mm, thread_mm);
  return { seat_mm: thread_mm - reach_mm, reach_mm };
}

/** As many turns as a sound taper plug goes in, or as were counted; 0 where nobody counted. */
const turnsIn = ({ turnsCarrying, turnsHealthy }: SectionInput): number => Math.max(turnsHealthy ?? 0, turnsCarrying);

/** What the wrench turns a taper plug on by at most; its thread is taken to be longer by that where nobody measured it. */
const spareTurns = 3;

const measured = ({ goodFrom_mm, goodTo_mm }: SectionInput): boolean => goodFrom_mm !== null || goodTo_mm !== null;

/** The states along the depth, from the face inward, without gaps. */
function bandsOf(input: SectionInput, { depth_mm, engaged_mm }: Lengths): readonly HoleTurn[] {
  const inHole = (y: number): number => Math.min(Math.max(y, 0), depth_mm);
  const known = measured(input);
  const from = inHole(known ? (input.goodFrom_mm ?? 0) : engaged_mm - input.turnsCarrying * input.P_mm);
  const to = Math.max(from, inHole(known ? (input.goodTo_mm ?? depth_mm) : depth_mm));
  const end = Math.min(Math.max(engaged_mm, from), to);
  const height = input.condition === "gone" ? 0 : Math.min(Math.max(input.heightLeft, 0), 1);
  const state = height === 0 ? "gone" : input.condition === "good" ? "sound" : "worn";
  const bands: readonly HoleTurn[] = [
    { from_mm: 0, to_mm: from, state: "gone", height: 0 },
    { from_mm: from, to_mm: end, state, height },
    { from_mm: end, to_mm: to, state: "beyond the plug", height: 1 },
    { from_mm: to, to_mm: depth_mm, state: "gone", height: 0 },
  ];
  return bands.filter(({ from_mm, to_mm }) => to_mm - from_mm > 1e-9);
}

function counted(bands: readonly HoleTurn[], P_mm: number): PortSection["count"] {
  const sum = (state: HoleTurn["state"]): number =>
    bands.reduce((turns, band) => turns + (band.state === state ? (band.to_mm - band.from_mm) / P_mm : 0), 0);
  return { sound: sum("sound"), worn: sum("worn"), gone: sum("gone"), "beyond the plug": sum("beyond the plug") };
}

function dimensionsOf(input: SectionInput, lengths: Lengths): readonly SectionDimension[] {
  const { depth_mm, reach_mm, behind_mm, tip_mm } = lengths;
  const { thickness_mm } = input.seal;
  const byTurns = wedged(input, lengths.chamfer_mm) !== null;
  const reachKnown = byTurns ? turnsIn(input) > 0 : input.underHead_mm !== null && input.chamfer_mm !== null;
  const reach = reachKnown ? reach_mm : null;
  const drawn = (value: number | null): "true" | "unknown" => (value === null ? "unknown" : "true");
  const seal: SectionDimension = {
    id: "seal",
    from_mm: -thickness_mm,
    to_mm: 0,
    value_mm: thickness_mm,
    drawn: "true",
  };
  const shortened = (input.roomBehind_mm ?? 0) > behind_mm - depth_mm + 1e-9;
  const room = input.roomBehind_mm;
  const tipKnown = reach !== null && input.chamfer_mm !== null;
  const clear = room === null || !tipKnown || input.threadDepth_mm === null ? null : depth_mm + room - tip_mm;
  const clearance: SectionDimension = {
    id: "clear",
    from_mm: Math.min(tip_mm, behind_mm),
    to_mm: Math.max(tip_mm, behind_mm),
    value_mm: clear,
    drawn: shortened ? "shortened" : "true",
  };
  return [
    ...(thickness_mm > 0 ? [seal] : []),
    { id: "depth", from_mm: 0, to_mm: depth_mm, value_mm: input.threadDepth_mm, drawn: drawn(input.threadDepth_mm) },
    {
      id: "behind",
      from_mm: depth_mm,
      to_mm: behind_mm,
      value_mm: input.roomBehind_mm,
      drawn: shortened ? "shortened" : drawn(input.roomBehind_mm),
    },
    { id: "reach", from_mm: 0, to_mm: reach_mm, value_mm: reach, drawn: drawn(reach) },
    ...(clear === null || tip_mm <= depth_mm ? [] : [clearance]),
  ];
}
