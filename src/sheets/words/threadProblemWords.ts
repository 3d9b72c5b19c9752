import type { MetricThreadProblem } from "../../mechanics/threads/metricText.ts";
import type { PipeThreadProblem } from "../../mechanics/threads/pipeText.ts";
import type { ClassProblem } from "../../mechanics/threads/threadLimits.ts";
import type { ThreadProblem } from "../../mechanics/threads/threadText.ts";
import type { ToleranceClassProblem } from "../../mechanics/threads/toleranceClass.ts";
import type { UnifiedThreadProblem } from "../../mechanics/threads/unifiedText.ts";
import { anyOf } from "./problemWords.ts";

/** What would have been read as a thread of any standard. */
export function acceptedAnyThread(it: ThreadProblem): string {
  switch (it.of) {
    case "metric":
      return `${acceptedThread(it.problem)}${it.problem.type === "not a metric thread" ? otherThreads : ""}`;
    case "unified":
      return acceptedUnifiedThread(it.problem);
    case "pipe":
      return acceptedPipeThread(it.problem);
    default:
      return it satisfies never;
  }
}

const otherThreads = ', or "1/2-20 UNF", "G 1/2", "R 1/2", "Rp 1/2", "1/2-14 NPT"';

/** What would have been read as a tolerance class of a thread. */
export function acceptedAnyClass(designation: string, accepted: ClassProblem["accepted"]): string {
  if ("given" in accepted) return acceptedClass(accepted);
  return accepted.length > 0 ? anyOf(accepted) : `none: ${designation} has one class only`;
}

/** What would have been read as a metric thread. */
export function acceptedThread(problem: MetricThreadProblem): string {
  switch (problem.type) {
    case "not a metric thread":
      return "a metric thread such as M20x1.5";
    case "not a standard pitch":
      return `a pitch of M${problem.d_mm}: ${problem.pitches_mm.join(", ")} mm`;
    case "no coarse pitch":
      return `M${problem.d_mm} with its pitch: ${problem.pitches_mm.join(", ")} mm`;
    case "outside the range":
      return `${problem.least} to ${problem.most}`;
    case "not a standard diameter":
      return `a standard diameter; the nearest: ${problem.nearest.join(", ")}`;
    default:
      return problem satisfies never;
  }
}

/** What would have been read as a unified thread. */
export function acceptedUnifiedThread(problem: UnifiedThreadProblem): string {
  switch (problem.type) {
    case "not a unified thread":
      return "a unified thread such as 1/4-20 UNC";
    case "outside the range":
      return `${problem.least} to ${problem.most} inch`;
    case "not a standard size":
      return `a standard size; the nearest: ${problem.nearest.join(", ")}`;
    case "not a standard pitch":
    case "another series":
    case "no such series":
      return anyOf(problem.accepted);
    default:
      return problem satisfies never;
  }
}

/** What would have been read as a pipe thread. */
export function acceptedPipeThread(problem: PipeThreadProblem): string {
  switch (problem.type) {
    case "not a pipe thread":
      return "a pipe thread such as G 1/2, R 1/2, Rp 1/2 or 1/2-14 NPT";
    case "not a standard size":
      return `${problem.kind} ${anyOf(problem.accepted)}`;
    case "not its pitch":
      return `${problem.designation}: ${problem.threadsPerInch} threads per inch`;
    default:
      return problem satisfies never;
  }
}

/** What would have been read as a tolerance class. */
export function acceptedClass({ accepted }: ToleranceClassProblem): string {
  const { pitchGrades, crestGrades, deviations } = accepted;
  return `pitch grade ${pitchGrades.join(" ")}, crest grade ${crestGrades.join(" ")}, deviation ${deviations.join(" ")}, as one class or two ("6g", "5g6g", "4H5H")`;
}
