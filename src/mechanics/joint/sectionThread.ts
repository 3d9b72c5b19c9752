import { formula } from "../quantity/formula.ts";
import { valueIn } from "../quantity/quantity.ts";
import { deg, mm } from "../quantity/unit.ts";
import { gaugePlane } from "../threads/pipeLimits.ts";
import { PIPE_TAPER } from "../threads/pipeThread.ts";
import { isTaper, type Thread } from "../threads/thread.ts";
import type { Taper, ThreadSizes } from "./sectionOutline.ts";

const crests = formula("D_c = E_1 + h", { E_1: mm, h: mm, D_c: mm }, "ASME B1.20.1-2013, 4: crests at the gauge plane");

/**
 * The sizes that a section draws a thread by. Those of a taper thread are at the face: there the gauge plane of a sound plug
 * lies when it is in by hand (ISO 7-1:1994, 3; ASME B1.20.1-2013, 5; both from memory).
 */
export function sectionThread(thread: Thread): ThreadSizes & { readonly designation: string } {
  // What NPT is named d is the outside of the pipe, which its crests do not reach.
  const d = thread.type === "NPT" ? crests({ E_1: thread.d_2, h: thread.h }) : thread.d;
  return {
    designation: thread.designation,
    d_mm: valueIn(mm, d),
    P_mm: valueIn(mm, thread.P),
    d2_mm: valueIn(mm, thread.d_2),
    D1_mm: valueIn(mm, thread.D_1),
    d3_mm: valueIn(mm, thread.d_3),
    flank_deg: valueIn(deg, thread.alpha),
    taper: taperOf(thread),
  };
}

function taperOf(thread: Thread): Taper | null {
  const plane = isTaper(thread) ? gaugePlane(thread) : null;
  return plane && { growth: PIPE_TAPER, byHand_mm: valueIn(mm, plane.length), holeIsParallel: thread.type === "Rp" };
}
