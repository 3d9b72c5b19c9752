import { materialRows } from "../tables/materialRows.ts";
import { wholeAgain } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { magnesiumChecks, type Repair, repairOf } from "./repair.ts";

/**
 * The boss welded up, dressed and cut anew, with the part off the machine and its alloy known. Pressure die-castings weld
 * badly for the gas in their pores (Aluminium casting alloy data sheets rate EN AC-46000 unsuitable; from memory), and
 * magnesium is nothing for a common bay: both by a specialist.
 */
export const weldedAndRecut = (portCase: PortCase): Repair =>
  repairOf(portCase, "welded and re-cut", {
    bound: ["1 structure", "9 alloy", "13 not asked"],
    lasting: true,
    checks: [
      { type: "eyes, gear and cylinder covered" },
      ...magnesiumChecks(portCase.port, portCase.asked),
      ...(isDieCast(portCase) ? ([{ type: "welds badly" }] as const) : []),
    ],
    repaired: wholeAgain(portCase),
  });

const isDieCast = ({ port }: PortCase): boolean => materialRows[port.material].shearRatio === "shear ratio die-cast";
