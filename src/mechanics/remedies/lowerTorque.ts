import type { PortCase } from "./portCase.ts";
import { type Remedy, remedyOf } from "./remedy.ts";

/**
 * The joint as it is, pulled to less: only where the window of its own seal is open. The table of ports forbids its own plug at no
 * port, so that it is not asked.
 */
export const lowerTorque = (portCase: PortCase): Remedy =>
  remedyOf(portCase, "lower torque", portCase.asFound, [], null);
