import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { mm, percent } from "../quantity/unit.ts";
import { metricSizes } from "../tables/iso261.ts";
import { plugDiameters_mm } from "../tables/plugRings.ts";
import { judgement, sourceText } from "../tables/source.ts";
import { type MetricThread, metricThread } from "../threads/metricThread.ts";

/** The tapping drill D_t of a thread. */
export const tappingDrill = formula("D_t = d - P", { d: mm, P: mm, D_t: mm }, "common practice, no source");

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

const clearOf = formula("c = D_t - d - e", { D_t: mm, d: mm, e: mm, c: mm }, "plain geometry");

/** How far a torn thread reaches over its nominal diameter. */
const tornOver: Quantity = taken(
  "e",
  uniform(0, 0.4),
  mm,
  sourceText(judgement("major diameters of torn threads stand up to 0.4 mm over the nominal")),
);

/** By how much the drill of a larger thread clears the torn one, on the diameter: below 0 it bites in the old crests. */
export const clearOfTorn = (torn: MetricThread, larger: MetricThread): Quantity =>
  clearOf({ D_t: tappingDrill(larger), d: torn.d, e: tornOver });

/**
 * The next thread up that a torn one may be cut to: of the diameters that plugs and their rings are made in, of the same
 * pitch or else 1.5 mm, the first whose drill takes the whole of the torn thread; null where there is none.
 */
export function nextSize(torn: MetricThread): MetricThread | null {
  const [d_mm, P_mm] = [1e3 * torn.d.value, 1e3 * torn.P.value];
  const fits = (pitch_mm: number): MetricThread | undefined =>
    metricSizes
      .filter((it) => Math.abs(it.P_mm - pitch_mm) < 1e-9 && it.d_mm > d_mm && isPlugSize(it.d_mm))
      .map((it) => metricThread(it.d_mm, it.P_mm))
      .find((larger) => leastOf(clearOfTorn(torn, larger)) >= -1e-9);
  return fits(P_mm) ?? fits(1.5) ?? null;
}

/** What clears the torn thread at its largest by less than this only just clears it, mm. */
const surely_mm = 0.5;

/** Whether a larger thread clears the torn one at its largest, and by enough to be sure of it. */
export function clears(torn: MetricThread, larger: MetricThread): "surely" | "just" | "not" {
  const least_mm = leastOf(clearOfTorn(torn, larger)) * 1e3;
  if (least_mm < -1e-9) return "not";
  return least_mm >= surely_mm ? "surely" : "just";
}

const leastOf = (clear: Quantity): number => clear.value - 0.2e-3;

const largestRing_mm = Math.max(...plugDiameters_mm);
const isPlugSize = (d_mm: number): boolean => plugDiameters_mm.includes(d_mm) || d_mm > largestRing_mm;
