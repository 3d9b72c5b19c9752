import { type Dimension, DimensionError, plain, productDimension, sameDimension } from "./dimension.ts";
import type { Expression } from "./expression.ts";
import { sloped } from "./slopes.ts";

/** The dimension of an expression by those of its symbols. @throws DimensionError where they do not fit together. */
export function dimensionOf(expression: Expression, of: (symbol: string) => Dimension): Dimension {
  switch (expression.type) {
    case "number":
      return plain;
    case "symbol":
      return of(expression.name);
    case "sum":
      return demanded("a term of a sum", expression.right, at(expression.left));
    case "product":
      return productDimension(at(expression.left), at(expression.right), expression.exponent);
    case "power": {
      demanded("a power", expression.exponent, plain);
      const base = at(expression.base);
      return sameDimension(base, plain) ? plain : productDimension(plain, base, constant(expression.exponent));
    }
    case "call":
      return demanded(`the argument of ${expression.name}`, expression.argument, plain);
    default:
      return expression satisfies never;
  }

  function at(part: Expression): Dimension {
    return dimensionOf(part, of);
  }

  function demanded(where: string, part: Expression, expected: Dimension): Dimension {
    if (!sameDimension(at(part), expected)) throw new DimensionError(where, expected);
    return expected;
  }
}

/** A quantity with a dimension takes only a power without symbols: its dimension could not be told otherwise. */
const constant = (exponent: Expression): number =>
  sloped(exponent, () => {
    throw new DimensionError("the base of a varying power", plain);
  }).value;
