import { exact, type Quantity } from "../quantity/quantity.ts";
import { deg } from "../quantity/unit.ts";

/** A thread by its basic sizes, whatever standard it is of. Symbols as in ISO 724; of a taper thread at the gauge plane. */
export type ThreadForm = {
  readonly designation: string;
  readonly d: Quantity;
  readonly P: Quantity;
  readonly d_2: Quantity;
  readonly D_1: Quantity;
  /** Root of the plug's thread. */
  readonly d_3: Quantity;
  /** Half of the angle that the flanks enclose. */
  readonly alpha: Quantity;
};

/** Flanks that enclose 60°, as of metric, unified and NPT threads. */
export const flankOf60: Quantity = exact("alpha", 30, deg, "ISO 68-1:1998, 3; ASME B1.1-2003, 2; ASME B1.20.1-2013, 4");
