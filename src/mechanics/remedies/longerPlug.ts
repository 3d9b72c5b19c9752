import { endOfThread, reach } from "../joint/carryingTurns.ts";
import type { Closure } from "../joint/port.ts";
import { exact, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import type { RemedyId } from "./method.ts";
import { withSeal } from "./otherSeal.ts";
import type { PortCase } from "./portCase.ts";
import { forbiddenHere } from "./portFit.ts";
import { type Check, type NotOffered, type Remedy, remedyOf } from "./remedy.ts";

/** What has to stay free behind the plug's tip, mm: a blunt wire tells the room behind to about 2 mm. */
const clearance_mm = 2;

export type LongerPlug =
  | { readonly offered: true; readonly remedy: Remedy }
  | { readonly offered: false; readonly why: NotOffered };

/** A longer plug that bites in thread behind the present one, on its own seal and on a bonded seal. */
export const longerPlugs = (portCase: PortCase): readonly LongerPlug[] => {
  const own = longerPlug(portCase, "longer plug", portCase.asFound);
  if (portCase.asFound.seal.kind === "bonded seal") return [own];
  return [own, longerPlug(portCase, "longer plug, bonded seal", withSeal(portCase, "bonded seal", null))];
};

function longerPlug(portCase: PortCase, id: RemedyId, closure: Closure): LongerPlug {
  const length = wholeMillimetresUnderHead(portCase, closure);
  if (typeof length !== "number") return { offered: false, why: { id, reason: length.reason } };
  const present = closure.plug.underHead ? valueIn(mm, closure.plug.underHead) : 0;
  const longer: Closure = {
    ...closure,
    plug: { ...closure.plug, underHead: exact("l", length, mm, "the longer plug"), original: false },
  };
  const checks: Check[] = [
    { type: "plug length", underHead_mm: length, longerBy_mm: length - present },
    ...behind(portCase, longer),
  ];
  if (!portCase.port.left.goodTo) checks.push({ type: "thread beyond the plug looked at" });
  return { offered: true, remedy: remedyOf(portCase, id, longer, checks, forbiddenHere(id, portCase)) };
}

type NoLength = { readonly reason: NotOffered["reason"] };

/**
 * The plug's length under the head, whole mm: its full thread just passes the end of the good thread, so that the lead-in
 * wastes no turn; where the room behind forbids that or is not known, its tip ends with the hole.
 */
function wholeMillimetresUnderHead({ port }: PortCase, closure: Closure): number | NoLength {
  const end = endOfThread(port);
  const z = reach(closure);
  if (!closure.plug.underHead || !z) return { reason: "plug length not measured" };
  if (!end || !port.threadDepth) return { reason: "depth not measured" };
  const present = valueIn(mm, closure.plug.underHead);
  const shortBy = valueIn(mm, end) - valueIn(mm, z);
  if (shortBy <= 0.05) return { reason: "thread ends where the plug ends" };
  const through = Math.ceil(present + shortBy - 1e-9);
  const room = port.roomBehind ? valueIn(mm, port.roomBehind) : null;
  if (room !== null && standsOut(port.threadDepth, closure, through) <= room - clearance_mm) return through;
  const inside = Math.floor(valueIn(mm, port.threadDepth) + valueIn(mm, closure.seal.thickness) + 1e-9);
  return inside > present ? inside : { reason: room === null ? "thread ends where the plug ends" : "no room behind" };
}

function behind({ port }: PortCase, { plug, seal }: Closure): Check[] {
  if (!plug.underHead || !port.threadDepth) return [];
  const by_mm = standsOut(port.threadDepth, { seal }, valueIn(mm, plug.underHead));
  if (by_mm <= 0) return [{ type: "ends in the hole" }];
  if (!port.roomBehind) return [{ type: "room behind not measured" }];
  return [{ type: "stands out behind", by_mm, room_mm: valueIn(mm, port.roomBehind) }];
}

const standsOut = (threadDepth: Parameters<typeof valueIn>[1], { seal }: Pick<Closure, "seal">, underHead_mm: number) =>
  underHead_mm - valueIn(mm, seal.thickness) - valueIn(mm, threadDepth);
