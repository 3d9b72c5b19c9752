import { type Odds, oddsAt } from "../../mechanics/joint/window.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { one, turn } from "../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../mechanics/quantity/working.ts";
import { closureWorking } from "../../mechanics/remedies/closureWorking.ts";
import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import type { MeasureFirst } from "../../mechanics/remedies/measureFirst.ts";
import type { Measurement } from "../../mechanics/remedies/nextMeasurement.ts";
import type { Refusal } from "../../mechanics/remedies/refusalRules.ts";
import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { checkSentence } from "../words/checkWords.ts";
import { allowedInstead } from "../words/insteadWords.ts";
import { measureFirstSentence, measurementSentence } from "../words/measurementWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { repairCheckSentence } from "../words/repairWords.ts";
import { cautions } from "./cautions.ts";
import { usedLevels, usedRanges } from "./echo.ts";
import {
  type MethodDocument,
  type RankingDocument,
  rankingDocument,
  remedyMethod,
  repairMethod,
  repairReasons,
} from "./methodDocument.ts";
import { assumedRow, portReasons, remedyReasons } from "./reasons.ts";

/** The torques, N·m, at which every answer gives its odds besides those asked for. */
const ladder_Nm = [2, 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 100, 120, 150, 200];

type TorqueOdds = { readonly torque_Nm: number; readonly probability: number };

export type WindowDocument = {
  readonly open: boolean;
  readonly narrow: boolean;
  readonly need_Nm: number;
  readonly limit_Nm: number;
  readonly advice_Nm: number | null;
  readonly medianStrip_Nm: number;
  readonly cautiousRule_Nm: number;
  readonly floor_Nm: number | null;
  /** What is set on the wrench, its name, and whether the pull may be claimed; null where nothing is advised. */
  readonly pull: { readonly set_Nm: number; readonly wrench: string | null; readonly evidence: string | null } | null;
  readonly stopAt_deg: number | null;
  readonly strips: readonly TorqueOdds[];
  readonly closes: readonly TorqueOdds[];
};

export type RefusalDocument = {
  readonly rule: string;
  readonly reason: string;
  readonly instead: readonly string[];
  readonly override: string;
  readonly overridden: { readonly by: string; readonly reason: string } | null;
};

export type AnswerDocument = {
  readonly engine: string;
  readonly case: unknown;
  readonly healthy: boolean;
  readonly turns: { readonly caught: number; readonly healthyShare: number | null } | null;
  readonly asFound: {
    readonly window: WindowDocument | null;
    readonly because: readonly string[];
    readonly refused: RefusalDocument | null;
  };
  readonly remedies: readonly RemedyDocument[];
  /** What may be offered, best first. */
  readonly ranking: readonly RankingDocument[];
  readonly measureNext: readonly MeasurementDocument[];
  /** What nobody has measured and some of it cannot be judged without. */
  readonly measureFirst: readonly {
    readonly reading: string;
    readonly decides: readonly string[];
    readonly because: string;
  }[];
  /** What the spread of the strip torque is made of, greatest first. */
  readonly spread: readonly { readonly term: string; readonly share: number }[];
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
  readonly working: readonly Step[];
  readonly cautions: readonly string[];
  readonly ranges: Readonly<Record<string, unknown>>;
  readonly levels: Readonly<Record<string, number>>;
};

export type MeasurementDocument = {
  readonly reading: string;
  readonly how: string;
  readonly limitNow_Nm: number;
  readonly limitThen_Nm: number;
  /** What this reading makes of the variance of the strip torque, and what it does to the remedy that would be done. */
  readonly share: number;
  readonly best: {
    readonly id: string;
    readonly name: string;
    readonly limitNow_Nm: number;
    readonly limitThen_Nm: number;
  } | null;
  readonly worthIt: boolean;
  readonly because: string;
};

export type RemedyDocument = MethodDocument & {
  readonly id: string;
  readonly name: string;
  readonly lasting: boolean;
  readonly window: WindowDocument | null;
  readonly refused: RefusalDocument | null;
  readonly checks: readonly string[];
  readonly because: readonly string[];
};

/**
 * The answer as one document of the contract: figures with their unit in the key, sentences for people.
 * A refused closure has no window, and a document without any window has no range or level in it either.
 */
