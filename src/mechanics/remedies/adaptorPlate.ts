import type { PortCase } from "./portCase.ts";
import { cuttingChecks, type Repair, repairOf } from "./repair.ts";

/** A plate with a new opening, bolted over a gasket to the sound flat around: where the hole itself has no metal left. */
export const adaptorPlate = (portCase: PortCase): Repair =>
  repairOf(portCase, "adaptor plate", {
    bound: ["1 structure", "2 pressure", "3 combustion", "13 not asked", "14 breather"],
    lasting: true,
    checks: cuttingChecks(portCase),
  });
