import type { CarryingTurns } from "../joint/carryingTurns.ts";
import { isSound } from "../joint/health.ts";
import type { Closure } from "../joint/port.ts";
import { valueIn } from "../quantity/quantity.ts";
import { turn } from "../quantity/unit.ts";
import { jointRows } from "../tables/jointKinds.ts";
import { isSealantAlone, type Method, type RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import { type Refusal, refusalOf } from "./refusalRules.ts";
import { refusedClosure, turnsOf, type WeighedClosure, weighedClosure } from "./weighedClosure.ts";

/** A way of closing a hurt port. */
export type Remedy = WeighedClosure & {
  readonly id: RemedyId;
  /** A repair that stays, or a make-do with an end date. */
  readonly lasting: boolean;
  readonly checks: readonly Check[];
};

/** What has to be looked at before a remedy is begun. */
export type Check =
  | { readonly type: "plug length"; readonly underHead_mm: number; readonly longerBy_mm: number }
  | { readonly type: "stands out behind"; readonly by_mm: number; readonly room_mm: number }
  | { readonly type: "room behind not measured" }
  | { readonly type: "ends in the hole" }
  | { readonly type: "thread beyond the plug looked at" }
  | { readonly type: "seat flat and clean" }
  /** `blind` where nobody measured how near to the face the turns begin that it may take. */
  | {
      readonly type: "chamfer cut for the ring";
      readonly from_mm: number;
      readonly to_mm: number;
      readonly blind: boolean;
    }
  | { readonly type: "rubber suits fluid and heat" }
  | { readonly type: "dry and degreased, level below the joint" }
  | { readonly type: "label names this fluid" }
  | { readonly type: "nothing inside, thin on the seat" }
  | { readonly type: "cap pressure test" }
  | { readonly type: "rated and pressure tested" }
  | { readonly type: "pressure and vacuum test" };

/** A method that may not be begun, with what would have to be measured or why it gains nothing. */
export type NotOffered = { readonly id: RemedyId; readonly reason: NotOfferedReason };

export type NotOfferedReason =
  | "plug length not measured"
  | "depth not measured"
  | "thread ends where the plug ends"
  | "no room behind";

/**
 * A closure as a remedy. It is a make-do, and so under all of the refusal rules, unless it has the full strength of a
 * healthy port again.
 */
export function remedyOf(
  portCase: PortCase,
  id: RemedyId,
  closure: Closure,
  checks: readonly Check[],
  /** What the table of ports has against it besides. */
  forbidden: Refusal | null,
): Remedy {
  const turns = turnsOf(portCase, closure);
  const makeDo: Method = { id, seal: closure.seal, fullStrength: false };
  const lasting = id !== "lower torque" && !isSealantAlone(makeDo) && hasFullStrength(portCase, turns);
  const refused = refusalOf({ ...makeDo, fullStrength: lasting }, portCase, turns) ?? forbidden;
  if (refused) return { ...refusedClosure(closure, turns, refused), id, lasting, checks };
  if (!turns) throw new Error(`${id}: no turns and no refusal`);
  return { ...weighedClosure(portCase, closure, turns), id, lasting, checks: [...checks, ...testsAfter(portCase)] };
}

/** At least 80 % of the healthy turns, good and snug: the joint bears what it always bore. */
function hasFullStrength({ port, levels }: PortCase, turns: CarryingTurns | null): boolean {
  if (!turns || !port.healthy || !isSound(port, levels)) return false;
  const healthy = valueIn(turn, port.healthy.turns);
  return valueIn(turn, turns.caught) >= levels.healthyFrom * healthy - 1e-9;
}

/** What has to be tested once it is closed, by what stands behind the port. */
function testsAfter({ joint, asked }: PortCase): readonly Check[] {
  const { coolant, workingPressure, waterSide } = jointRows[joint];
  const pressurised = asked.pressure !== null && asked.pressure !== "none" && asked.pressure.value > 0;
  if (coolant) return [{ type: "cap pressure test" }];
  if (workingPressure || pressurised) return [{ type: "rated and pressure tested" }];
  return waterSide || asked.reaches?.includes("water") ? [{ type: "pressure and vacuum test" }] : [];
}
