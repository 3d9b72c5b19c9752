import { type Distribution, exactly, triangular } from "../../mechanics/quantity/distribution.ts";
import { reading } from "../../mechanics/quantity/quantity.ts";
import { type QuantityProblem, quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import { onScale, type Unit } from "../../mechanics/quantity/unit.ts";
import { acceptedQuantity } from "../words/problemWords.ts";
import type { WrittenQuantity } from "./caseSchema.ts";
import {
  type Field,
  isBelowNothing,
  notBelowNothing,
  type ReadField,
  refused,
  type WrittenFigure,
} from "./givenQuantity.ts";

/** A quantity as a range, which a document may hold and nobody types on a bench. */
type QuantityRange = Exclude<WrittenQuantity, WrittenFigure>;

/** Reads a field of a case that is a range: { low, likely, high }, each with its unit. */
export function rangeGiven(field: Field, given: QuantityRange): ReadField {
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

const words = (problem: QuantityProblem, { example }: Field): string => acceptedQuantity(problem, `"${example}"`);
