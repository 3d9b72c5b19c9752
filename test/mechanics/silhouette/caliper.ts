import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import type { CaliperReading } from "../../../src/mechanics/silhouette/photoPitch.ts";

/** A caliper reading of a true diameter, to its scale of 0.05 mm. */
export const caliper = (outside_mm: number): CaliperReading => ({
  length: exact("d", Math.round(outside_mm / 0.05) * 0.05, mm),
  id: "outside",
});
