import type { Fact } from "../../journal/facts/fact.ts";
import type { PersonId } from "../../journal/facts/ids.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { OwnerCard } from "../../journal/ownerCards.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { isDay } from "../sums/closedAt.ts";
import type { SumFields, SumTexts } from "../sums/sumField.ts";
import { type Typed, typed } from "../sums/typed.ts";
import { type ActName, actMinds, actTitles } from "../words/actWords.ts";
import type { FieldWords } from "../words/fieldWords.ts";
import type { InputProblem } from "../words/problemWords.ts";
import { isAsked } from "./asked.ts";
import { namesOf } from "./photoNames.ts";

/** What a fact is about: one port, one unit, the machine as a whole, or the workshop itself. */
export type About =
  | { readonly type: "port"; readonly port: string }
  | { readonly type: "unit"; readonly unit: string }
  | { readonly type: "machine" }
  | { readonly type: "workshop" };

/** What stands around as something is written down. */
export type Around = {
  readonly sheet: JobSheet;
  readonly shop: Shop;
  readonly about: About;
  readonly by: PersonId;
  readonly today: string;
  /** The moment, in UTC. */
  readonly now: string;
  /** A clock time of the place, as 2026-06-01T16:00, as a moment in UTC. */
  readonly moment: (clock: string) => string;
  /** A few letters and digits that nobody else draws, for a new identity. */
  readonly fresh: string;
  /** The card of whoever owns the machine; null where nobody does or it was erased. */
  readonly owner: OwnerCard | null;
  /** Whether what is written takes the place of an earlier entry. */
  readonly corrects: boolean;
};

/** What is asked before one thing is written down: fields in their order, in words, with what stands in them to begin with. */
export type ActForm = {
  readonly title: string;
  /** What the hand minds before it does this. */
  readonly minds: readonly string[];
  readonly fields: SumFields;
  readonly words: Readonly<Record<string, FieldWords>>;
  readonly choiceWords: Readonly<Record<string, string>>;
  readonly given: SumTexts;
  /** Fields that are seldom filled: they lie behind one tap. */
  readonly folded: readonly string[];
  /** Where photos may be taken to it: before all else, after it, or not at all. */
  readonly photos: "first" | "last" | null;
  /** Whether it asks for what is known of a person: a draft of that would outlive a card that is erased, and is not kept. */
  readonly personal: boolean;
};

/** The form of an act with its title and cautions: its fields, how each is asked, and what else is said about them. */
export const actForm = (
  name: ActName,
  fields: SumFields,
  words: ActForm["words"],
  more: Partial<Pick<ActForm, "choiceWords" | "given" | "folded" | "photos" | "personal">> = {},
): ActForm => ({
  title: actTitles[name],
  minds: actMinds[name] ?? [],
  fields,
  words,
  choiceWords: {},
  given: {},
  folded: [],
  photos: null,
  personal: false,
  ...more,
});

/** One thing that hands do, as it is asked for and read: a fact, or what is still wanted or cannot be read. */
export type Act = {
  readonly form: (around: Around) => ActForm;
  readonly read: (it: Typed, around: Around) => PlainFact | readonly PlainFact[] | null;
  /** What goes beside the journal with it: the card of an owner. */
  readonly card?: (it: Typed, around: Around) => PlainCard | null;
  /** The texts from which this fact would be read again: for putting it right. Null for a fact of another kind. */
  readonly texts: (fact: Fact) => SumTexts | null;
};

/** A fact whose identities are plain texts: what came from a page is checked by the store. */
export type PlainFact = { readonly type: Fact["type"]; readonly [field: string]: unknown };

/** A card as a page gives it; who wrote it and when is noted as it is kept. */
export type PlainCard = {
  readonly owner: string;
  readonly name: string;
  readonly telephone?: string;
  readonly plates: readonly { readonly machine: string; readonly plate: string }[];
};

/** The port or the unit that a form is about; "" where it is about something else. */
export const portOf = ({ about }: Pick<Around, "about">): string => (about.type === "port" ? about.port : "");
export const unitOf = ({ about }: Pick<Around, "about">): string => (about.type === "unit" ? about.unit : "");

