import type { LeakTriage } from "../../mechanics/fluid/leakTriage.ts";
import type { FieldWords } from "./fieldWords.ts";

/** How the drip bench asks. */
export const dripFieldWords = {
  signs: { label: "Is any of this seen?", hint: "Any of these, and it is fetched, not driven." },
  breather: { label: "Is the breather free?", hint: "A hiss on opening the plug says that it is not." },
  look: { label: "What is seen after wiping dry?" },
  drops: { label: "Drops counted", hint: "None is a count, too: 0." },
  minutes: { label: "Counted over" },
  lip: { label: "Radius of the lip it hangs from", hint: "Empty for an ordinary drop." },
  toLimit: { label: "Level above its low limit" },
  perMm: { label: "A millimetre of level holds", hint: "The level bench tells it." },
} as const satisfies Readonly<Record<string, FieldWords>>;
export type DripField = keyof typeof dripFieldWords;

export const dripParts = { asked: "Asked first", counted: "Counted", lasts: "How long it lasts" } as const;

export const dripChoiceWords: Readonly<Record<string, string>> = { none: "none" };

export const dripStart =
  "Ask for the stop signs, then count drops: what it loses in a day, and what to tell the caller.";

/** The word over the figure of a drip. */
export function dripSign(triage: LeakTriage | null): string {
  switch (triage?.type) {
    case "do not drive":
      return "Do not drive";
    case "free the breather first":
      return "Free the breather";
    case "ask first":
      return "Ask first";
    case "margin used up":
      return "Top up first";
    default:
      return "Loses, parked";
  }
}

export const aDay = "ml a day";
export const breatherNext = "Free the breather, then count again.";
export const marginNext =
  "Say how far the level stands above its limit, and what a millimetre holds: then days stand here.";
export const countLonger = "Count longer: ten times as long makes the range about three times as narrow.";
export const countWanted = "Count the drops that fall in ten minutes.";
