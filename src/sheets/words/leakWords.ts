import type { DripFlow, Range } from "../../mechanics/fluid/dropCount.ts";
import type { Lasting, LeakTriage } from "../../mechanics/fluid/leakTriage.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, ml_d, mm, onScale } from "../../mechanics/quantity/unit.ts";
import { type LeakSight, leakClasses } from "../../mechanics/tables/leakClasses.ts";

/** What was counted of a drip, how long that lasts where it is known, and what is seen of it. */
export type DripInWords = {
  readonly drops: number;
  readonly flow: DripFlow;
  /** Null where nothing can be said of days, for want of a margin. */
  readonly triage: LeakTriage | null;
  /** The fall of the level in a day; null where nobody knows what a millimetre holds. */
  readonly fallADay: { readonly bySize: Range; readonly honest: Range } | null;
};

/** What ends the talk first, then what drips, how long it lasts, and the answer for the caller. */
export function dripLines(it: DripInWords): readonly string[] {
  const { drops, triage } = it;
  const first = triage && isFirst(triage) ? triageLines(triage) : [];
  return [
    ...first,
    ...lossSentences(it),
    ...(first.length > 0 ? [] : triage ? triageLines(triage) : ["How long it lasts: give --to-limit and --per-mm."]),
    "",
    "To read out or send",
    `  "${callerText(it)}"`,
    "",
    "Why",
    ...(drops > 0 ? [`  ${classText("drip")}`] : []),
    ...dripMinds.map((line) => `  ${line}`),
  ];
}

/** What drips in a day, and the fall of the level that makes. */
export function lossSentences({ drops, flow, fallADay }: DripInWords): readonly string[] {
  return [
    drops === 0
      ? `No drop seen: less than ${mostOf(flow.honest)} ml a day parked all the same, by the short count.`
      : `${rangeText(flow.bySize)} ml a day parked, by the size of a drop (${rangeText(flow.honest)} with the short count).`,
    ...(fallADay ? [`That is ${fallText(drops === 0 ? fallADay.honest : fallADay.bySize)} mm of level a day.`] : []),
  ];
}

/** "30 to 50", or the most it can be where no drop fell: what is lost in a day, ml. */
export const lossFigure = ({ drops, flow }: DripInWords): string =>
  drops === 0 ? `< ${mostOf(flow.honest)}` : rangeText(flow.bySize);

/** What to mind of every count. */
export const dripMinds = [
  "The range is wide, for the count is short: ten times as long makes it about three times as narrow.",
  "A drip is not the same parked and driven: hot oil is thin and splashes.",
];

/** One paragraph for the caller, with its caution. */
export function callerText({ drops, flow, triage }: DripInWords): string {
  const loses =
    drops === 0
      ? "You counted no drop, so it loses little standing; that says nothing of driving."
      : `By what you counted it loses ${rangeText(flow.bySize)} millilitres a day standing.`;
  return [loses, actText(triage), stopText, cautionText].join(" ");
}

/** The same where nothing was counted: what is asked and seen ends the talk, or goes on with it. */
export const uncountedText = (triage: LeakTriage): string => [actText(triage), stopText, cautionText].join(" ");

/** What a leak is called by what is seen, and what that calls for. */
export const classLines = (sight: LeakSight): readonly string[] => [
  `${sight}: ${leakClasses[sight].calls}.`,
  `  ${classText(sight)}`,
  "  Road tests refuse far more than a mechanic accepts: a pool of 75 mm in five minutes.",
];

/** "A drip is class III by the checks of the US Army, 4 by ISO/TR 11340." */
function classText(sight: LeakSight): string {
  const { pmcs, isoTr11340 } = leakClasses[sight];
  const army = pmcs === "none" ? "no class" : `class ${pmcs}`;
  return `"${sight}" is ${army} by the checks of the US Army, ${isoTr11340} by ISO/TR 11340.`;
}

/** A blocked breather goes before every figure. */
export const breatherFirst = "Free the breather first: it pushes oil past any seal. Then count again.";

