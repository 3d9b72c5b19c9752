import { type Columns, overColumns } from "./columns.ts";
import { type Dimension, DimensionError, plain, sameDimension } from "./dimension.ts";
import { parse } from "./expression.ts";
import type { Quantity } from "./quantity.ts";
import { type Sloped, sloped } from "./slopes.ts";
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

  function unitOf(name: string): Unit {
    const known = units[name];
    if (!known) throw new Error(`"${text}" gives no unit for ${name}`);
    return known;
  }

  function estimate(inputs: Readonly<Record<string, Quantity>>): Quantity {
    const y = sloped(right, (name): Sloped => {
      const x = inputs[name];
      if (!x) throw new Error(`${text}: nothing given for ${name}`);
      demand(`${name} in "${text}"`, x.unit.dimension, unitOf(name).dimension);
      const { factor, zero, dimension } = scale(unitOf(name));
      return { value: (x.value - zero) / factor, dimension, gradient: { [name]: 1 / factor } };
    });
    demand(text, y.dimension, result.dimension);
    if (!Number.isFinite(y.value)) throw new RangeError(`${text} has no value for what was given`);
    // A caller may hand over more than the text names, a whole thread for two of its diameters.
    const used = Object.fromEntries(Object.keys(y.gradient).map((name) => [name, inputs[name] as Quantity]));
    const scales = scale === numberScale ? { scales: units } : {};
    return {
      symbol,
      value: y.value * result.factor + result.zero,
      unit,
      contributions: propagated(y.gradient, used, result.factor),
      origin: { type: "worked", formula: text, source, inputs: used, ...scales },
    };
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

function demand(where: string, actual: Dimension, expected: Dimension): void {
  if (!sameDimension(actual, expected)) throw new DimensionError(where, `[${expected.join(", ")}]`);
}

/** Inputs met along several paths add with their signs, so correlation needs no further care. */
function propagated(
  gradient: Readonly<Record<string, number>>,
  inputs: Readonly<Record<string, Quantity>>,
  factor: number,
): Record<string, number> {
  const contributions: Record<string, number> = {};
  for (const [name, slope] of Object.entries(gradient))
    for (const [input, u] of Object.entries(inputs[name]?.contributions ?? {}))
      contributions[input] = (contributions[input] ?? 0) + factor * slope * u;
  return contributions;
}
