import type { Distribution } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type LogDensity, logDensity, product, times } from "../quantity/logDensity.ts";
import { mm, mm2 } from "../quantity/unit.ts";
import type { RangeName, Ranges } from "../tables/referenceRanges.ts";
import type { FrictionNodes } from "./frictionNodes.ts";
import type { Seal } from "./port.ts";
import { wrenchDensity } from "./stripTorque.ts";

export const ringArea = formula(
  "A = pi / 4 * (D_o^2 - D_i^2)",
  { D_o: mm, D_i: mm, A: mm2 },
  "plain geometry: the face of a flat ring",
);
export const meanCircumference = formula(
  "C = pi * (D_o + D_i) / 2",
  { D_o: mm, D_i: mm, C: mm },
  "plain geometry: the mean circumference of a ring",
);

/** What a seal needs: the range of its pressure or line load, and the face or the line it acts on. */
export type SealNeed = { readonly range: RangeName; readonly acts: "on an area" | "along a line" };

/** The need of a seal; null for the kinds that a torque window does not cover: taper and none. */
export function sealNeed(seal: Pick<Seal, "kind" | "material">): SealNeed | null {
  switch (seal.kind) {
    case "flat washer":
      return { range: `seal flat ${seal.material ?? "copper"}`, acts: "on an area" };
    case "crush ring":
      return { range: "seal crush ring", acts: "on an area" };
    case "bonded seal":
      return { range: "seal bonded", acts: "along a line" };
    case "O-ring":
      return { range: "seal O-ring", acts: "along a line" };
    case "sealant, metal to metal":
      return { range: "seal sealant", acts: "along a line" };
    case "taper":
    case "none":
      return null;
    default:
      return seal.kind satisfies never;
  }
}

/** The density of the torque, N·m, set on the wrench from which a seal closes. */
export function sealTorqueDensity(
  seal: Seal,
  need: SealNeed,
  friction: FrictionNodes,
  wrench: Distribution,
  ranges: Ranges,
): LogDensity {
  const { distribution, unit } = ranges[need.range];
  const size = { D_o: seal.outside, D_i: seal.inside };
  const acting = need.acts === "on an area" ? ringArea(size) : meanCircumference(size);
  return product(times(unit.inSI * acting.value, logDensity(distribution)), friction.arm, wrenchDensity(wrench));
}
