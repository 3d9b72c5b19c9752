import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { rangeText } from "../words/figures.ts";
import { allowedInstead, overrideWords, refusalSentence } from "../words/refusalWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { standsWords } from "../words/repairWords.ts";
import { answerSentence, leastOf, pullText } from "../words/windowWords.ts";
import { countedOfHealthy } from "./reasons.ts";
import { bestRemedy, bestRepair, roomierRemedy } from "./remedyShown.ts";

/** Two or three sentences that may be read from under the lift, each whole. */
export function answerFirst(weighed: Weighed): readonly string[] {
  const { asFound, health } = weighed;
  const best = bestRemedy(weighed);
  const repair = bestRepair(weighed);
  if (asFound.refused) return [...refusalSentences(asFound), ...(best ? [wouldDo(best)] : [])];
  if (health.healthy) return [healthySentence(weighed)];
  const found = answerSentence(asFound);
  if (!best) {
    if (asFound.window?.open) return [found];
    return [found, nothingLeft, ...(repair ? [wouldRepair(repair)] : [])];
  }
  if (best.id === "lower torque") return [found, ...roomierSentence(weighed, best)];
  return [`As found: ${found}`, wouldDo(best), ...roomierSentence(weighed, best)];
}

const nothingLeft = "Nothing that is left of it opens a window.";

function wouldDo({ id, advice }: Remedy): string {
  const pull = advice?.type === "pull" ? ` Pull to ${pullText(advice)}.` : "";
  return `Would do: ${lowered(remedyNames[id])}.${pull}`;
}

/** What is done to the port where nothing that is left of it opens a window; a part or a plate only as the first choice. */
function wouldRepair({ id, stands, closed }: Repair): string {
  const { advice } = closed ?? { advice: null };
  const pull = advice?.type === "pull" ? ` Pull to ${pullText(advice)}.` : "";
  const first = stands === "fits" ? "" : ` (${standsWords[stands]})`;
  return `Would do: ${lowered(remedyNames[id])}${first}.${pull}`;
}

/** What has more room where the window as found is narrow. */
function roomierSentence(weighed: Weighed, best: Remedy): readonly string[] {
  const roomier = best.window?.narrow ? roomierRemedy(weighed) : null;
  if (!roomier?.window) return [];
  const range = rangeText(leastOf(roomier.window), roomier.window.limit_Nm);
  return [`That window is narrow. More room: ${lowered(remedyNames[roomier.id])}, ${range}.`];
}

function healthySentence(weighed: Weighed): string {
  const { asFound, book } = weighed;
  const counted = countedOfHealthy(weighed);
  const pull = asFound.advice?.type === "pull" ? pullText(asFound.advice) : null;
  if (book) return `Healthy, ${counted}. Nothing special: the book figure${pull ? `, ${pull}` : ""}.`;
  return pull
    ? `Healthy, ${counted}. No book figure was given; ${pull} closes it.`
    : `Healthy, ${counted}. No book figure was given.`;
}

function refusalSentences({ refused }: WeighedClosure): readonly string[] {
  if (!refused) return [];
  const { rule, reason, override, overridden } = refused;
  return [
    `Refused. ${refusalSentence(reason)}`,
    `Instead: ${allowedInstead(refused).join("; ")}.`,
    ...(overridden
      ? [`Taken on by ${overridden.by}: ${overridden.reason}. The figure is his; none of ours is given.`]
      : [rule === "not covered" ? "" : `Rule ${rule}. ${overrideWords[override]}`].filter((it) => it !== "")),
  ];
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
