import { exactly, normal } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { gammaQuantile, gammaQuantileOfSurvival } from "../quantity/gammaFunctions.ts";
import { exact, type Quantity, reading } from "../quantity/quantity.ts";
import { min, ml, ml_d, one, type Unit } from "../quantity/unit.ts";
import type { DropSize } from "./drop.ts";

export const perMinute: Unit = {
  symbol: "1/min",
  inSI: 1 / 60,
  zero: 0,
  dimension: [0, 0, -1, 0],
  kind: "plain number",
};

/** Drops counted in a counted time. */
export type DropCount = { readonly drops: number; readonly time: Quantity; readonly id: string };

/** Two ends of a range, the lesser first. */
export type Range = { readonly low: Quantity; readonly high: Quantity };

/**
 * The numbers of drops, on average, that a count of `drops` is consistent with at `confidence` (0.95). After no drop at all
 * the lower end is 0 and the upper one still leaves out half of the rest.
 *
 * Source: F. Garwood, "Fiducial limits for the Poisson distribution", Biometrika 28 (1936), exact. Dripping is more regular
 * than chance, so the interval is on the safe side.
 * @throws RangeError if `drops` is not a whole number from 0 or `confidence` not between 0 and 1.
 */
export function countInterval(drops: number, confidence: number): { readonly low: number; readonly high: number } {
  if (!(Number.isInteger(drops) && drops >= 0))
    throw new RangeError(`countInterval: ${drops} is not a number of drops`);
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`countInterval: confidence ${confidence}`);
  const left = (1 - confidence) / 2;
  return {
    low: drops === 0 ? 0 : gammaQuantile(left, drops),
    high: gammaQuantileOfSurvival(left, drops + 1),
  };
}

/** The rate lambda of a count, with its exact interval. */
export function dropRate(count: DropCount, confidence: number): Range & { readonly rate: Quantity } {
  const { low, high } = countInterval(count.drops, confidence);
  const at = (drops: number): Quantity => perTime({ n: exact("n", drops, one, GARWOOD), t: count.time });
  return { rate: perTime({ n: counted(count), t: count.time }), low: at(low), high: at(high) };
}

/** What drips in a day. */
export type DripFlow = {
  readonly flow: Quantity;
  /** By the size of a drop alone, as if the count were the truth. */
  readonly bySize: Range;
  /** By the size of a drop and the shortness of the count together. */
  readonly honest: Range;
};

/**
 * The flow Q of a counted drip. The honest range joins the ends of the count's interval with those of the drop, so that it
 * holds the truth at least as often as `confidence` says wherever the drop's size lies in its range.
 */
export function dripFlow(count: DropCount, drop: DropSize, confidence: number): DripFlow {
  const { rate, low, high } = dropRate(count, confidence);
  const asCounted = perTime({ n: exact("n", count.drops, one, "as counted"), t: count.time });
  return {
    flow: flowOf({ lambda: rate, V_d: drop.volume }),
    bySize: {
      low: flowOf({ lambda: asCounted, V_d: drop.least }),
      high: flowOf({ lambda: asCounted, V_d: drop.most }),
    },
    honest: { low: flowOf({ lambda: low, V_d: drop.least }), high: flowOf({ lambda: high, V_d: drop.most }) },
  };
}

const GARWOOD = "Garwood 1936, exact Poisson interval";

/** A count n varies by its root; a count of none says nothing to first order. */
const counted = ({ drops, id }: DropCount): Quantity =>
  reading("n", drops > 0 ? normal(drops, Math.sqrt(drops)) : exactly(0), one, id, "drops counted");

const perTime = formula("lambda = n / t", { n: one, t: min, lambda: perMinute }, "plain rate");
const flowOf = formula("Q = lambda * V_d", { lambda: perMinute, V_d: ml, Q: ml_d }, "rate times the volume of a drop");
