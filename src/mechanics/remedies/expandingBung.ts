import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";

/** An expanding rubber bung: keeps the fluid in while the machine waits, and is never run on. */
export const expandingBung = (portCase: PortCase): Repair =>
  repairOf(portCase, "expanding bung", {
    // What stands is not in use: how many turns are left and what the oil would reach does not matter to it.
    bound: ["1 structure", "2 pressure", "3 combustion", "6 crack", "13 not asked", "14 breather"],
    lasting: false,
  });
