import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm, um } from "../quantity/unit.ts";
import type { MetricThread } from "./metricThread.ts";
import type { HoleClass, PlugClass } from "./toleranceClass.ts";
import {
  holePitchTolerance,
  lowerDeviation,
  majorTolerance,
  minorTolerance,
  plugPitchTolerance,
  upperDeviation,
} from "./toleranceGrade.ts";

/** Limits of size of an external thread: major diameter d, pitch diameter d_2. */
export type PlugLimits = {
  readonly d_max: Quantity;
  readonly d_min: Quantity;
  readonly d2_max: Quantity;
  readonly d2_min: Quantity;
};

/** Limits of size of an internal thread: minor diameter D_1, pitch diameter D_2. Its major has no upper limit. */
export type HoleLimits = {
  readonly D1_min: Quantity;
  readonly D1_max: Quantity;
  readonly D2_min: Quantity;
  readonly D2_max: Quantity;
};

/** The basic profile that limits are set out from. */
export type BasicProfile = Pick<MetricThread, "d" | "P" | "d_2" | "D_1">;

/** Limits of size of a plug of `plugClass` and a hole of `holeClass`, each worked from basic size and tolerance. */
export const limits = (thread: BasicProfile, plugClass: PlugClass, holeClass: HoleClass): PlugLimits & HoleLimits => ({
  ...plugLimits(thread, plugClass),
  ...holeLimits(thread, holeClass),
});

/** Limits of size of an external metric thread. @throws RangeError if d is not above 0.99 and up to 180 mm. */
export function plugLimits(thread: BasicProfile, { pitch, major }: PlugClass): PlugLimits {
  const es = upperDeviation(thread, pitch.deviation);
  const esMajor = major.deviation === pitch.deviation ? es : upperDeviation(thread, major.deviation);
  const d_max = greatestMajor({ d: thread.d, es: esMajor });
  const d_2max = greatestPlugPitch({ d_2: thread.d_2, es });
  return {
    d_max,
    d_min: leastMajor({ d_max, T_d: majorTolerance(thread, major.grade) }),
    d2_max: d_2max,
    d2_min: leastPlugPitch({ d_2max, T_d2: plugPitchTolerance(thread, pitch.grade) }),
  };
}

/** Limits of size of an internal metric thread. @throws RangeError if d is not above 0.99 and up to 180 mm. */
export function holeLimits(thread: BasicProfile, { pitch, minor }: HoleClass): HoleLimits {
  const EI = lowerDeviation(thread, pitch.deviation);
  const EIMinor = minor.deviation === pitch.deviation ? EI : lowerDeviation(thread, minor.deviation);
  const D_1min = leastMinor({ D_1: thread.D_1, EI: EIMinor });
  const D_2min = leastHolePitch({ D_2: thread.d_2, EI });
  return {
    D1_min: D_1min,
    D1_max: greatestMinor({ D_1min, T_D1: minorTolerance(thread, minor.grade) }),
    D2_min: D_2min,
    D2_max: greatestHolePitch({ D_2min, T_D2: holePitchTolerance(thread, pitch.grade) }),
  };
}

const LIMITS = "ISO 965-1:2013, 5 (from memory, checked against tables of limits)";

const greatestMajor = formula("d_max = d + es", { d: mm, es: um, d_max: mm }, LIMITS);
const leastMajor = formula("d_min = d_max - T_d", { d_max: mm, T_d: um, d_min: mm }, LIMITS);
const greatestPlugPitch = formula("d_2max = d_2 + es", { d_2: mm, es: um, d_2max: mm }, LIMITS);
const leastPlugPitch = formula("d_2min = d_2max - T_d2", { d_2max: mm, T_d2: um, d_2min: mm }, LIMITS);
const leastMinor = formula("D_1min = D_1 + EI", { D_1: mm, EI: um, D_1min: mm }, LIMITS);
const greatestMinor = formula("D_1max = D_1min + T_D1", { D_1min: mm, T_D1: um, D_1max: mm }, LIMITS);
const leastHolePitch = formula("D_2min = D_2 + EI", { D_2: mm, EI: um, D_2min: mm }, LIMITS);
const greatestHolePitch = formula("D_2max = D_2min + T_D2", { D_2min: mm, T_D2: um, D_2max: mm }, LIMITS);
