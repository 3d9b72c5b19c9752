import type { Step } from "../../mechanics/quantity/working.ts";
import type { InputProblem } from "../words/problemWords.ts";

/** What a bench comes to: figures as they are read, sentences, and a drawing as the text of its SVG. */
export type SumAnswer = {
  /** The word over the main figure, or in its place. */
  readonly sign: string;
  /** It ends the talk: nothing is to be done by a figure. */
  readonly stop: boolean;
  readonly figure: { readonly value: string; readonly unit: string; readonly also: string } | null;
  readonly sentences: readonly string[];
  readonly because: string;
  readonly next: { readonly sentence: string; readonly field: string | null } | null;
  readonly picture: string | null;
  /** The same in other words or units, one a row. */
  readonly rows: readonly { readonly name: string; readonly value: string }[];
  /** What may be read out or sent to the owner. */
  readonly message: string | null;
  /** Threads that the bench of a torn thread takes over. */
  readonly threads: readonly string[];
  readonly reasons: readonly string[];
  readonly cautions: readonly string[];
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
  readonly working: readonly Step[];
};

/** An answer, or every mistake in what was typed; a field that is wanted and empty is given as "nothing". */
export type SumRead =
  | { readonly ok: true; readonly answer: SumAnswer }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

/** The sums of the benches, by name. */
export const sumNames = ["thread", "level", "drip", "cure", "convert"] as const;
export type SumName = (typeof sumNames)[number];

/** An answer without what most benches do not have. */
export const answered = (
  it: Pick<SumAnswer, "sign" | "sentences" | "because" | "next"> & Partial<SumAnswer>,
): SumRead => ({
  ok: true,
  answer: {
    stop: false,
    figure: null,
    picture: null,
    rows: [],
    message: null,
    threads: [],
    reasons: [],
    cautions: [],
    assumed: [],
    working: [],
    ...it,
  },
});
