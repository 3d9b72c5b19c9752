import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { type HoleLimits, holeLimits } from "./metricLimits.ts";
import type { MetricThread } from "./metricThread.ts";
import type { HoleClass } from "./toleranceClass.ts";
import { unifiedHoleLimits } from "./unifiedLimits.ts";
import type { UnifiedThread } from "./unifiedThread.ts";

/** The hole that takes a wire coil, tapped larger so that the coil brings it back to the thread it is for. */
export type WireCoilHole = HoleLimits & {
  /** "STI M20x1.5": named for the thread of the coil's bore. */
  readonly designation: string;
  readonly toleranceClass: WireCoilClass | "2B";
  /** Basic major, pitch and minor diameter. */
  readonly D_STI: Quantity;
  readonly D_2STI: Quantity;
  readonly D_1STI: Quantity;
};

/** The classes such holes are tapped to; the tighter one, 4H5H, makes locking coils hold as they should. */
export type WireCoilClass = "4H5H" | "5H";

/**
 * The wire-coil hole for `thread`, basic sizes and limits.
 *
 * Source: DIN 8140-1 and ASME B18.29.2M-2005, both from memory. The tolerances are those of ISO 965-1 for the hole's own
 * diameter and pitch: a sensible choice, agreeing with the least and greatest minor diameters printed for such holes;
 * for the greatest pitch diameter no table was seen. The maker's sheet of the coil goes before these figures.
 * @throws RangeError if D_STI is above 180 mm.
 */
export function wireCoilHole(thread: MetricThread, toleranceClass: WireCoilClass): WireCoilHole {
  const { d, P, H } = thread;
  const D_STI = majorDiameter({ d, H });
  const D_2STI = pitchDiameter({ D_STI, H });
  const D_1STI = minorDiameter({ D_STI, H });
  const profile = { d: D_STI, P, d_2: D_2STI, D_1: D_1STI };
  const designation = `STI ${thread.designation}`;
  return { designation, toleranceClass, D_STI, D_2STI, D_1STI, ...holeLimits(profile, classes[toleranceClass]) };
}

/**
 * The same for a unified thread, tapped to class 2B. ASME B18.29.1 (from memory); the tolerances are those of ASME B1.1 for
 * the hole's own diameter and pitch, no table of them was seen.
 */
export function unifiedCoilHole(thread: UnifiedThread): WireCoilHole {
  const { d, H, designation } = thread;
  const D_STI = majorDiameter({ d, H });
  const D_2STI = pitchDiameter({ D_STI, H });
  const D_1STI = minorDiameter({ D_STI, H });
  const limits = unifiedHoleLimits({ ...thread, d: D_STI, d_2: D_2STI, D_1: D_1STI }, "2B");
  return { designation: `STI ${designation}`, toleranceClass: "2B", D_STI, D_2STI, D_1STI, ...limits };
}

const SOURCE = "ASME B18.29.2M-2005, ASME B18.29.1 and DIN 8140-1 (from memory)";

const majorDiameter = formula("D_STI = d + 3/2 * H", { d: mm, H: mm, D_STI: mm }, SOURCE);
const pitchDiameter = formula("D_2STI = D_STI - 3/4 * H", { D_STI: mm, H: mm, D_2STI: mm }, SOURCE);
const minorDiameter = formula("D_1STI = D_STI - 5/4 * H", { D_STI: mm, H: mm, D_1STI: mm }, SOURCE);

const classes: Readonly<Record<WireCoilClass, HoleClass>> = {
  "4H5H": {
    designation: "4H5H",
    pitch: { grade: 4, deviation: "H" },
    minor: { grade: 5, deviation: "H" },
  },
  "5H": {
    designation: "5H",
    pitch: { grade: 5, deviation: "H" },
    minor: { grade: 5, deviation: "H" },
  },
};
