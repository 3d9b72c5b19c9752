import type { Port } from "../joint/port.ts";
import { isTaper } from "../threads/thread.ts";
import type { WhyNot } from "./repair.ts";

/** A taper thread wants its own reamer, tap and gauge: no method that cuts threads has fit sums for it here. */
export const taperWhyNot = ({ thread }: Port): WhyNot | null => (isTaper(thread) ? "taper thread" : null);
