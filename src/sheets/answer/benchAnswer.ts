import type { FoundPort } from "../../mechanics/remedies/foundPort.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { nextSentence } from "../words/measurementWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { answerSentence } from "../words/windowWords.ts";
import { answerFirst } from "./answerFirst.ts";
import { benchFound, type FirstAnswer } from "./benchFound.ts";
import { cautionsByPlace } from "./cautions.ts";
import { portReasons } from "./reasons.ts";

/** The answer of the bench in figures, as they are read, and sentences. */
export type BenchAnswer = FirstAnswer & {
  readonly because: string;
  readonly next: { readonly sentence: string; readonly field: string | null } | null;
  readonly reasons: readonly string[];
  readonly cautions: readonly string[];
};

/** The whole answer for the port as found, with what would do instead and what to measure next. */
export function benchAnswer(weighed: Weighed): BenchAnswer {
  const { asFound } = weighed;
  const sentences = answerFirst(weighed);
  const reasons = portReasons(weighed).filter((it) => !isSaid(it, sentences, asFound));
  return {
    ...benchFound(weighed),
    sentences,
    because: reasons.slice(0, becauses).join(" "),
    reasons: reasons.slice(becauses),
    next: inTheWay(weighed) ?? worthMeasuring(weighed),
    cautions: cautionsByPlace(weighed)
      .filter(({ where }) => where === "port" || (where !== "cutting" && asFound.closure.heldOtherwise))
      .map(({ text }) => text),
  };
}

/** What is caught, and what that stands: the two reasons that are said with the answer. */
const becauses = 2;

const isSaid = (reason: string, sentences: readonly string[], closure: WeighedClosure): boolean =>
  reason === answerSentence(closure) || sentences.some((it) => it.includes(reason));

/** What stands in the way of any answer and is put right at one field of the bench; null where nothing does. */
function inTheWay({ asFound }: FoundPort): BenchAnswer["next"] {
  const reason = asFound.refused?.reason;
  switch (reason?.type) {
    case "question open":
      return { sentence: refusalSentence(reason), field: `asked.${reason.question}` };
    case "kind of joint not said":
      return { sentence: refusalSentence(reason), field: "joint.kind" };
    case "breather blocked":
      return { sentence: refusalSentence(reason), field: "asked.breather" };
    case "not counted":
      return { sentence: refusalSentence(reason), field: "left.turns" };
    case "alloy not tested":
      return { sentence: refusalSentence(reason), field: "asked.alloyTested" };
    default:
      return null;
  }
}

/** The reading that is worth most, or that none is. */
function worthMeasuring({ next: { measurements } }: Weighed): BenchAnswer["next"] {
  const sentence = nextSentence(measurements);
  if (sentence === null) return null;
  const worth = measurements.find((it) => it.worthIt);
  return { sentence, field: worth?.reading ?? null };
}
