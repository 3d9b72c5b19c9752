import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { h, km, km_d, miles } from "../quantity/unit.ts";
import { judgement, type Source } from "../tables/source.ts";
import { daysBetween } from "./dueDate.ts";
import { h_d, type MeterReading, rateOf } from "./dueUse.ts";

/** What a reading of a meter is to the one before. */
export type MeterVerdict =
  | { readonly type: "plausible"; readonly rate: Quantity | null }
  | { readonly type: "dates out of order" }
  | { readonly type: "different meters" }
  /** Lower than the reading before, and nothing explains it. */
  | { readonly type: "falling" }
  /** More in a day than anything drives, and nothing explains it. */
  | { readonly type: "too fast"; readonly rate: Quantity; readonly most: Quantity }
  /** One of the two figures fits once it is read in the other unit, a jump of 1.609; `corrected` is what it then means. */
  | {
      readonly type: "unit changed";
      readonly of: "earlier" | "later";
      readonly readIn: "km" | "mi";
      readonly corrected: Quantity;
    }
  /** The meter ran over its last figure; `corrected` counts on. */
  | { readonly type: "rolled over"; readonly after: number; readonly corrected: Quantity };

/**
 * Whether a reading of a meter can follow the one before.
 *
 * `usual` is the machine's rate so far, or a fallback. Rolling over and a change of unit are only believed where they make
 * the rate ordinary, three times the usual at the most (judgement): a slip of the pen is to stay a slip.
 */
export function meterVerdict(earlier: MeterReading, later: MeterReading, usual: Quantity): MeterVerdict {
  const [before, after] = [earlier.meter, later.meter];
  if (before.unit.kind !== after.unit.kind) return { type: "different meters" };
  const days = daysBetween(earlier.on, later.on);
  if (days < 0) return { type: "dates out of order" };
  const hourMeter = before.unit.kind === "time";
  const most = hourMeter ? mostHours : mostDistance;
  const rate = days > 0 ? rateOf(before, after, days) : null;
  // Two readings of one day may differ by what a day takes at the most.
  const span_s = Math.max(days, 1) * DAY_s;
  const ordinary = (from: Quantity, to: Quantity): boolean =>
    to.value >= from.value && to.value - from.value <= ORDINARY * usual.value * span_s;
  if (ordinary(before, after)) return { type: "plausible", rate };

  const falls = after.value < before.value;
  const rolled = falls ? rolledOver(before, after).find(({ corrected }) => ordinary(before, corrected)) : undefined;
  if (rolled) return rolled;
  if (!hourMeter) {
    const [first, second] = [inOtherUnit("earlier", before), inOtherUnit("later", after)];
    if (ordinary(before, second.corrected)) return second;
    if (ordinary(first.corrected, after)) return first;
  }
  if (falls) return { type: "falling" };
  const fastest = most.value * span_s * (1 + 1e-9);
  if (after.value - before.value > fastest) return { type: "too fast", rate: rate ?? rateOf(before, after, 1), most };
  return { type: "plausible", rate };
}

/** What no machine exceeds. */
const mostDistance: Quantity = exact("r", 2000, km_d, "nothing drives farther in a day (judgement)");
const mostHours: Quantity = exact("r", 24, h_d, "hours of a day");

/** Figures after which meters begin again at 0. */
export const lastFigures: { readonly values: readonly number[]; readonly source: Source } = {
  values: [99_999, 999_999],
  source: judgement("meters of five and of six figures"),
};

type RolledOver = Extract<MeterVerdict, { type: "rolled over" }>;

/** The readings counted on, for each length of meter that could have shown both figures. */
function rolledOver(before: Quantity, after: Quantity): readonly RolledOver[] {
  const unit = after.unit;
  const [first, second] = [valueIn(unit, before), valueIn(unit, after)];
  return lastFigures.values
    .filter((last) => first <= last + 1 && second <= last + 1)
    .map((last) => ({
      type: "rolled over",
      after: last,
      corrected: exact(after.symbol, second + last + 1, unit, "counted on past the last figure"),
    }));
}

type UnitChanged = Extract<MeterVerdict, { type: "unit changed" }>;

/** The figure as it stands, read in the other of the two units. */
function inOtherUnit(of: UnitChanged["of"], meter: Quantity): UnitChanged {
  const inMiles = meter.unit.symbol !== miles.symbol;
  const figure = valueIn(meter.unit, meter);
  const corrected = exact(meter.symbol, figure, inMiles ? miles : km, `the figure read in ${inMiles ? "mi" : "km"}`);
  return { type: "unit changed", of, readIn: inMiles ? "mi" : "km", corrected };
}

const ORDINARY = 3;
const DAY_s = h.inSI * 24;
