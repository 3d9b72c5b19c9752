import {
  distanceFor,
  fallFor,
  type LossOverDistance,
  lossOverDistance,
} from "../../../mechanics/fluid/leakDistance.ts";
import { doubtOf } from "../../../mechanics/fluid/levelDoubt.ts";
import { levelReading } from "../../../mechanics/fluid/levelReadings.ts";
import { drawBack, lossVerdict } from "../../../mechanics/fluid/levelVolumes.ts";
import { type LimitReached, limitDay, limitDistance } from "../../../mechanics/fluid/limitDistance.ts";
import { exact, type Quantity, standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { d, km, ml, ml_km, mm } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { dayAfter } from "../../../mechanics/service/dueDate.ts";
import { limitFanSvg } from "../../../sheets/answer/limitFanSvg.tsx";
import { dayLines, distanceLines, type LossInWords, lossLines } from "../../../sheets/words/leakDistanceWords.ts";
import { breatherFirst } from "../../../sheets/words/leakWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { sightingsIn } from "../sightings.ts";

export type LeakDistanceOptions = {
  readonly perMm?: string;
  readonly over?: string;
  readonly fallen?: string;
  readonly fill?: string;
  readonly toLimit?: string;
  readonly readings?: string;
  readonly limit: string;
  readonly readTo: string;
  readonly breather?: "free" | "blocked" | "none";
  readonly svg?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

/** What a fall of the level between two services lost, and how far the rest lasts. @throws InputMistake */
export function overDistance(fallen: string, options: LeakDistanceOptions): void {
  const { perMm, over, fill, toLimit } = options;
  if (perMm === undefined) throw mistaken("--per-mm", null, 'what a millimetre of level holds, as "22 ml/mm"');
  if (over === undefined) throw mistaken("--over", null, 'the distance since the last service, as "5000 km"');
  const k = positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", perMm);
  const distance = positiveOption("--over", "s", "length", "5000 km", over);
  const fall = positiveOption("--fallen", "h", "length", "12 mm", fallen);
  const then = levelReading(0, mm, "wire hook", "level after the last service");
  const loss = lossOverDistance(k, then, levelReading(-valueIn(mm, fall), mm, "wire hook", "--fallen"), distance);
  const whole = fill === undefined ? null : positiveOption("--fill", "V_fill", "volume", "2.4 L", fill);
  const above = toLimit === undefined ? null : positiveOption("--to-limit", "h", "length", "8 mm", toLimit);
  const found: LossInWords = {
    loss,
    share: whole && lossVerdict(loss.lost, whole),
    toLimit: above && lastsFor(drawBack(k, above, exact("h_L", 0, mm, "counted from the limit")), loss),
  };
  const asked = [
    loss.lost,
    loss.type === "loses" ? loss.perDistance : loss.most,
    found.share?.share,
    found.toLimit?.likely,
    found.toLimit?.least,
  ];
  const steps = working(...asked.filter((it) => it != null));
  answered(options, lossDocument(found, k, steps), lossLines(found), steps);
}

/** The distance the margin lasts at the rate seen, and at the fastest rate that 1 in 20 lie beyond. */
function lastsFor(margin: Quantity, loss: LossOverDistance): LossInWords["toLimit"] {
  if (loss.type === "no loss seen") return null;
  const { perDistance } = loss;
  const fastest = exact("q", (perDistance.value + doubtOf(perDistance)) / ml_km.inSI, ml_km, "one-sided, 19 in 20");
  return { likely: distanceFor(margin, perDistance), least: distanceFor(margin, fastest) };
}

function lossDocument({ loss, share, toLimit }: LossInWords, k: Quantity, steps: readonly Step[]) {
  const loses = loss.type === "loses" ? loss : null;
  return {
    type: loss.type,
    lost_ml: digits(valueIn(ml, loss.lost), 2),
    lostUncertainty_ml: digits(standardUncertainty(loss.lost) / ml.inSI, 2),
    fallen_mm: digits(valueIn(mm, fallFor(loss.lost, k)), 2),
    per100km_ml: loses && digits(loses.per100km_ml, 2),
    per100kmUncertainty_ml: loses && digits((100 * standardUncertainty(loses.perDistance)) / ml_km.inSI, 2),
    per100kmMost_ml: loss.type === "no loss seen" ? digits(100 * valueIn(ml_km, loss.most), 2) : null,
    shareLost: share && digits(share.share.value, 2),
    shareVerdict: share?.verdict ?? null,
    left_km: toLimit && digits(valueIn(km, toLimit.likely), 2),
    leftAtLeast_km: toLimit && digits(valueIn(km, toLimit.least), 2),
    working: steps,
  };
}

/** Where, or on which day, the readings say that the level reaches its limit. @throws InputMistake */
export function overReadings(file: string, options: LeakDistanceOptions): void {
  const { sightings, first } = sightingsIn(file);
  const limit = positiveOption("--limit", "y_L", "length", "10 mm", options.limit);
  const s = positiveOption("--read-to", "s", "length", "1 mm", options.readTo);
  const reached = (first === null ? limitDistance : limitDay)(sightings, limit, s, 0.9);
  const known = reached.type === "reached" ? reached : null;
  const steps = known ? working(known.at, known.earliest, known.latest, known.left, known.leftAtLeast) : [];
  if (options.svg !== undefined) {
    if (first !== null) throw mistaken("--svg", options.svg, "readings by distance_km: days are not drawn");
    writeSvg(options.svg, limitFanSvg(sightings, limit, reached));
  }
  const document = {
    type: reached.type,
    ...(first === null ? kilometres(known) : days(known, first)),
    readings: sightings.length,
    working: steps,
  };
  answered(options, document, first === null ? distanceLines(reached) : dayLines(reached, first), steps);
}

type Known = Extract<LimitReached, { type: "reached" }> | null;

function kilometres(known: Known) {
  const figure = (it: Quantity | undefined): number | null => (it ? digits(valueIn(km, it), 3) : null);
  return {
    at_km: figure(known?.at),
    earliest_km: figure(known?.earliest),
    latest_km: figure(known?.latest),
    left_km: figure(known?.left),
    leftAtLeast_km: figure(known?.leftAtLeast),
  };
}

function days(known: Known, first: string) {
  const day = (it: Quantity | undefined): string | null => (it ? dayAfter(first, valueIn(d, it)) : null);
  const whole = (it: Quantity | undefined): number | null => (it ? Math.floor(valueIn(d, it)) : null);
  return {
    on: day(known?.at),
    earliest: day(known?.earliest),
    latest: day(known?.latest),
    left_days: whole(known?.left),
    leftAtLeast_days: whole(known?.leftAtLeast),
  };
}

/** A blocked breather goes before every figure. */
function answered(
  options: LeakDistanceOptions,
  document: object,
  lines: readonly string[],
  steps: readonly Step[],
): void {
  const blocked = options.breather === "blocked";
  print(options.json ?? false, { breather: options.breather ?? null, ...document }, [
    ...(blocked ? [breatherFirst] : []),
    ...lines,
    ...(options.working ? workingLines(steps) : []),
  ]);
}
