import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { AnswerSheet } from "../drawings/AnswerSheet.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { bestRemedy, sectionOf, windowOf } from "./pictures.ts";

/** The picture of an answer: the port as found and, where something else would do, that beside it; a window under each. */
export function answerSvg(weighed: Weighed): string {
  const { portCase, asFound } = weighed;
  const best = bestRemedy(weighed);
  const found = {
    caption: "As found",
    section: sectionOf(portCase, asFound),
    window: windowOf(portCase, asFound, "As found"),
  };
  if (!best || best.id === "lower torque") return standaloneSvg(<AnswerSheet before={found} after={null} />);
  const caption = remedyNames[best.id];
  const after = { caption, section: sectionOf(portCase, best), window: windowOf(portCase, best, caption) };
  return standaloneSvg(<AnswerSheet before={found} after={after} />);
}
