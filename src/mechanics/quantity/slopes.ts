import { type Dimension, DimensionError, plain, productDimension, sameDimension } from "./dimension.ts";
import { type Expression, functions } from "./expression.ts";

/** A value with its dimension and its slope in each symbol: forward-mode differentiation. */
export type Sloped = {
  readonly value: number;
  readonly dimension: Dimension;
  readonly gradient: Readonly<Record<string, number>>;
};

/** The value of an expression, its dimension and its slopes. @throws DimensionError where dimensions do not fit. */
export function sloped(expression: Expression, lookup: (symbol: string) => Sloped): Sloped {
  const at = (it: Expression): Sloped => sloped(it, lookup);
  switch (expression.type) {
    case "number":
      return { value: expression.value, dimension: plain, gradient: {} };
    case "symbol":
      return lookup(expression.name);
    case "sum":
      return added(at(expression.left), expression.sign, at(expression.right));
    case "product":
      return multiplied(at(expression.left), expression.exponent, at(expression.right));
    case "power":
      return raised(at(expression.base), at(expression.exponent));
    case "call":
      return applied(functions[expression.name], expression.name, at(expression.argument));
    default:
      return expression satisfies never;
  }
}

function added(x: Sloped, sign: 1 | -1, y: Sloped): Sloped {
  if (!sameDimension(x.dimension, y.dimension)) throw new DimensionError("a term of a sum", "the term before it");
  return { value: x.value + sign * y.value, dimension: x.dimension, gradient: blend(1, x, sign, y) };
}

function multiplied(x: Sloped, exponent: 1 | -1, y: Sloped): Sloped {
  const factor = exponent === 1 ? y.value : 1 / y.value;
  const slope = exponent === 1 ? x.value : -x.value / y.value ** 2;
  return {
    value: x.value * factor,
    dimension: productDimension(x.dimension, y.dimension, exponent),
    gradient: blend(factor, x, slope, y),
  };
}

/** A quantity with a dimension takes only a power that carries no slope: its dimension could not be told otherwise. */
function raised(x: Sloped, n: Sloped): Sloped {
  const varies = Object.keys(n.gradient).length > 0;
  if (!sameDimension(n.dimension, plain)) throw new DimensionError("a power", "");
  if (varies && !sameDimension(x.dimension, plain)) throw new DimensionError("the base of a varying power", "");
  const value = x.value ** n.value;
  const slope = n.value * x.value ** (n.value - 1);
  return {
    value,
    dimension: productDimension(plain, x.dimension, n.value),
    gradient: varies ? blend(slope, x, value * Math.log(x.value), n) : blend(slope, x, 0, n),
  };
}

function applied({ f, slope }: { f: (x: number) => number; slope: (x: number) => number }, name: string, x: Sloped) {
  if (!sameDimension(x.dimension, plain)) throw new DimensionError(`the argument of ${name}`, "");
  return { value: f(x.value), dimension: plain, gradient: blend(slope(x.value), x, 0, x) };
}

function blend(a: number, x: Sloped, b: number, y: Sloped): Record<string, number> {
  const gradient: Record<string, number> = {};
  for (const [symbol, slope] of Object.entries(x.gradient)) gradient[symbol] = a * slope;
  if (b === 0) return gradient;
  for (const [symbol, slope] of Object.entries(y.gradient)) gradient[symbol] = (gradient[symbol] ?? 0) + b * slope;
  return gradient;
}
