import type { Port } from "../joint/port.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { materialRows } from "../tables/materialRows.ts";
import { commonPractice, judgement, sourceText } from "../tables/source.ts";
import { type Need, need } from "./fitNeed.ts";

const practice = sourceText(commonPractice);

/** The wall w_l that a hole of major diameter D_n leaves on the thinnest side. */
const wallOf = formula("w_l = w - (D_n - d) / 2", { w: mm, D_n: mm, d: mm, w_l: mm }, "plain geometry");
const quarterOf = formula("w_q = 0.25 * D_n", { D_n: mm, w_q: mm }, practice);
const tradeOf = formula("w_t = 0.375 * D_n", { D_n: mm, w_t: mm }, `wire-coil holes in castings (${practice})`);

/** The least boss b_0 around a hole of major diameter D_n, which leaves just the trade's wall on every side. */
export const leastBoss = formula("b_0 = 1.75 * D_n", { D_n: mm, b_0: mm }, `wire-coil holes in castings (${practice})`);

/** The wall left by a larger hole; null where nobody measured the wall. */
const wallLeft = ({ thinnestWall, thread }: Port, D_n: Quantity): Quantity | null =>
  thinnestWall && wallOf({ w: thinnestWall, D_n, d: thread.d });

/**
 * The wall that a larger hole needs: the least that is cut at all, a quarter of the new thread, and the trade's rule for
 * wire coils. Only the first refuses; the others say how much room there is.
 */
export function wallNeeds(port: Port, D_n: Quantity): readonly [least: Need, quarter: Need, trade: Need] {
  const left = wallLeft(port, D_n);
  return [
    need("wall left", left, leastWall(port)),
    need("wall left by the quarter rule", left, quarterOf({ D_n })),
    need("wall left by the trade's rule", left, tradeOf({ D_n })),
  ];
}

function leastWall({ material }: Port): Quantity {
  if (materialRows[material].lightAlloy) return exact("w_0", 2.5, mm, practice);
  return exact("w_0", 2, mm, sourceText(judgement("iron and steel bear a little less than alloy")));
}
