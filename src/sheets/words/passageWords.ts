import type { PressureVerdict } from "../../mechanics/fluid/breather.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { kPa, ml_d, mm } from "../../mechanics/quantity/unit.ts";

/** What passes in a day under one pressure: through the thread and past the seat alone, and through what there is in a row. */
export type FlowSum = {
  readonly thread: Quantity | null;
  readonly seat: Quantity | null;
  readonly total: Quantity;
  /** For the least and the greatest clearance of the thread; null where there is no thread. */
  readonly range: { readonly low: Quantity; readonly high: Quantity } | null;
};

/** The pressure behind a blocked breather. */
type ClosedInWords = { readonly pressure: Quantity; readonly verdict: PressureVerdict; readonly water: boolean };

export type PassageInWords = {
  readonly thread: string | null;
  readonly clearance: {
    readonly least: Quantity;
    readonly mean: Quantity;
    readonly most: Quantity;
    readonly known: "given" | "by its classes";
  } | null;
  /** Whether a score across the seat was given. */
  readonly scored: boolean;
  readonly oil: string;
  readonly head: string | null;
  readonly pressure: string | null;
  readonly sums: { readonly open: FlowSum | null; readonly blocked: FlowSum | null };
  readonly closed: ClosedInWords | null;
  /** The flow with the breather blocked over that with it free; null where one of them is not told. */
  readonly times: number | null;
  readonly heldBack: { readonly height: Quantity; readonly more: boolean } | null;
  readonly tooDoubtful: boolean;
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
};

/** What oil gets through a thread or past a seat, what a blocked breather makes of it, and what that rests on. */
export function passageLines(it: PassageInWords): readonly string[] {
  const { sums, closed, times, oil } = it;
  const free = closed ? " with the breather free" : "";
  return [
    ...(sums.open
      ? [`${capital(flowText(sums.open))} a day${free}, as long as the oil is at ${oil} and ${pushText(it)}.`]
      : []),
    ...(closed && sums.blocked ? [blockedLine(sums.blocked, closed, times, oil)] : []),
    ...apartLine(sums.open ?? sums.blocked),
    "",
    "Why",
    ...reasonLines(it).map((line) => `  ${line}`),
    ...it.assumed.map(({ reading, value, source }) => `  Assumed: ${reading} ${value}; ${source}.`),
    "",
    "Mind",
    ...(closed ? [`  ${breatherLine}`] : []),
    "  Reckoned from plain gaps, to tell what matters: count the drops to know what it loses.",
  ];
}

/** What builds up in a closed case, what it does to seals, and how many times a head it is. */
export function closedLines(
  closed: ClosedInWords,
  oil: string,
  closedAt: string,
  against: { readonly times: number; readonly head: string } | null,
): readonly string[] {
  const p = valueIn(kPa, closed.pressure);
  return [
    `${pressureText(closed)} ${p < 0 ? "below" : "over"} the outside: closed at ${closedAt}, brought to ${oil}${closed.water ? ", with free water in it" : ""}.`,
    `${verdictWords[closed.verdict]}`,
    ...(against ? [`It makes a leak under ${against.head} of oil about ${two(against.times)} times as large.`] : []),
    "",
    "Why",
    "  Air and oil both grow in the heat, and the air has nowhere to go.",
    ...(closed.water ? [] : ["  Free water in the oil adds up to 70 kPa at 90 °C (--water)."]),
    "",
    "Mind",
    `  ${breatherLine}`,
    "  Open the plug slowly, away from your face: a hiss says that it was blocked. Hot oil scalds.",
  ];
}

const breatherLine = "Free the breather first: no seal is to blame before.";

function blockedLine(sum: FlowSum, closed: ClosedInWords, times: number | null, oil: string): string {
  const more = times === null ? "" : `, about ${two(times)} times as much`;
  return `With the breather blocked ${pressureText(closed)} build up at ${oil}: ${flowText(sum)} a day${more}.`;
}

function apartLine(sum: FlowSum | null): readonly string[] {
  if (!sum?.thread || !sum.seat) return [];
  const [thread, seat] = [valueIn(ml_d, sum.thread), valueIn(ml_d, sum.seat)];
  const where = thread < seat ? "thread" : "seat";
  return [
    `The ${where} holds most of it back: alone the thread lets about ${stepped(thread, Math.round)} ml a day through, the seat ${stepped(seat, Math.round)}.`,
  ];
}

function reasonLines({
  clearance,
  scored,
  heldBack,
  tooDoubtful,
  sums,
  oil,
  thread,
}: PassageInWords): readonly string[] {
  return [
    ...(clearance && thread
      ? [
          clearance.known === "given"
            ? `Clearance of ${thread} ${hundredths(clearance.mean)} mm as measured, give or take ${hundredths2(clearance)}.`
            : `Clearance of ${thread} ${hundredths(clearance.least)} to ${hundredths(clearance.most)} mm on the pitch diameters, by its classes.`,
        ]
      : []),
    "It goes with the third power of a gap: twice as wide lets 8 times as much through.",
    ...(scored ? ["A score across the seat goes with the fourth power of its width."] : []),
    ...(tooDoubtful ? ["So small a clearance is not known well enough: take the range, not the middle."] : []),
    ...(heldBack?.more && sums.open
      ? [
          `Dry outside, a gap this fine holds ${two(valueIn(mm, heldBack.height))} mm of oil back: it weeps where oil splashes or crept, and hardly starts by itself.`,
        ]
      : []),
    ...(sums.open ? [`Only the hours at ${oil} count at this rate: cold oil is many times as thick.`] : []),
  ];
}

function pushText({ head, pressure }: PassageInWords): string {
  const parts = [
    ...(head ? [`${head} of it stand above the joint`] : []),
    ...(pressure ? [`${pressure} push${head ? " besides" : ""}`] : []),
  ];
  return parts.join(" and ");
}

/** "About 0.3 ml (0.2 to 0.8 by the clearance)": one digit, for gaps and labels earn no more. */
function flowText({ total, range }: FlowSum): string {
  const [low, high] = range ? [valueIn(ml_d, range.low), valueIn(ml_d, range.high)] : [0, 0];
  const span = range ? ` (${stepped(low, Math.floor)} to ${stepped(high, Math.ceil)} by the clearance)` : "";
  return `about ${stepped(valueIn(ml_d, total), Math.round)} ml${span}`;
}

function stepped(figure: number, round: (x: number) => number): string {
  const step = 10 ** Math.floor(Math.log10(figure));
  return String(Number((step * round(figure / step)).toPrecision(1)));
}

const pressureText = ({ pressure }: ClosedInWords): string => `${two(Math.abs(valueIn(kPa, pressure)))} kPa`;
const two = (figure: number): string => String(Number(figure.toPrecision(2)));
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const hundredths = (it: Quantity): string => valueIn(mm, it).toFixed(2);
const hundredths2 = ({ mean, most }: NonNullable<PassageInWords["clearance"]>): string =>
  (valueIn(mm, most) - valueIn(mm, mean)).toFixed(2);

const verdictWords: Readonly<Record<PressureVerdict, string>> = {
  "bears it": "Shaft seals bear that.",
  "above what a seal on a fast shaft bears":
    "More than the seal of a fast shaft bears (20 kPa; common practice, no source).",
  "above what a seal on a slow shaft bears":
    "More than any shaft seal is made for (50 kPa; common practice, no source).",
  "harms seals": "It damages shaft seals (above 103 kPa).",
  "draws water and paste inwards": "It draws water in past the seals, and fresh sealant inwards.",
};
