import type { Refusal } from "../../mechanics/remedies/refusalRules.ts";
import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { rangeText } from "../words/figures.ts";
import { allowedInstead, overrideWords } from "../words/insteadWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { standsWords } from "../words/repairWords.ts";
import { leastOf, pullText } from "../words/windowWords.ts";
import { foundFirst } from "./foundFirst.ts";
import { bestRemedy, bestRepair, roomierRemedy } from "./remedyShown.ts";

/** Two or three sentences that may be read from under the lift, each whole. */
export function answerFirst(weighed: Weighed): readonly string[] {
  const { asFound, health } = weighed;
  const best = bestRemedy(weighed);
  const repair = bestRepair(weighed);
  const found = foundFirst(weighed);
  if (asFound.refused) return [found, ...allowed(asFound.refused), ...(best ? [wouldDo(best)] : [])];
  if (health.healthy) return [found];
  if (!best) {
    if (asFound.window?.open) return [found];
    return [found, nothingLeft, ...(repair ? [wouldRepair(repair)] : [])];
  }
  if (best.id === "lower torque") return [found, ...roomierSentence(weighed, best)];
  return [`As found: ${found}`, wouldDo(best), ...roomierSentence(weighed, best)];
}

function allowed(refused: Refusal): readonly string[] {
  const { rule, override, overridden } = refused;
  return [
    `Instead: ${allowedInstead(refused).join("; ")}.`,
    ...(overridden
      ? [`Taken on by ${overridden.by}: ${overridden.reason}. The figure is his; none of ours is given.`]
      : [rule === "not covered" ? "" : `Rule ${rule}. ${overrideWords[override]}`].filter((it) => it !== "")),
  ];
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

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
