import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";

/** The opening closed for good, and filled and checked by another that was proven first. */
export const closedForGood = (portCase: PortCase): Repair =>
  repairOf(portCase, "closed for good", {
    bound: ["1 structure", "2 pressure", "3 combustion", "6 crack", "13 not asked", "14 breather"],
    lasting: true,
  });