/** What a form comes to: facts that are written together, or every problem in what was typed; a wanted field is given as "nothing". */
export type ActRead =
  | { readonly ok: true; readonly facts: readonly Fact[]; readonly card: PlainCard | null }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

/** The form of an act as it begins, or with the texts of an earlier entry: a reading stands there without the unit of the scale beside it. */
export function formWith(act: Act, texts: SumTexts, around: Around): ActForm {
  const form = act.form(around);
  const bare = Object.entries(around.corrects ? texts : { ...form.given, ...texts }).map(([name, text]) => {
    const field = form.fields[name];
    const unit = field?.type === "number" && field.unit !== "" ? ` ${field.unit}` : "";
    return [name, unit !== "" && text.endsWith(unit) ? text.slice(0, -unit.length) : text] as const;
  });
  return { ...form, given: Object.fromEntries(bare) };
}

/** Reads what was typed and tapped for an act; what is not asked any more, after another answer, is not read. */
export function readAct(act: Act, texts: SumTexts, around: Around): ActRead {
  const { fields } = act.form(around);
  const text = (field: string): string => texts[field] ?? "";
  const asked = Object.entries(texts).filter(([name]) => !(name in fields) || isAsked(name, fields, text, around.by));
  const it = typed(Object.fromEntries(asked), fields);
  const facts = act.read(it, around);
  if (it.problems.length > 0 || !facts) return { ok: false, problems: it.problems };
  const card = act.card?.(it, around) ?? null;
  return { ok: true, facts: [facts].flat().map(withoutGaps) as unknown as readonly Fact[], card };
}

/** What was read for an earlier fact, with all that this fact says and its form does not ask: a plug that was fitted, photos. */
export function putRight(act: Act, earlier: Fact, read: Fact, around: Around): Fact {
  const again = readAct(act, act.texts(earlier) ?? {}, around);
  const asked = again.ok ? Object.keys(again.facts[0] ?? {}) : [];
  const unasked = Object.entries(earlier).filter(([name]) => !asked.includes(name));
  return { ...Object.fromEntries(unasked), ...read } as Fact;
}

/** Fields in which nothing has a meaning: no wrench, no drum of the shelf, a look that nobody had planned. */
const meantToBeNull = ["wrench", "fluid", "followUp"];

/** What was not given is left out. */
const withoutGaps = (fact: PlainFact): PlainFact =>
  Object.fromEntries(
    Object.entries(fact).filter(([name, value]) => value !== null || meantToBeNull.includes(name)),
  ) as PlainFact;

export const yesNo = { type: "choice", choices: ["yes", "no"] } as const;

/** Where the first tap of a stepper begins: what a book says in the unit of the scale, else `otherwise`. Nothing stands there before. */
export const startOf = (known: string | undefined, unit: string, otherwise: string): string =>
  known?.endsWith(` ${unit}`) ? known.slice(0, -unit.length - 1) : otherwise;

/** Some words of a hand's own. */
export const ownWords = { type: "text", common: [] } as const;

/** The photos of a form, null where none were taken; and the same as the text that a form keeps of them. */
export const photosIn = (it: Typed): readonly string[] | null => {
  const names = namesOf(it.text("photos") ?? "");
  return names.length === 0 ? null : names;
};
export const photosText = (photos: readonly string[] | undefined): string => (photos ?? []).join(",");

/** The day in a field, ISO 8601; null where there is none or it was noted as a mistake. */
export function dayIn(it: Typed, name: string): string | null {
  const day = it.text(name);
  return day === null || isDay(day) ? day : it.refuse(name, "a day, as 2026-06-01");
}

/** The answer to a question of yes or no; null where nobody answered. */
export const answerTo = (it: Typed, name: string): boolean | null => {
  const chosen = it.chosen(name, ["yes", "no"]);
  return chosen === null ? null : chosen === "yes";
};

export const saidYes = (value: boolean | undefined): string => (value === undefined ? "" : value ? "yes" : "no");
