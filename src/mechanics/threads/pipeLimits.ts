import { formula } from "../quantity/formula.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { mm, um } from "../quantity/unit.ts";
import { sourceText } from "../tables/source.ts";
import type { HoleLimits, PlugLimits } from "./metricLimits.ts";
import type { ParallelPipeThread, PipeThread, TaperPipeThread } from "./pipeThread.ts";

/** The limits of a plug and a hole; null where the standard of the thread sets none. */
export type PipeLimits = { readonly [Limit in keyof (PlugLimits & HoleLimits)]: Quantity | null };

export const gPlugClasses = ["A", "B"] as const;
export type GPlugClass = (typeof gPlugClasses)[number];

/** How far the gauge plane of a taper plug lies from its small end. */
export type GaugePlane = { readonly length: Quantity; readonly length_max: Quantity; readonly length_min: Quantity };

/** Limits of size of a parallel pipe thread; its hole has one class only. */
export function gLimits(thread: ParallelPipeThread, plugClass: GPlugClass): PlugLimits & HoleLimits {
  const { d, d_2, D_1, tolerances, source } = thread;
  const given = (symbol: string, value_um: number): Quantity => exact(symbol, value_um, um, sourceText(source));
  const T_D2 = exact("T_D2", tolerances.T_d2.A, um, `${sourceText(source)}; as class A of the plug (from memory)`);
  const d_max = greatestMajor({ d });
  const d_2max = greatestPlugPitch({ d_2 });
  const D_1min = leastMinor({ D_1 });
  const D_2min = leastHolePitch({ D_2: as("D_2", d_2) });
  return {
    d_max,
    d_min: leastMajor({ d_max, T_d: given("T_d", tolerances.T_d) }),
    d2_max: d_2max,
    d2_min: leastPlugPitch({ d_2max, T_d2: given("T_d2", tolerances.T_d2[plugClass]) }),
    D1_min: D_1min,
    D1_max: greatestMinor({ D_1min, T_D1: given("T_D1", tolerances.T_D1) }),
    D2_min: D_2min,
    D2_max: greatestHolePitch({ D_2min, T_D2 }),
  };
}

/**
 * Limits of size of a pipe thread, of an Rp hole those that its standard sets on diameters; of a taper thread its sizes at the gauge plane, where they stand for the full
 * material of plug and hole. Its other limits are null: there the standards tolerate the place of that plane instead.
 * `plugClass` speaks of G only. The outside of an NPT plug is at most that of the pipe.
 */
export function pipeLimits(thread: PipeThread, plugClass: GPlugClass): PipeLimits {
  if (thread.type === "G") return gLimits(thread, plugClass);
  const { d, d_2, D_1 } = thread;
  if (thread.type === "Rp") return { d_max: d, d_min: null, d2_max: d_2, d2_min: null, ...parallelHole(thread) };
  return {
    d_max: d,
    d_min: null,
    d2_max: d_2,
    d2_min: null,
    D1_min: D_1,
    D1_max: null,
    D2_min: d_2,
    D2_max: null,
  };
}

/** Where the gauge plane of a taper thread may lie: one turn to either side. Null for a parallel thread. */
export function gaugePlane(thread: PipeThread): GaugePlane | null {
  switch (thread.type) {
    case "G":
      return null;
    case "R":
    case "Rc":
    case "Rp":
      return plane(as("L", thread.gaugeLength), as("T", thread.gaugeTolerance));
    case "NPT":
      return plane(as("L", thread.L_1), as("T", thread.P));
    default:
      return thread satisfies never;
  }
}

/** Limits of size of an Rp hole: it may be off either way by what its gauge plane may be off on a taper. */
export function parallelHole({ d_2, D_1, P }: Pick<TaperPipeThread, "d_2" | "D_1" | "P">): HoleLimits {
  const T = parallelTolerance({ P });
  return {
    D1_min: lessBy({ D: D_1, T }),
    D1_max: moreBy({ D: D_1, T }),
    D2_min: lessBy({ D: d_2, T }),
    D2_max: moreBy({ D: d_2, T }),
  };
}

const PARALLEL = "ISO 7-1:1994, table 1: parallel internal threads (from memory)";

const parallelTolerance = formula("T_D = 1.25 * P / 16", { P: mm, T_D: mm }, PARALLEL);
const lessBy = formula("D_min = D - T", { D: mm, T: mm, D_min: mm }, PARALLEL);
const moreBy = formula("D_max = D + T", { D: mm, T: mm, D_max: mm }, PARALLEL);

const LIMITS = "ISO 228-1:2000, 4";
const GAUGING = "ISO 7-1:1994, table 1; ASME B1.20.1-2013, 4 (both from memory)";

const greatestMajor = formula("d_max = d", { d: mm, d_max: mm }, LIMITS);
const leastMajor = formula("d_min = d_max - T_d", { d_max: mm, T_d: um, d_min: mm }, LIMITS);
const greatestPlugPitch = formula("d_2max = d_2", { d_2: mm, d_2max: mm }, LIMITS);
const leastPlugPitch = formula("d_2min = d_2max - T_d2", { d_2max: mm, T_d2: um, d_2min: mm }, LIMITS);
const leastMinor = formula("D_1min = D_1", { D_1: mm, D_1min: mm }, LIMITS);
const greatestMinor = formula("D_1max = D_1min + T_D1", { D_1min: mm, T_D1: um, D_1max: mm }, LIMITS);
const leastHolePitch = formula("D_2min = D_2", { D_2: mm, D_2min: mm }, LIMITS);
const greatestHolePitch = formula("D_2max = D_2min + T_D2", { D_2min: mm, T_D2: um, D_2max: mm }, LIMITS);
const furthest = formula("L_max = L + T", { L: mm, T: mm, L_max: mm }, GAUGING);
const nearest = formula("L_min = L - T", { L: mm, T: mm, L_min: mm }, GAUGING);

const plane = (L: Quantity, T: Quantity): GaugePlane => ({
  length: L,
  length_max: furthest({ L, T }),
  length_min: nearest({ L, T }),
});
