import type { SectionInput } from "./sectionInput.ts";

/** Lengths as drawn: measured ones true, unknown ones a plausible minimum. Depths are below the case face. */
export type Lengths = {
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

/** Room behind over this many diameters is drawn shortened. */
const farBehind = 0.8;

/** What is not known is drawn as short as the rest allows, so that a drawing never promises length nobody measured. */
export function resolved(input: SectionInput): Lengths {
  const { d_mm, P_mm, seal } = input;
  const chamfer_mm = input.chamfer_mm ?? P_mm;
  const least = Math.max(1, input.turnsHealthy ?? 0, input.turnsCarrying) * P_mm + underChamfer_mm(input);
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

/** How far below the face the thread begins under an O-ring in its chamfer. */
export const underChamfer_mm = ({ seal }: SectionInput): number => seal.chamfer_mm ?? 0;

type Stand = Pick<Lengths, "seat_mm" | "reach_mm">;

/** A plug whose head comes down to its ring, or to the face. */
function onTheFace({ underHead_mm, seal: { thickness_mm } }: SectionInput, chamfer_mm: number, least: number): Stand {
  const reach_mm = underHead_mm === null ? least : Math.max(0, underHead_mm - thickness_mm - chamfer_mm);
  return { seat_mm: thickness_mm, reach_mm };
}

/** A taper plug goes in by its turns and no further, whatever its length, so its head stands off; null for any other. */
export function wedged(input: SectionInput, chamfer_mm: number): Stand | null {
  const { taper, seal, P_mm, underHead_mm } = input;
  if (!taper || (seal.kind !== "taper" && seal.kind !== "none")) return null;
  const turned_mm = turnsIn(input) * P_mm || taper.byHand_mm;
  if (underHead_mm === null) return { seat_mm: spareTurns * P_mm, reach_mm: turned_mm };
  const thread_mm = Math.max(0, underHead_mm - chamfer_mm);
  const reach_mm = Math.min(turned_mm, thread_mm);
  return { seat_mm: thread_mm - reach_mm, reach_mm };
}

/** As many turns as a sound taper plug goes in, or as were counted; 0 where nobody counted. */
export const turnsIn = ({ turnsCarrying, turnsHealthy }: SectionInput): number =>
  Math.max(turnsHealthy ?? 0, turnsCarrying);

/** What the wrench turns a taper plug on by at most; its thread is taken to be longer by that where nobody measured it. */
const spareTurns = 3;
