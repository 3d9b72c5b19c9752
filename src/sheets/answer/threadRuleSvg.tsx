import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import type { ThreadCandidate } from "../../mechanics/threads/threadName.ts";
import { standaloneSvg } from "../drawings/standalone.ts";
import { ThreadRule } from "../drawings/ThreadRule.tsx";

/** The likeliest threads on a steel rule as an SVG of its own. */
export function threadRuleSvg(
  candidates: readonly ThreadCandidate[],
  gaps: number,
  read: Extract<ThreadEvidence, { type: "gaps" }> | null,
): string {
  const shown = candidates.slice(0, 3).map(({ designation, thread }) => ({ designation, P_mm: thread.P_mm }));
  return standaloneSvg(<ThreadRule threads={shown} gaps={gaps} read_mm={read && valueIn(mm, read.length)} />);
}
