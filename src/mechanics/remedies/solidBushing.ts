import { exact, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { standardLimits } from "../threads/threadLimits.ts";
import { bushCheck, bushThread, bushWall, leastBushLength, leastBushWall } from "./fitBush.ts";
import { need } from "./fitNeed.ts";
import { tappingDrill } from "./fitTapping.ts";
import { fullTurns } from "./fullTurns.ts";
import { handCut } from "./handCut.ts";
import { atTheFace, cutNew, weighedInsert } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { newThreadRules, type Repair, repairOf } from "./repair.ts";
import { taperWhyNot } from "./taperPort.ts";

/** A steel bush with a shoulder, locked in a larger thread: the original plug, on a new face. */
export function solidBushing(portCase: PortCase): Repair {
  const { port } = portCase;
  const outer = bushThread(port.thread);
  if (!outer)
    return repairOf(portCase, "solid bushing", {
      bound: newThreadRules,
      lasting: true,
      whyNot: taperWhyNot(port) ?? "no bush of this size",
    });
  const cut = handCut(portCase, outer, tappingDrill(outer));
  const { depth } = cut;
  const t_b = bushWall(outer, port.thread);
  const repaired = depth && { ...portCase, port: { ...port, left: cutNew(atTheFace, depth) } };
  return repairOf(portCase, "solid bushing", {
    bound: newThreadRules,
    lasting: true,
    needs: [
      need("depth", depth, leastBushLength),
      need("wall of the bush", t_b, leastBushWall),
      ...cut.needs,
      ...(repaired ? fullTurns(portCase, repaired) : []),
    ],
    said: cut.said,
    checks: [...cut.drilling, bushCheck(outer.designation, port.thread, valueIn(mm, t_b)), ...cut.tapping],
    sums: [t_b, ...cut.sums],
    repaired,
    insert: depth && { material: "steel", outer_mm: valueIn(mm, outer.d), from_mm: 0, to_mm: valueIn(mm, depth) },
    closed: () =>
      depth &&
      weighedInsert(
        portCase,
        { from: exact("z_1", 0, mm, "the face of the bush"), to: depth },
        {
          thread: outer,
          limits: standardLimits(outer),
          from: atTheFace,
          to: depth,
          tableFactor: null,
        },
      ),
  });
}
