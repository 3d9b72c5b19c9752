import { exactly, normal } from "../../mechanics/quantity/distribution.ts";
import { type Quantity, reading } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText, type Written } from "../../mechanics/quantity/quantityText.ts";
import { type Kind, mm, one, turn } from "../../mechanics/quantity/unit.ts";
import { lengthEvidence, shareEvidence, temperatureEvidence } from "../../mechanics/tables/evidence.ts";
import { acceptedQuantity, anyOf, type InputProblem } from "../words/problemWords.ts";
import type { WrittenQuantity } from "./caseSchema.ts";
import { asGiven } from "./schemaProblems.ts";

/** What one field takes: its kind, how it is ordinarily known, an example. */
export type Field = {
  readonly name: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly ordinarily: string;
  readonly example: string;
};

/** A quantity that was read, and whether how it is known was said. */
export type ReadField =
  | { readonly ok: true; readonly quantity: Quantity; readonly howSaid: boolean }
  | { readonly ok: false; readonly problem: InputProblem };

/** Reads a field; null where it was left out. Mistakes are gathered, so that all of them can be told at once. */
export type FieldReader = (field: Field, written: WrittenQuantity | undefined) => Quantity | null;

/** A quantity as one figure, with how it is known where somebody said. */
export type WrittenFigure = Exclude<WrittenQuantity, { readonly low: unknown }>;

/** Reads one field of a case that is one figure: text, or { value, how }. */
export function givenQuantity(field: Field, given: WrittenFigure): ReadField {
  const { value, how } = typeof given === "object" ? given : { value: given, how: undefined };
  const read = quantityFromText(String(value), field.kind);
  if (!read.ok) return refused(field, value, acceptedQuantity(read.problem, `"${field.example}"`));
  if (isBelowNothing(field, read.written.value)) return refused(field, value, notBelowNothing(field));
  const evidence = how ?? field.ordinarily;
  const u = uncertainty(field, evidence, read.written);
  if (u === null)
    return refused({ ...field, name: `${field.name}.how` }, how, anyOf(Object.keys(evidenceOf(field.kind))));
  const { unit } = read.written;
  const distribution = u > 0 ? normal(read.written.value, u) : exactly(read.written.value);
  return {
    ok: true,
    quantity: reading(field.symbol, distribution, unit, field.name, evidence),
    howSaid: how !== undefined,
  };
}

/** A length, a count or a torque below nothing is a slip of the pen; temperatures alone may lie below zero. */
export const isBelowNothing = ({ kind }: Field, value: number): boolean => value < 0 && kind !== "temperature";
export const notBelowNothing = ({ example }: Field): string => `nothing below zero, as "${example}"`;

type EvidenceTable = Readonly<Record<string, { readonly u: number }>>;

function evidenceOf(kind: Kind): EvidenceTable {
  if (kind === "length") return lengthEvidence;
  if (kind === "temperature") return temperatureEvidence;
  return kind === "plain number" ? shareEvidence : {};
}

/** The standard uncertainty of a reading on the scale it was read on; null for evidence of another kind. */
function uncertainty({ kind }: Field, evidence: string, { unit }: Written): number | null {
  const table = evidenceOf(kind);
  const row = table[evidence];
  if (!row) return Object.keys(table).length === 0 ? 0 : null;
  return kind === "length"
    ? (row.u * mm.inSI) / unit.inSI
    : kind === "plain number"
      ? (row.u * one.inSI) / unit.inSI
      : row.u / unit.inSI;
}

export const refused = ({ name }: Field, given: unknown, accepted: string): ReadField => ({
  ok: false,
  problem: { field: name, given: typeof given === "string" ? `"${given}"` : asGiven(given), accepted },
});

/** The field of a count of turns. */
export const turnsField = (name: string, symbol: string): Field => ({
  name,
  symbol,
  kind: turn.kind,
  ordinarily: "counted",
  example: "3.5",
});
