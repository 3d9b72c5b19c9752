import { type Columns, overColumns } from "./columns.ts";
import { type Dimension, DimensionError, plain, sameDimension } from "./dimension.ts";
import { parse } from "./expression.ts";
import { dimensionOf } from "./expressionDimension.ts";
import type { Quantity } from "./quantity.ts";
import { level, type Sloped, sloped } from "./slopes.ts";
import type { Unit } from "./unit.ts";

/** An equation with its readings: called on estimates it gives a worked quantity, `over` columns it gives a column. */
export type Formula<Symbols extends string> = {
  (inputs: { readonly [S in Symbols]: Quantity }): Quantity;
  /** The result in coherent SI for columns (or plain numbers) in coherent SI. */
  readonly over: (columns: { readonly [S in Symbols]: Float64Array | number }) => Float64Array;
  readonly text: string;
  readonly source: string;
};

/**
 * A quantity equation as its source prints it:
 * `formula("A_s = pi / 4 * d_s^2", { d_s: mm, A_s: mm2 }, "ISO 898-1:2013, 9.1.6.1")`.
 *
 * The text is the only statement of the calculation. The value, the uncertainty (first order, JCGM 100:2008,
 * 5.1.2), the check of dimensions, the printed working and the evaluation over samples are all read from it.
 */
export const formula: Equation = (text, units, source) => equation(text, units, source, quantityScale);

/**
 * A numerical value equation: its symbols are plain numbers on the scales given, as in
 * `T = 180 * P^(2/3) - 3.15 / sqrt(P)` with P in mm and T in µm. ISO 80000-1:2009, 5.
 */
export const numericalFormula: Equation = (text, units, source) => equation(text, units, source, numberScale);

type Equation = <const Result extends string, const Units extends Record<string, Unit>>(
  text: `${Result} = ${string}`,
  units: Units & Record<Result, Unit>,
  source: string,
) => Formula<Exclude<keyof Units & string, Result>>;

/** How a symbol's SI value enters the text: as it is, or as the number on the scale of its unit. */
type Scale = (unit: Unit) => { readonly factor: number; readonly zero: number; readonly dimension: Dimension };

const quantityScale: Scale = (unit) => ({ factor: 1, zero: 0, dimension: unit.dimension });
const numberScale: Scale = (unit) => ({ factor: unit.inSI, zero: unit.zero, dimension: plain });

function equation(text: string, units: Readonly<Record<string, Unit>>, source: string, scale: Scale) {
  const equals = text.indexOf("=");
  const symbol = text.slice(0, equals).trim();
  const right = parse(text.slice(equals + 1));
  const unit = unitOf(symbol);
  const result = scale(unit);
  /** What the right side names; null until the dimensions of the text have been found to fit together. */
  let symbols: readonly string[] | null = null;

  function unitOf(name: string): Unit {
    const known = units[name];
    if (!known) throw new Error(`"${text}" gives no unit for ${name}`);
    return known;
  }

  function estimate(inputs: Readonly<Record<string, Quantity>>): Quantity {
    const used = namedOf(inputs);
    // Inputs met along several paths add with their signs, so correlation needs no further care.
    const keys = Object.keys(Object.assign({}, ...Object.values(used).map(({ contributions }) => contributions)));
    const y = sloped(right, (name): Sloped => {
      const { value, contributions } = used[name] as Quantity;
      const { factor, zero } = scale(unitOf(name));
      const slopes = keys.some((key) => contributions[key])
        ? keys.map((key) => (contributions[key] ?? 0) / factor)
        : level;
      return { value: (value - zero) / factor, slopes };
    });
    if (!Number.isFinite(y.value)) throw new RangeError(`${text} has no value for what was given`);
    const scales = scale === numberScale ? { scales: units } : {};
    return {
      symbol,
      value: y.value * result.factor + result.zero,
      unit,
      contributions: Object.fromEntries(keys.map((key, i) => [key, result.factor * (y.slopes[i] ?? 0)])),
      origin: { type: "worked", formula: text, source, inputs: used, ...scales },
    };
  }

  /** What the text names of what is given: a caller may hand over more, a whole thread for two of its diameters. */
  function namedOf(inputs: Readonly<Record<string, Quantity>>): Readonly<Record<string, Quantity>> {
    const used: Record<string, Quantity> = {};
    const dimensionGiven = (name: string): Dimension => {
      const x = inputs[name];
      if (!x) throw new Error(`${text}: nothing given for ${name}`);
      const { dimension } = unitOf(name);
      if (!sameDimension(x.unit.dimension, dimension)) throw new DimensionError(`${name} in "${text}"`, dimension);
      used[name] = x;
      return scale(unitOf(name)).dimension;
    };
    if (symbols) symbols.forEach(dimensionGiven);
    else if (!sameDimension(dimensionOf(right, dimensionGiven), result.dimension))
      throw new DimensionError(text, result.dimension);
    symbols ??= Object.keys(used);
    return used;
  }

  function over(columns: Columns): Float64Array {
    const onScales: Record<string, Float64Array | number> = {};
    for (const [name, column] of Object.entries(columns)) {
      const { factor, zero } = scale(unitOf(name));
      const needed = factor !== 1 || zero !== 0;
      const convert = (x: number): number => (x - zero) / factor;
      onScales[name] = !needed ? column : typeof column === "number" ? convert(column) : column.map(convert);
    }
    const y = overColumns(right, onScales);
    const back = (x: number): number => x * result.factor + result.zero;
    return typeof y === "number"
      ? Float64Array.of(back(y))
      : result.factor === 1 && result.zero === 0
        ? y
        : y.map(back);
  }

  return Object.assign(estimate, { over, text, source });
}
