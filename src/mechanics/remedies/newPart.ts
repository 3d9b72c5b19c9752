import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";

/** The part replaced, used or new: nothing refuses it. */
export const newPart = (portCase: PortCase): Repair => repairOf(portCase, "new part", { bound: [], lasting: true });
