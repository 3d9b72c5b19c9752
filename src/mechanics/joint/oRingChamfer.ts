import { triangular } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { mm, one } from "../quantity/unit.ts";
import { fromMemory, type Source, sourceText } from "../tables/source.ts";
import type { Seal } from "./port.ts";

const depthOf = formula("z_c = k * (D_o - D_i) / 2", { k: one, D_o: mm, D_i: mm, z_c: mm }, "plain geometry");

export const chamferSource: Source = fromMemory("ISO 6149-1:2006, 4; glands of 45°");

/** The depth over the cord of the ring: 2.4 mm for one of 2.2 in ports of ISO 6149-1, 1.34 and up to 1.45 in glands of 45°. */
const depths = triangular(1.09, 1.34, 1.45);
export const overCord: Quantity = taken("k", depths, one, sourceText(chamferSource));

/**
 * How deep the chamfer is that an O-ring lies in where head and face meet, z_c: as measured, else by the cord of the ring. Null
 * for a ring between two faces, as those of ISO 9974-1 are, and for every other seal.
 */
export const chamferDepth = ({ kind, thickness, outside, inside, chamfer }: Seal): Quantity | null =>
  kind === "O-ring" && thickness.value === 0 ? (chamfer ?? depthOf({ k: overCord, D_o: outside, D_i: inside })) : null;
