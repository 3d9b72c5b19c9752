import { type Step, working } from "../../mechanics/quantity/working.ts";
import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import { lengthExpected, oddsOfFirst, pitchRead } from "../../mechanics/threads/namingWorking.ts";
import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";
import { candidatesBeside } from "../words/threadWords.ts";

/** How the pitch, the places on the rule and the odds of a naming were got. */
export function threadWorking(naming: ThreadNaming, evidence: readonly ThreadEvidence[]): readonly Step[] {
  const shown = candidatesBeside(naming);
  return working(
    ...evidence
      .flatMap((it) => [pitchRead(it), ...shown.map((candidate) => lengthExpected(it, candidate))])
      .filter((it) => it !== null),
    oddsOfFirst(naming),
  );
}
