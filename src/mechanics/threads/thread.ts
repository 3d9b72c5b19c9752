import type { MetricThread } from "./metricThread.ts";
import type { PipeThread } from "./pipeThread.ts";
import type { UnifiedThread } from "./unifiedThread.ts";

/** Any thread that a port may have. */
export type Thread = MetricThread | UnifiedThread | PipeThread;

/** A thread that seals on itself, by the taper of its plug; no washer closes it. */
export type TaperThread = Exclude<PipeThread, { type: "G" }>;

export const isTaper = (thread: Thread): thread is TaperThread => {
  const { type } = thread;
  return type !== "metric" && type !== "unified" && type !== "G";
};
