import { valueIn } from "../quantity/quantity.ts";
import { turn } from "../quantity/unit.ts";
import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf, type WhyNot } from "./repair.ts";

/** How many turns of a healthy port may be hurt for it to be the first thread only (judgement). */
const hurtAtMost = 1.5;

/** The first thread cleaned and rolled back with a restorer; what is left is counted again afterwards, so no torque yet. */
export const firstThreadCleaned = (portCase: PortCase): Repair =>
  repairOf(portCase, "first thread cleaned", {
    bound: ["6 crack", "13 not asked", "14 breather"],
    lasting: true,
    whyNot: whyNotClean(portCase),
    checks: [{ type: "clean with the right thread" }, { type: "count again" }],
    repaired: rolledBack(portCase),
  });

/** At best every turn of a healthy port catches again. */
function rolledBack(portCase: PortCase): PortCase | null {
  const { port } = portCase;
  if (!port.healthy) return null;
  const { turns, withWasher } = port.healthy;
  return {
    ...portCase,
    port: { ...port, left: { ...port.left, turns, withWasher, condition: "good", catch: "snug" } },
  };
}

function whyNotClean({ port }: PortCase): WhyNot | null {
  const { left, healthy } = port;
  if (left.condition === "gone" || left.catch === "slides over") return "nothing is left to clean";
  if (!left.turns || !healthy) return null;
  const hurt = valueIn(turn, healthy.turns) - valueIn(turn, left.turns);
  return hurt > hurtAtMost + 1e-9 ? "more than the first thread is hurt" : null;
}
