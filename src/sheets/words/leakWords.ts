import type { DripFlow, Range } from "../../mechanics/fluid/dropCount.ts";
import type { LossOverDistance } from "../../mechanics/fluid/leakDistance.ts";
import type { Lasting, LeakTriage } from "../../mechanics/fluid/leakTriage.ts";
import type { LimitReached } from "../../mechanics/fluid/limitDistance.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, km, ml, ml_d, ml_mm, onScale } from "../../mechanics/quantity/unit.ts";
import { type LeakSight, leakClasses } from "../../mechanics/tables/leakClasses.ts";

/** What drips, how long it lasts, and the answer for the caller. */
export function dripLines(flow: DripFlow, triage: LeakTriage | null, perHeight: Quantity | null): readonly string[] {
  const day = `${rangeText(flow.bySize)} ml a day parked, by the size of a drop (${rangeText(flow.honest)} with the short count)`;
  return [
    `${day}.`,
    ...(perHeight ? [`That is ${millimetres(flow.honest, perHeight)} mm of level a day.`] : []),
    ...(triage ? triageLines(triage) : ["How long it lasts: give --to-limit and --per-mm."]),
    "",
    "To read out or send",
    `  "${callerText(flow, triage)}"`,
  ];
}

function triageLines(triage: LeakTriage): readonly string[] {
  switch (triage.type) {
    case "do not drive":
      return [`Do not drive: ${triage.signs.join(", ")}. Fetch it.`];
    case "ask first":
      return [`Ask first: ${triage.questions.map((it) => questionWords[it]).join(" ")}`];
    case "free the breather first":
      return ["Free the breather first: it pushes oil past any seal."];
    case "margin used up":
      return ["The level is at its limit: top up before it moves."];
    case "lasts":
      return [
        `To the limit ${lastingText(triage.parked)} parked (${lastingText(triage.parkedHonest)} with the short count); half of that, or worse, when driven.`,
      ];
    default:
      return triage satisfies never;
  }
}

function callerText(flow: DripFlow, triage: LeakTriage | null): string {
  const loses = `By what you counted it loses ${rangeText(flow.bySize)} millilitres a day standing.`;
  const stop =
    "Do not drive if oil is on a tyre, a brake, the exhaust or a belt, if there is a new noise, or if drops turn to a string: have it fetched.";
  const words = "This is an estimate to help, not an approval to drive; the maker's word and local rules come first.";
  const act =
    triage?.type === "do not drive"
      ? "Please do not drive it: we will have it fetched."
      : triage?.type === "lasts"
        ? `Top up before you set off and bring it ${withinText(triage.driven)}; no long hot run.`
        : "Top up before you set off, and tell us the level.";
  return [loses, act, stop, words].join(" ");
}

/** What a leak is called by what is seen, and what that calls for. */
export function classLines(sight: LeakSight): readonly string[] {
  const { pmcs, isoTr11340, calls } = leakClasses[sight];
  const army = pmcs === "none" ? "no class" : `class ${pmcs}`;
  return [
    `${sight}: ${calls}.`,
    `  ${army} by the checks of the US Army, ${isoTr11340} by ISO/TR 11340.`,
    "  Road tests refuse far more than a mechanic accepts: a pool of 75 mm in five minutes.",
  ];
}

/** What a level lost over a distance. */
export function lossLines(loss: LossOverDistance): readonly string[] {
  if (loss.type === "no loss seen")
    return [`No loss seen: at most ${valueIn(ml, loss.lost).toPrecision(2)} ml may have gone unseen in the reading.`];
  return [
    `Lost about ${Number(valueIn(ml, loss.lost).toPrecision(2))} ml: ${Number(loss.per100km_ml.toPrecision(2))} ml in 100 km.`,
    "A plug at or above the oil leaks by splash and heat, so distance tells more than days.",
  ];
}

/** Where the level reaches its limit, by the readings on the way. */
export function distanceLines(reached: LimitReached): readonly string[] {
  switch (reached.type) {
    case "not falling":
      return ["The level does not fall."];
    case "not enough data":
      return ["Not enough data: the readings cannot be told from no fall at all. Read again farther on."];
    case "reached":
      return [
        `At the limit at about ${kilometres(reached.at)} km, as early as ${kilometres(reached.earliest)}, as late as ${kilometres(reached.latest)} (Fieller, 90 %).`,
        `From the last reading ${kilometres(reached.left)} km are left, ${kilometres(reached.leftAtLeast)} at the least: act on the least.`,
      ];
    default:
      return reached satisfies never;
  }
}

const rangeText = ({ low, high }: Range): string => {
  const figure = (it: Quantity): number => Number(valueIn(ml_d, it).toPrecision(valueIn(ml_d, it) < 10 ? 1 : 2));
  return `${figure(low)} to ${figure(high)}`;
};

function millimetres({ low, high }: Range, perHeight: Quantity): string {
  const k = valueIn(ml_mm, perHeight);
  const at = (it: Quantity): string => String(Number((valueIn(ml_d, it) / k).toPrecision(1)));
  return `${at(low)} to ${at(high)}`;
}

function lastingText({ low, high }: Lasting): string {
  const [least, most] = [daysText(low), daysText(high)];
  if (least === null) return "without end";
  return most === null ? `${least} days or more` : `${least} to ${most} days`;
}

function daysText(time: Quantity | null): string | null {
  if (!time) return null;
  const days = onScale(time.value, d);
  return days < 1 ? "less than 1" : String(days < 10 ? Math.floor(2 * days) / 2 : Math.floor(days));
}

/** When to bring it: by the careful end of the days it lasts when driven. */
function withinText({ low }: Lasting): string {
  const days = daysText(low);
  return days === null ? "when it suits" : days === "less than 1" ? "today" : `within ${days} days`;
}

const kilometres = (it: Quantity): string => String(Math.round(Number(valueIn(km, it).toPrecision(2))));

const questionWords = {
  "stop signs": "is oil on a tyre, a brake, the exhaust or a belt; is there a new noise (--signs)?",
  breather: "is the breather free (--breather)? A hiss on opening the plug says that it is not.",
} as const;
