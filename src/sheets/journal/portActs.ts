import { choice, measured, type SumFields } from "../sums/sumField.ts";
import { type PortActName, portFieldWords } from "../words/actWords.ts";
import { type Act, actForm, answerTo, dayIn, ownWords, photosIn, photosText, portOf, saidYes, yesNo } from "./act.ts";
import { cureAct } from "./cureAct.ts";
import { dayField } from "./dayField.ts";
import { foundAct } from "./foundAct.ts";
import { questionsAct } from "./questionsAct.ts";
import { torqueAct } from "./torqueAct.ts";

const hardness = ["by hand", "easy", "normal", "very tight"] as const;
const seenBy = ["paper", "powder", "by eye", "after a run"] as const;
const countedBy = ["with a dot", "felt", "by eye"] as const;
const washerCount = { type: "number", unit: "", step: 1, start: "1", from: "nothing" } as const;

/** Readings that an ordinary job does without. */
const seldom = ["torque", "turned"];

/** What is shown better than said. */
const withPhotos: readonly PortActName[] = ["out", "turns", "dry"];

/** What hands do at a port, one of these at a time. */
export const portActs: Readonly<Record<PortActName, Act>> = {
  loose: act(
    "loose",
    { hard: choice(...hardness), torque: measured("N·m", 1, "30") },
    (it, around) => {
      const hard = it.chosen("hard", hardness);
      it.want("hard");
      return hard && { type: "PortBrokenLoose", port: portOf(around), hard, torque: it.reading("torque") };
    },
    (fact) => (fact.type === "PortBrokenLoose" ? { hard: fact.hard, torque: fact.torque ?? "" } : null),
  ),

  stuck: act(
    "stuck",
    { words: ownWords },
    (it, around) => {
      it.want("words");
      return { type: "PortWouldNotOpen", port: portOf(around), words: it.text("words") };
    },
    (fact) => (fact.type === "PortWouldNotOpen" ? { words: fact.words } : null),
  ),

  out: act(
    "out",
    {},
    (it, around) => ({ type: "PortOpened", port: portOf(around), photos: photosIn(it) }),
    () => null,
  ),

  washersOut: act(
    "washersOut",
    { count: washerCount, words: ownWords },
    (it, around) => {
      it.want("count");
      return { type: "WashersOut", port: portOf(around), count: it.count("count", 0, 9), words: it.text("words") };
    },
    (fact) => (fact.type === "WashersOut" ? { count: String(fact.count), words: fact.words ?? "" } : null),
  ),

  washersIn: act(
    "washersIn",
    { count: washerCount, because: ownWords },
    (it, around) => {
      it.want("count");
      return { type: "WashersIn", port: portOf(around), count: it.count("count", 0, 9), because: it.text("because") };
    },
    (fact) => (fact.type === "WashersIn" ? { count: String(fact.count), because: fact.because ?? "" } : null),
  ),

  turns: act(
    "turns",
    {
      turns: { type: "number", unit: "turns", step: 0.25, start: "7", from: "nothing" },
      counted: choice(...countedBy),
      washer: yesNo,
    },
    (it, around) => {
      it.want("turns", "counted");
      return {
        type: "ReadingTaken",
        port: portOf(around),
        reading: "left.turns",
        value: it.reading("turns") && it.text("turns"),
        how: it.chosen("counted", countedBy),
        withWasher: answerTo(it, "washer"),
        photos: photosIn(it),
      };
    },
    (fact) =>
      fact.type === "ReadingTaken" && fact.reading === "left.turns"
        ? {
            turns: fact.value,
            counted: fact.how,
            washer: saidYes(fact.withWasher),
            photos: photosText(fact.photos),
          }
        : null,
  ),

  byHand: act(
    "byHand",
    {},
    (_, around) => ({ type: "PortClosedByHand", port: portOf(around) }),
    () => null,
  ),

  torqued: torqueAct,

  letGo: act(
    "letGo",
    { at: measured("N·m", 1, "20"), turned: measured("°", 15, "90"), words: ownWords },
    (it, around) => ({
      type: "PortLetGo",
      port: portOf(around),
      at: it.reading("at"),
      turned: it.reading("turned"),
      words: it.text("words"),
    }),
    (fact) =>
      fact.type === "PortLetGo" ? { at: fact.at ?? "", turned: fact.turned ?? "", words: fact.words ?? "" } : null,
  ),

  dry: act(
    "dry",
    { dry: yesNo, after: measured("min", 5, "10"), how: choice(...seenBy) },
    (it, around) => {
      it.want("dry", "after", "how");
      return {
        type: "PortDryChecked",
        port: portOf(around),
        dry: answerTo(it, "dry"),
        after: it.reading("after"),
        how: it.chosen("how", seenBy),
        photos: photosIn(it),
      };
    },
    (fact) =>
      fact.type === "PortDryChecked"
        ? { dry: saidYes(fact.dry), after: fact.after, how: fact.how, photos: photosText(fact.photos) }
        : null,
  ),

  cure: cureAct,

  asked: questionsAct,

  found: foundAct,

  held: {
    form: ({ today }) => {
      const until = dayField(today, ["1", "7", "14"]);
      return actForm(
        "held",
        { by: { type: "text", common: ["expanding bung", "old plug by hand"] }, until: until.field, words: ownWords },
        portFieldWords,
        { choiceWords: until.words },
      );
    },
    read: (it, around) => {
      it.want("by", "until");
      const until = dayIn(it, "until");
      return { type: "PortHeldForNow", port: portOf(around), by: it.text("by"), until, words: it.text("words") };
    },
    texts: (fact) =>
      fact.type === "PortHeldForNow" ? { by: fact.by, until: fact.until, words: fact.words ?? "" } : null,
  },

  holdEnded: act(
    "holdEnded",
    { words: ownWords },
    (it, around) => ({ type: "PortHoldEnded", port: portOf(around), words: it.text("words") }),
    (fact) => (fact.type === "PortHoldEnded" ? { words: fact.words ?? "" } : null),
  ),

  checked: act(
    "checked",
    { words: ownWords },
    (it, around) => ({ type: "TorqueChecked", port: portOf(around), words: it.text("words") }),
    (fact) => (fact.type === "TorqueChecked" ? { words: fact.words ?? "" } : null),
  ),

  closed: act(
    "closed",
    { words: ownWords },
    (it, around) => ({ type: "PortFoundClosed", port: portOf(around), words: it.text("words") }),
    (fact) => (fact.type === "PortFoundClosed" ? { words: fact.words ?? "" } : null),
  ),
};

function act(name: PortActName, fields: SumFields, read: Act["read"], texts: Act["texts"]): Act {
  const folded = Object.keys(fields).filter((it) => seldom.includes(it));
  return {
    form: () => actForm(name, fields, portFieldWords, { folded, photos: withPhotos.includes(name) ? "last" : null }),
    read,
    texts,
  };
}
