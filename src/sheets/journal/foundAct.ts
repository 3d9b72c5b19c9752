import { catches, conditions } from "../../mechanics/joint/port.ts";
import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { foundCommon, foundFieldWords, foundOnArrival } from "../words/foundWords.ts";
import { type Act, type ActForm, type Around, actForm, type PlainFact, photosIn, photosText } from "./act.ts";

/** What was found, with photos: of a port also how its thread catches and looks, and its seat; each is a fact of its own. */
export const foundAct: Act = {
  form: foundForm,
  read: found,
  texts: (fact) => {
    switch (fact.type) {
      case "ConditionFound":
        return { words: fact.words, photos: photosText(fact.photos) };
      case "CatchFelt":
        return { catch: fact.catch, condition: fact.condition ?? "" };
      case "SeatJudged":
        return { seat: fact.seat };
      default:
        return null;
    }
  },
};

const seats = ["flat", "scored", "gouged"] as const;

function foundForm({ about }: Around): ActForm {
  const ofPort = about.type === "port";
  const words = { type: "text", common: ofPort ? foundCommon : foundOnArrival } as const;
  const thread = { catch: choice(...catches), condition: choice(...conditions), seat: choice(...seats) };
  return actForm("found", ofPort ? { words, ...thread } : { words }, foundFieldWords, { photos: "first" });
}

function found(it: Typed, { about }: Around): readonly PlainFact[] {
  const port = about.type === "port" ? about.port : null;
  const [words, photos] = [it.text("words"), photosIn(it)];
  const caught = port === null ? null : it.chosen("catch", catches);
  const condition = port === null ? null : it.chosen("condition", conditions);
  const seat = port === null ? null : it.chosen("seat", seats);
  // A photo says little to the next hand without a word, and a thread that looks bad is felt as well.
  if (photos || (!caught && !seat)) it.want("words");
  if (condition) it.want("catch");
  return [
    ...(words === null ? [] : [{ type: "ConditionFound" as const, port, words, photos }]),
    ...(caught === null ? [] : [{ type: "CatchFelt" as const, port, catch: caught, condition }]),
    ...(seat === null ? [] : [{ type: "SeatJudged" as const, port, seat }]),
  ];
}
