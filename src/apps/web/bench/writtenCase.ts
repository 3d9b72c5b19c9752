import { numberAtStart } from "../../../mechanics/quantity/numberText.ts";
import { remedyIds } from "../../../mechanics/remedies/method.ts";
import type { WrittenCase } from "../../../sheets/caseForm/caseSchema.ts";
import { anyOf, type InputProblem } from "../../../sheets/words/problemWords.ts";
import { type BenchField, benchFields } from "./benchFields.ts";
import { benchLists, isGiven, type ListName, placesOf, type Texts, withoutPlace } from "./benchTexts.ts";

/** A case as the engine reads it, and which places of the bench's lists stand in it; or why the texts write none yet. */
export type WrittenBench =
  | { readonly ok: true; readonly document: WrittenCase; readonly places: Places }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

type Places = Readonly<Record<string, readonly number[]>>;

/**
 * The case that the texts of the bench write: what nobody typed or tapped is left out, and nothing is read otherwise. It has the
 * shape of the case's schema, which therefore need not be loaded to check it again.
 */
export function writtenCase(texts: Texts): WrittenBench {
  const problems = mistakes(texts);
  if (problems.length > 0) return { ok: false, problems };
  const document: Tree = { joint: {}, case: {}, left: {}, asked: {} };
  for (const [name, text] of Object.entries(texts)) {
    const field = benchFields[name];
    if (field && !isPartOfAnswer(name) && isGiven(text) && applies(name, texts))
      place(document, name, given(field, name, text, texts));
  }
  answers(document["asked"] as Tree, texts);
  const lists = Object.keys(benchLists) as ListName[];
  const places = Object.fromEntries(lists.map((list) => [list, completePlaces(list, texts)]));
  for (const list of lists) {
    const elements = (places[list] ?? []).map((at) => element(list, at, texts));
    if (elements.length > 0) document[list] = elements;
  }
  return { ok: true, document: document as WrittenCase, places };
}

/** Without these there is no case. */
const needed = ["joint.kind", "thread", "case.material"] as const;

/** What is wanting, and what could stand in no case: a choice that is none of the field's (of another version, say), a price in words. */
function mistakes(texts: Texts): readonly InputProblem[] {
  const wanting = needed.filter((name) => !isGiven(texts[name])).map((field) => wrong(field, "nothing"));
  const unread = Object.entries(texts).filter(([name, text]) => {
    const field = benchFields[withoutPlace(name)];
    return field && isGiven(text) && given(field, name, text, texts) === null;
  });
  return [...wanting, ...unread.map(([name, text]) => wrong(name, `"${text}"`))];
}

function wrong(name: string, given: string): InputProblem {
  const field = benchFields[withoutPlace(name)];
  const choices = field && choicesOf(field);
  const accepted = choices ? anyOf(choices.map((it) => `"${it}"`)) : field?.type === "money" ? "a number" : anyThread;
  return { field: name, given, accepted };
}

const anyThread = 'a thread such as "M20x1.5"';

function numberOf(text: string): number | null {
  const read = numberAtStart(text);
  return read.ok && read.rest === "" ? read.value : null;
}

/** The bench's name of a field that the case names: "wrenches[0].least" is "wrenches.0.least"; its evidence is the field's own. */
export function benchName(field: string, places: Places): string {
  const [, list = "", at = "", rest = ""] = /^(\w+)\[(\d+)\](.*)$/.exec(field) ?? [];
  if (list !== "") return `${list}.${places[list]?.[Number(at)] ?? at}${rest}`;
  if (field === "asked.pressure") return "asked.pressure.value";
  return field.replace(/\.how$/, "");
}

type Tree = Record<string, unknown>;

const isPartOfAnswer = (name: string): boolean => /^asked\.(pressure|repairedBefore)\./.test(name);

/** Only an O-ring is asked for its chamfer; what stands there is kept for it and counts for no other seal. */
const applies = (name: string, texts: Texts): boolean => name !== "seal.chamfer" || texts["seal.kind"] === "O-ring";

const completePlaces = (list: ListName, texts: Texts): readonly number[] =>
  placesOf(list, texts).filter((at) => benchLists[list].every((key) => isGiven(texts[`${list}.${at}.${key}`])));

function element(list: ListName, at: number, texts: Texts): Tree {
  const begin = `${list}.${at}.`;
  const filled = Object.entries(texts).filter(([name, text]) => name.startsWith(begin) && isGiven(text));
  return Object.fromEntries(
    filled.flatMap(([name, text]) => {
      const key = name.slice(begin.length);
      const field = benchFields[`${list}.${key}`];
      return field ? [[key, given(field, name, text, texts)] as const] : [];
    }),
  );
}

/** A text as the case writes it; null where no case takes it. */
function given(field: BenchField, name: string, text: string, texts: Texts): unknown {
  switch (field.type) {
    case "number":
      return measured(withUnit(text, field.unit), texts[`${name}.how`] ?? "");
    case "money":
      return numberOf(text);
    case "yes or no":
      return text === "yes" ? true : text === "no" ? false : null;
    case "several": {
      const several = text === field.none ? [] : text.split(",");
      return several.every((it) => field.choices.includes(it)) ? several : null;
    }
    case "choice":
    case "remedy":
      return choicesOf(field)?.includes(text) ? text : null;
    case "text":
      return text;
    default:
      return field satisfies never;
  }
}

/** What may be chosen in a field; null where figures or words are typed. */
function choicesOf(field: BenchField): readonly string[] | null {
  if (field.type === "remedy") return remedyIds;
  return field.type === "choice" || field.type === "several" ? field.choices : null;
}

/** A bare number gets the unit beside the field; whatever else was typed is handed on as it stands, for the case to judge. */
function withUnit(text: string, unit: string): string {
  return unit !== "" && numberOf(text) !== null ? `${text.trim()} ${unit}` : text;
}

const measured = (value: string, how: string): unknown => (how === "" ? value : { value, how });

/** Two of the six questions have an answer and then a figure or a word to it; without that they are not answered yet. */
function answers(asked: Tree, texts: Texts): void {
  if (texts["asked.pressure"] === "yes") {
    delete asked["pressure"];
    const value = texts["asked.pressure.value"];
    if (isGiven(value)) asked["pressure"] = withUnit(value, "bar");
  }
  if (texts["asked.repairedBefore"] === "yes") {
    delete asked["repairedBefore"];
    const [method, cause] = [texts["asked.repairedBefore.method"], texts["asked.repairedBefore.cause"]];
    if (isGiven(method)) asked["repairedBefore"] = isGiven(cause) ? { method, cause } : { method };
  }
}

/** "left.turns" into { left: { turns } }. */
function place(tree: Tree, name: string, value: unknown): void {
  const [head = "", ...rest] = name.split(".");
  if (rest.length === 0) {
    tree[head] = value;
    return;
  }
  const inner = (tree[head] ?? {}) as Tree;
  tree[head] = inner;
  place(inner, rest.join("."), value);
}
