import type { FieldWords } from "./fieldWords.ts";

/** How a day is called that lies so many days from today. */
export const dayWords = {
  "-1": "yesterday",
  "0": "today",
  "1": "tomorrow",
  "2": "in 2 days",
  "7": "in a week",
  "14": "in 2 weeks",
  "30": "in a month",
  "90": "in 3 months",
  "182": "in half a year",
  "365": "in a year",
} as const;

export const afterFieldWords = {
  followUp: { label: "Which look?" },
  found: { label: "What was found?" },
  at: { label: "Where?" },
  words: { label: "In your words" },
  distance: { label: "Kilometres" },
  hours: { label: "Running hours" },
  again: { label: "Try again on" },
  on: { label: "On which day?", hint: "As 2026-06-01." },
  way: { label: "How?" },
  how: { label: "How did it fail?" },
  cause: {
    label: "Named cause",
    hint: "The same make-do again on this port wants another cause than before.",
  },
  foundOn: { label: "Seen to have failed on", hint: "As 2026-06-01." },
  heldUntil: { label: "Last known to hold on", hint: "As 2026-06-01. Looks that were dry are counted by themselves." },
  turnsNow: { label: "Turns now, catch to seat" },
  cost: { label: "It cost" },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** What a look is answered with most, by trade practice, no source. */
export const lookedCommon = ["the owner looked", "we looked", "at the service"];

/** Causes that come up most by trade practice, no source: one tap each. */
export const commonCauses = [
  "oil film under it",
  "opened early",
  "pulled to the book figure",
  "shaken loose",
  "seat scored",
  "wrong length or pitch",
  "another hand opened it",
];

/** A look at nothing that was planned, and everything that was closed. */
export const notPlanned = "not planned";
export const everywhere = "all of it";

/** "call about Drain, 2026-12-09". */
export const plannedLook = (way: string, about: string | null, on: string): string =>
  `${way}${about === null ? "" : ` about ${about}`}, ${on}`;
