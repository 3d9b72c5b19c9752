import { cureFields } from "../../../sheets/sums/cureFields.ts";
import {
  closedNow,
  cureChoiceWords,
  cureFieldWords,
  cureParts,
  cureStart,
} from "../../../sheets/words/cureBenchWords.ts";
import { clockNow } from "../kit/clockTexts.ts";
import { sumPage } from "./SumPage.tsx";

export const CurePage = sumPage({
  name: "cure",
  fields: cureFields,
  words: cureFieldWords,
  choiceWords: cureChoiceWords,
  start: cureStart,
  filled: { closed: { word: closedNow, text: clockNow } },
  parts: [
    {
      id: "joint",
      title: cureParts.joint,
      folds: false,
      fields: ["bead", "open", "temperature", "humidity", "felt", "closed"],
    },
    { id: "tube", title: cureParts.tube, folds: false, fields: ["label", "namesFluid", "useBy"] },
  ],
  asks: (field, text) => field !== "felt" || text("humidity") === "",
});
