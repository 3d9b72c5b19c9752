import type { ComponentType } from "preact";
import type { SumName } from "../../../sheets/sums/sumAnswer.ts";
import type { SumFields } from "../../../sheets/sums/sumField.ts";
import type { FieldWords } from "../../../sheets/words/fieldWords.ts";

/** The text of a field, for what is shown by it. */
export type TextOf = (field: string) => string;

/** A part of a bench's readings; one that folds is open only once somebody has opened it. */
export type SumPart = {
  readonly id: string;
  readonly title: string;
  readonly folds: boolean;
  readonly fields: readonly string[];
};

/** A bench of one sum: what it asks, in which order and words. */
export type SumBench = {
  readonly name: SumName;
  readonly parts: readonly SumPart[];
  readonly fields: SumFields;
  readonly words: Readonly<Record<string, FieldWords>>;
  readonly choiceWords: Readonly<Record<string, string>>;
  /** A further part that folds, with a page of its own that is fetched once it is opened. */
  readonly further?: { readonly id: string; readonly title: string; readonly Page: ComponentType };
  /** What stands in the answer's place on an empty bench. */
  readonly start: string;
  /** Whether a field is asked for, by what was given in the others. */
  readonly asks: (field: string, text: TextOf) => boolean;
  /** A tap beside a field that fills it in. */
  readonly filled: Readonly<Record<string, { readonly word: string; readonly text: () => string }>>;
};
