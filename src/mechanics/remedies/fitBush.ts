import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { metricSizes } from "../tables/iso261.ts";
import { judgement, sourceText } from "../tables/source.ts";
import { type MetricThread, metricThread } from "../threads/metricThread.ts";

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
export const bushWall = (outer: MetricThread, inner: MetricThread): Quantity =>
  wallOf({ D_o: outer.d, P_o: outer.P, d: inner.d });

/**
 * The outer thread of a bush: the first fine thread at least 4 mm over the plug's whose wall is enough; null where there is
 * none so large.
 */
export function bushThread(inner: MetricThread): MetricThread | null {
  const [d_mm, P_mm] = [1e3 * inner.d.value, Math.min(1.5, 1e3 * inner.P.value)];
  return (
    metricSizes
      .filter((it) => Math.abs(it.P_mm - P_mm) < 1e-9 && it.d_mm >= d_mm + 4 - 1e-9)
      .map((it) => metricThread(it.d_mm, it.P_mm))
      .find((outer) => bushWall(outer, inner).value >= leastBushWall.value - 1e-12) ?? null
  );
}
