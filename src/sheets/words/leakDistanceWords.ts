import type { LossOverDistance } from "../../mechanics/fluid/leakDistance.ts";
import { doubtOf } from "../../mechanics/fluid/levelDoubt.ts";
import type { Loss } from "../../mechanics/fluid/levelVolumes.ts";
import type { LimitReached } from "../../mechanics/fluid/limitDistance.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, km, ml_km } from "../../mechanics/quantity/unit.ts";
import { dayAfter } from "../../mechanics/service/dueDate.ts";
import { earlyFigure, lateFigure, nearFigure } from "./distanceFigures.ts";
import { volumeText } from "./levelFigures.ts";

/** What a level lost over a distance, what share of the fill that is, and how far the rest lasts; null where not asked. */
export type LossInWords = {
  readonly loss: LossOverDistance;
  readonly share: Loss | null;
  readonly toLimit: { readonly likely: Quantity; readonly least: Quantity } | null;
};

/** What a level lost over a distance. */
export function lossLines({ loss, share, toLimit }: LossInWords): readonly string[] {
  const rate =
    loss.type === "loses"
      ? `${Number(loss.per100km_ml.toPrecision(2))} ml in 100 km (give or take ${doubt(loss.perDistance)}), ${volumeText(loss.lost)} in all.`
      : `No loss that the reading can tell from none: at most ${perHundred(valueIn(ml_km, loss.most))} ml in 100 km.`;
  return [
    ...(share?.verdict === "stop" ? [shareLine(share)] : []),
    rate,
    ...(toLimit
      ? [`The margin lasts about ${down(toLimit.likely)} km, ${down(toLimit.least)} at the least: act on the least.`]
      : []),
    ...(share && share.verdict !== "stop" ? [shareLine(share)] : []),
    "",
    "Why",
    "  A plug at or above the oil leaks by splash and heat, so distance tells more than days.",
    "  Taken as even along the way. Where the level falls below the reach of the splash it grows less.",
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
        leftLine(reached.left, reached.leftAtLeast),
        `The limit comes at about ${two(reached.at)} km, as early as ${down(reached.earliest)}, as late as ${up(reached.latest)} (90 %).`,
        "",
        "Why",
        "  A straight line through the readings, turned round by Fieller's theorem with the error of a reading.",
        "  An estimate to help: read the level again before the least of it.",
      ];
    default:
      return reached satisfies never;
  }
}

/** On which day the level reaches its limit, by the readings of days counted from the `first`. */
export function dayLines(reached: LimitReached, first: string): readonly string[] {
  if (reached.type === "not falling") return ["The level does not fall."];
  if (reached.type === "not enough data")
    return ["Not enough data: the readings cannot be told from no fall at all. Read again later."];
  const day = (it: Quantity): string => dayAfter(first, valueIn(d, it));
  const whole = (it: Quantity): number => Math.floor(valueIn(d, it));
  const left =
    whole(reached.leftAtLeast) < 1
      ? "Act now: by these readings the level may be at its limit. Top up before it moves."
      : `${earlyFigure(whole(reached.leftAtLeast))} days left at the least, about ${earlyFigure(whole(reached.left))} likely: act on the least.`;
  return [
    left,
    `The limit comes about ${day(reached.at)}, as early as ${day(reached.earliest)}, as late as ${day(reached.latest)} (90 %).`,
    "",
    "Why",
    "  A straight line through the readings, turned round by Fieller's theorem with the error of a reading.",
    "  Days count only while it is used as it was. An estimate to help: read the level again before the least of it.",
  ];
}

function leftLine(left: Quantity, atLeast: Quantity): string {
  if (left.value <= 0)
    return "Act now: by these readings the level is at its limit or past it. Top up before it moves.";
  if (atLeast.value <= 0)
    return `Act now: the level may be at its limit already, or last about ${down(left)} km. Top up before it moves.`;
  return `${down(atLeast)} km left at the least, about ${two(left)} likely: act on the least.`;
}

function shareLine({ share, verdict }: Loss): string {
  const percent = (part: number): number => Number((100 * part).toPrecision(2));
  const gone = `About ${percent(share.value)} % of the fill is gone, as much as ${percent(share.value + doubtOf(share))} %`;
  const words = {
    "carry on": "carry on and read again",
    warn: "top up, and look for what it did",
    stop: "stop, and ask whether it ran dry enough to be hurt",
  } as const;
  return `${gone}: ${words[verdict]} (judgement; the maker's figure goes first).`;
}

const perHundred = (perKilometre_ml: number): number => Number((100 * perKilometre_ml).toPrecision(2));

/** Two standard uncertainties of 100 km, never less than they are. */
function doubt(perDistance: Quantity): string {
  const U = (200 * standardUncertainty(perDistance)) / ml_km.inSI;
  return lateFigure(U);
}

const two = (it: Quantity): string => nearFigure(valueIn(km, it));
const down = (it: Quantity): string => earlyFigure(valueIn(km, it));
const up = (it: Quantity): string => lateFigure(valueIn(km, it));
