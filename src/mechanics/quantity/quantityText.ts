import { isFraction, type NumberProblem, numberAtStart } from "./numberText.ts";
import { type Kind, one, turn, type Unit } from "./unit.ts";
import { type UnitProblem, unitNamed, unitsOf } from "./unitNames.ts";

/** A quantity as it was written: kept as read, converted once. */
export type Written = { readonly value: number; readonly unit: Unit };

export type QuantityProblem =
  | NumberProblem
  | UnitProblem
  | { readonly type: "unit is missing"; readonly accepted: readonly string[] }
  | { readonly type: "another kind"; readonly given: string; readonly accepted: readonly string[] };

export type QuantityRead =
  | { readonly ok: true; readonly written: Written }
  | { readonly ok: false; readonly problem: QuantityProblem };

/**
 * Reads "19.9 mm", "34 lbf·ft", "7/16 in", "80,5 N·m" as a quantity of `kind`, or of any kind when it is null.
 * A bare number is read only for plain numbers and turns. Fractions are read for inches and turns.
 */
export function quantityFromText(text: string, kind: Kind | null): QuantityRead {
  const number = numberAtStart(text);
  if (!number.ok) return refused(number.problem);
  const unit = number.rest === "" ? bareUnit(kind) : unitNamed(number.rest);
  if (!unit.ok) return refused(unit.problem);
  if (kind !== null && unit.unit.kind !== kind && !(kind === "plain number" && unit.unit.symbol === "%"))
    return refused({ type: "another kind", given: unit.unit.symbol, accepted: unitsOf(kind) });
  if (isFraction(text) && !readInFractions(unit.unit)) return refused({ type: "fraction not accepted" });
  return { ok: true, written: { value: number.value, unit: unit.unit } };
}

const readInFractions = (unit: Unit): boolean => unit.symbol === "in" || unit.kind === "turns";

type BareUnit = { readonly ok: true; readonly unit: Unit } | { readonly ok: false; readonly problem: QuantityProblem };

function bareUnit(kind: Kind | null): BareUnit {
  if (kind === "turns") return { ok: true, unit: turn };
  if (kind === "plain number") return { ok: true, unit: one };
  return { ok: false, problem: { type: "unit is missing", accepted: kind ? unitsOf(kind) : [] } };
}

const refused = (problem: QuantityProblem): QuantityRead => ({ ok: false, problem });
