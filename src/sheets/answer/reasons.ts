import { estimate } from "../../mechanics/quantity/working.ts";
import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { notOfferedSentences } from "../words/checkWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { taperSentences } from "../words/taperWords.ts";
import { closureReasons, foundReasons } from "./foundReasons.ts";

/** Why the port as found is answered as it is, and why a longer plug cannot help where it cannot. */
export function portReasons(weighed: Weighed): readonly string[] {
  const { asFound, health, notOffered, taper } = weighed;
  const reasons = [...foundReasons(weighed), ...(taper ? taperSentences(taper) : [])];
  if (asFound.refused || health.healthy) return reasons;
  return [...reasons, ...notOffered.map(({ reason }) => notOfferedSentences[reason]).filter(unique)];
}

/** Why a remedy is answered as it is. */
export const remedyReasons = (remedy: WeighedClosure, { portCase }: Weighed): readonly string[] =>
  remedy.refused ? [refusalSentence(remedy.refused.reason)] : closureReasons(remedy, portCase.ranges, []);

/** One row of what was taken because nobody gave it. */
export const assumedRow = ({ reading, value, source }: Assumption) => ({
  reading,
  value: typeof value === "string" ? value : estimate(value),
  source: sourceText(source),
});

const unique = (it: string, i: number, all: readonly string[]): boolean => all.indexOf(it) === i;
