import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { oneOfEach, type Ranked } from "../../mechanics/remedies/ranking.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { limitFigure, needFigure, pullFigure, rangeText } from "../words/figures.ts";
import { breakEvenSentence, comesBackText, objectionWords, priceText } from "../words/ownerWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import {
  conditionSentences,
  needSentence,
  repairCheckSentence,
  standsWords,
  whyNotSentences,
} from "../words/repairWords.ts";
import { leastOf } from "../words/windowWords.ts";
import { wrapped } from "./wrapped.ts";

/**
 * What may be offered, in its order, with prices; then what else can be done to the port. With the working also every check,
 * and why the rest is not offered.
 */
export function repairLines(weighed: Weighed, withWorking: boolean): readonly string[] {
  const { repairs, ranking, health } = weighed;
  if (health.healthy) return [];
  const offered = repairs.filter(({ id }) => ranking.some((it) => it.id === id));
  return [
    ...(offered.length === 0 ? [] : ["What else can be done to the port", ...offered.flatMap(rowOf), ""]),
    ...(ranking.length === 0
      ? []
      : [
          "In this order (prices and chances are estimates)",
          ...(withWorking ? ranking : oneOfEach(ranking).slice(0, most)).flatMap((row, i) => ranked(row, i, weighed)),
          "",
        ]),
    ...(withWorking ? ["Not offered", ...notOffered(weighed).flatMap((it) => wrapped(`  ${it}`, "    ")), ""] : []),
  ];

  function rowOf(repair: Repair): readonly string[] {
    const row = `  ${remedyNames[repair.id].padEnd(38)}${verdict(repair)}`;
    const checks = withWorking
      ? repair.checks.map(repairCheckSentence)
      : repair.conditions.map((it) => conditionSentences[it]);
    return [...wrapped(row, " ".repeat(40)), ...checks.flatMap((it) => wrapped(`    - ${it}`, "      "))];
  }
}

/** How many offers, each of another method, are shown without the working. */
const most = 5;

function verdict({ closed, stands, until, lasting }: Repair): string {
  const ends = lasting ? [] : [`make-do${until ? ` until ${until}` : ""}`];
  const { window, advice } = closed ?? { window: null, advice: null };
  const torque = window
    ? window.open
      ? `${rangeText(leastOf(window), window.limit_Nm)}${advice?.type === "pull" ? `: pull ${pullFigure(advice.torque_Nm)}` : ""}`
      : `empty: needs ${needFigure(leastOf(window))}, limit ${limitFigure(window.limit_Nm)} N·m`
    : null;
  // What fits and has a range needs no word for it.
  const how = stands === "fits" && (torque !== null || ends.length > 0) ? [] : [standsWords[stands]];
  return [...how, ...ends, ...(torque === null ? [] : [torque])].join("; ");
}

/** One offer; where the port is refused as found no odds stand beside it. */
function ranked(row: Ranked, i: number, { breakEvens, asFound }: Weighed): readonly string[] {
  const objections = row.objections.map((it) => objectionWords[it]);
  const chance = asFound.refused ? "" : comesBackText(row);
  const parts = [priceText(row), chance, ...objections].filter((it) => it !== "");
  const even = asFound.refused ? undefined : breakEvens.find(({ id }) => id === row.id);
  return [
    ...wrapped(`  ${i + 1} ${remedyNames[row.id]}: ${parts.join("; ")}.`, "    "),
    ...(even ? wrapped(`    ${breakEvenSentence(even)}`, "    ") : []),
  ];
}

/** The repairs that are no offer, each with its reason in one sentence. */
export const notOffered = ({ repairs, ranking }: Weighed): readonly string[] =>
  repairs
    .filter(({ id }) => !ranking.some((it) => it.id === id))
    .map((repair) => `${remedyNames[repair.id]}: ${whyNot(repair)}`);

/** What an offer comes to, in a few words. */
export function offeredVerdict(id: RemedyId, { repairs, remedies }: Weighed): string {
  const repair = repairs.find((it) => it.id === id);
  if (repair) return verdict(repair);
  const window = remedies.find((it) => it.id === id)?.window;
  return window ? rangeText(leastOf(window), window.limit_Nm) : "";
}

function whyNot({ refused, whyNot: why, stands, needs }: Repair): string {
  if (refused) return refusalSentence(refused.reason);
  if (why) return whyNotSentences[why];
  const lacks = needs.find(({ state }) => state === "not met");
  return lacks ? needSentence(lacks) : `${standsWords[stands]}.`;
}
