import type { Quantity } from "../quantity/quantity.ts";
import { stressArea } from "./metricThread.ts";
import type { Thread } from "./thread.ts";

/** Nominal stress area A_s of a solid plug; a thread that is not metric brings its own, by its standard. */
export const tensileStressArea = (thread: Thread): Quantity =>
  thread.type === "metric" ? stressArea(thread) : thread.A_s;
