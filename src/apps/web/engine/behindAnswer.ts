import type { Assumption } from "../../../mechanics/remedies/givenCase.ts";
import type { RemedyId } from "../../../mechanics/remedies/method.ts";
import type { Weighed } from "../../../mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../sheets/answer/answerDocument.ts";
import { benchPapers } from "../../../sheets/answer/benchPapers.ts";
import { benchWays, wayDetails } from "../../../sheets/answer/benchWays.tsx";
import type { EngineRest } from "./messages.ts";

/** What stands behind an answer: the ways, the one that is open, the papers. Loaded once the first answer is given. */
export function behindAnswer(
  weighed: Weighed,
  ordinary: readonly Assumption[],
  open: RemedyId | null,
  all: boolean,
): EngineRest {
  const document = answerDocument(weighed, ordinary, null, [], "");
  return {
    ...benchWays(weighed, document, { open, all }),
    details: open && wayDetails(open, weighed, document),
    papers: benchPapers(weighed, document),
  };
}
