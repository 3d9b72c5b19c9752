import type { FieldWords } from "./fieldWords.ts";

export const callFieldWords = {
  machine: { label: "Which machine?" },
  words: {
    label: "What does the caller say?",
    hint: "No name and no number here: they stand on the owner's card.",
  },
  seenAt: { label: "Where is it seen?" },
  drops: { label: "Drops counted" },
  within: { label: "in" },
  advice: { label: "What was the caller told?" },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** What callers say and are told most, by trade practice, no source. */
export const callCommon = [
  "it drips",
  "can I drive with it?",
  "the plug is loose",
  "it makes a noise",
  "oil on the ground",
];
export const seenCommon = ["under the engine", "under the gearbox", "at a wheel", "parked overnight", "while it runs"];
export const adviceCommon = [
  "do not drive: we fetch it",
  "top it up, then bring it by",
  "bring it by this week",
  "count the drops in ten minutes and call again",
];

/** The machine of a caller that nobody named yet. */
export const notSaid = "not said";

/** Words at which nobody drives on. */
export const stopWords =
  "Oil on tyre, brake or exhaust, a noise, or drops that turn to a string: not driven, fetched. The maker's figures and local rules come first.";
