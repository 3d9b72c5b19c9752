import type { HoldVerdict } from "../../mechanics/fluid/pressureHold.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { N } from "../../mechanics/quantity/unit.ts";

/** Whether it held, what temperature did to it, and what to mind. */
export function pressureLines(
  { verdict, loss, perMinute }: HoldVerdict,
  byTemperature: Quantity,
  force: Quantity | null,
  temperaturesKnown: boolean,
): readonly string[] {
  return [
    `${verdictWords[verdict]} ${loss.value > 0 ? `${inBar(loss)} bar` : "Nothing"} went, temperature taken out.`,
    "",
    "Why",
    temperaturesKnown
      ? `  Temperature alone moves this gauge by ${inBar(byTemperature)} bar.`
      : "  Nobody gave the temperatures: 1 °C is about 0.34 % of the absolute pressure.",
    ...(loss.value > 0 ? [`  That is ${inBar(perMinute)} bar a minute.`] : []),
    ...(force ? [`  It pushes on the plug with ${valueIn(N, force).toPrecision(2)} N.`] : []),
    "",
    "Mind",
    "  Shaft seals are damaged from about 1 bar: limit the pressure at the pump.",
    "  With water on the other side only pressure and vacuum together count as a passed test.",
    "  An estimate to help a competent person; the maker's test and its figures come first.",
  ];
}

const verdictWords: Readonly<Record<HoldVerdict["verdict"], string>> = {
  holds: "Holds.",
  leaks: "Leaks.",
  "cannot tell": "Cannot tell yet: let it stand longer, or read a finer gauge.",
};

/** Thousandths of a bar, finer than a gauge is read, because temperature moves it by as little. */
const inBar = ({ value, unit }: Quantity): string => (value / unit.inSI).toFixed(3);
