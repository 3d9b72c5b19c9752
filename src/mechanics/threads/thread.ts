import type { Quantity } from "../quantity/quantity.ts";
import { type MetricThread, stressArea } from "./metricThread.ts";
import { type PipeThread, pipeStressArea } from "./pipeThread.ts";
import { type UnifiedThread, unifiedStressArea } from "./unifiedThread.ts";

/** Any thread that a port may have. */
export type Thread = MetricThread | UnifiedThread | PipeThread;

/** A thread that seals on itself, by its taper; no washer closes it. */
export type TaperThread = Exclude<PipeThread, { type: "G" }>;

export const isTaper = (thread: Thread): thread is TaperThread => {
  const { type } = thread;
  return type === "R" || type === "Rc" || type === "NPT";
};

/** Nominal stress area A_s of a solid plug, by the standard of its thread. */
export function tensileStressArea(thread: Thread): Quantity {
  switch (thread.type) {
    case "metric":
      return stressArea(thread);
    case "unified":
      return unifiedStressArea(thread);
    case "G":
    case "R":
    case "Rc":
    case "NPT":
      return pipeStressArea(thread);
    default:
      return thread satisfies never;
  }
}
