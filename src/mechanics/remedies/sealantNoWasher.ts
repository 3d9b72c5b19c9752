import type { Closure } from "../joint/port.ts";
import { withSeal } from "./otherSeal.ts";
import type { PortCase } from "./portCase.ts";
import { forbiddenHere } from "./portFit.ts";
import { type Check, type Remedy, remedyOf } from "./remedy.ts";

/** No washer, sealant under the head and on the thread: gives back the turns the ring took, and cures before it holds. */
export function sealantNoWasher(portCase: PortCase): Remedy {
  const closure: Closure = {
    ...withSeal(portCase, "sealant, metal to metal", null),
    surface: "wet sealant",
    heldOtherwise: true,
  };
  const checks: readonly Check[] = [
    { type: "dry and degreased, level below the joint" },
    { type: "label names this fluid" },
    { type: "nothing inside, thin on the seat" },
  ];
  const id = "sealant, no washer";
  return remedyOf(portCase, id, closure, checks, forbiddenHere(id, portCase));
}
