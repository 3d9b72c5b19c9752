import type { PortCase } from "./portCase.ts";
import { type Remedy, remedyOf } from "./remedy.ts";

/** The joint as it is, pulled to less: only where the window of its own seal is open. */
export const lowerTorque = (portCase: PortCase): Remedy => remedyOf(portCase, "lower torque", portCase.asFound, []);
