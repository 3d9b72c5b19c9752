import type { SumName, SumRead } from "../../../sheets/sums/sumAnswer.ts";
import type { SumTexts } from "../../../sheets/sums/sumField.ts";

/** What a bench asks of the worker: its sum, for what is on it. */
export type SumRequest = { readonly name: SumName; readonly texts: SumTexts; readonly today: string };

export type SumReply = { readonly name: SumName } & (
  | { readonly part: "read"; readonly read: SumRead }
  /** A fault of ours: the page says so and goes on. */
  | { readonly part: "fault"; readonly message: string }
);
