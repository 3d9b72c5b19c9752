import { type MetricThreadProblem, metricThreadFromText } from "./metricText.ts";
import type { GPlugClass } from "./pipeLimits.ts";
import { type PipeThreadProblem, pipeThreadFromText } from "./pipeText.ts";
import type { Thread } from "./thread.ts";
import { type UnifiedThreadProblem, unifiedThreadFromText } from "./unifiedText.ts";

export type ThreadRead =
  /** `plugClass` is the class that the text of a G thread names, "G 1/2 A", or null. */
  | { readonly ok: true; readonly thread: Thread; readonly plugClass: GPlugClass | null }
  | { readonly ok: false; readonly problem: ThreadProblem };

/** Why a text names no thread of ours, by the standard that it is written after; what is after none counts as metric. */
export type ThreadProblem =
  | { readonly of: "metric"; readonly problem: MetricThreadProblem }
  | { readonly of: "unified"; readonly problem: UnifiedThreadProblem }
  | { readonly of: "pipe"; readonly problem: PipeThreadProblem };

/** The thread that `text` names: "M20x1.5", "1/2-20 UNF", "G 1/2", "R 1/2", "1/2-14 NPT". */
export function threadFromText(text: string): ThreadRead {
  const pipe = pipeThreadFromText(text);
  if (pipe.ok) return pipe;
  if (pipe.problem.type !== "not a pipe thread") return refused({ of: "pipe", problem: pipe.problem });
  const unified = unifiedThreadFromText(text);
  if (unified.ok) return named(unified.thread);
  if (unified.problem.type !== "not a unified thread") return refused({ of: "unified", problem: unified.problem });
  const metric = metricThreadFromText(text);
  return metric.ok ? named(metric.thread) : refused({ of: "metric", problem: metric.problem });
}

const named = (thread: Thread): ThreadRead => ({ ok: true, thread, plugClass: null });
const refused = (problem: ThreadProblem): ThreadRead => ({ ok: false, problem });
