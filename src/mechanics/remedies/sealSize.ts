import type { SealKind } from "../joint/port.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { bondedSeal, collar, crushRing, flatRing, oRing, type RingSize } from "../tables/plugRings.ts";
import type { Thread } from "../threads/thread.ts";

/** Head and face meet: nothing takes thread. */
export const nothingBetween: Quantity = exact("t", 0, mm, "head and face meet");

/** The usual size of a seal for a thread, mm; a sealed face is as wide as the plug's head. */
export function sealSize(kind: SealKind, thread: Thread, headDiameter: Quantity | null): RingSize {
  const d_mm = valueIn(mm, thread.d);
  const own = "rings" in thread ? thread.rings : null;
  switch (kind) {
    case "flat washer":
      return flatRing(d_mm, own);
    case "crush ring":
      return crushRing(d_mm);
    case "bonded seal":
      return bondedSeal(d_mm, own);
    case "O-ring":
      return oRing(d_mm);
    case "sealant, metal to metal":
    case "taper":
    case "none": {
      const { diameter_mm, source } = collar(d_mm, own);
      const outside_mm = headDiameter ? valueIn(mm, headDiameter) : diameter_mm;
      return { outside_mm, inside_mm: d_mm, thickness_mm: 0, source };
    }
    default:
      return kind satisfies never;
  }
}
