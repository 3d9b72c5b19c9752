import { valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { bushCheck, bushThread, leastBushLength } from "./fitBush.ts";
import { need } from "./fitNeed.ts";
import { wallNeeds } from "./fitWall.ts";
import { wholeAgain } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { newThreadRules, type Repair, repairOf } from "./repair.ts";
import { taperWhyNot } from "./taperPort.ts";

/** A stepped bush turned for the part, bonded and pinned, or let in from inside: for odd sizes, with the part on the bench. */
export function bondedBush(portCase: PortCase): Repair {
  const { port } = portCase;
  // A turned bush has no outer thread; it wants as much metal as the threaded one.
  const outer = bushThread(port.thread);
  if (!outer)
    return repairOf(portCase, "bonded bush", {
      bound: newThreadRules,
      lasting: true,
      whyNot: taperWhyNot(port) ?? "no bush of this size",
    });
  const [wall, quarter] = wallNeeds(port, outer.d);
  return repairOf(portCase, "bonded bush", {
    bound: newThreadRules,
    lasting: true,
    needs: [need("depth", port.threadDepth, leastBushLength), wall],
    said: [quarter],
    checks: [
      bushCheck(`${valueIn(mm, outer.d)} mm`, port.thread, (valueIn(mm, outer.d) - valueIn(mm, port.thread.d)) / 2),
    ],
    sums: wall.has ? [wall.has] : [],
    repaired: wholeAgain(portCase),
    insert: port.threadDepth && {
      material: "steel",
      outer_mm: valueIn(mm, outer.d),
      from_mm: 0,
      to_mm: valueIn(mm, port.threadDepth),
    },
  });
}
