import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm, percent, turn } from "../quantity/unit.ts";
import { accessNeeds } from "./fitAccess.ts";
import { chips, rangeOf } from "./fitChips.ts";
import { crookedness, stopTurns, tipDepth } from "./fitDepth.ts";
import { type Need, need } from "./fitNeed.ts";
import { fullDepth, overrun, roomAsked, tapRoom } from "./fitOverrun.ts";
import { clearOfTorn, clears, nextSize, percentOfIsoThread, percentOfThread, tappingDrill } from "./fitTapping.ts";
import { leastBoss, wallNeeds } from "./fitWall.ts";
import { fullTurns } from "./fullTurns.ts";
import { recutPort, weighedAnew } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import {
  chipsCheck,
  cuttingChecks,
  newThreadRules,
  type Repair,
  type RepairCheck,
  repairOf,
  tapCheck,
} from "./repair.ts";

/** The hole re-tapped to the next size up, with a new plug and a larger ring. */
export function nextSizeRepair(portCase: PortCase): Repair {
  const { port, asked } = portCase;
  const larger = nextSize(port.thread);
  if (!larger)
    return repairOf(portCase, "next size", { bound: newThreadRules, lasting: true, whyNot: "no larger size" });
  const depth = port.threadDepth && fullDepth(port, port.threadDepth, larger.P);
  const [wall, quarter, trade] = wallNeeds(port, larger.d);
  const room = tapRoom(port, larger.P);
  const clear = clearOfTorn(port.thread, larger);
  const recut = depth && recutPort(portCase, larger, depth);
  const needs: readonly Need[] = [
    need("depth", depth, exact("l_0", 1e3 * larger.P.value * 3, mm, "three turns, judgement")),
    wall,
    ...roomAsked(room),
    ...accessNeeds(portCase, larger.d),
    ...(recut ? fullTurns(portCase, recut) : []),
  ];
  const drill = tappingDrill(larger);
  const q = percentOfThread({ d: larger.d, D_t: drill, P: larger.P });
  const cut = depth && chips(port, larger.d_2, depth, asked.alloyTested === "yes");
  return repairOf(portCase, "next size", {
    bound: newThreadRules,
    lasting: true,
    needs,
    said: [quarter, trade],
    checks: [
      ...cuttingChecks(portCase),
      { type: "drill", drill_mm: valueIn(mm, drill), percentOfThread: valueIn(percent, q) },
      { type: "clears the torn thread", clears: clears(port.thread, larger), thread: larger.designation },
      tapCheck(room),
      ...depthChecks(depth, larger.P),
      ...(cut ? [chipsCheck(cut, rangeOf(cut.volume), rangeOf(cut.mass))] : []),
      {
        type: "new plug",
        thread: larger.designation,
        underHead_mm: recut?.asFound.plug.underHead ? valueIn(mm, recut.asFound.plug.underHead) : null,
      },
    ],
    sums: [
      q,
      percentOfIsoThread({ d: larger.d, D_t: drill, P: larger.P }),
      clear,
      ...(wall.has ? [wall.has, wall.least, quarter.least, trade.least] : []),
      leastBoss({ D_n: larger.d }),
      room.bottoming.least,
      room.plug.least,
      room.taper.least,
      ...(cut ? [cut.volume, cut.mass] : []),
      ...(depth ? [depth] : []),
    ],
    repaired: recut,
    closed: () => (recut ? weighedAnew(recut) : null),
  });
}

/** Where the tip of a bottoming tap stops, and how far out of square a hand leads it, over a depth of full thread. */
export function depthChecks(depth: Quantity | null, P: Quantity): readonly RepairCheck[] {
  if (!depth) return [];
  const l_s = tipDepth({ l_0: depth, o: overrun("bottoming", P) });
  const { low, high } = rangeOf(crookedness(depth));
  return [
    {
      type: "depth stop",
      depth_mm: valueIn(mm, l_s),
      turns: valueIn(turn, stopTurns({ l_s, P })),
      full_mm: valueIn(mm, depth),
    },
    { type: "crooked", from_mm: low, to_mm: high },
  ];
}
