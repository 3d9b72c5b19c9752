import type { Seal } from "../joint/port.ts";
import { exact } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";

/** A seal without its ring; a chamfer is still there without the ring that lies in it. */
export const withoutRing = (seal: Seal, why: string): Seal =>
  seal.thickness.value === 0 ? seal : { ...seal, kind: "none", thickness: exact("t", 0, mm, why) };
