import { standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";
import { ThreadRule } from "../drawings/rule/ThreadRule.tsx";
import { candidatesBeside, ORDINARY_GAPS } from "../words/threadWords.ts";

/** The candidates on a steel rule, with the reading where gaps were counted. */
export function namedOnRule(naming: ThreadNaming, evidence: readonly ThreadEvidence[]) {
  const counted = evidence.find((it) => it.type === "gaps");
  const gaps = counted?.count ?? ORDINARY_GAPS;
  const suspected = naming.warnings.includes("counted crests");
  const threads = candidatesBeside(naming).map(({ designation, thread, pieces }) => {
    const crests = suspected && pieces.some(({ explainedBy }) => explainedBy === "crestsCounted");
    return { designation, family: thread.family, P_mm: thread.P_mm, crest: crests ? gaps - 1 : gaps };
  });
  const read = counted
    ? { at_mm: valueIn(mm, counted.length), within_mm: (2 * standardUncertainty(counted.length)) / mm.inSI }
    : null;
  return <ThreadRule threads={threads} gaps={gaps} read={read} />;
}
