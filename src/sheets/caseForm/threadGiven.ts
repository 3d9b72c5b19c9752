import type { Thread } from "../../mechanics/threads/thread.ts";
import { limitsOf, type ThreadLimits } from "../../mechanics/threads/threadLimits.ts";
import { threadFromText } from "../../mechanics/threads/threadText.ts";
import type { InputProblem } from "../words/problemWords.ts";
import { acceptedAnyClass, acceptedAnyThread } from "../words/threadProblemWords.ts";
import type { WrittenCase } from "./caseSchema.ts";
import { asGiven } from "./schemaProblems.ts";

/** The thread of a port and its limits of size. */
export type ThreadGiven = { readonly thread: Thread; readonly limits: ThreadLimits };

/** Reads the thread of a case; null with its problems where it does not read. */
export type ThreadReader = (written: WrittenCase, problems: InputProblem[]) => ThreadGiven | null;

/** The thread that a case names and its limits by the classes of plug and hole; null where one of them does not read. */
export function threadGiven(
  { thread: written, plug, case: housing }: WrittenCase,
  problems: InputProblem[],
): ThreadGiven | null {
  // What was measured of a thread is named before its case is read.
  const read = threadFromText(typeof written === "string" ? written : "");
  if (!read.ok) {
    problems.push({ field: "thread", given: asGiven(written), accepted: acceptedAnyThread(read.problem) });
    return null;
  }
  const { thread, plugClass } = read;
  const classes = { plug: plug?.tolerance, hole: housing.tolerance };
  const found = limitsOf(thread, classes, plugClass);
  if (found.ok) return { thread, limits: found.limits };
  for (const { of, accepted } of found.problems)
    problems.push({
      field: of === "plug" ? "plug.tolerance" : "case.tolerance",
      given: asGiven(classes[of]),
      accepted: acceptedAnyClass(thread.designation, accepted),
    });
  return null;
}
