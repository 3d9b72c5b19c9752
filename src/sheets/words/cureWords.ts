import type { CureClocks, CureNote } from "../../mechanics/cure/clocks.ts";
import type { CureTime } from "../../mechanics/cure/front.ts";
import type { CureByFit, CureInThread } from "../../mechanics/cure/inThread.ts";
import type { LabelCheck } from "../../mechanics/cure/label.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, h, min } from "../../mechanics/quantity/unit.ts";
import type { Source } from "../../mechanics/tables/source.ts";
import {
  type BeadInWords,
  beadLines,
  type OnThreadInWords,
  onThreadLine,
  type PasteInWords,
  pasteLine,
} from "./beadWords.ts";
import { earlyFigure, lateFigure } from "./distanceFigures.ts";
import { forbidden, labelLines } from "./labelWords.ts";

/** All that is said of a joint sealed with silicone; null where nobody asked. */
export type CureFound = {
  readonly clocks: CureClocks;
  readonly closed: Date | null;
  readonly inside: CureByFit;
  readonly bead: BeadInWords | null;
  readonly onThread: OnThreadInWords | null;
  readonly paste: PasteInWords | null;
  readonly label: readonly LabelCheck[];
  readonly heat: {
    readonly hottest: string;
    readonly verdict: "bears it" | "too hot";
    readonly room_K: number;
    readonly source: Source;
  } | null;
};

type AsTyped = { readonly useBy?: string };

/** The two clocks, why they stand where they do, and the plain truth about the inside of a thread. */
export function cureLines(it: CureFound, { useBy }: AsTyped): readonly string[] {
  const { clocks, closed, inside, bead, onThread, paste, label, heat } = it;
  const tube = { checks: label, useBy: useBy ?? null, silicone: true };
  return [
    ...forbidden(tube),
    ...(heat?.verdict === "too hot" ? [`Not silicone: ${heat.hottest} is more than it bears.`] : []),
    ...clockSentences(clocks, closed),
    ...(bead ? beadLines(bead) : []),
    ...(onThread ? [onThreadLine(onThread)] : []),
    "",
    "Why",
    ...cureWhy(clocks, inside).map((line) => `  ${line}`),
    ...(paste ? [`  ${pasteLine(paste)}`] : []),
    ...(heat?.verdict === "bears it" ? [`  Silicone bears ${heat.hottest}.`] : []),
    ...cureNotes(clocks).map((line) => `  ${line}`),
    "",
    "Ask the label",
    ...labelLines(tube).map((line) => `  ${line}`),
    "  Does it say a longer time? Then the longer one counts (--label).",
    "",
    "Mind",
    "  Opened again with scraper and solvent.",
    "  An estimate to help a competent person; the maker's sheet of the sealant comes first.",
  ];
}

/** The two clocks, one sentence each. */
const clockSentences = ({ mayBeSplashed, curedThrough }: CureClocks, closed: Date | null): readonly string[] => [
  `May be splashed: ${clockText(mayBeSplashed.time, closed)}.`,
  `Cured through: ${clockText(curedThrough.likely, closed)} (${span(curedThrough)}).`,
];

/** Why the clocks stand where they do, and the plain truth about the inside of a thread. */
export function cureWhy({ mayBeSplashed, slowness }: CureClocks, inside: CureByFit): readonly string[] {
  const slower = slowness.value >= 1 ? "times as slow as" : "times the time of";
  return [
    becauseWords[mayBeSplashed.because],
    `This air is ${slowness.value.toPrecision(2)} ${slower} the 23 °C and 50 % that labels speak of.`,
    `Inside a thread it stays soft: ${inside.depth_mm} mm deep takes ${span(inside.straightGap.time)} in a straight gap and ${span(inside.slack.time)} in a slack thread.`,
    `Where flank lies on flank it ${insideWords[inside.flankOnFlank.verdict]}. Do not count on it for strength.`,
  ];
}

export const cureNotes = ({ notes }: CureClocks): readonly string[] => notes.map((note) => noteWords[note]);

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

const insideWords: Readonly<Record<CureInThread["verdict"], string>> = {
  days: "takes days",
  weeks: "takes weeks",
  "practically never": "practically never cures",
};

/** From the soonest to the latest. */
export const span = ({ least, most }: CureTime): string =>
  valueIn(d, most) < 4
    ? `${Math.round(valueIn(h, least))} to ${Math.ceil(valueIn(h, most))} h`
    : `${earlyFigure(valueIn(d, least))} to ${lateFigure(valueIn(d, most))} days`;

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
