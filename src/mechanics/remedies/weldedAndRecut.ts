import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";

/** The boss welded up, dressed and cut anew, with the part off the machine and its alloy known. */
export const weldedAndRecut = (portCase: PortCase): Repair =>
  repairOf(portCase, "welded and re-cut", {
    bound: ["1 structure", "9 alloy", "13 not asked"],
    lasting: true,
    checks: [{ type: "eyes, gear and cylinder covered" }],
  });
