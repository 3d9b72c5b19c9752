import { limits } from "../../mechanics/threads/metricLimits.ts";
import { metricThreadFromText } from "../../mechanics/threads/metricText.ts";
import { standardHole, standardPlug } from "../../mechanics/threads/standardClasses.ts";
import type { WrittenCase } from "./caseSchema.ts";
import type { ThreadGiven } from "./threadGiven.ts";

/**
 * The metric thread that a case names, 6g in 6H: most ports have one, and a page reads it before the tables of other standards
 * are fetched. Null where the case names anything else, or a class, or a text that no metric thread has.
 */
export function ordinaryMetric({ thread: written, plug, case: housing }: WrittenCase): ThreadGiven | null {
  if (plug?.tolerance !== undefined || housing.tolerance !== undefined) return null;
  const read = metricThreadFromText(typeof written === "string" ? written : "");
  return read.ok ? { thread: read.thread, limits: limits(read.thread, standardPlug, standardHole) } : null;
}
