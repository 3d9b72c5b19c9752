import { convertFields } from "../../../sheets/sums/convertFields.ts";
import { convertFieldWords, convertParts, convertStart } from "../../../sheets/words/convertBenchWords.ts";
import { sumPage } from "./SumPage.tsx";

export const ConvertPage = sumPage({
  name: "convert",
  fields: convertFields,
  words: convertFieldWords,
  choiceWords: {},
  start: convertStart,
  filled: {},
  parts: [{ id: "quantity", title: convertParts.quantity, folds: false, fields: ["quantity", "unit"] }],
  // Beside a unit that was typed a tapped one would go unheard.
  asks: (field, text) => field !== "unit" || !/\p{L}|[°"'%]/u.test(text("quantity")),
});
