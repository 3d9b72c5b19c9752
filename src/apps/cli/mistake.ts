import { type InputProblem, problemLine } from "../../sheets/words/problemWords.ts";

/** A mistake in what was typed or given: one line, and exit code 2. */
export class InputMistake extends Error {
  override readonly name = "InputMistake";
  constructor(first: InputProblem, ...more: readonly InputProblem[]) {
    const rest = more[0] ? ` (and ${more.length} more, the next at ${more[0].field})` : "";
    super(problemLine(first) + rest);
  }
}

/** The mistake of one option; null where it was not given at all. */
export const mistaken = (field: string, given: string | null, accepted: string): InputMistake =>
  new InputMistake({ field, given: given === null ? "nothing" : `"${given}"`, accepted });
