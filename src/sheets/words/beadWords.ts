import type { BeadSpread } from "../../mechanics/cure/bead.ts";
import type { BlowOut, pasteHolds } from "../../mechanics/cure/pasteHold.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { kPa, ml } from "../../mechanics/quantity/unit.ts";
import { capital } from "./firstLetter.ts";

/** A bead as it was laid; `spread` null where nobody said on which seat, `range` null where the film was given. */
export type BeadInWords = { readonly volume: Quantity } & (
  | { readonly spread: null; readonly range?: never }
  | { readonly spread: BeadSpread; readonly range: { readonly low: BeadSpread; readonly high: BeadSpread } | null }
);

/** Sealant put on a thread: what its clearance holds, and what is pushed into the case. */
export type OnThreadInWords = { readonly thread: string; readonly holds: Quantity; readonly squeezed: Quantity };

/** What uncured paste holds in its gap, against a pressure where one was given. */
export type PasteInWords = {
  readonly gap: string;
  readonly holds: BlowOut;
  readonly against: { readonly pressure: string; readonly verdict: ReturnType<typeof pasteHolds> } | null;
};

/** Where a bead goes when the head presses it flat. */
export function beadLines({ volume, spread, range }: BeadInWords): readonly string[] {
  const laid = `The bead is ${twoDigits(valueIn(ml, volume))} ml.`;
  if (!spread) return [laid];
  const share = `about ${Math.round(100 * spread.inward.value)} %`;
  const span = range ? ` (${percents(range.low, range.high)} by the film left under the head)` : "";
  const inward =
    spread.inward.value > 0 || (range && range.high.inward.value > 0)
      ? `${share}${span} goes inward, into the case.`
      : "None of it reaches the inner edge.";
  return [`${laid} ${capital(inward)}`, adviceWords[spread.advice]];
}

/** What a thread cannot hold goes into the case. */
export function onThreadLine({ thread, holds, squeezed }: OnThreadInWords): string {
  const room = `The clearance of ${thread} holds about ${oneDigit(valueIn(ml, holds))} ml`;
  return squeezed.value > 0
    ? `${room}: about ${oneDigit(valueIn(ml, squeezed))} ml of what is on the thread goes into the case. None on the first inner turn.`
    : `${room}: it holds what is on the thread. None on the first inner turn all the same.`;
}

/** What holds before anything is cured. */
export function pasteLine({ gap, holds, against }: PasteInWords): string {
  const ends = `${twoDigits(valueIn(kPa, holds.least))} to ${twoDigits(valueIn(kPa, holds.most))} kPa`;
  const until = `Until it is cured the paste in a gap of ${gap} holds ${ends}, no more`;
  return against ? `${until}: ${pasteWords[against.verdict]} ${against.pressure}.` : `${until}.`;
}

const percents = (a: BeadSpread, b: BeadSpread): string =>
  [a, b].map((it) => Math.round(100 * it.inward.value)).join(" to ");
const twoDigits = (figure: number): string => String(Number(figure.toPrecision(2)));
const oneDigit = (figure: number): string => String(Number(figure.toPrecision(1)));

const adviceWords: Readonly<Record<BeadSpread["advice"], string>> = {
  "as it should be": "It covers the seat and stays out of the case: as it should be.",
  "thinner, or farther out": "Lay it thinner, or farther out: what goes inward may come loose in the oil.",
  "covers too little": "It covers only part of the seat: lay it a little thicker.",
  "not on the seat": "That circle is not on the seat: lay it between the inner and the outer edge.",
};
const pasteWords: Readonly<Record<NonNullable<PasteInWords["against"]>["verdict"], string>> = {
  holds: "enough against",
  "may hold": "it may be blown out by",
  "is blown out": "it is blown out by",
};
