import { numberAtStart } from "../../mechanics/quantity/numberText.ts";
import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { unitNamed } from "../../mechanics/quantity/unitNames.ts";
import { acceptedQuantity, type InputProblem } from "../words/problemWords.ts";
import type { SumFields, SumTexts } from "./sumField.ts";

/** The fields of a bench as they are read, one by one: what cannot be read is noted, so that all of it is told at once. */
export type Typed = {
  readonly problems: readonly InputProblem[];
  /** The text of a field without blanks at its ends; null where nothing was given. */
  readonly text: (name: string) => string | null;
  /** The choice that was tapped, if it is one of these. */
  readonly chosen: <C extends string>(name: string, choices: readonly C[]) => C | null;
  /** The reading of a number field under `symbol`; null where it is empty or was noted as a mistake. */
  readonly quantity: (name: string, symbol: string) => Quantity | null;
  /** The same as text with its unit, as it was read: what a journal keeps. */
  readonly reading: (name: string) => string | null;
  /** A whole number from `least` to `most`; null where it is empty or was noted. */
  readonly count: (name: string, least: number, most: number) => number | null;
  /** Notes what is accepted in a field in place of what was given there. */
  readonly refuse: (name: string, accepted: string) => null;
  /** Notes that a field is wanted, where it is empty; one that was mistyped is noted already. */
  readonly want: (...names: readonly string[]) => void;
};

/** A reader of the texts of a bench. */
export function typed(texts: SumTexts, fields: SumFields): Typed {
  const problems: InputProblem[] = [];
  const text = (name: string): string | null => texts[name]?.trim() || null;
  const refuse = (field: string, accepted: string): null => {
    problems.push({ field, given: `"${texts[field] ?? ""}"`, accepted });
    return null;
  };
  return {
    problems,
    text,
    refuse,
    chosen: (name, choices) => choices.find((it) => it === text(name)) ?? null,
    want(...names) {
      for (const field of names)
        if (text(field) === null && !problems.some((it) => it.field === field))
          problems.push({ field, given: "nothing", accepted: "" });
    },
    count(name, least, most) {
      const given = text(name);
      if (given === null) return null;
      const count = /^\d{1,6}$/.test(given) ? Number(given) : Number.NaN;
      return count >= least && count <= most ? count : refuse(name, `a whole number from ${least} to ${most}`);
    },
    reading: (name) => (quantity(name, name) ? onScale(text(name) ?? "", unitOf(name)) : null),
    quantity,
  };

  function unitOf(name: string): string {
    const field = fields[name];
    return field?.type === "number" ? field.unit : "";
  }

  function quantity(name: string, symbol: string): Quantity | null {
    const given = text(name);
    const field = fields[name];
    if (given === null || field?.type !== "number") return null;
    const { unit, start, from } = field;
    const example = `"${start}${unit === "" ? "" : ` ${unit}`}"`;
    const read = quantityFromText(onScale(given, unit), kindOf(unit));
    if (!read.ok) return refuse(name, acceptedQuantity(read.problem, example));
    const { value, unit: readIn } = read.written;
    if (from === "above nothing" && !(value > 0)) return refuse(name, `more than nothing, as ${example}`);
    if (from === "nothing" && value < 0) return refuse(name, `nothing below zero, as ${example}`);
    return exact(symbol, value, readIn);
  }
}

/** A bare number gets the unit of the scale beside its field; whatever else was typed is read as it stands. */
function onScale(text: string, unit: string): string {
  const read = numberAtStart(text);
  return unit !== "" && read.ok && read.rest === "" ? `${text} ${unit}` : text;
}

function kindOf(unit: string): Kind {
  if (unit === "") return "plain number";
  const known = unitNamed(unit);
  if (!known.ok) throw new RangeError(`a field reads in ${unit}, which is no unit`);
  return known.unit.kind;
}
