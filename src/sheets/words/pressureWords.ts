import type { HoldVerdict } from "../../mechanics/fluid/pressureHold.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { N } from "../../mechanics/quantity/unit.ts";

/** A hold with what temperature did to it; null where it was not asked for. */
export type HoldFound = {
  readonly hold: HoldVerdict;
  readonly byTemperature: Quantity;
  readonly force: Quantity | null;
  readonly temperaturesKnown: boolean;
  /** A vacuum held besides, and what the two together have passed. */
  readonly vacuum: HoldVerdict | null;
  readonly waterTest: "passed" | "failed" | "cannot tell" | "not done" | null;
};

/** Whether it held, what temperature did to it, and what to mind. */
export function pressureLines({
  hold,
  byTemperature,
  force,
  temperaturesKnown,
  ...rest
}: HoldFound): readonly string[] {
  const { vacuum, waterTest } = rest;
  return [
    ...(waterTest ? [waterWords[waterTest]] : []),
    `${vacuum ? "Pressure: " : ""}${lossText(hold)}${temperaturesKnown ? ", temperature taken out" : ""}.`,
    ...(vacuum ? [`Vacuum: ${lossText(vacuum)}.`] : []),
    "",
    "Why",
    temperaturesKnown
      ? `  Temperature alone moves this gauge by ${inBar(byTemperature)} bar.`
      : "  Nobody gave the temperatures, so nothing is taken out: 1 °C is about 0.34 % of the absolute pressure.",
    ...(isTold(hold.loss) ? [`  That is ${rateText(hold.perMinute)} bar a minute.`] : []),
    ...(force ? [`  ${forceText(force)}`] : []),
    "",
    "Mind",
    "  Shaft seals are damaged from about 1 bar: limit the pressure at the pump.",
    ...(waterTest
      ? []
      : ["  With water on the other side only pressure and vacuum together count as a passed test (--vacuum-start)."]),
    "  An estimate to help a competent person; the maker's test and its figures come first.",
  ];
}

const lossText = ({ verdict, loss }: HoldVerdict): string =>
  `${verdictWords[verdict]} ${isTold(loss) ? `${lossFigure(loss)} bar` : "Nothing that the gauge tells"} went`;

/** A loss within a third of its own doubt is none that could be told. */
const isTold = (loss: Quantity): boolean => loss.value > standardUncertainty(loss) / 3;

const forceText = (force: Quantity): string =>
  force.value < 0
    ? `It pulls the plug inward with ${Math.abs(valueIn(N, force)).toPrecision(2)} N.`
    : `It pushes on the plug with ${valueIn(N, force).toPrecision(2)} N.`;

const waterWords: Readonly<Record<NonNullable<HoldFound["waterTest"]>, string>> = {
  passed: "Passed for water on the other side: pressure and vacuum both held.",
  failed: "Failed for water on the other side.",
  "cannot tell": "For water on the other side it cannot be told yet.",
  "not done": "Not done for water on the other side.",
};

const verdictWords: Readonly<Record<HoldVerdict["verdict"], string>> = {
  holds: "Holds.",
  leaks: "Leaks.",
  "cannot tell": "Cannot tell yet: let it stand longer, or read a finer gauge.",
};

/** Hundredths where the gauge tells no more, thousandths where it does. */
const lossFigure = (loss: Quantity): string =>
  (loss.value / loss.unit.inSI).toFixed(standardUncertainty(loss) / loss.unit.inSI > 0.004 ? 2 : 3);

const rateText = ({ value, unit }: Quantity): string => String(Number((value / unit.inSI).toPrecision(2)));

/** Thousandths of a bar, finer than a gauge is read, because temperature moves it by as little. */
const inBar = ({ value, unit }: Quantity): string => (value / unit.inSI).toFixed(3);
