import type { Condition, Surface } from "./port.ts";
import type { SealSizes } from "./sealOutline.ts";
import type { ThreadSizes } from "./sectionOutline.ts";

/** Plain lengths of one closure of a port. Null where nobody measured it. */
export type SectionInput = ThreadSizes & {
  readonly designation: string;
  readonly threadDepth_mm: number | null;
  readonly thinnestWall_mm: number | null;
  readonly roomBehind_mm: number | null;
  readonly underHead_mm: number | null;
  readonly chamfer_mm: number | null;
  readonly headDiameter_mm: number | null;
  readonly seal: SealSizes;
  /** Turns left with this closure; drawn where `goodFrom_mm` and `goodTo_mm` are both unknown. */
  readonly turnsCarrying: number;
  readonly turnsHealthy: number | null;
  readonly condition: Condition;
  /** Thread height left on the turns that carry, 0 to 1. */
  readonly heightLeft: number;
  readonly goodFrom_mm: number | null;
  readonly goodTo_mm: number | null;
  readonly surface: Surface;
  /** What lies around the plug's thread in place of the case, where something does. */
  readonly insert?: Insert | null;
};

/** A bush or a coil of steel, or a thread cast in resin, in the wall of the hole: from where to where below the face. */
export type Insert = {
  readonly material: "steel" | "resin";
  readonly outer_mm: number;
  readonly from_mm: number;
  readonly to_mm: number;
};
