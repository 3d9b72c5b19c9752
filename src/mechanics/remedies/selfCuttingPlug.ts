import type { PortCase } from "./portCase.ts";
import { makeDoRules, type Repair, repairOf } from "./repair.ts";

/** An oversize plug that cuts its own way: gets a thin steel pan home, ruins the next size, and is never advised otherwise. */
export const selfCuttingPlug = (portCase: PortCase): Repair =>
  repairOf(portCase, "self-cutting plug", {
    bound: makeDoRules,
    lasting: false,
    whyNot: portCase.port.material === "pressed steel" ? null : "only thin steel pans",
    checks: [{ type: "eyes, gear and cylinder covered" }],
  });
