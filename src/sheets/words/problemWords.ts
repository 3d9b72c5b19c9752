import type { QuantityProblem } from "../../mechanics/quantity/quantityText.ts";

/** A mistake in what was given: the field, what was given, what is accepted there. */
export type InputProblem = { readonly field: string; readonly given: string; readonly accepted: string };

/** "left.turns: given "three"; accepted: a number of turns such as 3.5 or 2 1/2". */
export const problemLine = ({ field, given, accepted }: InputProblem): string =>
  `${field}: given ${given}; accepted: ${accepted}`;

/** The same where the field is named above it: "Given "three"; accepted: a number of turns". */
export const mistakeSentence = ({ given, accepted }: InputProblem): string => `Given ${given}; accepted: ${accepted}`;

/** Why a text is not read as a quantity, and what would be. */
export function acceptedQuantity(problem: QuantityProblem, example: string): string {
  switch (problem.type) {
    case "empty":
    case "not a number":
      return `${/\p{L}|°/u.test(example) ? "a number with its unit" : "a number"}, as ${example}`;
    case "several separators":
      return `one decimal mark and no group separators, as ${example}; "1,234.5" could be read in two ways`;
    case "fraction not accepted":
      return `a decimal, as ${example}; fractions are read for inches and turns only`;
    case "zero denominator":
      return "a fraction that does not divide by nothing";
    case "unknown unit":
      return `a unit that is known here, as ${example}; "${problem.given}" is not`;
    case "ambiguous unit":
      return `${anyOf(problem.accepted)}; "${problem.given}" alone names more than one unit`;
    case "unit is missing":
      return problem.accepted.length > 0
        ? `a number with its unit, as ${example} (${anyOf(problem.accepted)})`
        : `a number with its unit, as ${example}`;
    case "another kind":
      return `${anyOf(problem.accepted)}, as ${example}; ${problem.given || "a bare number"} measures something else`;
    default:
      return problem satisfies never;
  }
}

export const anyOf = (choices: readonly string[]): string =>
  choices.length < 2 ? choices.join("") : `${choices.slice(0, -1).join(", ")} or ${choices.at(-1)}`;
