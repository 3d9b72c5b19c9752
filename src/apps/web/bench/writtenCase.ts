import { numberAtStart } from "../../../mechanics/quantity/numberText.ts";
import { benchFields } from "./benchFields.ts";
import { benchLists, isGiven, type ListName, placesOf, type Texts } from "./benchTexts.ts";

/** A case as the engine reads it, and which places of the bench's lists stand in it. */
export type WrittenBench = {
  readonly document: unknown;
  readonly places: Readonly<Record<string, readonly number[]>>;
};

/** The case that the texts of the bench write: what nobody typed or tapped is left out, and nothing is read otherwise. */
export function writtenCase(texts: Texts): WrittenBench {
  const document: Tree = { joint: {}, case: {}, left: {}, asked: {} };
  for (const [name, text] of Object.entries(texts)) {
    const field = benchFields[name];
    if (field && !isPartOfAnswer(name) && isGiven(text)) place(document, name, given(field, name, text, texts));
  }
  answers(document["asked"] as Tree, texts);
  const lists = Object.keys(benchLists) as ListName[];
  const places = Object.fromEntries(lists.map((list) => [list, completePlaces(list, texts)]));
  for (const list of lists) {
    const elements = (places[list] ?? []).map((at) => element(list, at, texts));
    if (elements.length > 0) document[list] = elements;
  }
  return { document, places };
}

/** The bench's name of a field that the case names: "wrenches[0].least" is "wrenches.0.least"; its evidence is the field's own. */
export function benchName(field: string, places: WrittenBench["places"]): string {
  const [, list = "", at = "", rest = ""] = /^(\w+)\[(\d+)\](.*)$/.exec(field) ?? [];
  if (list !== "") return `${list}.${places[list]?.[Number(at)] ?? at}${rest}`;
  if (field === "asked.pressure") return "asked.pressure.value";
  return field.replace(/\.how$/, "");
}

type Tree = Record<string, unknown>;

const isPartOfAnswer = (name: string): boolean => /^asked\.(pressure|repairedBefore)\./.test(name);

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

/** A text as the case writes it. */
function given(field: (typeof benchFields)[string], name: string, text: string, texts: Texts): unknown {
  switch (field.type) {
    case "number":
      return measured(withUnit(text, field.unit), texts[`${name}.how`] ?? "");
    case "money": {
      const read = numberAtStart(text);
      return read.ok && read.rest === "" ? read.value : text;
    }
    case "yes or no":
      return text === "yes";
    case "several":
      return text === field.none ? [] : text.split(",");
    case "choice":
    case "text":
      return text;
    default:
      return field satisfies never;
  }
}

/** A bare number gets the unit beside the field; whatever else was typed is handed on as it stands, for the case to judge. */
function withUnit(text: string, unit: string): string {
  const read = numberAtStart(text);
  return unit !== "" && read.ok && read.rest === "" ? `${text.trim()} ${unit}` : text;
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
