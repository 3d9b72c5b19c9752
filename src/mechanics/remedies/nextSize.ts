import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm, percent } from "../quantity/unit.ts";
import type { Thread } from "../threads/thread.ts";
import { need } from "./fitNeed.ts";
import { clearOfTorn, clears, percentOfIsoThread, shareOfThread, tappingDrill } from "./fitTapping.ts";
import { wallNeeds } from "./fitWall.ts";
import { fullTurns } from "./fullTurns.ts";
import { handCut } from "./handCut.ts";
import { nextSizes } from "./largerThread.ts";
import { recutPort, weighedAnew } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { newThreadRules, type Repair, repairOf } from "./repair.ts";
import type { RepairCheck } from "./repairCheck.ts";
import { taperWhyNot } from "./taperPort.ts";

/**
 * The hole re-tapped to the next size up, with a new plug and a larger ring; where a thread of another standard would do as well, to
 * that too, as a way of its own.
 */
export function nextSizeRepairs(portCase: PortCase): readonly Repair[] {
  const { port } = portCase;
  const [larger, other] = nextSizes(port.thread);
  if (!larger)
    return [
      repairOf(portCase, "next size", {
        bound: newThreadRules,
        lasting: true,
        whyNot: taperWhyNot(port) ?? "no larger size",
      }),
    ];
  if (!other) return [cutTo(portCase, "next size", larger, null)];
  return [cutTo(portCase, "next size", larger, other), cutTo(portCase, "next size, other thread", other, null)];
}

/** The hole re-tapped to one larger thread; `other` is told beside it. */
function cutTo(
  portCase: PortCase,
  id: "next size" | "next size, other thread",
  larger: Thread,
  other: Thread | null,
): Repair {
  const { port } = portCase;
  const drill = tappingDrill(larger);
  const cut = handCut(portCase, larger, drill);
  const { depth } = cut;
  const recut = depth && recutPort(portCase, larger, depth);
  const beside = other && orElse(portCase, other);
  return repairOf(portCase, id, {
    bound: newThreadRules,
    lasting: true,
    needs: [
      need("depth", depth, exact("l_0", 1e3 * larger.P.value * 3, mm, "three turns, judgement")),
      ...cut.needs,
      ...(recut ? fullTurns(portCase, recut) : []),
    ],
    said: cut.said,
    checks: [
      ...cut.drilling,
      { type: "clears the torn thread", clears: clears(port.thread, larger), thread: larger.designation },
      ...cut.tapping,
      ...(beside ? [beside.check] : []),
      {
        type: "new plug",
        thread: larger.designation,
        underHead_mm: recut?.asFound.plug.underHead ? valueIn(mm, recut.asFound.plug.underHead) : null,
      },
    ],
    sums: [
      ...(larger.type === "G" ? [] : [percentOfIsoThread({ d: larger.d, D_t: drill, P: larger.P })]),
      clearOfTorn(port.thread, larger),
      ...cut.sums,
      ...(depth ? [depth] : []),
      ...(beside ? beside.sums : []),
    ],
    repaired: recut,
    closed: () => (recut ? weighedAnew(recut) : null),
  });
}

/** Another thread that the hole may be cut to, by the same sums: its drill, whether it clears, and the wall that it leaves. */
function orElse(
  { port }: PortCase,
  thread: Thread,
): { readonly check: RepairCheck; readonly sums: readonly Quantity[] } {
  const drill = tappingDrill(thread);
  const q = shareOfThread(thread.type, thread, drill);
  const [wall] = wallNeeds(port, thread.d);
  return {
    check: {
      type: "or another next size",
      own: thread.type === port.thread.type,
      thread: thread.designation,
      drill_mm: valueIn(mm, drill),
      percentOfThread: valueIn(percent, q),
      clears: clears(port.thread, thread),
      wall,
    },
    sums: [q, clearOfTorn(port.thread, thread), ...(wall.has ? [wall.has] : [])],
  };
}
