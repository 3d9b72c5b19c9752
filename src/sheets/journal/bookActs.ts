import type { PortId } from "../../journal/facts/ids.ts";
import type { BookFigureNoted } from "../../journal/shop/book.ts";
import { surfaces } from "../../mechanics/joint/port.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { BookActName } from "../words/actWords.ts";
import { anyFigure, anyInterval, bookFieldWords, costsCommon, sourceCommon, struckCommon } from "../words/bookWords.ts";
import { threadCommon } from "../words/measureActWords.ts";
import { type Act, actForm, ownWords, portOf, unitOf } from "./act.ts";
import { moneyField, moneyIn } from "./money.ts";

const payers = ["workshop", "owner", "shared"] as const;

/** Figures of a book with where they stand, what comes due when, and what it cost in the end. */
export const bookActs: Readonly<Record<BookActName, Act>> = {
  figure: {
    form: () =>
      actForm(
        "figure",
        {
          torque: measured("N·m", 1, "30"),
          source: { type: "text", common: sourceCommon },
          surface: choice(...surfaces),
          thread: { type: "text", common: threadCommon },
          volume: measured("L", 0.1, "2"),
          fluid: ownWords,
        },
        bookFieldWords,
        { folded: ["surface", "thread", "volume", "fluid"] },
      ),
    read: (it, around) => {
      it.want("source");
      const figures = {
        torque: it.reading("torque"),
        thread: it.text("thread"),
        volume: it.reading("volume"),
        fluid: it.text("fluid"),
      };
      if (it.problems.length === 0 && Object.values(figures).every((value) => value === null))
        it.refuse("torque", anyFigure);
      const surface = it.chosen("surface", surfaces);
      const told = Object.entries({ ...figures, surface }).filter(([, value]) => value !== null);
      return {
        type: "BookFigureNoted",
        is: {
          figure: `figure-${around.fresh}`,
          port: portOf(around),
          source: it.text("source"),
          ...Object.fromEntries(told),
        },
      };
    },
    // A figure goes by its own name: one that was read wrongly is struck.
    texts: () => null,
  },

  struck: {
    form: (around) => {
      const figures = around.shop.book[portOf(around) as PortId] ?? [];
      const [only] = figures.length === 1 ? figures : [];
      return actForm(
        "struck",
        { figure: choice(...figures.map(({ figure }) => figure)), why: { type: "text", common: struckCommon } },
        bookFieldWords,
        {
          choiceWords: Object.fromEntries(figures.map((it) => [it.figure, figureText(it)])),
          given: only ? { figure: only.figure } : {},
        },
      );
    },
    read: (it) => {
      it.want("figure", "why");
      return { type: "BookFigureStruck", figure: it.text("figure"), why: it.text("why") };
    },
    texts: (fact) => (fact.type === "BookFigureStruck" ? { figure: fact.figure, why: fact.why } : null),
  },

  laidDown: {
    form: () =>
      actForm(
        "laidDown",
        {
          everyDistance: measured("km", 5000, "20000"),
          everyHours: measured("h", 50, "250"),
          everyMonths: { type: "number", unit: "", step: 6, start: "12", from: "nothing" },
          source: { type: "text", common: sourceCommon },
        },
        bookFieldWords,
      ),
    read: (it, around) => {
      it.want("source");
      const every = {
        distance: it.reading("everyDistance"),
        hours: it.reading("everyHours"),
        months: it.count("everyMonths", 1, 240),
      };
      const told = Object.entries(every).filter(([, value]) => value !== null);
      if (it.problems.length === 0 && told.length === 0) it.refuse("everyDistance", anyInterval);
      return {
        type: "ServiceLaidDown",
        unit: unitOf(around),
        every: Object.fromEntries(told),
        source: it.text("source"),
      };
    },
    texts: (fact) =>
      fact.type === "ServiceLaidDown"
        ? {
            everyDistance: fact.every.distance ?? "",
            everyHours: fact.every.hours ?? "",
            everyMonths: fact.every.months === undefined ? "" : String(fact.every.months),
            source: fact.source,
          }
        : null,
  },

  costs: {
    form: ({ shop }) =>
      actForm(
        "costs",
        { amount: moneyField(10, "100"), borneBy: choice(...payers), words: { type: "text", common: costsCommon } },
        { ...bookFieldWords, amount: { ...bookFieldWords.amount, hint: shop.people.workshop?.currency ?? "" } },
      ),
    read: (it) => {
      it.want("amount", "borneBy", "words");
      return {
        type: "CostsSettled",
        words: it.text("words"),
        amount: moneyIn(it, "amount"),
        borneBy: it.chosen("borneBy", payers),
      };
    },
    texts: (fact) =>
      fact.type === "CostsSettled" ? { amount: String(fact.amount), borneBy: fact.borneBy, words: fact.words } : null,
  },
};

/** "35 N·m (plate on it)". */
const figureText = ({ torque, thread, volume, fluid, source }: BookFigureNoted): string =>
  `${[torque, thread, volume, fluid].filter((it) => it !== undefined).join(", ")} (${source})`;
