import { exactly, survival } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { d, h, km, km_d, one } from "../quantity/unit.ts";
import { fromMemory, published, sourceText } from "../tables/source.ts";
import { dayAfter, daysBetween } from "./dueDate.ts";
import { h_d, rateAt, type Use } from "./dueUse.ts";

/** An interval of service: what was laid down, null where nothing was. */
export type ServiceInterval = {
  readonly distance: Quantity | null;
  readonly hours: Quantity | null;
  readonly days: number | null;
};

/** Where the interval began, its day in ISO 8601. */
export type ServiceDone = {
  readonly on: string;
  readonly odometer: Quantity | null;
  readonly hourMeter: Quantity | null;
};

/** Where the machine stands today: its meters as read or as `meterToday` reckons them, and its use by each. */
export type MachineToday = {
  readonly today: string;
  readonly odometer: Quantity | null;
  readonly hourMeter: Quantity | null;
  readonly distanceUse: Use | null;
  readonly hoursUse: Use | null;
};

export type DueBy = "distance" | "hours" | "date";

/** One of the limits, and the days to it with the ends that 1 in 20 lie beyond on each side. */
export type DueLimit = {
  readonly by: DueBy;
  /** Distance, hours or days left; negative when overdue. */
  readonly left: Quantity;
  readonly likely: Quantity;
  readonly earliest: Quantity;
  readonly latest: Quantity;
};

/** What asks for a change now, whatever the interval says. */
export const dueNow = ["water immersion", "milky oil"] as const;
export type DueNow = (typeof dueNow)[number];

export type Due =
  | { readonly type: "now"; readonly because: DueNow }
  | {
      readonly type: "due";
      /** The limit that comes first by the estimate. */
      readonly by: DueBy;
      readonly on: string;
      readonly earliest: string;
      readonly latest: string;
      readonly limits: readonly DueLimit[];
      /** Limits laid down that nobody can tell, for want of a meter or its use. */
      readonly missing: readonly DueBy[];
      /** The chance that use comes before the date; null where there are not both. */
      readonly chanceUseFirst: number | null;
    }
  | { readonly type: "overdue"; readonly by: DueBy; readonly limits: readonly DueLimit[] }
  | { readonly type: "not known"; readonly missing: readonly DueBy[] };

/**
 * When the next service falls due, by distance, hours or date, whichever comes first.
 *
 * Distance and hours of one machine rise together, so the ends of what comes first are the first of the ends (judgement).
 * `severe` shortens distance and hours, 1 for ordinary duty: a setting that everybody sees.
 */
export function nextDue(
  interval: ServiceInterval,
  done: ServiceDone,
  machine: MachineToday,
  severe: Quantity,
  happened: DueNow | null,
): Due {
  if (happened) return { type: "now", because: happened };
  const uses = [
    { by: "distance", full: interval.distance, from: done.odometer, now: machine.odometer, use: machine.distanceUse },
    { by: "hours", full: interval.hours, from: done.hourMeter, now: machine.hourMeter, use: machine.hoursUse },
  ] as const;
  const laidDown = uses.filter(({ full }) => full !== null);
  const byUse = laidDown.flatMap((it) => limitByUse(it, severe));
  const byDate = interval.days === null ? null : limitByDate(done.on, interval.days, machine.today);
  const missing = laidDown.map(({ by }) => by).filter((by) => !byUse.some((it) => it.by === by));
  const limits: readonly DueLimit[] = [...byUse, ...(byDate ? [byDate] : [])];
  const first = soonest(limits, "likely");
  if (!first) return { type: "not known", missing };
  if (first.left.value < 0) return { type: "overdue", by: first.by, limits };
  const day = (which: "likely" | "earliest" | "latest"): string =>
    dayAfter(machine.today, valueIn(d, soonest(limits, which)?.[which] ?? first.likely));
  return {
    type: "due",
    by: first.by,
    on: day("likely"),
    earliest: day("earliest"),
    latest: day("latest"),
    limits,
    missing,
    chanceUseFirst: byDate && byUse.length > 0 ? Math.max(...byUse.map((it) => chanceBefore(it, byDate))) : null,
  };
}

