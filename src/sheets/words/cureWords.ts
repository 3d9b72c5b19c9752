import type { CureClocks, CureNote } from "../../mechanics/cure/clocks.ts";
import type { CureTime } from "../../mechanics/cure/front.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, h, min } from "../../mechanics/quantity/unit.ts";

/** The two clocks, why they stand where they do, and the plain truth about the inside of a thread. */
export function cureLines(clocks: CureClocks, closed: Date | null, inside10mm: CureTime): readonly string[] {
  const { mayBeSplashed, curedThrough, slowness, notes } = clocks;
  const slower = slowness.value >= 1 ? "times as slow as" : "times the time of";
  return [
    `May be splashed: ${clockText(mayBeSplashed.time, closed)}.`,
    `Cured through: ${clockText(curedThrough.likely, closed)} (${span(curedThrough)}).`,
    "",
    "Why",
    `  ${becauseWords[mayBeSplashed.because]}`,
    `  This air is ${slowness.value.toPrecision(2)} ${slower} the 23 °C and 50 % that labels speak of.`,
    `  Inside a thread it stays soft: 10 mm deep takes ${span(inside10mm)} in a straight gap, longer in turns. Do not count on it for strength.`,
    ...notes.map((it) => `  ${noteWords[it]}`),
    "",
    "Ask the label",
    "  Does it name this fluid? Gear oil softens ordinary silicone.",
    "  Is it in date? Does it say a longer time? Then the longer one counts (--label).",
    "",
    "Mind",
    "  An estimate to help a competent person; the maker's sheet of the sealant comes first.",
  ];
}

/** "in 3 h 10 min", or the clock time where it is known when the joint was closed; rounded up, never down. */
export function clockText(time: Quantity, closed: Date | null): string {
  const minutes = Math.ceil(valueIn(min, time) / 5) * 5;
  if (closed) {
    const [day = "", clock = ""] = new Date(closed.getTime() + 60_000 * minutes).toISOString().slice(0, 16).split("T");
    return day === closed.toISOString().slice(0, 10) ? clock : `${day} ${clock}`;
  }
  if (minutes < 600)
    return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
  return `${Math.ceil(minutes / 60)} h`;
}

const span = ({ least, most }: CureTime): string =>
  valueIn(d, most) < 4
    ? `${Math.round(valueIn(h, least))} to ${Math.ceil(valueIn(h, most))} h`
    : `${Math.round(valueIn(d, least))} to ${Math.ceil(valueIn(d, most))} days`;

const becauseWords: Readonly<Record<CureClocks["mayBeSplashed"]["because"], string>> = {
  skin: "Splash waits for a skin of half a millimetre.",
  "least time": "Splash waits at least thirty minutes of reference air (common practice, no source).",
  label: "Splash waits for the time on the label, which is the longest.",
};

const noteWords: Readonly<Record<CureNote, string>> = {
  "colder than the chemistry likes": "Colder than the chemistry likes: it may take longer than reckoned.",
  "dry air: heating the bay slows it": "Dry air: heating the bay makes it slower, not faster.",
  "thirty minutes is no cure": "Thirty minutes is a skin, not a cure.",
};
