import { DimensionError, sameDimension } from "./dimension.ts";
import { type Distribution, exactly, mean, normal, standardDeviation } from "./distribution.ts";
import { inSI, onScale, type Unit } from "./unit.ts";

/**
 * An estimate of a quantity and how it came about.
 *
 * `value` and `contributions` are coherent SI; `unit` is only how people read them.
 */
export type Quantity = {
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  /** What each input adds to the standard uncertainty, c_i·u(x_i), by input. JCGM 100:2008, 5.1.3. */
  readonly contributions: Readonly<Record<string, number>>;
  readonly origin: Origin;
};

/** Where a quantity comes from: somebody's reading, a table, or a formula. */
export type Origin =
  | {
      readonly type: "reading";
      /** The journal entry or the field of the case that gave it. */
      readonly id: string;
      readonly evidence: string;
      /** On the scale of the unit it was read in. */
      readonly distribution: Distribution;
    }
  | { readonly type: "taken"; readonly source: string; readonly distribution: Distribution }
  | {
      readonly type: "worked";
      readonly formula: string;
      readonly source: string;
      readonly inputs: Readonly<Record<string, Quantity>>;
      /** Of a numerical value equation: its symbols stand for the numbers on these scales. */
      readonly scales?: Readonly<Record<string, Unit>>;
    };

/** A reading: a distribution on the scale of `unit`, known by `evidence`, entered under `id`. */
export const reading = (
  symbol: string,
  distribution: Distribution,
  unit: Unit,
  id: string,
  evidence: string,
): Quantity => input(symbol, distribution, unit, id, { type: "reading", id, evidence, distribution });

/** A figure taken from a table or a judgement, with its range; `source` names it and keys its uncertainty. */
export const taken = (symbol: string, distribution: Distribution, unit: Unit, source: string): Quantity =>
  input(symbol, distribution, unit, source, { type: "taken", source, distribution });

/** A figure taken as exact: a nominal size, a count, a defined constant. */
export const exact = (symbol: string, value: number, unit: Unit, source = "as given"): Quantity =>
  taken(symbol, exactly(value), unit, source);

function input(symbol: string, distribution: Distribution, unit: Unit, key: string, origin: Origin): Quantity {
  const u = standardDeviation(distribution) * unit.inSI;
  return { symbol, value: inSI(mean(distribution), unit), unit, contributions: u === 0 ? {} : { [key]: u }, origin };
}

/** The same quantity under another symbol, for a formula that names it otherwise. */
export const as = (symbol: string, q: Quantity): Quantity => ({ ...q, symbol });

/** Combined standard uncertainty u_c(y), in SI. JCGM 100:2008, eq. (11a). */
export const standardUncertainty = (q: Quantity): number => Math.hypot(...Object.values(q.contributions));

/** The value on the scale of `unit`. @throws DimensionError if `unit` measures something else. */
export function valueIn(unit: Unit, q: Quantity): number {
  if (!sameDimension(unit.dimension, q.unit.dimension)) throw new DimensionError(q.symbol, unit.dimension);
  return onScale(q.value, unit);
}

/** The distribution on the scale of its unit: as it was read, or normal about a worked value (JCGM 100:2008, G.2). */
export function distributionOf(q: Quantity): Distribution {
  if (q.origin.type !== "worked") return q.origin.distribution;
  const u = standardUncertainty(q) / q.unit.inSI;
  return u > 0 ? normal(onScale(q.value, q.unit), u) : exactly(onScale(q.value, q.unit));
}
