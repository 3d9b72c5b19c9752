import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { d, km, km_d, min } from "../quantity/unit.ts";
import { judgement, type Source } from "../tables/source.ts";
import { rateAt, type Use } from "./dueUse.ts";

/** A look after a seal was repaired. */
export type DueCheck =
  | { readonly id: "wipe dry" }
  | { readonly id: "first look"; readonly after: Quantity }
  | { readonly id: "first hot run"; readonly from: Quantity; readonly to: Quantity }
  | { readonly id: "next day"; readonly after: Quantity }
  | { readonly id: "by distance"; readonly after: Quantity }
  | { readonly id: "each service" };

/** The looks that follow a repaired seal, in their order. */
export const checksAfterRepair: { readonly checks: readonly DueCheck[]; readonly source: Source } = {
  checks: [
    { id: "wipe dry" },
    { id: "first look", after: exact("t", 30, min) },
    { id: "first hot run", from: exact("D", 20, km), to: exact("D", 30, km) },
    { id: "next day", after: exact("t", 1, d) },
    { id: "by distance", after: exact("D", 500, km) },
    { id: "each service" },
  ],
  source: judgement("a repaired seal is looked at early and often"),
};

/** The days in which a distance is driven, with the ends that 1 in 20 lie beyond on each side. */
export function daysToDistance(distance: Quantity, use: Use) {
  const days = (r: Quantity): Quantity => inDays({ D: distance, r });
  return { likely: days(use.rate), earliest: days(rateAt(use, 0.95)), latest: days(rateAt(use, 0.05)) };
}

const inDays = formula("t = D / r", { D: km, r: km_d, t: d }, "distance over use");
