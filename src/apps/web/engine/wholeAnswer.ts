import { type Weighed, weighedWays } from "../../../mechanics/remedies/weigh.ts";
import { benchAnswer } from "../../../sheets/answer/benchAnswer.ts";
import { type BenchRead, foundOnBench } from "../../../sheets/answer/benchFound.ts";
import { benchPictures } from "../../../sheets/answer/benchPictures.tsx";
import type { WrittenCase } from "../../../sheets/caseForm/caseSchema.ts";
import { threadGiven } from "../../../sheets/caseForm/threadGiven.ts";
import type { AnswerRequest, DrawnAnswer } from "./messages.ts";

/** Reads what the bench wrote down, whatever standard its thread is of. */
export const readPort = (written: WrittenCase, today: string) => foundOnBench(written, today, threadGiven);

/** A port as found, and the whole answer for it: every way of closing or repairing it weighed, and what is looked at drawn. */
export function wholeAnswer(
  { found, given }: BenchRead,
  { tried, pictures }: AnswerRequest,
): { readonly weighed: Weighed; readonly answer: DrawnAnswer } {
  const weighed = weighedWays(found, given);
  return { weighed, answer: { ...benchAnswer(weighed), ...benchPictures(weighed, tried, pictures) } };
}
