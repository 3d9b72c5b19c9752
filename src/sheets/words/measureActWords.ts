import { type FieldWords, fieldWords } from "./fieldWords.ts";

export const measureFieldWords = {
  reading: { label: "What was measured?" },
  value: { label: "It reads" },
  over: { label: "Over how many?", hint: "Gaps or turns, counted." },
  how: { label: "How do you know?" },
  belongs: { label: "Does this plug belong here?", hint: "Across flats, reach and head as its sister's." },
  thread: fieldWords.thread,
  rival: { label: "And not", hint: "The one it might have been taken for." },
  material: fieldWords["case.material"],
  from: { label: "Pumped to" },
  to: { label: "It stood at" },
  minutes: { label: "After" },
  verdict: { label: "What does it say?" },
  words: { label: "In your words" },
  watched: { label: "Watched for" },
  wetness: { label: "What came?" },
  belowLip: { label: "Below the lip", hint: "As it came, before anything was touched." },
  read: { label: "Read by" },
  oil: { label: "The oil is" },
  standsLevel: { label: "Does the machine stand level?" },
  poured: { label: "Poured through" },
  caught: { label: "Caught again" },
  agreed: { label: "What was agreed?" },
  upTo: { label: "Up to which price?" },
  keysTaken: { label: "Keys taken?" },
  ordered: { label: "What was ordered?" },
  arrives: { label: "Arrives", hint: "As 2026-06-01." },
  distance: { label: "Kilometres" },
  hours: { label: "Running hours" },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** How readings that have no field on the bench are called. */
export const readingWords: Readonly<Record<string, string>> = {
  "case.threadDepth": fieldWords["case.threadDepth"].label,
  "case.thinnestWall": fieldWords["case.thinnestWall"].label,
  "case.roomBehind": fieldWords["case.roomBehind"].label,
  "plug.underHead": fieldWords["plug.underHead"].label,
  "plug.headDiameter": fieldWords["plug.headDiameter"].label,
  "plug.chamfer": fieldWords["plug.chamfer"].label,
  "seal.outside": fieldWords["seal.outside"].label,
  "seal.inside": fieldWords["seal.inside"].label,
  "seal.thickness": fieldWords["seal.thickness"].label,
  "seal.chamfer": fieldWords["seal.chamfer"].label,
  "left.goodFrom": fieldWords["left.goodFrom"].label,
  "left.goodTo": fieldWords["left.goodTo"].label,
};

/** Threads of plugs that turn up most, by trade practice, no source. */
export const threadCommon = ["M12x1.5", "M14x1.5", "M16x1.5", "M18x1.5", "M20x1.5", "M22x1.5", "M24x1.5"];
export const agreedCommon = ["only what it came for", "up to the price, then a call", "whatever it needs"];
export const orderedCommon = ["longer plug", "seals", "insert", "new part"];
