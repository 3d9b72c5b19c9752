import { wholeAgain } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";

/** The part replaced, used or new, its thread whole: nothing refuses it. */
export const newPart = (portCase: PortCase): Repair =>
  repairOf(portCase, "new part", { bound: [], lasting: true, repaired: wholeAgain(portCase) });
