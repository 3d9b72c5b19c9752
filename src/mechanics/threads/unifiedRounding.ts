import type { Quantity } from "../quantity/quantity.ts";
import { inSI, onScale, type Unit } from "../quantity/unit.ts";

/**
 * An exact size rounded to `decimals` on the scale of `unit`, half up, as a worked quantity named `symbol`.
 * Inch and pipe standards round as they go, and their tables follow only if the same steps are rounded.
 */
export function roundedTo(symbol: string, x: Quantity, decimals: number, unit: Unit, source: string): Quantity {
  // What SI and back added in the last digits is taken off first, so that ties stay ties.
  const onUnit = Number(onScale(x.value, unit).toPrecision(12));
  const value = Math.round(Number(`${onUnit}e${decimals}`)) / 10 ** decimals;
  const formula = `${symbol} = round(${x.symbol}, ${decimals})`;
  return {
    symbol,
    value: inSI(value, unit),
    unit,
    contributions: {},
    origin: { type: "worked", formula, source, inputs: { [x.symbol]: x } },
  };
}
