import { type Step, working } from "../../mechanics/quantity/working.ts";
import { cautionsOf } from "../../mechanics/remedies/cautionsOf.ts";
import { leaves } from "../../mechanics/remedies/leaves.ts";
import { methodOf, type RemedyId } from "../../mechanics/remedies/method.ts";
import { readyAfter_h } from "../../mechanics/remedies/offers.ts";
import { portFit } from "../../mechanics/remedies/portFit.ts";
import type { BreakEven, Ranked } from "../../mechanics/remedies/ranking.ts";
import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import { endsAfter_days, estimateOf } from "../../mechanics/remedies/shopFigures.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { dayAfter } from "../../mechanics/service/dueDate.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { cautionSentences } from "../words/cautionWords.ts";
import {
  breakEvenSentence,
  chipsWords,
  failureWord,
  objectionWords,
  ownerSentences,
  undoWords,
} from "../words/ownerWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { conditionSentences, needSentence, standsWords, whyNotSentences } from "../words/repairWords.ts";

type SpanDocument = { readonly low: number; readonly likely: number; readonly high: number };

/** What every remedy and repair says of itself besides its window; figures are null where it is refused. */
export type MethodDocument = {
  /** The number of the method in the documents. */
  readonly method: string;
  readonly stands: string;
  /** The day on which a make-do has ended. */
  readonly until: string | null;
  readonly hours: SpanDocument | null;
  readonly parts: SpanDocument | null;
  readonly kit: SpanDocument | null;
  readonly readyAfter_h: number | null;
  readonly comesBack: (SpanDocument & { readonly basis: string }) | null;
  readonly estimates: string | null;
  readonly leaves: { readonly thread: string; readonly plug: string; readonly seal: string };
  readonly chips: string | null;
  readonly undone: string | null;
  readonly fails: readonly string[];
  readonly owner: string;
  readonly conditions: readonly string[];
  readonly needs: readonly string[];
  /** What to mind where it is done; none where it is refused. */
  readonly cautions: readonly string[];
  readonly sums: readonly Step[];
};

export type RankingDocument = {
  readonly id: string;
  readonly name: string;
  /** The line of the decision order. */
  readonly line: number;
  readonly price: SpanDocument;
  readonly objections: readonly string[];
  readonly breakEven: string | null;
};

/** What a closure of what is left says of itself. */
export function remedyMethod(remedy: Remedy, weighed: Weighed): MethodDocument {
  const { portCase } = weighed;
  const ends_days = endsAfter_days(estimateOf(remedy.id, portCase.shop), remedy.lasting);
  const stands = remedy.refused ? "refused" : remedy.window?.open ? "fits" : "window empty";
  return {
    ...common(remedy.id, remedy.refused !== null, weighed),
    stands: standsWords[stands],
    until: !remedy.refused && portCase.today && ends_days !== null ? dayAfter(portCase.today, ends_days) : null,
    readyAfter_h: remedy.refused ? null : tenth(readyAfter_h(remedy, portCase)),
    conditions: remedy.refused
      ? []
      : (portFit(remedy.id, portCase)?.conditions ?? []).map((it) => conditionSentences[it]),
    needs: [],
    sums: [],
  };
}

/** What a repair says of itself. */
export function repairMethod(repair: Repair, weighed: Weighed): MethodDocument {
  const { id, refused, stands, until, conditions, needs, sums } = repair;
  return {
    ...common(id, refused !== null, weighed),
    stands: standsWords[stands],
    until: refused ? null : until,
    readyAfter_h: refused ? null : repair.readyAfter_h,
    conditions: refused ? [] : conditions.map((it) => conditionSentences[it]),
    needs: needs.map(needSentence),
    sums: working(...sums),
  };
}

/** Why a repair is answered as it is. */
export const repairReasons = ({ whyNot, needs }: Repair): readonly string[] =>
  whyNot ? [whyNotSentences[whyNot]] : needs.filter(({ state }) => state !== "met").map(needSentence);

/** The offers in their order. */
export const rankingDocument = ({ ranking, breakEvens }: Weighed): readonly RankingDocument[] =>
  ranking.map((row) => ({
    id: row.id,
    name: remedyNames[row.id],
    line: row.line,
    price: {
      low: Math.round(row.price.low),
      likely: Math.round(row.price.likely),
      high: Math.round(row.price.high),
    },
    objections: row.objections.map((it) => objectionWords[it]),
    breakEven: breakEvenOf(row, breakEvens),
  }));

function breakEvenOf({ id }: Ranked, breakEvens: readonly BreakEven[]): string | null {
  const found = breakEvens.find((it) => it.id === id);
  return found ? breakEvenSentence(found) : null;
}

function common(id: RemedyId, refused: boolean, { ranking, portCase }: Weighed) {
  const estimate = estimateOf(id, portCase.shop);
  const comesBack = ranking.find((it) => it.id === id)?.comesBack ?? null;
  const own = estimate.comesBack && { ...estimate.comesBack, basis: "estimate" };
  return {
    method: methodOf[id],
    hours: refused ? null : estimate.hours,
    parts: refused ? null : estimate.parts,
    kit: refused ? null : estimate.kit,
    comesBack: refused
      ? null
      : comesBack
        ? { low: comesBack.low, likely: comesBack.likely, high: comesBack.high, basis: comesBack.basis }
        : own,
    estimates: refused ? null : sourceText(estimate.source),
    leaves: leaves[id],
    chips: chipsWords[estimate.chips],
    undone: estimate.undo && undoWords[estimate.undo],
    fails: estimate.fails.map(failureWord),
    owner: ownerSentences[id],
    cautions: refused ? [] : cautionsOf(id, portCase).map((it) => cautionSentences[it]),
  };
}

const tenth = (hours: number | null): number | null => (hours === null ? null : Math.ceil(10 * hours) / 10);