/** What goes before every figure. */
export const isFirst = ({ type }: LeakTriage): boolean => type === "do not drive" || type === "free the breather first";

/** What is to be done about a drip, or asked. */
export function triageLines(triage: LeakTriage): readonly string[] {
  switch (triage.type) {
    case "do not drive":
      return [`Do not drive: ${triage.signs.join(", ")}. Fetch it.`];
    case "ask first":
      return ["Ask first:", ...triage.questions.map((it) => `  ${questionWords[it]}`)];
    case "free the breather first":
      return [breatherFirst];
    case "margin used up":
      return ["The level is at its limit: top up before it moves."];
    case "lasts":
      return [
        `To the limit ${triage.parked.low ? `${lastingText(triage.parked)} parked (${lastingText(triage.parkedHonest)} with the short count)` : `${lastingText(triage.parkedHonest)} parked, by the short count`}; half of that, or worse, when driven.`,
      ];
    default:
      return triage satisfies never;
  }
}

function actText(triage: LeakTriage | null): string {
  switch (triage?.type) {
    case "do not drive":
      return "Please do not drive it: we will have it fetched.";
    case "free the breather first":
      return "Its breather is blocked, so leave it standing until that is free, and count again then.";
    case "ask first":
      return `Before you drive, tell us: ${triage.questions.map((it) => callerQuestions[it]).join(" ")}`;
    case "lasts":
      return `Top up before you set off and bring it ${withinText(triage.driven)}; no long hot run.`;
    case "margin used up":
      return "The level is at its limit: top up before it moves, and tell us the level.";
    default:
      return "Top up before you set off, and tell us the level.";
  }
}

const stopText =
  "Do not drive if oil is on a tyre, a brake, the exhaust or a belt, on the road or in water, if there is a new noise, or if drops turn to a string: have it fetched.";
const cautionText =
  "This is an estimate to help, not an approval to drive; the maker's word and local rules come first.";

const questionWords = {
  "stop signs": "Is oil on a tyre, a brake, the exhaust, a belt, the road or in water; is there a new noise (--signs)?",
  breather: "Is the breather free (--breather)? A hiss on opening the plug says that it is not.",
} as const;
const callerQuestions = {
  "stop signs": "Do you see oil anywhere but under the drip, or hear a new noise?",
  breather: "Does anybody know whether the breather is free?",
} as const;

/** One digit below 10, two above: a count and the size of a drop earn no more. */
const figure = (perDay: Quantity): number =>
  Number(valueIn(ml_d, perDay).toPrecision(valueIn(ml_d, perDay) < 10 ? 1 : 2));
const rangeText = ({ low, high }: Range): string => `${figure(low)} to ${figure(high)}`;
const mostOf = ({ high }: Range): number => figure(high);

function fallText({ low, high }: Range): string {
  const at = (it: Quantity): string => {
    const fall = valueIn(mm, it);
    return String(Number(fall.toPrecision(fall < 1 ? 1 : 2)));
  };
  return low.value === 0 ? `less than ${at(high)}` : `${at(low)} to ${at(high)}`;
}

function lastingText({ low, high }: Lasting): string {
  const [least, most] = [daysText(low), daysText(high)];
  if (least === null) return "without end";
  const days = least === "1" && most === null ? "day" : "days";
  return most === null ? `${least} ${days} or more` : `${least} to ${most} days`;
}

/** Days rounded down to the half, whole from 10: a promise of time errs on the short side. */
function daysText(time: Quantity | null): string | null {
  if (!time) return null;
  const days = onScale(time.value, d);
  return days < 1 ? "less than 1" : String(days < 10 ? Math.floor(2 * days) / 2 : Math.floor(days));
}

/** When to bring it: whole days, by the careful end of the days it lasts when driven. */
function withinText({ low }: Lasting): string {
  if (!low) return "when it suits";
  const days = Math.floor(onScale(low.value, d));
  return days < 1 ? "today" : days === 1 ? "within a day" : `within ${days} days`;
}
