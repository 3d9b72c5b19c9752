import { bookTorque_Nm, isForSeal } from "../../mechanics/joint/bookFigures.ts";
import { leadIn } from "../../mechanics/joint/carryingTurns.ts";
import { support } from "../../mechanics/quantity/distribution.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { Nm, turn } from "../../mechanics/quantity/unit.ts";
import type { FoundPort } from "../../mechanics/remedies/foundPort.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import type { Ranges } from "../../mechanics/tables/referenceRanges.ts";
import { torqueFigure, turnsWord } from "../words/figures.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { bookRemark, bookSentence, turnsRemarkSentences, underChamfer, windowReasons } from "../words/windowReasons.ts";
import { answerSentence } from "../words/windowWords.ts";
import { countedOfHealthy } from "./foundFirst.ts";

/** Why the port as found is answered as it is, the answer itself first; on a healthy port as little as will do. */
export function foundReasons(found: FoundPort): readonly string[] {
  const { asFound, health, book, portCase } = found;
  if (asFound.refused) return [refusalSentence(asFound.refused.reason)];
  if (health.healthy) return healthyReasons(found);
  const books_Nm = portCase.bookFigures.map(({ torque }) => valueIn(Nm, torque));
  return [
    ...closureReasons(asFound, portCase.ranges, books_Nm),
    ...[book && bookSentence(book)].filter((it) => it !== null),
  ];
}

/** Why a closure that was weighed is answered as it is. */
export function closureReasons(
  closure: WeighedClosure,
  ranges: Ranges,
  books_Nm: readonly number[],
): readonly string[] {
  return [
    ...[answerSentence(closure)].filter((it) => it !== ""),
    ...turnsSentences(closure, ranges),
    ...(closure.window ? windowReasons(closure.window, books_Nm) : []),
    ...stopSentences(closure),
  ];
}

/** The book's figure and nothing more, unless it lies outside the window or there is none. */
function healthyReasons(found: FoundPort): readonly string[] {
  const { asFound, book } = found;
  const counted = countedOfHealthy(found);
  if (!book)
    return [
      `${counted}: healthy, and no book figure was given.`,
      ...[answerSentence(asFound)].filter((it) => it !== ""),
      ...(asFound.window ? windowReasons(asFound.window, []) : []),
    ];
  const meantFor =
    book.type === "one figure" && !isForSeal(book.figure, asFound.closure.seal) ? book.figure.seal : null;
  return [
    `${counted}: nothing special, the book figure.`,
    ...[bookRemark(bookTorque_Nm(book), asFound.window, meantFor), bookSentence(book)].filter((it) => it !== null),
  ];
}

function turnsSentences({ turns, closure }: WeighedClosure, ranges: Ranges): readonly string[] {
  if (!turns) return [];
  const caught = Math.max(0, valueIn(turn, turns.caught));
  const [, wasted] = support(leadIn(turns, ranges));
  const lead = turns.passesThrough
    ? "the plug passes right through, so its lead-in wastes none"
    : `up to ${wasted.toFixed(1)} of them is lead-in`;
  const ring = caught > 0 && closure.seal.thickness.value > 0 ? " with this ring" : "";
  return [
    `${turnsWord(caught)} caught${ring}; ${lead}.`,
    ...turns.remarks.map((it) =>
      it === "under the chamfer" ? underChamfer(closure.seal.chamfer) : turnsRemarkSentences[it],
    ),
  ];
}

function stopSentences({ stop }: WeighedClosure): readonly string[] {
  if (!stop) return [];
  const { expected_deg, stop_deg, steps_Nm } = stop;
  const steps = steps_Nm.map(torqueFigure).join(", ");
  return [
    `Pull in steps: ${steps} N·m. From snug expect ${Math.round(expected_deg.least)} to ${Math.round(expected_deg.most)}°; stop if it turns past ${Math.round(stop_deg)}° or the torque stops rising.`,
  ];
}
