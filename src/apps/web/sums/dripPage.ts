import { dripFields } from "../../../sheets/sums/dripFields.ts";
import { dripChoiceWords, dripFieldWords, dripParts, dripStart } from "../../../sheets/words/dripBenchWords.ts";
import { sumPage } from "./SumPage.tsx";

export const DripPage = sumPage({
  name: "drip",
  fields: dripFields,
  words: dripFieldWords,
  choiceWords: dripChoiceWords,
  start: dripStart,
  filled: {},
  parts: [
    { id: "asked", title: dripParts.asked, folds: false, fields: ["signs", "breather", "look"] },
    { id: "counted", title: dripParts.counted, folds: false, fields: ["drops", "minutes", "lip"] },
    { id: "lasts", title: dripParts.lasts, folds: false, fields: ["toLimit", "perMm"] },
  ],
  asks: () => true,
});
