import type { FactOf } from "../../journal/facts/fact.ts";
import { type Instrument, torqueEvidence } from "../../journal/shop/instruments.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import { choice, measured } from "../sums/sumField.ts";
import { bookHint, portFieldWords } from "../words/actWords.ts";
import { evidenceWords } from "../words/evidenceWords.ts";
import { fittedWords } from "../words/repairActWords.ts";
import {
  type Act,
  type ActForm,
  type Around,
  actForm,
  answerTo,
  ownWords,
  type PlainFact,
  photosIn,
  photosText,
  portOf,
  saidYes,
  startOf,
  yesNo,
} from "./act.ts";
import { fittedFields, fittedIn, fittedTexts } from "./fittedFields.ts";

/** A pull: what was set and with which wrench, who pulled, whether it clicked. */
export const torqueAct: Act = {
  form: torqueForm,
  read: (it, around) => {
    const wrench = it.text("wrench");
    const pulledBy = it.text("pulledBy");
    it.want("set", "wrench", "clicked", "pulledBy");
    const fact: PlainFact = {
      type: "PortTorqued",
      port: portOf(around),
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
      fitted: fittedIn(it),
      photos: photosIn(it),
    };
    return fact;
  },
  texts: (fact) => (fact.type === "PortTorqued" ? torqueTexts(fact) : null),
};

/** A wrench is named by its number; a pull without one is written down as that. */
const noWrench = "no wrench";

function torqueForm({ shop, about, today }: Around): ActForm {
  const wrenches = wrenchesOf(shop);
  const persons = Object.values(shop.people.persons).filter(({ left }) => !left);
  const figures = about.type === "port" ? (shop.book[about.port as never] ?? []) : [];
  const hint = bookHint(figures.flatMap(({ torque, source }) => (torque ? [{ torque, source }] : [])));
  return actForm(
    "torqued",
    {
      set: measured("N·m", 1, startOf(figures[0]?.torque, "N·m", "30")),
      wrench: choice(...wrenches.map(({ instrument }) => instrument), noWrench),
      clicked: yesNo,
      pulledBy: choice(...persons.map(({ person }) => person)),
      enteredBecause: ownWords,
      reached: measured("N·m", 0.1, "30"),
      again: yesNo,
      mark: yesNo,
      ...fittedFields,
    },
    { ...portFieldWords, ...fittedWords, set: { ...portFieldWords.set, ...(hint ? { hint } : {}) } },
    {
      choiceWords: {
        ...Object.fromEntries(wrenches.map((it) => [it.instrument, wrenchWord(it, shop, today)])),
        ...Object.fromEntries(persons.map(({ person, called }) => [person, called])),
      },
      folded: ["reached", "again", "mark", ...Object.keys(fittedFields)],
      photos: "last",
    },
  );
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
  ...fittedTexts(fact.fitted),
  photos: photosText(fact.photos),
});
