import { type Weighed, weighedWays } from "../../../mechanics/remedies/weigh.ts";
import { benchAnswer } from "../../../sheets/answer/benchAnswer.ts";
import { benchPictures } from "../../../sheets/answer/benchPictures.tsx";
import { type PortOnBench, portOnBench } from "../../../sheets/answer/portOnBench.ts";
import type { AnswerRequest, DrawnAnswer } from "./messages.ts";

/** Reads what the bench wrote down. */
export const readPort = portOnBench;

/** A port as found, and the whole answer for it: every way of closing or repairing it weighed, and what is looked at drawn. */
export function wholeAnswer(
  { found, given, notCounted }: PortOnBench,
  { tried, pictures }: AnswerRequest,
): { readonly weighed: Weighed; readonly answer: DrawnAnswer } {
  const weighed = weighedWays(found, given);
  const said = benchAnswer(weighed);
  const sentences = notCounted === null ? said.sentences : [...said.sentences, notCounted];
  return { weighed, answer: { ...said, sentences, ...benchPictures(weighed, tried, pictures) } };
}
