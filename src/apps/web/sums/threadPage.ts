import { threadFields } from "../../../sheets/sums/threadFields.ts";
import {
  threadChoiceWords,
  threadFieldWords,
  threadParts,
  threadStart,
} from "../../../sheets/words/threadBenchWords.ts";
import { lazily } from "../kit/lazily.tsx";
import { sumPage } from "./SumPage.tsx";

const folded = (id: Exclude<keyof typeof threadParts, "plug" | "photo">, ...fields: readonly string[]) => ({
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
    {
      id: "plug",
      title: threadParts.plug,
      folds: false,
      fields: ["outside", "crests", "gaps", "along", "counted", "photoPitch", "photoSpread"],
    },
    folded("gauge", "seats", "seatsNot"),
    folded("hand", "turned", "felt", "meshTurns", "meshIn"),
    folded("hole", "bore", "turns", "travel"),
    folded("taper", "grown", "grownOver", "narrows", "narrowsOver"),
    folded("foreign", "hexagon", "sister"),
  ],
  further: {
    id: "photo",
    title: threadParts.photo,
    Page: lazily(() => import("../photo/PhotoPart.tsx"), "PhotoPart"),
  },
  asks: (field, text) =>
    (field !== "crests" || text("outside") !== "") &&
    (field !== "counted" || text("gaps") !== "") &&
    (!field.startsWith("photo") || text("photoPitch") + text("photoSpread") !== ""),
});
