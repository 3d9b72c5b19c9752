import type { FactOf } from "../../journal/facts/fact.ts";
import { type Instrument, torqueEvidence } from "../../journal/shop/instruments.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import { choice, measured, type SumFields } from "../sums/sumField.ts";
import { actMinds, actTitles, bookHint, type PortActName, portFieldWords } from "../words/actWords.ts";
import { evidenceWords } from "../words/evidenceWords.ts";
import { type Act, type ActForm, type Around, answerTo, ownWords, type PlainFact, saidYes, yesNo } from "./act.ts";

const hardness = ["by hand", "easy", "normal", "very tight"] as const;
const seenBy = ["paper", "powder", "by eye", "after a run"] as const;
const countedBy = ["with a dot", "felt", "by eye"] as const;
const washerCount = { type: "number", unit: "", step: 1, start: "1", from: "nothing" } as const;

/** Readings that an ordinary job does without. */
const seldom = ["torque", "turned"];

const port = ({ about }: Around): string => (about.type === "port" ? about.port : "");

/** What hands do at a port, one of these at a time. */
export const portActs: Readonly<Record<PortActName, Act>> = {
  loose: act(
    "loose",
    { hard: choice(...hardness), torque: measured("N·m", 1, "30") },
    (it, around) => {
      const hard = it.chosen("hard", hardness);
      it.want("hard");
      return hard && { type: "PortBrokenLoose", port: port(around), hard, torque: it.reading("torque") };
    },
    (fact) => (fact.type === "PortBrokenLoose" ? { hard: fact.hard, torque: fact.torque ?? "" } : null),
  ),

  stuck: act(
    "stuck",
    { words: ownWords },
    (it, around) => {
      it.want("words");
      return { type: "PortWouldNotOpen", port: port(around), words: it.text("words") };
    },
    (fact) => (fact.type === "PortWouldNotOpen" ? { words: fact.words } : null),
  ),

  out: act(
    "out",
    {},
    (_, around) => ({ type: "PortOpened", port: port(around) }),
    () => null,
  ),

  washersOut: act(
    "washersOut",
    { count: washerCount, words: ownWords },
    (it, around) => {
      it.want("count");
      return { type: "WashersOut", port: port(around), count: it.count("count", 0, 9), words: it.text("words") };
    },
    (fact) => (fact.type === "WashersOut" ? { count: String(fact.count), words: fact.words ?? "" } : null),
  ),

  washersIn: act(
    "washersIn",
    { count: washerCount, because: ownWords },
    (it, around) => {
      it.want("count");
      return { type: "WashersIn", port: port(around), count: it.count("count", 0, 9), because: it.text("because") };
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
        port: port(around),
        reading: "left.turns",
        value: it.reading("turns") && it.text("turns"),
        how: it.chosen("counted", countedBy),
        withWasher: answerTo(it, "washer"),
      };
    },
    (fact) =>
      fact.type === "ReadingTaken" && fact.reading === "left.turns"
        ? { turns: fact.value, counted: fact.how, washer: saidYes(fact.withWasher) }
        : null,
  ),

  byHand: act(
    "byHand",
    {},
    (_, around) => ({ type: "PortClosedByHand", port: port(around) }),
    () => null,
  ),

  torqued: {
    form: torqueForm,
    read: (it, around) => {
      const wrench = it.text("wrench");
      const pulledBy = it.text("pulledBy");
      it.want("set", "wrench", "clicked", "pulledBy");
      const fact: PlainFact = {
        type: "PortTorqued",
        port: port(around),
        set: it.reading("set"),
        reached: it.reading("reached"),
        wrench:
          wrench === null || wrench === noWrench
            ? null
            : { instrument: wrench, calibrated: calibratedAt(around, wrench) },
        clicked: answerTo(it, "clicked"),
        checkedAgain: it.text("again") === "yes",
        pulledBy,
        enteredBecause: pulledBy === around.by ? null : it.text("enteredBecause"),
        witnessMark: answerTo(it, "mark"),
      };
      return fact;
    },
    texts: (fact) => (fact.type === "PortTorqued" ? torqueTexts(fact) : null),
  },

  letGo: act(
    "letGo",
    { at: measured("N·m", 1, "20"), turned: measured("°", 15, "90"), words: ownWords },
    (it, around) => ({
      type: "PortLetGo",
      port: port(around),
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
        port: port(around),
        dry: answerTo(it, "dry"),
        after: it.reading("after"),
        how: it.chosen("how", seenBy),
      };
    },
    (fact) => (fact.type === "PortDryChecked" ? { dry: saidYes(fact.dry), after: fact.after, how: fact.how } : null),
  ),

  checked: act(
    "checked",
    { words: ownWords },
    (it, around) => ({ type: "TorqueChecked", port: port(around), words: it.text("words") }),
    (fact) => (fact.type === "TorqueChecked" ? { words: fact.words ?? "" } : null),
  ),

  closed: act(
    "closed",
    { words: ownWords },
    (it, around) => ({ type: "PortFoundClosed", port: port(around), words: it.text("words") }),
    (fact) => (fact.type === "PortFoundClosed" ? { words: fact.words ?? "" } : null),
  ),
};

