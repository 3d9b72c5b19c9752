import type { DropSize } from "../../mechanics/fluid/drop.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { min, ml } from "../../mechanics/quantity/unit.ts";

/** "7 drops in 10 min; a drop is 0.02 to 0.05 ml." */
export function countedFrom(drops: number, time: Quantity, { least, most }: DropSize): string {
  const count = `${drops === 0 ? "no drop" : drops === 1 ? "1 drop" : `${drops} drops`} in ${Number(valueIn(min, time).toPrecision(3))} min`;
  const size = (it: Quantity): string => valueIn(ml, it).toFixed(2);
  return `${count.replace(/^n/, "N")}; a drop is ${size(least)} to ${size(most)} ml.`;
}
