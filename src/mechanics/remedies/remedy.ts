import type { Closure } from "../joint/port.ts";
import { valueIn } from "../quantity/quantity.ts";
import { turn } from "../quantity/unit.ts";
import type { PortCase } from "./portCase.ts";
import { type MakeDo, refusalOf } from "./refusalRules.ts";
import { refusedClosure, turnsOf, type WeighedClosure, weighedClosure } from "./weighedClosure.ts";

/** A way of closing a hurt port. */
export type Remedy = WeighedClosure & {
  readonly id: RemedyId;
  /** A repair that stays, or a make-do with an end date. */
  readonly lasting: boolean;
  readonly checks: readonly Check[];
};

export type RemedyId =
  | "lower torque"
  | "longer plug"
  | "longer plug, bonded seal"
  | "other seal: aluminium"
  | "other seal: copper"
  | "other seal: fibre"
  | "other seal: crush ring"
  | "other seal: bonded seal"
  | "other seal: O-ring"
  | "sealant, no washer";

/** What has to be looked at before a remedy is begun. */
export type Check =
  | { readonly type: "plug length"; readonly underHead_mm: number; readonly longerBy_mm: number }
  | { readonly type: "stands out behind"; readonly by_mm: number; readonly room_mm: number }
  | { readonly type: "room behind not measured" }
  | { readonly type: "ends in the hole" }
  | { readonly type: "thread beyond the plug looked at" }
  | { readonly type: "seat flat and clean" }
  | { readonly type: "chamfer cut for the ring" }
  | { readonly type: "rubber suits fluid and heat" }
  | { readonly type: "dry and degreased, level below the joint" }
  | { readonly type: "label names this fluid" }
  | { readonly type: "nothing inside, thin on the seat" };

/** A method that may not be begun, with what would have to be measured or why it gains nothing. */
export type NotOffered = { readonly id: RemedyId; readonly reason: NotOfferedReason };

export type NotOfferedReason =
  | "plug length not measured"
  | "depth not measured"
  | "thread ends where the plug ends"
  | "no room behind";

/**
 * A closure as a remedy. It is a make-do, and so under the refusal rules, unless it has the full strength of a healthy
 * port again.
 */
export function remedyOf(
  portCase: PortCase,
  id: RemedyId,
  closure: Closure,
  makeDo: MakeDo,
  checks: readonly Check[],
): Remedy {
  const turns = turnsOf(portCase, closure);
  const lasting = !makeDo.sealantAlone && hasFullStrength(portCase, closure);
  const refused = lasting ? null : refusalOf(makeDo, portCase, turns);
  const weighed = refused || !turns ? null : weighedClosure(portCase, closure, turns);
  if (weighed) return { ...weighed, id, lasting, checks };
  const refusal = refused ?? refusalOf(makeDo, portCase, null);
  if (!refusal) throw new Error(`${id}: no turns and no refusal`);
  return { ...refusedClosure(closure, turns, refusal), id, lasting, checks };
}

/** At least 80 % of the healthy turns, good and snug: the joint bears what it always bore. */
function hasFullStrength(portCase: PortCase, closure: Closure): boolean {
  const { port, levels } = portCase;
  const turns = turnsOf(portCase, closure);
  if (!turns || !port.healthy || port.left.condition !== "good" || port.left.catch !== "snug") return false;
  const healthy = valueIn(turn, port.healthy.turns);
  return valueIn(turn, turns.caught) >= levels.healthyFrom * healthy - 1e-9;
}
