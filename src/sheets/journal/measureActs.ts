import { type ReadingName, readingKinds } from "../../journal/facts/readingFacts.ts";
import { materials } from "../../mechanics/tables/materials.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { MeasureActName } from "../words/actWords.ts";
import { measureFieldWords, readingWords, threadCommon } from "../words/measureActWords.ts";
import { type Act, actForm, answerTo, ownWords, photosIn, photosText, portOf, saidYes, yesNo } from "./act.ts";

/** Lengths are read with the same few tools, in millimetres; turns have a form of their own. */
const lengths = (Object.keys(readingKinds) as readonly ReadingName[]).filter((it) => readingKinds[it] === "length");
const tools = ["caliper", "rule", "depth rod", "wire hook", "drill shank", "felt"] as const;
const knownBy = ["caliper and gaps", "gauge", "a known bolt", "stands in a book", "felt"] as const;
const verdicts = ["holds", "leaks", "cannot tell"] as const;
const wetnesses = ["dry", "damp", "wet", "drop"] as const;

/** What was measured, named and tried at a port. */
export const measureActs: Readonly<Record<MeasureActName, Act>> = {
  measured: {
    form: () =>
      actForm(
        "measured",
        {
          reading: choice(...lengths),
          value: measured("mm", 0.1, "10"),
          over: { type: "number", unit: "", step: 1, start: "8", from: "nothing" },
          how: choice(...tools),
        },
        measureFieldWords,
        { choiceWords: readingWords, photos: "last" },
      ),
    read: (it, around) => {
      it.want("reading", "value", "how");
      const reading = it.chosen("reading", lengths);
      const over = it.count("over", 1, 200);
      if (reading === "length over gaps" || reading === "travel for turns") it.want("over");
      return {
        type: "ReadingTaken",
        port: portOf(around),
        reading,
        value: it.reading("value"),
        how: it.chosen("how", tools),
        over,
        photos: photosIn(it),
      };
    },
    texts: (fact) =>
      fact.type === "ReadingTaken" &&
      lengths.includes(fact.reading) &&
      tools.some((it) => it === fact.how) &&
      fact.instrument === undefined
        ? {
            reading: fact.reading,
            value: fact.value,
            over: fact.over === undefined ? "" : String(fact.over),
            how: fact.how,
            photos: photosText(fact.photos),
          }
        : null,
  },

  named: {
    form: () =>
      actForm(
        "named",
        {
          thread: { type: "text", common: threadCommon },
          how: { type: "text", common: knownBy },
          rival: { type: "text", common: [] },
        },
        measureFieldWords,
        { folded: ["rival"] },
      ),
    read: (it, around) => {
      it.want("thread", "how");
      return {
        type: "ThreadNamed",
        port: portOf(around),
        thread: it.text("thread"),
        how: it.text("how"),
        rival: it.text("rival"),
      };
    },
    texts: (fact) =>
      fact.type === "ThreadNamed" ? { thread: fact.thread, how: fact.how, rival: fact.rival ?? "" } : null,
  },

  material: {
    form: () =>
      actForm(
        "material",
        {
          material: choice(...materials),
          how: { type: "text", common: ["magnet", "file and vinegar", "weight", "plate"] },
        },
        measureFieldWords,
      ),
    read: (it, around) => {
      it.want("material", "how");
      return {
        type: "MaterialJudged",
        port: portOf(around),
        material: it.chosen("material", materials),
        how: it.text("how"),
      };
    },
    texts: (fact) => (fact.type === "MaterialJudged" ? { material: fact.material, how: fact.how } : null),
  },

  judged: {
    form: () => actForm("judged", { belongs: yesNo, words: ownWords }, measureFieldWords, { photos: "last" }),
    read: (it, around) => {
      it.want("belongs");
      return {
        type: "PlugJudged",
        port: portOf(around),
        belongs: answerTo(it, "belongs"),
        words: it.text("words"),
        photos: photosIn(it),
      };
    },
    texts: (fact) =>
      fact.type === "PlugJudged"
        ? { belongs: saidYes(fact.belongs), words: fact.words ?? "", photos: photosText(fact.photos) }
        : null,
  },

  watched: {
    form: () =>
      actForm(
        "watched",
        {
          wetness: choice(...wetnesses),
          watched: { type: "number", unit: "", step: 5, start: "10", from: "nothing" },
        },
        { ...measureFieldWords, watched: { label: measureFieldWords.watched.label, hint: "Minutes." } },
        { photos: "last" },
      ),
    read: (it, around) => {
      it.want("wetness", "watched");
      return {
        type: "WetnessWatched",
        port: portOf(around),
        minutes: it.count("watched", 0, 1000),
        found: it.chosen("wetness", wetnesses),
        photos: photosIn(it),
      };
    },
    texts: (fact) =>
      fact.type === "WetnessWatched"
        ? { watched: String(fact.minutes), wetness: fact.found, photos: photosText(fact.photos) }
        : null,
  },

  pressed: {
    form: () =>
      actForm(
        "pressed",
        {
          from: { type: "number", unit: "bar", step: 0.05, start: "0.7", from: "anywhere" },
          to: { type: "number", unit: "bar", step: 0.05, start: "0.7", from: "anywhere" },
          minutes: { type: "number", unit: "", step: 5, start: "15", from: "nothing" },
          verdict: choice(...verdicts),
          words: ownWords,
        },
        { ...measureFieldWords, minutes: { label: measureFieldWords.minutes.label, hint: "Minutes." } },
      ),
    read: (it, around) => {
      it.want("from", "to", "minutes", "verdict");
      return {
        type: "PressureHeld",
        port: portOf(around),
        from: it.reading("from"),
        to: it.reading("to"),
        minutes: it.count("minutes", 0, 1000),
        verdict: it.chosen("verdict", verdicts),
        words: it.text("words"),
      };
    },
    texts: (fact) =>
      fact.type === "PressureHeld"
        ? {
            from: fact.from,
            to: fact.to,
            minutes: String(fact.minutes),
            verdict: fact.verdict,
            words: fact.words ?? "",
          }
        : null,
  },
};