export function answerDocument(
  weighed: Weighed,
  ordinary: readonly Assumption[],
  written: unknown,
  at_Nm: readonly number[],
  engine: string,
): AnswerDocument {
  const { portCase, asFound, health } = weighed;
  const torques = [...new Set([...at_Nm, ...ladder_Nm])].toSorted((a, b) => a - b);
  const weighs =
    asFound.window !== null ||
    weighed.remedies.some((it) => it.window !== null) ||
    weighed.repairs.some(({ closed }) => closed !== null);
  const shown = asFound.window ? asFound : (weighed.remedies.find((it) => it.window?.open) ?? asFound);
  const healthyShare = health.share ? rounded(valueIn(one, health.share)) : null;
  return {
    engine,
    case: written,
    healthy: health.healthy,
    turns: asFound.turns && { caught: rounded(Math.max(0, valueIn(turn, asFound.turns.caught))), healthyShare },
    asFound: {
      window: windowDocument(asFound, torques),
      because: portReasons(weighed),
      refused: refusalDocument(asFound.refused),
    },
    remedies: [
      ...weighed.remedies.map((remedy) => remedyDocument(remedy, weighed, torques)),
      ...(health.healthy ? [] : weighed.repairs).map((repair) => repairDocument(repair, weighed, torques)),
    ],
    ranking: rankingDocument(weighed),
    measureNext: weighed.next.measurements.map(measurementDocument),
    measureFirst: weighed.missing.map(measureFirstDocument),
    spread: weighed.next.shares.map(({ term, share }) => ({ term, share: rounded(share) })),
    assumed: [...weighed.assumed, ...ordinary].map(assumedRow),
    working: weighs ? working(...closureWorking(portCase, shown)) : [],
    cautions: cautions(weighed),
    ranges: weighs ? usedRanges(weighed) : {},
    levels: weighs ? usedLevels(weighed) : {},
  };
}

function remedyDocument(remedy: Remedy, weighed: Weighed, torques: readonly number[]): RemedyDocument {
  return {
    id: remedy.id,
    name: remedyNames[remedy.id],
    lasting: remedy.lasting,
    window: windowDocument(remedy, torques),
    refused: refusalDocument(remedy.refused),
    checks: remedy.window ? remedy.checks.map(checkSentence) : [],
    because: remedyReasons(remedy, weighed),
    ...remedyMethod(remedy, weighed),
  };
}

/** A repair of a hurt port, its window that of the port once it is repaired. */
function repairDocument(repair: Repair, weighed: Weighed, torques: readonly number[]): RemedyDocument {
  const { closed } = repair;
  return {
    id: repair.id,
    name: remedyNames[repair.id],
    lasting: repair.lasting,
    window: closed && windowDocument(closed, torques),
    refused: refusalDocument(repair.refused),
    checks: repair.checks.map(repairCheckSentence),
    because: repair.refused
      ? [refusalSentence(repair.refused.reason)]
      : [...repairReasons(repair), ...(closed ? remedyReasons(closed, weighed) : [])],
    ...repairMethod(repair, weighed),
  };
}

function windowDocument({ window, advice, stop }: WeighedClosure, torques: readonly number[]): WindowDocument | null {
  if (!window) return null;
  const pull = advice?.type === "pull" ? advice : null;
  return {
    open: window.open,
    narrow: window.narrow,
    need_Nm: rounded(window.need_Nm),
    limit_Nm: rounded(window.limit_Nm),
    advice_Nm: pull ? rounded(pull.torque_Nm) : null,
    medianStrip_Nm: rounded(window.medianStrip_Nm),
    cautiousRule_Nm: rounded(window.cautiousRule_Nm),
    floor_Nm: window.floor_Nm,
    pull: pull && { set_Nm: rounded(pull.set_Nm), wrench: pull.wrench?.name ?? null, evidence: pull.evidence },
    stopAt_deg: stop && Math.round(stop.stop_deg),
    strips: oddsRows(window.strips, torques),
    closes: oddsRows(window.closes, torques),
  };
}

const measurementDocument = (it: Measurement): MeasurementDocument => ({
  reading: it.reading,
  how: it.how,
  limitNow_Nm: rounded(it.limitNow_Nm),
  limitThen_Nm: rounded(it.limitThen_Nm),
  share: rounded(it.share),
  best: it.best && {
    id: it.best.id,
    name: remedyNames[it.best.id],
    limitNow_Nm: rounded(it.best.limitNow_Nm),
    limitThen_Nm: rounded(it.best.limitThen_Nm),
  },
  worthIt: it.worthIt,
  because: measurementSentence(it),
});

const measureFirstDocument = (it: MeasureFirst) => ({
  reading: it.reading,
  decides: it.decides,
  because: measureFirstSentence(it),
});

const oddsRows = (odds: Odds, torques: readonly number[]): TorqueOdds[] =>
  torques.map((torque_Nm) => ({ torque_Nm, probability: rounded(oddsAt(odds, torque_Nm)) }));

function refusalDocument(refusal: Refusal | null): RefusalDocument | null {
  if (!refusal) return null;
  const { rule, reason, override, overridden } = refusal;
  return {
    rule,
    reason: refusalSentence(reason),
    instead: allowedInstead(refusal),
    override,
    overridden: overridden && { by: overridden.by, reason: overridden.reason },
  };
}

/** Eight significant digits: finer than the method's accuracy, so that comparing two answers meets no rounding. */
const rounded = (value: number): number => Number(value.toPrecision(8));