function act(name: PortActName, fields: SumFields, read: Act["read"], texts: Act["texts"]): Act {
  const form: ActForm = {
    title: actTitles[name],
    minds: actMinds[name] ?? [],
    fields,
    words: portFieldWords,
    choiceWords: {},
    given: {},
    folded: Object.keys(fields).filter((it) => seldom.includes(it)),
  };
  return { form: () => form, read, texts };
}

/** A wrench is named by its number; a pull without one is written down as that. */
const noWrench = "none";

function torqueForm({ shop, about, today }: Around): ActForm {
  const wrenches = wrenchesOf(shop);
  const persons = Object.values(shop.people.persons).filter(({ left }) => !left);
  const figures = about.type === "port" ? (shop.book[about.port as never] ?? []) : [];
  const hint = bookHint(figures.flatMap(({ torque, source }) => (torque ? [{ torque, source }] : [])));
  return {
    title: actTitles.torqued,
    minds: actMinds.torqued ?? [],
    fields: {
      set: measured("N·m", 1, "30"),
      wrench: choice(...wrenches.map(({ instrument }) => instrument), noWrench),
      clicked: yesNo,
      pulledBy: choice(...persons.map(({ person }) => person)),
      enteredBecause: ownWords,
      reached: measured("N·m", 0.1, "30"),
      again: yesNo,
      mark: yesNo,
    },
    words: { ...portFieldWords, set: { ...portFieldWords.set, ...(hint ? { hint } : {}) } },
    choiceWords: {
      ...Object.fromEntries(wrenches.map((it) => [it.instrument, wrenchWord(it, shop, today)])),
      ...Object.fromEntries(persons.map(({ person, called }) => [person, called])),
      [noWrench]: "no wrench",
    },
    given: {},
    folded: ["reached", "again", "mark"],
  };
}

type Wrench = Instrument & { readonly is: Extract<NonNullable<Instrument["is"]>, { kind: "wrench" }> };

const wrenchesOf = ({ instruments }: Shop): readonly Wrench[] =>
  Object.values(instruments).filter((it): it is Wrench => it.is?.kind === "wrench" && !it.retired);

/** A wrench with its scale; one that may tighten and may not claim says so before it is taken. */
function wrenchWord({ instrument, is, calibrated }: Wrench, { instruments }: Shop, today: string): string {
  const last = calibrated.filter((it) => it <= today).at(-1) ?? null;
  const claims = torqueEvidence(
    { set: is.most, wrench: { instrument, calibrated: last } },
    today,
    instruments,
    levelsWith({}),
  );
  return `${instrument}, ${is.least} to ${is.most}${claims === "in range and in date" ? "" : `: ${evidenceWords[claims]}`}`;
}

/** The last calibration up to the day of the pull. */
const calibratedAt = ({ shop, today }: Around, wrench: string): string | null =>
  shop.instruments[wrench as never]?.calibrated.filter((it) => it <= today).at(-1) ?? null;

const torqueTexts = (fact: FactOf<"PortTorqued">) => ({
  set: fact.set,
  wrench: fact.wrench?.instrument ?? noWrench,
  clicked: saidYes(fact.clicked),
  pulledBy: fact.pulledBy,
  enteredBecause: fact.enteredBecause ?? "",
  reached: fact.reached ?? "",
  again: saidYes(fact.checkedAgain),
  mark: saidYes(fact.witnessMark),
});
