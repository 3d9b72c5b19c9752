import { type Expression, functions } from "./expression.ts";

/** Draws or quadrature nodes of each symbol, in coherent SI; a plain number stands for a column of itself. */
export type Columns = Readonly<Record<string, Float64Array | number>>;

/**
 * An expression over whole columns, node by node, without `eval` (a strict Content-Security-Policy forbids it).
 * Dimensions are not checked here: the same formula checks them on its estimates.
 */
export function overColumns(expression: Expression, columns: Columns): Float64Array | number {
  const at = (it: Expression): Float64Array | number => overColumns(it, columns);
  switch (expression.type) {
    case "number":
      return expression.value;
    case "symbol": {
      const column = columns[expression.name];
      if (column === undefined) throw new Error(`no column is given for ${expression.name}`);
      return column;
    }
    case "sum": {
      const { sign } = expression;
      return zipped(at(expression.left), at(expression.right), (x, y) => x + sign * y);
    }
    case "product":
      return expression.exponent === 1
        ? zipped(at(expression.left), at(expression.right), (x, y) => x * y)
        : zipped(at(expression.left), at(expression.right), (x, y) => x / y);
    case "power":
      return zipped(at(expression.base), at(expression.exponent), Math.pow);
    case "call":
      return zipped(at(expression.argument), 0, functions[expression.name].f);
    default:
      return expression satisfies never;
  }
}

function zipped(x: Float64Array | number, y: Float64Array | number, f: (x: number, y: number) => number) {
  if (typeof x === "number") return typeof y === "number" ? f(x, y) : y.map((value) => f(x, value));
  if (typeof y === "number") return x.map((value) => f(value, y));
  if (x.length !== y.length) throw new RangeError(`columns of ${x.length} and ${y.length} rows do not go together`);
  return x.map((value, i) => f(value, y[i] as number));
}
