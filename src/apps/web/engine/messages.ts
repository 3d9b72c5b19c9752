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
export type EngineRequest =
  | {
      readonly part: "answer";
      readonly texts: Texts;
      readonly today: string;
      readonly tried: string | null;
      /** Whether somebody looks at the pictures. */
      readonly pictures: boolean;
    }
  | { readonly part: "rest"; readonly open: RemedyId | null; readonly all: boolean };

export type EngineRest = WaysRow & {
  readonly details: WayDetails | null;
  readonly papers: BenchPapers;
};

export type EngineReply =
  /**
   * What of the answer is another than in the reply before; whole after anything but an answer. Where the drawings are still
   * being loaded, another reply follows with them.
   */
  | { readonly part: "answer"; readonly changed: Partial<DrawnAnswer>; readonly undrawn: boolean }
  /** What could not be read, by the fields of the bench. */
  | { readonly part: "unread"; readonly problems: readonly InputProblem[] }
  | { readonly part: "rest"; readonly rest: EngineRest | null }
  /** A fault of ours: the page says so and goes on. */
  | { readonly part: "fault"; readonly message: string };
