import { type Distribution, exactly, normal, triangular } from "../../mechanics/quantity/distribution.ts";
import { type Quantity, reading } from "../../mechanics/quantity/quantity.ts";
import { type QuantityProblem, quantityFromText, type Written } from "../../mechanics/quantity/quantityText.ts";
import { type Kind, mm, one, onScale, turn, type Unit } from "../../mechanics/quantity/unit.ts";
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

/** Reads one field of a case: text, { value, how }, or { low, likely, high }. */
export function givenQuantity(field: Field, given: WrittenQuantity): ReadField {
  if (typeof given === "object" && "low" in given) return rangeGiven(field, given);
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

function rangeGiven(
  field: Field,
  given: { low: string | number; likely: string | number; high: string | number },
): ReadField {
  const ends: number[] = [];
  let unit: Unit | null = null;
  for (const key of ["low", "likely", "high"] as const) {
    const read = quantityFromText(String(given[key]), field.kind);
    if (!read.ok) return refused({ ...field, name: `${field.name}.${key}` }, given[key], words(read.problem, field));
    if (isBelowNothing(field, read.written.value))
      return refused({ ...field, name: `${field.name}.${key}` }, given[key], notBelowNothing(field));
    unit ??= read.written.unit;
    ends.push(onScale(read.written.value * read.written.unit.inSI + read.written.unit.zero, unit));
  }
  const [low = 0, likely = 0, high = 0] = ends;
  if (!unit || !(low <= likely && likely <= high)) return refused(field, given, "low, likely and high in this order");
  const shape: Distribution = low === high ? exactly(likely) : triangular(low, likely, high);
  return { ok: true, quantity: reading(field.symbol, shape, unit, field.name, "given as a range"), howSaid: true };
}

/** A length, a count or a torque below nothing is a slip of the pen; temperatures alone may lie below zero. */
const isBelowNothing = ({ kind }: Field, value: number): boolean => value < 0 && kind !== "temperature";
const notBelowNothing = ({ example }: Field): string => `nothing below zero, as "${example}"`;

const words = (problem: QuantityProblem, { example }: Field): string => acceptedQuantity(problem, `"${example}"`);

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

const refused = ({ name }: Field, given: unknown, accepted: string): ReadField => ({
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
