import type { SumField } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";

/** An amount in the workshop's currency. */
export const moneyField = (step: number, start: string): SumField => ({
  type: "number",
  unit: "",
  step,
  start,
  from: "nothing",
});

/** The amount in a field; null where there is none or it was noted as a mistake. */
export const moneyIn = (it: Typed, name: string): number | null => it.quantity(name, name)?.value ?? null;
