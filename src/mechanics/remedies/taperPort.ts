import type { Port } from "../joint/port.ts";
import { isTaper } from "../threads/thread.ts";
import type { WhyNot } from "./repair.ts";

/**
 * A taper thread wants its own reamer, tap and gauge, and an Rp hole has no seat for a ring: no method that cuts threads has
 * fit sums for them here.
 */
export function taperWhyNot({ thread }: Pick<Port, "thread">): WhyNot | null {
  if (!isTaper(thread)) return null;
  return thread.type === "Rp" ? "closed by a taper plug" : "taper thread";
}
