import { carryingTurns } from "../joint/carryingTurns.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm, one, turn } from "../quantity/unit.ts";
import { type Need, need } from "./fitNeed.ts";
import type { PortCase } from "./portCase.ts";
import { withoutRing } from "./withoutRing.ts";

const asLength = formula("x = n * P", { n: turn, P: mm, x: mm }, "plain geometry");
const share = formula("x = s * n * P", { s: one, n: turn, P: mm, x: mm }, "turns of a healthy port in its own pitch");

/**
 * Whether a new thread gives the length of thread again that a healthy port has, without its ring: a repair of full
 * strength must. Nothing to hold it against where nobody counted a healthy twin.
 */
export function fullTurns({ port, levels }: PortCase, repaired: PortCase): readonly Need[] {
  if (!port.healthy) return [];
  const bare = { ...repaired.asFound, seal: withoutRing(repaired.asFound.seal, "without a ring") };
  const turns = carryingTurns(repaired.port, bare, bare, repaired.ranges);
  if (!turns) return [];
  const has: Quantity = asLength({ n: turns.caught, P: repaired.port.thread.P });
  const s = exact("s", levels.healthyFrom, one, "level healthyFrom");
  return [need("turns of a healthy port", has, share({ s, n: port.healthy.turns, P: port.thread.P }))];
}
