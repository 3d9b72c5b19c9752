import type { PortCase } from "./portCase.ts";
import { cuttingChecks, type Repair, repairOf } from "./repair.ts";

/** A stud and a nut, or a bolt right through: spares a casting that is often undone. It closes no opening. */
export const studAndNut = (portCase: PortCase): Repair =>
  repairOf(portCase, "stud and nut", {
    bound: ["1 structure", "6 crack", "13 not asked"],
    lasting: true,
    checks: cuttingChecks(portCase),
  });
