import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";
import { standaloneSvg } from "../drawings/standalone.ts";
import { namedOnRule } from "../sums/namedOnRule.tsx";

/** The candidates on a steel rule as an SVG of its own. */
export const threadRuleSvg = (naming: ThreadNaming, evidence: readonly ThreadEvidence[]): string =>
  standaloneSvg(namedOnRule(naming, evidence));
