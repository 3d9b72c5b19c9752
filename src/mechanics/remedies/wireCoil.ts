import { exact, valueIn } from "../quantity/quantity.ts";
import { mm, percent } from "../quantity/unit.ts";
import { metricThread } from "../threads/metricThread.ts";
import { wireCoilHole } from "../threads/wireCoilHole.ts";
import { accessNeeds } from "./fitAccess.ts";
import { chips, rangeOf } from "./fitChips.ts";
import { coilDrill, longestCoil } from "./fitCoil.ts";
import { type Need, need } from "./fitNeed.ts";
import { fullDepth, roomAsked, tapRoom } from "./fitOverrun.ts";
import { percentOfThread } from "./fitTapping.ts";
import { leastBoss, wallNeeds } from "./fitWall.ts";
import { fullTurns } from "./fullTurns.ts";
import { cutNew, weighedInsert } from "./newThread.ts";
import { depthChecks } from "./nextSize.ts";
import type { PortCase } from "./portCase.ts";
import { chipsCheck, cuttingChecks, newThreadRules, type Repair, repairOf, tapCheck } from "./repair.ts";

/**
 * What the length tables of the trade stand below the bare shear of the hole's thread by, 1.7 to 2.9, usually this (common
 * practice, no source). It covers what our model of a hurt thread covers, and so takes its place.
 */
const tableFactor = 2.1;

/** Coils are sold for threads up to this diameter, mm (from memory). */
const largest_mm = 39;

/** A wire coil in a larger thread: the original plug, in a steel thread that may be opened often. */
export function wireCoil(portCase: PortCase): Repair {
  const { port, asked } = portCase;
  const { thread } = port;
  if (valueIn(mm, thread.d) > largest_mm)
    return repairOf(portCase, "wire coil", { bound: newThreadRules, lasting: true, whyNot: "no coil of this size" });
  const hole = wireCoilHole(thread, "5H");
  const depth = port.threadDepth && fullDepth(port, port.threadDepth, thread.P);
  const coil = longestCoil(thread, depth);
  const [wall, quarter, trade] = wallNeeds(port, hole.D_STI);
  const room = tapRoom(port, thread.P);
  const inside = { from: coil.setDown, to: endOf(coil.setDown.value, coil.installed.value) };
  const repaired = { ...portCase, port: { ...port, left: cutNew(inside.from, inside.to) } };
  const needs: readonly Need[] = [
    need("depth", depth, coil.plate),
    wall,
    ...roomAsked(room),
    ...accessNeeds(portCase, hole.D_STI),
    ...fullTurns(portCase, repaired),
  ];
  const drill = coilDrill(hole.D1_min);
  const outer = metricThread(valueIn(mm, hole.D_STI), valueIn(mm, thread.P));
  const q = percentOfThread({ d: hole.D_STI, D_t: drill, P: thread.P });
  const cut = depth && chips(port, hole.D_2STI, depth, asked.alloyTested === "yes");
  const { low, high } = rangeOf(coil.setDown);
  return repairOf(portCase, "wire coil", {
    bound: newThreadRules,
    lasting: true,
    needs,
    said: [quarter, trade],
    checks: [
      ...cuttingChecks(portCase),
      { type: "drill", drill_mm: valueIn(mm, drill), percentOfThread: valueIn(percent, q) },
      {
        type: "coil",
        diameters: coil.diameters,
        length_mm: valueIn(mm, coil.L),
        installed_mm: valueIn(mm, coil.installed),
      },
      { type: "set down", from_mm: low, to_mm: high },
      tapCheck(room),
      ...depthChecks(depth, thread.P),
      ...(cut ? [chipsCheck(cut, rangeOf(cut.volume), rangeOf(cut.mass))] : []),
    ],
    sums: [
      hole.D_STI,
      hole.D1_min,
      hole.D1_max,
      q,
      ...(wall.has ? [wall.has, quarter.least, trade.least] : []),
      leastBoss({ D_n: hole.D_STI }),
      coil.installed,
      coil.plate,
      coil.drilledBlind,
      room.bottoming.least,
      ...(cut ? [cut.volume, cut.mass] : []),
    ],
    repaired,
    insert: {
      outer_mm: valueIn(mm, hole.D_STI),
      from_mm: valueIn(mm, coil.setDown),
      to_mm: valueIn(mm, coil.setDown) + valueIn(mm, coil.installed),
    },
    closed: () =>
      depth &&
      weighedInsert(portCase, inside, {
        thread: outer,
        limits: { ...hole, d_max: hole.D_STI, d_min: hole.D_STI, d2_max: hole.D_2STI, d2_min: hole.D_2STI },
        from: exact("z_1", 0, mm, "cut from the face"),
        to: coil.bearing,
        tableFactor,
      }),
  });
}

const endOf = (from_m: number, length_m: number) => exact("z_2", 1e3 * (from_m + length_m), mm, "end of the coil");
