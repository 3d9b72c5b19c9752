import type { RemedyId } from "../../../mechanics/remedies/method.ts";
import type { BenchAnswer } from "../../../sheets/answer/benchAnswer.ts";
import type { BenchPapers } from "../../../sheets/answer/benchPapers.ts";
import type { BenchPictures } from "../../../sheets/answer/benchPictures.tsx";
import type { WayDetails, WaysRow } from "../../../sheets/answer/benchWays.tsx";
import type { InputProblem } from "../../../sheets/words/problemWords.ts";
import type { Texts } from "../bench/benchTexts.ts";

/** The answer with its drawings, null where there are none yet. */
export type DrawnAnswer = BenchAnswer & BenchPictures;

/** What the page asks of the engine: the answer of a case, or what stands behind the answer it gave last. */
export type EngineRequest = AnswerRequest | RestRequest;

export type AnswerRequest = {
  readonly part: "answer";
  /** Of the texts on the bench, those that are others than in the request before; all of them in the first that a worker hears. */
  readonly texts: Texts;
  readonly today: string;
  readonly tried: string | null;
  /** Whether somebody looks at the pictures. */
  readonly pictures: boolean;
};

export type RestRequest = { readonly part: "rest"; readonly open: RemedyId | null; readonly all: boolean };

/**
 * Whether the answer is whole: what can be done about the port and the drawings are fetched once the first answer is given, and
 * another reply follows with them; or they could not be fetched, and the next change tries again.
 */
export type More = "coming" | "not fetched" | "all here";

export type EngineRest = WaysRow & {
  readonly details: WayDetails | null;
  readonly papers: BenchPapers;
};

export type EngineReply =
  /** What of the answer is another than in the reply before; whole after anything but an answer. */
  | { readonly part: "answer"; readonly changed: Partial<DrawnAnswer>; readonly more: More }
  /** What could not be read, by the fields of the bench. */
  | { readonly part: "unread"; readonly problems: readonly InputProblem[] }
  | { readonly part: "rest"; readonly rest: EngineRest | null }
  /** A fault of ours: the page says so and goes on. */
  | { readonly part: "fault"; readonly message: string };
