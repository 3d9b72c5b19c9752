import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { AnswerSheet } from "../drawings/AnswerSheet.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { sectionOf, windowOf } from "./pictures.ts";
import { remedyBeside } from "./remedyShown.ts";

/** The picture of an answer: the port as found and, where something else would do, that beside it; a window under each. */
export function answerSvg(weighed: Weighed): string {
  const { portCase, asFound } = weighed;
  const beside = remedyBeside(weighed);
  const found = {
    caption: "As found",
    section: sectionOf(portCase, asFound),
    window: windowOf(portCase, asFound, "As found"),
  };
  if (!beside) return standaloneSvg(<AnswerSheet before={found} after={null} />);
  const caption = remedyNames[beside.id];
  const after = { caption, section: sectionOf(portCase, beside), window: windowOf(portCase, beside, caption) };
  return standaloneSvg(<AnswerSheet before={found} after={after} />);
}