/** A meter as it stands some days after it was read, by the use. */
export const meterToday = (meter: Quantity, use: Use, days: number): Quantity => {
  const Dt = exact("Dt", days, d, "days since the reading");
  return meter.unit.kind === "time"
    ? hoursToday({ h: meter, r: use.rate, Dt })
    : distanceToday({ x: meter, r: use.rate, Dt });
};

/** Ordinary duty, and severe duty where the maker gives no figure of his own: 0.5 to 0.7 are used. */
export const ordinaryDuty = exact("f", 1, one, "ordinary duty");
export const severeDuty = taken(
  "f",
  exactly(0.5),
  one,
  sourceText(fromMemory("common severe-duty factor, 0.5 to 0.7")),
);

/** By how much of its distance a service may be early or late. */
const distanceAllowance = taken("a", exactly(0.1), one, published("US Army TM 9-2320-386-24-1-1").document);

/** A step of service in distance with its allowance used up, D_max. */
export const latestDistance = (distance: Quantity): Quantity => allowed({ D: distance, a: distanceAllowance });

type UseLimit = {
  readonly by: "distance" | "hours";
  readonly full: Quantity | null;
  readonly from: Quantity | null;
  readonly now: Quantity | null;
  readonly use: Use | null;
};

type LimitByUse = DueLimit & { readonly use: Use };

function limitByUse({ by, full, from, now, use }: UseLimit, severe: Quantity): readonly LimitByUse[] {
  if (!full || !from || !now || !use) return [];
  const left =
    by === "distance"
      ? distanceLeft({ x_0: from, D: full, f: severe, x: now })
      : hoursLeft({ h_0: from, D: full, f: severe, h: now });
  const days = (r: Quantity): Quantity =>
    by === "distance" ? distanceDays({ D: left, r }) : hoursDays({ D: left, r });
  const [slow, fast] = [rateAt(use, ONE_IN_TWENTY), rateAt(use, 1 - ONE_IN_TWENTY)];
  return [{ by, left, likely: days(use.rate), earliest: days(fast), latest: days(slow), use }];
}

function limitByDate(on: string, days: number, today: string): DueLimit {
  const left = daysLeft({
    D: exact("D", days, d),
    Dt: exact("Dt", daysBetween(on, today), d, "days since the service"),
  });
  return { by: "date", left, likely: left, earliest: left, latest: left };
}

/** The chance that the use eats what is left before the date comes. */
function chanceBefore({ by, left, use }: LimitByUse, date: DueLimit): number {
  if (!(date.left.value > 0)) return 0;
  const rate = by === "distance" ? distanceRate({ D: left, t: date.left }) : hoursRate({ D: left, t: date.left });
  return survival(use.distribution, valueIn(use.rate.unit, rate));
}

function soonest(limits: readonly DueLimit[], which: "likely" | "earliest" | "latest"): DueLimit | null {
  return limits.reduce<DueLimit | null>((a, b) => (a && a[which].value <= b[which].value ? a : b), null);
}

/** The interval leaves out 1 in 20 on either side. */
const ONE_IN_TWENTY = 0.05;

const interval = "what was laid down, less what was used";
const days = "what is left over the use";

const distanceLeft = formula("D_left = x_0 + D * f - x", { x_0: km, D: km, f: one, x: km, D_left: km }, interval);
const hoursLeft = formula("D_left = h_0 + D * f - h", { h_0: h, D: h, f: one, h, D_left: h }, interval);
const daysLeft = formula("D_left = D - Dt", { D: d, Dt: d, D_left: d }, interval);
const distanceDays = formula("t = D / r", { D: km, r: km_d, t: d }, days);
const hoursDays = formula("t = D / r", { D: h, r: h_d, t: d }, days);
const distanceRate = formula("r = D / t", { D: km, t: d, r: km_d }, days);
const hoursRate = formula("r = D / t", { D: h, t: d, r: h_d }, days);
const distanceToday = formula(
  "x_now = x + r * Dt",
  { x: km, r: km_d, Dt: d, x_now: km },
  "the meter, carried on by the use",
);
const hoursToday = formula("h_now = h + r * Dt", { h, r: h_d, Dt: d, h_now: h }, "the meter, carried on by the use");
const allowed = formula("D_max = D * (1 + a)", { D: km, a: one, D_max: km }, "allowance of service distances");
