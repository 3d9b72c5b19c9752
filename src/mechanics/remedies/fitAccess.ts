import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { fromMemory, judgement, sourceText } from "../tables/source.ts";
import { type Need, need } from "./fitNeed.ts";
import type { PortCase } from "./portCase.ts";

/** The lengths of hand taps for fine threads, by the diameter up to which each goes, mm. */
const tapLengths: readonly (readonly [upTo_mm: number, length_mm: number])[] = [
  [8, 63],
  [11, 70],
  [16, 70],
  [22, 80],
  [30, 90],
  [39, 110],
  [52, 125],
];

const holder = exact("l_h", 20, mm, sourceText(judgement("a tap wrench over the tap's square")));
const inFront = formula("l_v = l_tap + l_h", { l_tap: mm, l_h: mm, l_v: mm }, "plain geometry");

/** What has to be free in front of a hole for a tap of diameter d to start square in it. */
function roomForTap(d: Quantity): Quantity {
  const length_mm = tapLengths.find(([upTo_mm]) => valueIn(mm, d) <= upTo_mm)?.[1] ?? 140;
  return inFront({ l_tap: exact("l_tap", length_mm, mm, sourceText(fromMemory("DIN 2181"))), l_h: holder });
}

/** Whether tap and wrench go in straight; where nobody measured the room, somebody has to look instead. */
export const accessNeeds = ({ roomInFront }: PortCase, d: Quantity): readonly Need[] =>
  roomInFront ? [need("room in front for the tap", roomInFront, roomForTap(d))] : [];
