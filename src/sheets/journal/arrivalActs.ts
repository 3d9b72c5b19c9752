import { choice, measured } from "../sums/sumField.ts";
import type { ArrivalActName } from "../words/actWords.ts";
import { agreedCommon, measureFieldWords, orderedCommon } from "../words/measureActWords.ts";
import { type Act, actForm, answerTo, dayIn, ownWords, saidYes, unitOf, yesNo } from "./act.ts";
import { dayField } from "./dayField.ts";
import { meterFields, meterIn, meterTexts } from "./meterFields.ts";
import { moneyField, moneyIn } from "./money.ts";

const readBy = ["wire hook", "mirror", "finger", "finger, calibrated"] as const;
const warmths = ["cold", "warm", "hot"] as const;

/** How the machine came, what was agreed on it, what was ordered for it, and what washed it out. */
export const arrivalActs: Readonly<Record<ArrivalActName, Act>> = {
  levelFound: {
    form: () =>
      actForm(
        "levelFound",
        {
          belowLip: { type: "number", unit: "mm", step: 1, start: "5", from: "anywhere" },
          read: choice(...readBy),
          oil: choice(...warmths),
          standsLevel: yesNo,
        },
        measureFieldWords,
      ),
    read: (it, around) => {
      it.want("belowLip", "read", "oil", "standsLevel");
      return {
        type: "LevelFound",
        unit: unitOf(around),
        belowLip: it.reading("belowLip"),
        how: it.chosen("read", readBy),
        oil: it.chosen("oil", warmths),
        standsLevel: answerTo(it, "standsLevel"),
      };
    },
    texts: (fact) =>
      fact.type === "LevelFound"
        ? { belowLip: fact.belowLip, read: fact.how, oil: fact.oil, standsLevel: saidYes(fact.standsLevel) }
        : null,
  },

  flushed: {
    form: () =>
      actForm(
        "flushed",
        { poured: measured("L", 0.1, "0.3"), caught: measured("L", 0.1, "0.3"), words: ownWords },
        measureFieldWords,
      ),
    read: (it, around) => {
      it.want("poured", "caught");
      return {
        type: "UnitFlushed",
        unit: unitOf(around),
        poured: it.reading("poured"),
        caught: it.reading("caught"),
        words: it.text("words"),
      };
    },
    texts: (fact) =>
      fact.type === "UnitFlushed" ? { poured: fact.poured, caught: fact.caught, words: fact.words ?? "" } : null,
  },

  agreed: {
    form: ({ shop }) =>
      actForm(
        "agreed",
        { agreed: { type: "text", common: agreedCommon }, upTo: moneyField(10, "200"), keysTaken: yesNo },
        { ...measureFieldWords, upTo: { ...measureFieldWords.upTo, hint: shop.people.workshop?.currency ?? "" } },
      ),
    read: (it) => {
      it.want("agreed");
      return {
        type: "ScopeAgreed",
        words: it.text("agreed"),
        upTo: moneyIn(it, "upTo"),
        keysTaken: answerTo(it, "keysTaken"),
      };
    },
    texts: (fact) =>
      fact.type === "ScopeAgreed"
        ? {
            agreed: fact.words,
            upTo: fact.upTo === undefined ? "" : String(fact.upTo),
            keysTaken: saidYes(fact.keysTaken),
          }
        : null,
  },

  meter: {
    form: () => actForm("meter", meterFields, measureFieldWords),
    read: (it) => {
      const meter = meterIn(it);
      if (!meter) it.want("distance");
      return meter && { type: "MeterRead", meter };
    },
    texts: (fact) => (fact.type === "MeterRead" ? meterTexts(fact.meter) : null),
  },

  ordered: {
    form: ({ today }) => {
      const arrives = dayField(today, ["1", "7", "14"]);
      return actForm(
        "ordered",
        { ordered: { type: "text", common: orderedCommon }, arrives: arrives.field },
        measureFieldWords,
        { choiceWords: arrives.words },
      );
    },
    read: (it) => {
      it.want("ordered");
      return { type: "PartsOrdered", words: it.text("ordered"), arrives: dayIn(it, "arrives") };
    },
    texts: (fact) => (fact.type === "PartsOrdered" ? { ordered: fact.words, arrives: fact.arrives ?? "" } : null),
  },
};
