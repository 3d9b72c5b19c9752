import type { HoleTurn, Surface } from "./port.ts";
import { type SealPart, type SealSizes, sealParts } from "./sealOutline.ts";
import type { Insert, SectionInput } from "./sectionInput.ts";
import { type Lengths, resolved, turnsIn, underChamfer_mm, wedged } from "./sectionLengths.ts";
import { boreRadius_mm, type DrawnTurn, type Outline, plugOutline, type Taper, turnsAlong } from "./sectionOutline.ts";

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

/** A round piece about the axis, from one depth below the face to another. */
export type RoundPiece = {
  readonly material: "steel" | "rubber";
  readonly radius_mm: number;
  readonly from_mm: number;
  readonly to_mm: number;
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
  /** What stands in the hole in place of a plug; null where a plug does. */
  readonly bung: readonly RoundPiece[] | null;
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
    bung: null,
    caseRight: body(1),
    caseLeft: body(-1),
    plug: plugOutline(input, seat_mm, reach_mm, chamfer_mm, engaged_mm),
    sealParts: sealParts(seal, headRadius_mm, P_mm),
    turns: (["right", "left"] as const).flatMap((side) => turnsAlong(side, bands, input, depth_mm, engaged_mm)),
    bands,
    dimensions: dimensionsOf(input, lengths),
    count: counted(bands, P_mm),
    doNotFit_turns: measured(input)
      ? 0
      : Math.max(0, input.turnsCarrying - Math.max(0, engaged_mm - underChamfer_mm(input)) / P_mm),
  };
}

const measured = ({ goodFrom_mm, goodTo_mm }: SectionInput): boolean => goodFrom_mm !== null || goodTo_mm !== null;

/** The states along the depth, from the face inward, without gaps. */
function bandsOf(input: SectionInput, { depth_mm, engaged_mm }: Lengths): readonly HoleTurn[] {
  const inHole = (y: number): number => Math.min(Math.max(y, 0), depth_mm);
  const known = measured(input);
  const begins = known ? (input.goodFrom_mm ?? 0) : engaged_mm - input.turnsCarrying * input.P_mm;
  const from = inHole(Math.max(begins, underChamfer_mm(input)));
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
    ...(thickness_mm > 0 && !byTurns ? [seal] : []),
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
