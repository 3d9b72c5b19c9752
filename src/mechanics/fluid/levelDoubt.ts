import { normalQuantile } from "../quantity/normal.ts";
import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";

/** How far from its estimate a quantity may lie to one side, 19 times in 20, in SI. JCGM 100:2008, 6.3.3. */
export const doubtOf = (q: Quantity): number => ONE_IN_TWENTY * standardUncertainty(q);

const ONE_IN_TWENTY = normalQuantile(0.95);
