import type { CureClocks } from "../../../mechanics/cure/clocks.ts";
import type { Quantity } from "../../../mechanics/quantity/quantity.ts";
import { valueIn } from "../../../mechanics/quantity/quantity.ts";
import { h } from "../../../mechanics/quantity/unit.ts";
import type { Box, Label } from "../lettering.ts";
import { torqueAxis } from "../window/torqueAxis.ts";

/** Where everything of a cure clock lies; one unit is one pixel of a telephone 360 wide. */
export type CureClockLayout = {
  readonly letter: number;
  readonly view: Box;
  readonly bar: Box;
  /** Where the wait for splash ends, and where the bead is cured through: likely, soonest and latest. */
  readonly splash: number;
  readonly through: number;
  readonly soonest: number;
  readonly latest: number;
  readonly ticks: readonly Label[];
  readonly labels: readonly Label[];
  readonly zones: readonly Label[];
};

const width = 360;
const letter = 15;
const margin = 14;

/** The clock of a joint closed at `closed`, or at nought where nobody says when. `timeText` writes a clock time. */
export function cureClockLayout(
  clocks: CureClocks,
  caption: string,
  splashText: string,
  throughText: string,
): CureClockLayout {
  const hours = (time: Quantity): number => valueIn(h, time);
  const { mayBeSplashed, curedThrough } = clocks;
  const most = hours(curedThrough.most);
  const axis = torqueAxis([most, hours(mayBeSplashed.time)], margin, width - margin, 2.6 * letter);
  const bar = { x: margin, y: 8.4 * letter, width: width - 2 * margin, height: 2.6 * letter };
  const [splash, through] = [axis.at(hours(mayBeSplashed.time)), axis.at(hours(curedThrough.likely))];
  const label = (
    text: string,
    x: number,
    y: number,
    size = letter,
    bold = false,
    anchor: Label["anchor"] = "start",
  ): Label => ({
    text,
    x,
    y,
    size,
    anchor,
    bold,
  });
  const below = bar.y + bar.height;
  return {
    letter,
    view: { x: 0, y: 0, width, height: below + 4.4 * letter },
    bar,
    splash,
    through,
    soonest: axis.at(hours(curedThrough.least)),
    latest: axis.at(most),
    ticks: axis.ticks_Nm.map((hour) =>
      label(String(hour), axis.at(hour), below + 1.4 * letter, letter, false, "middle"),
    ),
    labels: [
      label(caption, margin, 1.3 * letter, 1.1 * letter, true),
      label("may be splashed", margin, 3 * letter),
      label(splashText, margin, 4.5 * letter, 1.5 * letter, true),
      label("cured through", width - margin, 3 * letter, letter, false, "end"),
      label(throughText, width - margin, 4.5 * letter, 1.5 * letter, true, "end"),
      label("hours since it was closed", margin, below + 3.2 * letter),
    ],
    zones: zoneNames(splash, through, axis.at(0), bar, label),
  };
}

type Lettered = (text: string, x: number, y: number, size?: number, bold?: boolean, anchor?: Label["anchor"]) => Label;

/** The name of a zone stands in it where it has room. */
function zoneNames(splash: number, through: number, start: number, bar: Box, label: Lettered): readonly Label[] {
  const middle = bar.y + bar.height / 2 + 0.35 * letter;
  const zones = [
    { text: "wet", from: start, to: splash },
    { text: "a skin only", from: splash, to: through },
    { text: "seals", from: through, to: bar.x + bar.width },
  ];
  return zones
    .filter(({ text, from, to }) => to - from > text.length * 0.72 * letter)
    .map(({ text, from, to }) => label(text, (from + to) / 2, middle, letter, false, "middle"));
}
