import { formula } from "../quantity/formula.ts";
import { exact, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";
import { wholeAgain } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { makeDoRules, type Repair, repairOf } from "./repair.ts";

/** How far the roughened hole stands over the thread, on the diameter: what a torn one reaches over it at most. */
const keyed = exact("e", 0.4, mm, sourceText(judgement("roughened to where the torn crests end")));
const outside = formula("D_r = d + e", { d: mm, e: mm, D_r: mm }, "plain geometry");

/** A thread cast in filled resin round a greased plug: bone-dry, cool and without pressure, until the season ends. */
export function castThread(portCase: PortCase): Repair {
  const { thread, threadDepth } = portCase.port;
  const { plug, seal } = portCase.asFound;
  // It is cast as deep as the plug stands in it; what lies beyond is left as it was.
  const stands_mm = plug.underHead
    ? valueIn(mm, plug.underHead) - valueIn(mm, seal.thickness)
    : Number.POSITIVE_INFINITY;
  return repairOf(portCase, "cast thread", {
    bound: makeDoRules,
    lasting: false,
    repaired: wholeAgain(portCase),
    insert: threadDepth && {
      material: "resin",
      outer_mm: valueIn(mm, outside({ d: thread.d, e: keyed })),
      from_mm: 0,
      to_mm: Math.min(valueIn(mm, threadDepth), stands_mm),
    },
  });
}
