import type { FactOf } from "../../journal/facts/fact.ts";
import type { PortId } from "../../journal/facts/ids.ts";
import { remedyIds } from "../../mechanics/remedies/method.ts";
import { firstQuestions, reaches } from "../../mechanics/remedies/portCase.ts";
import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { choiceWords, fieldWords } from "../words/fieldWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { type Act, type ActForm, type Around, actForm, ownWords, type PlainFact, portOf } from "./act.ts";

/**
 * The six questions before any number. What is left open was not answered, and that is never a "no"; what was answered before
 * stands there, for a breather that was blocked may be free by now.
 */
export const questionsAct: Act = {
  form: questionsForm,
  read: answered,
  texts: (fact) => (fact.type === "QuestionsAnswered" ? textsOf(fact) : null),
};

type Answers = Omit<FactOf<"QuestionsAnswered">, "type" | "port">;

const nothing = "nothing";
const furtherQuestions = ["waterTest", "alloyTested"] as const;

function questionsForm(around: Around): ActForm {
  return actForm(
    "asked",
    {
      crack: choice("no", "yes"),
      pressure: choice("none", "yes"),
      pressureValue: { type: "number", unit: "bar", step: 0.1, start: "1", from: "above nothing" },
      reaches: { type: "several", choices: reaches, none: nothing },
      people: choice("no", "yes"),
      repairedBefore: choice("no", "yes"),
      earlierMethod: choice(...remedyIds),
      earlierCause: ownWords,
      breather: choice("free", "blocked", "none"),
      waterTest: choice("passed", "failed", "not done"),
      alloyTested: choice("yes", "no"),
    },
    {
      crack: fieldWords["asked.crack"],
      pressure: fieldWords["asked.pressure"],
      pressureValue: fieldWords["asked.pressure.value"],
      reaches: fieldWords["asked.reaches"],
      people: fieldWords["asked.people"],
      repairedBefore: fieldWords["asked.repairedBefore"],
      earlierMethod: fieldWords["asked.repairedBefore.method"],
      earlierCause: fieldWords["asked.repairedBefore.cause"],
      breather: fieldWords["asked.breather"],
      waterTest: fieldWords["asked.waterTest"],
      alloyTested: fieldWords["asked.alloyTested"],
    },
    { choiceWords: { ...choiceWords, ...remedyNames }, given: textsOf(known(around)), folded: furtherQuestions },
  );
}

function answered(it: Typed, around: Around): PlainFact {
  const [pressure, repaired, reached] = [it.text("pressure"), it.text("repairedBefore"), it.text("reaches")];
  if (pressure === "yes") it.want("pressureValue");
  if (repaired === "yes") it.want("earlierMethod");
  // An answer that was taken back in a new entry would still stand: the entry that gave it is put right instead.
  if (!around.corrects) it.want(...Object.keys(textsOf(known(around))).filter((field) => !further.includes(field)));
  if (![...firstQuestions, ...furtherQuestions].some((field) => it.text(field) !== null)) it.want(...firstQuestions);
  const cause = it.text("earlierCause");
  return {
    type: "QuestionsAnswered",
    port: portOf(around),
    crack: it.chosen("crack", ["no", "yes"]),
    pressure: pressure === "yes" ? it.reading("pressureValue") : it.chosen("pressure", ["none"]),
    reaches: reached === null ? null : reached === nothing ? [] : reached.split(","),
    people: it.chosen("people", ["no", "yes"]),
    repairedBefore:
      repaired === "yes"
        ? { method: it.text("earlierMethod"), ...(cause === null ? {} : { cause }) }
        : it.chosen("repairedBefore", ["no"]),
    breather: it.chosen("breather", ["free", "blocked", "none"]),
    waterTest: it.chosen("waterTest", ["passed", "failed", "not done"]),
    alloyTested: it.chosen("alloyTested", ["yes", "no"]),
  };
}

/** Asked only where the question before it was answered with "yes". */
const further = ["pressureValue", "earlierMethod", "earlierCause"];

const known = (around: Around): Answers => around.sheet.ports[portOf(around) as PortId]?.questions ?? {};

function textsOf({ pressure, reaches: reached, repairedBefore, ...plain }: Answers): Readonly<Record<string, string>> {
  const earlier = typeof repairedBefore === "object" ? repairedBefore : null;
  const texts = {
    crack: plain.crack,
    people: plain.people,
    breather: plain.breather,
    waterTest: plain.waterTest,
    alloyTested: plain.alloyTested,
    pressure: pressure === undefined ? undefined : pressure === "none" ? pressure : "yes",
    pressureValue: pressure === "none" ? undefined : pressure,
    reaches: reached && (reached.length === 0 ? nothing : reached.join(",")),
    repairedBefore: earlier ? "yes" : repairedBefore,
    earlierMethod: earlier?.method,
    earlierCause: earlier?.cause,
  };
  return Object.fromEntries(
    Object.entries(texts).filter((entry): entry is [string, string] => typeof entry[1] === "string"),
  );
}
