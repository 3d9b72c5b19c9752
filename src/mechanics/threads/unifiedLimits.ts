import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { inches } from "../quantity/unit.ts";
import type { HoleLimits, PlugLimits } from "./metricLimits.ts";
import type { UnifiedHoleClass, UnifiedPlugClass } from "./unifiedClass.ts";
import { roundedTo } from "./unifiedRounding.ts";
import type { UnifiedThread } from "./unifiedThread.ts";
import {
  allowance,
  holePitchToleranceUnified,
  majorToleranceUnified,
  minorToleranceUnified,
  plugPitchToleranceUnified,
} from "./unifiedTolerance.ts";

/**
 * Limits of size of an external unified thread. The basic pitch diameter and the allowance are rounded to four decimals of
 * an inch, tolerances are not, and the limits are again.
 */
export function unifiedPlugLimits(thread: UnifiedThread, plugClass: UnifiedPlugClass): PlugLimits {
  const es = allowance(thread, plugClass);
  const d_max = greatestMajor({ d: thread.d, es });
  const d_2max = greatestPlugPitch({ d_2r: rounded("d_2r", thread.d_2, 4), es });
  const d_min = leastMajor({ d_max, T_d: majorToleranceUnified(thread, plugClass) });
  const d_2min = leastPlugPitch({ d_2max, T_d2: plugPitchToleranceUnified(thread, plugClass) });
  return { d_max, d_min: rounded("d_min", d_min, 4), d2_max: d_2max, d2_min: rounded("d_2min", d_2min, 4) };
}

/**
 * Limits of size of an internal unified thread. Minor limits are printed to three decimals of an inch from #6 on, but the
 * greatest of class 3B to four; they come from the unrounded minor diameter.
 */
export function unifiedHoleLimits(thread: UnifiedThread, holeClass: UnifiedHoleClass): HoleLimits {
  const { D_1 } = thread;
  const D_2min = leastHolePitch({ d_2r: rounded("d_2r", thread.d_2, 4) });
  const D_2max = greatestHolePitch({ D_2min, T_D2: holePitchToleranceUnified(thread, holeClass) });
  const D_1max = greatestMinor({ D_1, T_D1: minorToleranceUnified(thread, holeClass) });
  const coarse = valueIn(inches, thread.d) > 0.1379;
  return {
    D1_min: rounded("D_1min", D_1, coarse ? 3 : 4),
    D1_max: rounded("D_1max", D_1max, coarse && holeClass !== "3B" ? 3 : 4),
    D2_min: D_2min,
    D2_max: rounded("D_2max", D_2max, 4),
  };
}

const LIMITS = "ASME B1.1-2003, 8.3 (from memory, checked against its tables)";
const ROUNDED = "ASME B1.30-2002 (from memory, checked against the tables of ASME B1.1)";

const greatestMajor = formula("d_max = d - es", { d: inches, es: inches, d_max: inches }, LIMITS);
const leastMajor = formula("d_min_u = d_max - T_d", { d_max: inches, T_d: inches, d_min_u: inches }, LIMITS);
const greatestPlugPitch = formula("d_2max = d_2r - es", { d_2r: inches, es: inches, d_2max: inches }, LIMITS);
const leastPlugPitch = formula("d_2min_u = d_2max - T_d2", { d_2max: inches, T_d2: inches, d_2min_u: inches }, LIMITS);
const leastHolePitch = formula("D_2min = d_2r", { d_2r: inches, D_2min: inches }, LIMITS);
const greatestHolePitch = formula(
  "D_2max_u = D_2min + T_D2",
  { D_2min: inches, T_D2: inches, D_2max_u: inches },
  LIMITS,
);
const greatestMinor = formula("D_1max_u = D_1 + T_D1", { D_1: inches, T_D1: inches, D_1max_u: inches }, LIMITS);

const rounded = (symbol: string, x: Quantity, decimals: number): Quantity =>
  roundedTo(symbol, x, decimals, inches, ROUNDED);
