import { expect, test } from "vitest";
import { pipeSizes } from "../../../src/mechanics/tables/iso228.ts";
import { pipeRings } from "../../../src/mechanics/tables/pipeRings.ts";
import { bondedSeal, collar, flatRing } from "../../../src/mechanics/tables/plugRings.ts";

test.each(["1/8", "1/4", "3/8", "1/2", "3/4", "1"])(
  "G %s has rings and a collar of its own, which take its plug",
  (size) => {
    const d_mm = pipeSizes.find((it) => it.size === size)?.d_mm ?? 0;
    const own = pipeRings[size] ?? null;
    for (const ring of [flatRing(d_mm, own), bondedSeal(d_mm, own)]) {
      expect(ring.source.firmness).toBe("from memory");
      // DIN 7603 makes the inside up to 0.3 mm larger than it is called (from memory).
      expect(ring.inside_mm + 0.3).toBeGreaterThan(d_mm);
      expect(ring.outside_mm).toBeGreaterThan(ring.inside_mm);
    }
    expect(collar(d_mm, own).source.firmness).toBe("from memory");
    expect(collar(d_mm, own).diameter_mm).toBeGreaterThan(d_mm);
  },
);
