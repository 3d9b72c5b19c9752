import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { turn } from "../../mechanics/quantity/unit.ts";
import type { FoundPort } from "../../mechanics/remedies/foundPort.ts";
import { turnsText, turnsWord } from "../words/figures.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { answerSentence, pullText } from "../words/windowWords.ts";

/** What the port comes to as found, in one sentence that may be read from under the lift. */
export function foundFirst(found: FoundPort): string {
  const { asFound, health } = found;
  if (asFound.refused) return `Refused. ${refusalSentence(asFound.refused.reason)}`;
  return health.healthy ? healthySentence(found) : answerSentence(asFound);
}

function healthySentence(found: FoundPort): string {
  const { asFound, book } = found;
  const counted = countedOfHealthy(found);
  const pull = asFound.advice?.type === "pull" ? pullText(asFound.advice) : null;
  if (book) return `Healthy, ${counted}. Nothing special: the book figure${pull ? `, ${pull}` : ""}.`;
  return pull
    ? `Healthy, ${counted}. No book figure was given; ${pull} closes it.`
    : `Healthy, ${counted}. No book figure was given.`;
}

/** "8 of 8 turns". */
export function countedOfHealthy({ portCase }: FoundPort): string {
  const { left, healthy } = portCase.port;
  const figure = (it: Quantity | null | undefined): number => (it ? valueIn(turn, it) : 0);
  return `${turnsText(figure(left.turns))} of ${turnsWord(figure(healthy?.turns))}`;
}
