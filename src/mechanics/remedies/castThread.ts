import type { PortCase } from "./portCase.ts";
import { makeDoRules, type Repair, repairOf } from "./repair.ts";

/** A thread cast in filled resin round a greased plug: bone-dry, cool and without pressure, until the season ends. */
export const castThread = (portCase: PortCase): Repair =>
  repairOf(portCase, "cast thread", { bound: makeDoRules, lasting: false });
