import { levelFields } from "../../../sheets/sums/levelFields.ts";
import { levelChoiceWords, levelFieldWords, levelParts, levelStart } from "../../../sheets/words/levelBenchWords.ts";
import { sumPage } from "./SumPage.tsx";

/** The way in which a millimetre is known, and the fields it is known by. */
const ways: Readonly<Record<string, readonly string[]>> = {
  drawn: ["drawn", "fallen", "fill"],
  known: ["perMm"],
  shape: ["shape", "length", "width", "height", "depth", "gears"],
};
const sizesOf: Readonly<Record<string, readonly string[]>> = {
  ball: ["width"],
  ellipse: ["length", "width", "height"],
};

export const LevelPage = sumPage({
  name: "level",
  fields: levelFields,
  words: levelFieldWords,
  choiceWords: levelChoiceWords,
  start: levelStart,
  filled: {},
  parts: [
    { id: "holds", title: levelParts.holds, folds: false, fields: ["by", ...Object.values(ways).flat()] },
    { id: "stands", title: levelParts.stands, folds: false, fields: ["below", "allowed"] },
    { id: "wanted", title: levelParts.wanted, folds: true, fields: ["target", "syringe", "pour"] },
  ],
  asks(field, text) {
    const asked = ways[text("by") || "drawn"] ?? [];
    if (Object.values(ways).flat().includes(field) && !asked.includes(field)) return false;
    const sized = ["length", "width", "height"].includes(field);
    return !sized || (sizesOf[text("shape")] ?? ["length", "width"]).includes(field);
  },
});
