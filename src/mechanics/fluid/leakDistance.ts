import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { km, ml, ml_km, ml_mm, mm } from "../quantity/unit.ts";
import { doubtOf } from "./levelDoubt.ts";
import { volumeLost } from "./levelVolumes.ts";

/** What was lost over a distance. */
export type LossOverDistance =
  | { readonly type: "loses"; readonly lost: Quantity; readonly perDistance: Quantity; readonly per100km_ml: number }
  /** The level tells of no loss; at most this much would have gone unseen 19 times in 20. */
  | { readonly type: "no loss seen"; readonly lost: Quantity; readonly most: Quantity };

/**
 * The loss q per distance, from the level `then` (after the last service) and the level on arrival `now`, each against the
 * lip, over the `distance` between. A plug at or above the oil leaks by splash and heat, so distance tells more than days.
 */
export function lossOverDistance(k: Quantity, then: Quantity, now: Quantity, distance: Quantity): LossOverDistance {
  const lost = volumeLost(k, then, now);
  const doubt = doubtOf(lost);
  if (lost.value <= doubt) {
    const most = exact("V", Math.max(0, lost.value + doubt) / ml.inSI, ml, "one-sided, 19 in 20");
    return { type: "no loss seen", lost, most: per({ V: most, s: distance }) };
  }
  const perDistance = per({ V: lost, s: distance });
  return { type: "loses", lost, perDistance, per100km_ml: (100 * perDistance.value) / ml_km.inSI };
}

/** The distance s in which a margin of volume is lost. */
export const distanceFor = (margin: Quantity, perDistance: Quantity): Quantity =>
  lasting({ V: margin, q: perDistance });

/** The fall of level Dh a flow or loss makes. */
export const fallFor = (lost: Quantity, k: Quantity): Quantity => fall({ V: lost, k });

const per = formula("q = V / s", { V: ml, s: km, q: ml_km }, "plain rate");
const lasting = formula("s = V / q", { V: ml, q: ml_km, s: km }, "margin over rate");
const fall = formula("Dh = V / k", { V: ml, k: ml_mm, Dh: mm }, "plain geometry");
