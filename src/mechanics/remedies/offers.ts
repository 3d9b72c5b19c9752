import { referenceAir } from "../cure/air.ts";
import { cureClocks } from "../cure/clocks.ts";
import { ordinaryFront } from "../cure/front.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC, h, mm } from "../quantity/unit.ts";
import type { MethodEstimate } from "../tables/methodEstimates.ts";
import type { RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import type { Remedy } from "./remedy.ts";
import type { Repair, Stands } from "./repair.ts";
import { estimateOf } from "./shopFigures.ts";

/** A remedy or a repair, as far as ranking and price ask. */
export type Offer = {
  readonly id: RemedyId;
  readonly lasting: boolean;
  readonly stands: Stands;
  readonly narrow: boolean;
  /** Hours from closing until the machine may leave; null where nobody can say beforehand. */
  readonly readyAfter_h: number | null;
  readonly estimate: MethodEstimate;
};

/** A closure of what is left as an offer. */
export const offerOfRemedy = (remedy: Remedy, portCase: PortCase): Offer => ({
  id: remedy.id,
  lasting: remedy.lasting,
  stands: remedy.refused ? "refused" : remedy.window?.open ? "fits" : "window empty",
  narrow: remedy.window?.narrow ?? false,
  readyAfter_h: readyAfter_h(remedy, portCase),
  estimate: estimateOfRemedy(remedy, portCase),
});

/** Another seal on a hurt thread is the same thread pulled to less, and comes back as often as that does. */
function estimateOfRemedy({ id, lasting }: Remedy, { shop }: PortCase): MethodEstimate {
  const estimate = estimateOf(id, shop);
  if (lasting || !id.startsWith("other seal") || shop.of[id]?.comesBack) return estimate;
  return { ...estimate, comesBack: estimateOf("lower torque", shop).comesBack };
}

/** A repair as an offer. */
export const offerOfRepair = ({ id, lasting, stands, closed, readyAfter_h: ready, estimate }: Repair): Offer => ({
  id,
  lasting,
  stands,
  narrow: closed?.window?.narrow ?? false,
  readyAfter_h: ready,
  estimate,
});

const seatOf = formula("w = (D_o - D_i) / 2", { D_o: mm, D_i: mm, w: mm }, "plain geometry: the width of a ring");

/**
 * When the machine may leave, h after it was closed: at once, or once a curing sealant is cured through its seat by the
 * slowest of ordinary ones, in the air of the bay: where nobody says how warm that is, as warm as the case; how humid, as in
 * the reference air. Null where no temperature is known.
 */
export function readyAfter_h({ closure, id }: Remedy, { port, air: bay, shop }: PortCase): number | null {
  if (closure.seal.kind !== "sealant, metal to metal") return estimateOf(id, shop).readyAfter_h;
  const T = bay.temperature ?? port.temperature;
  if (!T) return null;
  const T_degC = valueIn(degC, T);
  if (T_degC < coldest_degC || T_degC > hottest_degC) return null;
  const width: Quantity = seatOf({ D_o: closure.seal.outside, D_i: closure.seal.inside });
  const air = { T, RH: bay.humidity ?? referenceAir.RH };
  const { curedThrough } = cureClocks({ width, open: "one edge", air, front: ordinaryFront, label: null });
  return valueIn(h, curedThrough.most);
}

/** Between these a bay may be; a hot case is not the air that cures the bead. */
const coldest_degC = 5;
const hottest_degC = 40;
