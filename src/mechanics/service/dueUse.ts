import { type Distribution, exactly, lognormal, quantile } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { d, h, km, km_d, one, type Unit } from "../quantity/unit.ts";
import { judgement, published, sourceText } from "../tables/source.ts";
import { daysBetween } from "./dueDate.ts";

/** A meter read on a day, ISO 8601; `meter` is a length or, on an hour meter, a time. */
export type MeterReading = { readonly meter: Quantity; readonly on: string };

/** How much a machine is used in a day from now on, as far as its meter tells. */
export type Use = {
  /** The estimate that its readings give, or the fallback: the median of the rate to come. */
  readonly rate: Quantity;
  /** Of the rate to come, on the scale of `rate`'s unit. */
  readonly distribution: Distribution;
  readonly known: "by its meter" | "by its meter, short time" | "by the fallback";
};

/** Where two readings tell nothing yet, this stands for a light machine on the road: 18 054 km a year. */
export const fallbackDistance: Quantity = exact(
  "r",
  18_054 / 365.25,
  km_d,
  sourceText(published("US FHWA, table VM-1M for 2009, light-duty vehicles")),
);

export const h_d: Unit = {
  symbol: "h/d",
  inSI: h.inSI / d.inSI,
  zero: 0,
  dimension: [0, 0, 0, 0],
  kind: "plain number",
};

/**
 * The use by two readings of a meter, earlier first, or by `fallback` where they lie less than 14 days apart or are missing;
 * null where there is neither.
 *
 * Two readings give no variance: the rate to come is lognormal with a coefficient of variation of 0.3, of 0.4 where they
 * lie less than 60 days apart or tell nothing (judgement).
 */
export function useRate(
  earlier: MeterReading | null,
  later: MeterReading | null,
  fallback: Quantity | null,
): Use | null {
  const days = earlier && later ? daysBetween(earlier.on, later.on) : 0;
  const measured = earlier && later && days >= LEAST_DAYS ? rateOf(earlier.meter, later.meter, days) : null;
  const rate = measured && measured.value > 0 ? measured : fallback;
  if (!rate) return null;
  const short = rate !== measured || days < FIRM_DAYS;
  const cv = short ? shortVariation : firmVariation;
  return {
    rate,
    distribution: lognormal(valueIn(rate.unit, rate), sigmaOf(cv)),
    known: rate !== measured ? "by the fallback" : short ? "by its meter, short time" : "by its meter",
  };
}

/** The rate between two meters of one kind over a number of days, r. */
export function rateOf(earlier: Quantity, later: Quantity, days: number): Quantity {
  const Dt = exact("Dt", days, d, "days between the readings");
  return earlier.unit.kind === "time"
    ? hours({ h_1: earlier, h_2: later, Dt })
    : distance({ x_1: earlier, x_2: later, Dt });
}

/** The rate that the share p of rates to come lie below, in the unit of the use. */
export const rateAt = (use: Use, p: number): Quantity =>
  exact("r", quantile(use.distribution, p), use.rate.unit, "lognormal rate to come");

/** The standard deviation of the logarithm of a lognormal value, from its coefficient of variation. */
const sigmaOf = (cv: Quantity): number => sigma({ CV: cv }).value;

/** Coefficients of variation of the rate to come. */
const firmVariation = taken("CV", exactly(0.3), one, sourceText(judgement("owners' use from one season to the next")));
const shortVariation = taken("CV", exactly(0.4), one, sourceText(judgement("use known from less than 60 days")));

const LEAST_DAYS = 14;
const FIRM_DAYS = 60;

const distance = formula("r = (x_2 - x_1) / Dt", { x_1: km, x_2: km, Dt: d, r: km_d }, "plain rate");
const hours = formula("r = (h_2 - h_1) / Dt", { h_1: h, h_2: h, Dt: d, r: h_d }, "plain rate");
const sigma = formula(
  "sigma = sqrt(ln(1 + CV^2))",
  { CV: one, sigma: one },
  "Johnson, Kotz, Balakrishnan, Continuous Univariate Distributions 1, ch. 14 (from memory)",
);
