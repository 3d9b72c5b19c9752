import { threadFields } from "../../../sheets/sums/threadFields.ts";
import {
  threadChoiceWords,
  threadFieldWords,
  threadParts,
  threadStart,
} from "../../../sheets/words/threadBenchWords.ts";
import { sumPage } from "./SumPage.tsx";

const folded = (id: Exclude<keyof typeof threadParts, "plug">, ...fields: readonly string[]) => ({
  id,
  title: threadParts[id],
  folds: true,
  fields,
});

export const ThreadPage = sumPage({
  name: "thread",
  fields: threadFields,
  words: threadFieldWords,
  choiceWords: threadChoiceWords,
  start: threadStart,
  filled: {},
  parts: [
    { id: "plug", title: threadParts.plug, folds: false, fields: ["outside", "crests", "gaps", "along", "counted"] },
    folded("gauge", "seats", "seatsNot"),
    folded("hand", "turned", "felt", "meshTurns", "meshIn"),
    folded("hole", "bore", "turns", "travel"),
    folded("taper", "grown", "grownOver"),
    folded("foreign", "hexagon", "sister"),
  ],
  asks: (field, text) => (field !== "crests" || text("outside") !== "") && (field !== "counted" || text("gaps") !== ""),
});
