import type { FactOf } from "../../journal/facts/fact.ts";
import type { PortId } from "../../journal/facts/ids.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { AnswerDocument, RemedyDocument, WindowDocument } from "./answerDocument.ts";

type OptionsWeighed = FactOf<"OptionsWeighed">;

/** An answer as the journal keeps it: every option with its figures, the working, the engine and the ranges of the day. */
export function weighedFact(port: PortId, answer: AnswerDocument): OptionsWeighed {
  return {
    type: "OptionsWeighed",
    port,
    engine: answer.engine,
    case: answer.case as OptionsWeighed["case"],
    asFound: kept(answer.asFound.window),
    options: answer.remedies.map((it) => optionOf(it, answer)),
    working: answer.working,
    ranges: answer.ranges,
    levels: answer.levels,
  };
}

function optionOf(it: RemedyDocument, { ranking }: AnswerDocument): OptionsWeighed["options"][number] {
  const price = ranking.find(({ id }) => id === it.id)?.price;
  return {
    id: it.id as RemedyId,
    window: kept(it.window),
    refused: it.refused && { rule: it.refused.rule, override: it.refused.override as "never" },
    lasting: it.lasting,
    ...(price ? { price: { low: price.low, high: price.high } } : {}),
    ...(it.hours ? { hours: { low: it.hours.low, high: it.hours.high } } : {}),
    ...(it.readyAfter_h === null ? {} : { readyAfter_h: it.readyAfter_h }),
    ...(it.comesBack
      ? { comesBack: { low: it.comesBack.low, likely: it.comesBack.likely, high: it.comesBack.high } }
      : {}),
  };
}

const kept = (window: WindowDocument | null): OptionsWeighed["asFound"] =>
  window && {
    open: window.open,
    need_Nm: window.need_Nm,
    limit_Nm: window.limit_Nm,
    advice_Nm: window.advice_Nm,
  };
