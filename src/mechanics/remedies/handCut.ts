import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm, percent, turn } from "../quantity/unit.ts";
import type { Thread } from "../threads/thread.ts";
import { accessNeeds } from "./fitAccess.ts";
import { chips, rangeOf } from "./fitChips.ts";
import { crookedness, stopTurns, tipDepth } from "./fitDepth.ts";
import type { Need } from "./fitNeed.ts";
import { fullDepth, overrun, roomAsked, tapRoom } from "./fitOverrun.ts";
import { shareOfThread } from "./fitTapping.ts";
import { leastBoss, wallNeeds } from "./fitWall.ts";
import type { PortCase } from "./portCase.ts";
import { chipsCheck, cuttingChecks, tapCheck } from "./repair.ts";
import type { RepairCheck } from "./repairCheck.ts";

/** The thread that is cut, by its standard, its major and pitch diameter and its pitch. */
type CutThread = {
  readonly type: Thread["type"];
  readonly d: Quantity;
  readonly d_2: Quantity;
  readonly P: Quantity;
};

/** A larger thread drilled and tapped into a port by hand: what it asks of the port, how it is done and what it yields. */
export type HandCut = {
  /** The depth of full thread; null where nobody measured the hole. */
  readonly depth: Quantity | null;
  /** Wall, room behind and room in front. */
  readonly needs: readonly Need[];
  /** Rules of the trade that are said and refuse nothing. */
  readonly said: readonly Need[];
  /** Before and with the drill. */
  readonly drilling: readonly RepairCheck[];
  /** With the tap, and the chips of both. */
  readonly tapping: readonly RepairCheck[];
  readonly sums: readonly Quantity[];
};

/** The hand's cut of `thread` from the tapping drill of diameter D_t. */
export function handCut(portCase: PortCase, { type, d, d_2, P }: CutThread, D_t: Quantity): HandCut {
  const { port, asked } = portCase;
  const depth = port.threadDepth && fullDepth(port, port.threadDepth, P);
  const [wall, quarter, trade] = wallNeeds(port, d);
  const room = tapRoom(port, P);
  const q = shareOfThread(type, { d, P }, D_t);
  const cut = depth && chips(port, d_2, depth, asked.alloyTested === "yes");
  return {
    depth,
    needs: [wall, ...roomAsked(room), ...accessNeeds(portCase, d)],
    said: [quarter, trade],
    drilling: [
      ...cuttingChecks(portCase),
      { type: "drill", drill_mm: valueIn(mm, D_t), percentOfThread: valueIn(percent, q) },
    ],
    tapping: [
      tapCheck(room),
      ...(depth ? depthChecks(depth, P) : []),
      ...(cut ? [chipsCheck(cut, rangeOf(cut.volume), rangeOf(cut.mass))] : []),
    ],
    sums: [
      q,
      ...(wall.has ? [wall.has, wall.least, quarter.least, trade.least] : []),
      leastBoss({ D_n: d }),
      room.bottoming.least,
      room.plug.least,
      room.taper.least,
      ...(cut ? [cut.volume, cut.mass] : []),
    ],
  };
}

/** Where the tip of a bottoming tap stops, and how far out of square a hand leads it, over a depth of full thread. */
function depthChecks(depth: Quantity, P: Quantity): readonly RepairCheck[] {
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
