import { triangular } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { mm, turn } from "../quantity/unit.ts";
import { gaugePlane } from "../threads/pipeLimits.ts";
import type { TaperThread } from "../threads/thread.ts";

/** What turns say of a taper thread, which seals on itself and has no torque window. */
export type TaperTurns = {
  readonly thread: TaperThread;
  /** Turns by hand of a plug in a hole that are both at their gauges, and with both off by what they may be either way. */
  readonly byHand: Quantity;
  readonly least: Quantity;
  readonly most: Quantity;
  /** Turns by wrench after those. */
  readonly byWrench: Quantity;
  /** Turns engaged once it is tight. */
  readonly engaged: Quantity;
  /** How a count by hand stands to that; null where nobody counted. */
  readonly counted: "too few" | "as gauged" | "too many" | null;
};

const GAUGES =
  "ISO 7-1:1994, table 1: the plug a turn off at most, the hole a turn and a quarter; ASME B1.20.1-2013, 4: each a turn (both from memory)";

const handTurns = formula("n_h = L / P", { L: mm, P: mm, n_h: turn }, GAUGES);
const fewest = formula("n_min = n_h - n_t - n_T", { n_h: turn, n_t: turn, n_T: turn, n_min: turn }, GAUGES);
const greatest = formula("n_max = n_h + n_t + n_T", { n_h: turn, n_t: turn, n_T: turn, n_max: turn }, GAUGES);
const together = formula("n = n_h + n_w", { n_h: turn, n_w: turn, n: turn }, "plain geometry");

const ofPlug: Quantity = exact("n_t", 1, turn, GAUGES);
const ofHole = ({ type }: TaperThread): Quantity => exact("n_T", type === "NPT" ? 1 : 1.25, turn, GAUGES);
const wrenchTurns: Quantity = taken(
  "n_w",
  triangular(1.5, 2, 3),
  turn,
  "1.5 to 3 turns by wrench (common practice, no source; ASME B1.20.1 reckons with three, from memory)",
);

/** What turns say of a taper thread, `counted` by hand or null. */
export function taperTurns(thread: TaperThread, counted: Quantity | null): TaperTurns {
  const plane = gaugePlane(thread);
  if (!plane) throw new Error(`${thread.designation} has no gauge plane`);
  const byHand = handTurns({ L: plane.length, P: thread.P });
  const off = { n_t: ofPlug, n_T: ofHole(thread) };
  const least = fewest({ n_h: byHand, ...off });
  const most = greatest({ n_h: byHand, ...off });
  const engaged = together({ n_h: byHand, n_w: wrenchTurns });
  return { thread, byHand, least, most, byWrench: wrenchTurns, engaged, counted: stood() };

  function stood(): TaperTurns["counted"] {
    if (!counted) return null;
    if (counted.value < least.value - 1e-9) return "too few";
    return counted.value > most.value + 1e-9 ? "too many" : "as gauged";
  }
}
