import type { PipeThreadProblem } from "../../mechanics/threads/pipeText.ts";
import type { UnifiedThreadProblem } from "../../mechanics/threads/unifiedText.ts";
import { anyOf } from "./problemWords.ts";

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
      return "a pipe thread such as G 1/2, R 1/2 or 1/2-14 NPT";
    case "not a standard size":
      return `${problem.kind} ${anyOf(problem.accepted)}`;
    case "not its pitch":
      return `${problem.designation}: ${problem.threadsPerInch} threads per inch`;
    default:
      return problem satisfies never;
  }
}
