import { shopEstimates } from "../tables/shopEstimates.ts";
import type { ShopFigures } from "./shopFigures.ts";

/** The invented figures, as long as a workshop has none of its own. */
export const inventedFigures: ShopFigures = {
  rate_perHour: shopEstimates.rate_perHour,
  comeback: shopEstimates.comeback,
  of: {},
};
