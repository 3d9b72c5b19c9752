import type { PortCase } from "./portCase.ts";
import { makeDoRules, type Repair, repairOf } from "./repair.ts";

/** Left as it is: a weep above the level, counted now and looked at again on a named day. */
export const leftAndWatched = (portCase: PortCase): Repair =>
  repairOf(portCase, "left and watched", {
    bound: makeDoRules,
    lasting: false,
    whyNot: portCase.port.left.catch === "slides over" ? "the thread slides over" : null,
  });
