import { type Expression, functions } from "./expression.ts";

/** A value with its slopes in some inputs, in one order throughout; `level` where every one is 0. */
export type Sloped = { readonly value: number; readonly slopes: readonly number[] };

export const level: readonly number[] = [];

/** The value of an expression and its slopes by forward-mode differentiation; dimensions are `dimensionOf`'s to check. */
export function sloped(expression: Expression, lookup: (symbol: string) => Sloped): Sloped {
  switch (expression.type) {
    case "number":
      return { value: expression.value, slopes: level };
    case "symbol":
      return lookup(expression.name);
    case "sum": {
      const [x, y] = [sloped(expression.left, lookup), sloped(expression.right, lookup)];
      return { value: x.value + expression.sign * y.value, slopes: blend(1, x, expression.sign, y) };
    }
    case "product": {
      const [x, y] = [sloped(expression.left, lookup), sloped(expression.right, lookup)];
      const factor = expression.exponent === 1 ? y.value : 1 / y.value;
      const slope = expression.exponent === 1 ? x.value : -x.value / y.value ** 2;
      return { value: x.value * factor, slopes: blend(factor, x, slope, y) };
    }
    case "power": {
      const [x, n] = [sloped(expression.base, lookup), sloped(expression.exponent, lookup)];
      const value = x.value ** n.value;
      return { value, slopes: blend(n.value * x.value ** (n.value - 1), x, value * Math.log(x.value), n) };
    }
    case "call": {
      const x = sloped(expression.argument, lookup);
      const { f, slope } = functions[expression.name];
      return { value: f(x.value), slopes: x.slopes.map((it) => slope(x.value) * it) };
    }
    default:
      return expression satisfies never;
  }
}

function blend(a: number, { slopes: x }: Sloped, b: number, { slopes: y }: Sloped): readonly number[] {
  if (y.length === 0) return x.length === 0 ? level : x.map((slope) => a * slope);
  return x.length === 0 ? y.map((slope) => b * slope) : x.map((slope, i) => a * slope + b * (y[i] as number));
}
