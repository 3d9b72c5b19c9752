import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { mm, percent } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";
import type { Thread } from "../threads/thread.ts";
import type { ThreadForm } from "../threads/threadForm.ts";

const lessPitch = formula("D_t = d - P", { d: mm, P: mm, D_t: mm }, "common practice, no source");

/** The tapping drill D_t of a parallel thread: of G from its table, as its threads are deeper than they seem; else d - P. */
export const tappingDrill = (thread: Thread): Quantity => (thread.type === "G" ? thread.drill : lessPitch(thread));

/** How much of a thread a drill leaves, as American tables count it: of twice the depth of a full sharp-rooted thread. */
export const percentOfThread = formula(
  "q = (d - D_t) / (3/4 * sqrt(3) * P)",
  { d: mm, D_t: mm, P: mm, q: percent },
  "Machinery's Handbook, tapping drills: percentage of full thread",
);

/** The same counted of the depth that ISO threads have at most. */
export const percentOfIsoThread = formula(
  "q = (d - D_t) / (5/8 * sqrt(3) * P)",
  { d: mm, D_t: mm, P: mm, q: percent },
  "ISO 68-1:1998: twice 5/8 H",
);

const percentOfWhitworth = formula(
  "q = (d - D_t) / (2 * 0.640327 * P)",
  { d: mm, D_t: mm, P: mm, q: percent },
  "ISO 228-1:2000, 3: twice the height of the thread",
);

/** How much of its own thread a drill leaves. */
export const shareOfThread = (type: Thread["type"], { d, P }: Pick<ThreadForm, "d" | "P">, D_t: Quantity): Quantity =>
  (type === "G" ? percentOfWhitworth : percentOfThread)({ d, D_t, P });

const clearOf = formula("c = D_t - d - e", { D_t: mm, d: mm, e: mm, c: mm }, "plain geometry");

/** How far a torn thread reaches over its nominal diameter. */
const tornOver: Quantity = taken(
  "e",
  uniform(0, 0.4),
  mm,
  sourceText(judgement("major diameters of torn threads stand up to 0.4 mm over the nominal")),
);

/** By how much the drill of a larger thread clears the torn one, on the diameter: below 0 it bites in the old crests. */
export const clearOfTorn = (torn: Thread, larger: Thread): Quantity =>
  clearOf({ D_t: tappingDrill(larger), d: torn.d, e: tornOver });

/** What clears the torn thread at its largest by less than this only just clears it, mm. */
const surely_mm = 0.5;

/** Whether a larger thread clears the torn one at its largest, and by enough to be sure of it. */
export function clears(torn: Thread, larger: Thread): "surely" | "just" | "not" {
  const least_mm = leastClearance(torn, larger) * 1e3;
  if (least_mm < -1e-9) return "not";
  return least_mm >= surely_mm ? "surely" : "just";
}

/** The clearance over the torn thread at its largest, m. */
export const leastClearance = (torn: Thread, larger: Thread): number => clearOfTorn(torn, larger).value - 0.2e-3;
