import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { deg, mm, turn } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";

/** How deep the tip of a tap goes for a full thread down to l_0: the point before it cuts none. */
export const tipDepth = formula("l_s = l_0 + o", { l_0: mm, o: mm, l_s: mm }, "plain geometry");

/** Where to stop a tap: its depth below the face, in turns. */
export const stopTurns = formula("n_s = l_s / P", { l_s: mm, P: mm, n_s: turn }, "plain geometry");

const crookedOf = formula("s = L * tan(a)", { L: mm, a: deg, s: mm }, "plain geometry");

/** How far a tap held by hand leaves the axis over a length, s. */
export const crookedness = (L: Quantity): Quantity =>
  crookedOf({
    L,
    a: taken("a", uniform(0.5, 2), deg, sourceText(judgement("taps held by hand, checked with a square"))),
  });
