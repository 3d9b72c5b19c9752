import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { metricSizes } from "../tables/iso261.ts";
import { judgement, sourceText } from "../tables/source.ts";
import { type MetricThread, metricThreadOf } from "../threads/metricThread.ts";
import { isTaper, type Thread } from "../threads/thread.ts";
import type { RepairCheck } from "./repairCheck.ts";

const wallOf = formula(
  "t_b = (D_o - 1.227 * P_o - 1.02 * d) / 2",
  { D_o: mm, P_o: mm, d: mm, t_b: mm },
  "root of the outer thread (17/12 H) against the bore with 2 % over its major (judgement)",
);

/** The least wall of a steel bush. */
export const leastBushWall: Quantity = exact("t_0", 1.2, mm, sourceText(judgement("least wall of a steel bush")));

/** The least depth that a bush is let into. */
export const leastBushLength: Quantity = exact("L_b", 8, mm, sourceText(judgement("bushes run 8 to 12 mm long")));

/** The wall t_b that a bush of outer thread `outer` has around the plug's thread. */
export const bushWall = (outer: MetricThread, inner: Thread): Quantity =>
  wallOf({ D_o: outer.d, P_o: outer.P, d: inner.d });

/**
 * The outer thread of a bush: of the diameters of the first and second choice, which kits and taps are made in, the first at
 * least 4 mm over the plug's whose wall is enough, in the plug's own fine pitch or 1.5 mm; of 1 mm pitch where there is none
 * so. Whatever the plug's standard, the bush is metric outside. Null where there is none so large, and for a taper plug.
 */
export function bushThread(inner: Thread): MetricThread | null {
  if (isTaper(inner)) return null;
  const [d_mm, P_mm] = [1e3 * inner.d.value, 1e3 * inner.P.value];
  const first = (pitch_mm: number): MetricThread | undefined =>
    metricSizes
      .filter((it) => Math.abs(it.P_mm - pitch_mm) < 1e-9 && it.d_mm >= d_mm + 4 - 1e-9)
      .filter((it) => it.choice !== 3 && !reserved.includes(it.designation))
      .map(metricThreadOf)
      .find((outer) => bushWall(outer, inner).value >= leastBushWall.value - 1e-12);
  return first(inner.type === "metric" ? Math.min(1.5, P_mm) : 1.5) ?? first(1) ?? null;
}

/** The bush as a check; the thread inside is named where it is not of the standard that is outside. */
export const bushCheck = (outer: string, inner: Thread, wall_mm: number): RepairCheck => ({
  type: "bush",
  outer,
  inner: inner.type === "metric" ? null : inner.designation,
  wall_mm,
});

/** Threads that ISO 261 keeps for spark plugs and for locking nuts of bearings. */
const reserved: readonly string[] = ["M14x1.25", "M35x1.5"];
