import { exact, valueIn } from "../quantity/quantity.ts";
import { mm, percent } from "../quantity/unit.ts";
import { limits } from "../threads/metricLimits.ts";
import { standardHole, standardPlug } from "../threads/toleranceClass.ts";
import { accessNeeds } from "./fitAccess.ts";
import { bushThread, bushWall, leastBushLength, leastBushWall } from "./fitBush.ts";
import { chips, rangeOf } from "./fitChips.ts";
import { type Need, need } from "./fitNeed.ts";
import { fullDepth, roomAsked, tapRoom } from "./fitOverrun.ts";
import { percentOfThread, tappingDrill } from "./fitTapping.ts";
import { leastBoss, wallNeeds } from "./fitWall.ts";
import { fullTurns } from "./fullTurns.ts";
import { atTheFace, cutNew, weighedInsert } from "./newThread.ts";
import { depthChecks } from "./nextSize.ts";
import type { PortCase } from "./portCase.ts";
import { chipsCheck, cuttingChecks, newThreadRules, type Repair, repairOf, tapCheck } from "./repair.ts";

/** A steel bush with a shoulder, locked in a larger thread: the original plug, on a new face. */
export function solidBushing(portCase: PortCase): Repair {
  const { port, asked } = portCase;
  const outer = bushThread(port.thread);
  if (!outer)
    return repairOf(portCase, "solid bushing", {
      bound: newThreadRules,
      lasting: true,
      whyNot: "no bush of this size",
    });
  const depth = port.threadDepth && fullDepth(port, port.threadDepth, outer.P);
  const [wall, quarter, trade] = wallNeeds(port, outer.d);
  const room = tapRoom(port, outer.P);
  const t_b = bushWall(outer, port.thread);
  const repaired = depth && { ...portCase, port: { ...port, left: cutNew(atTheFace, depth) } };
  const needs: readonly Need[] = [
    need("depth", depth, leastBushLength),
    wall,
    need("wall of the bush", t_b, leastBushWall),
    ...roomAsked(room),
    ...accessNeeds(portCase, outer.d),
    ...(repaired ? fullTurns(portCase, repaired) : []),
  ];
  const drill = tappingDrill(outer);
  const q = percentOfThread({ d: outer.d, D_t: drill, P: outer.P });
  const cut = depth && chips(port, outer.d_2, depth, asked.alloyTested === "yes");
  return repairOf(portCase, "solid bushing", {
    bound: newThreadRules,
    lasting: true,
    needs,
    said: [quarter, trade],
    checks: [
      ...cuttingChecks(portCase),
      { type: "drill", drill_mm: valueIn(mm, drill), percentOfThread: valueIn(percent, q) },
      { type: "bush", outer: outer.designation, wall_mm: valueIn(mm, t_b) },
      tapCheck(room),
      ...depthChecks(depth, outer.P),
      ...(cut ? [chipsCheck(cut, rangeOf(cut.volume), rangeOf(cut.mass))] : []),
    ],
    sums: [
      q,
      t_b,
      ...(wall.has ? [wall.has, quarter.least, trade.least] : []),
      leastBoss({ D_n: outer.d }),
      room.bottoming.least,
      room.plug.least,
      room.taper.least,
      ...(cut ? [cut.volume, cut.mass] : []),
    ],
    repaired,
    insert: depth && { outer_mm: valueIn(mm, outer.d), from_mm: 0, to_mm: valueIn(mm, depth) },
    closed: () =>
      depth &&
      weighedInsert(
        portCase,
        { from: exact("z_1", 0, mm, "the face of the bush"), to: depth },
        {
          thread: outer,
          limits: limits(outer, standardPlug, standardHole),
          from: atTheFace,
          to: depth,
          tableFactor: null,
        },
      ),
  });
}
