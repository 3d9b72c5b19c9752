import { type FieldWords, fieldWords } from "./fieldWords.ts";

/** What is found at a port most, one tap each; by trade practice, no source. */
export const foundCommon = [
  "as it came in",
  "thread torn",
  "metal in the thread",
  "plug chewed up",
  "old washer on the case",
  "old sealant",
  "crack",
  "wrench as it stood",
];

/** The same of a machine as it arrives. */
export const foundOnArrival = [
  "as it came in",
  "wet underneath",
  "drips",
  "tyre, brake and exhaust dry",
  "tag in place",
];

export const foundFieldWords = {
  words: { label: "What is it?" },
  catch: fieldWords["left.catch"],
  condition: fieldWords["left.condition"],
  seat: { label: "The seat" },
} as const satisfies Readonly<Record<string, FieldWords>>;
