import type { FieldWords } from "./fieldWords.ts";

export const noticeFieldWords = {
  noticed: { label: "What else?" },
  look: { label: "When is it looked at?", hint: "As 2026-06-01." },
  notice: { label: "Which of them?" },
  settled: { label: "What came of it?" },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** What is noticed beside a job most, by trade practice, no source. */
export const noticedCommon = [
  "a whine",
  "a second leak",
  "play in a bearing",
  "belt cracked",
  "brake worn",
  "tyre worn",
];

export const settledCommon = ["looked at, harmless", "put right", "owner told, left as it is", "a job of its own"];

/** What stands beside a machine on which something else is open. */
export const stillNoticed = (count: number): string =>
  count === 1 ? "1 thing also noticed is open" : `${count} things also noticed are open`;
