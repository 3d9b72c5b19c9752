import type { FieldWords } from "./fieldWords.ts";

/** The plug that is in now, and its seal. */
export const fittedWords = {
  plug: { label: "Plug that is in now" },
  seal: { label: "Its seal" },
  material: { label: "Washer of" },
  surface: { label: "Thread and head are" },
  underHead: { label: "Plug, under the head" },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** How what was offered, decided, cut, sealed and marked is asked for. */
export const repairFieldWords = {
  way1: { label: "First way" },
  low1: { label: "It costs from" },
  high1: { label: "to" },
  ready1: { label: "Ready" },
  told1: { label: "First way, as the owner is told", hint: "Empty: the sentence of the owner's sheet." },
  way2: { label: "Second way" },
  low2: { label: "It costs from" },
  high2: { label: "to" },
  ready2: { label: "Ready" },
  told2: { label: "Second way, as the owner is told", hint: "Empty: the sentence of the owner's sheet." },
  way3: { label: "Third way" },
  low3: { label: "It costs from" },
  high3: { label: "to" },
  ready3: { label: "Ready" },
  told3: { label: "Third way, as the owner is told", hint: "Empty: the sentence of the owner's sheet." },
  recommended: { label: "Which do you recommend?" },
  decision: { label: "The owner" },
  option: { label: "Which way?" },
  instead: { label: "What instead?" },
  putOffUntil: { label: "Put off until", hint: "As 2026-06-01." },
  upTo: { label: "Up to which price?" },
  notBeyond: { label: "Not beyond these" },
  said: { label: "In his words" },
  by: { label: "How did he say it?" },
  dry: { label: "Dry?" },
  degreased: { label: "Degreased?" },
  levelBelow: { label: "Level below the joint" },
  method: { label: "What was done?" },
  lasts: { label: "Does it last?" },
  until: { label: "Looked at again or replaced by", hint: "As 2026-06-01." },
  ...fittedWords,
  sizes: { label: "Drill, tap, insert, depth" },
  sealant: { label: "Sealant" },
  chips: { label: "Chips" },
  wallLeft: { label: "Wall left, thinnest side" },
  words: { label: "In your words" },
  warning: { label: "What must the next hand not do?" },
  plate: { label: "What stands on the plate" },
  line1: { label: "First line", hint: "Five lines of 28 plain letters, digits and signs." },
  line2: { label: "Second line" },
  line3: { label: "Third line" },
  line4: { label: "Fourth line" },
  line5: { label: "Fifth line" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const readyCommon = ["today", "tomorrow", "in two days", "next week"];
export const saidCommon = ["yes, do it", "no", "only seal it", "call me before you cut"];
export const plugCommon = ["the same plug", "a new plug", "a longer plug"];
export const warningCommon = [
  "do not pull to the book figure",
  "no thick washer",
  "keep this plug",
  "only with this seal",
  "do not open without reading the tag",
];

export const decisionWords = {
  chosen: "chose",
  refused: "refused",
  "put off": "puts it off",
  "left to the workshop": "leaves it to the workshop",
} as const;

export const chipsMade = ["none made", "caught with grease", "flushed out", "not all caught"] as const;

/** The line of a tag that says so before anything else. */
export const tagBegins = "REPAIRED PORT - READ";

/** What a range of prices has to be, where its end lies below its beginning. */
export const notBelow = (low: number): string => `${low} or more`;
export const otherThanBefore = "a way that does not stand above already";
export const plainLine = "1 to 28 plain letters, digits and signs";
