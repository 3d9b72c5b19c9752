import { type FieldWords, fieldWords } from "./fieldWords.ts";

/** How it is asked what a book says, what comes due when, and what it cost in the end. */
export const bookFieldWords = {
  source: { label: "Where does it stand?", hint: "So that the next one finds it." },
  torque: { label: "Torque" },
  surface: { label: "For which surface?" },
  thread: fieldWords.thread,
  volume: { label: "It holds" },
  fluid: { label: "Which fluid?" },
  figure: { label: "Which figure?" },
  why: { label: "Why?" },
  everyDistance: { label: "Every so many kilometres" },
  everyHours: { label: "Every so many running hours" },
  everyMonths: { label: "Every so many months", hint: "Whichever comes first." },
  amount: { label: "What did it come to?" },
  borneBy: { label: "Who pays?" },
  words: { label: "What was settled?" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const sourceCommon = ["the book", "plate on it", "its dealer, by telephone"];
export const struckCommon = ["read from the wrong line", "belongs to another port", "the book was put right"];
export const costsCommon = ["as offered", "as the workshop's own comeback", "shared, as agreed"];
/** What a figure of a book has to say at least. */
export const anyFigure = "a torque, a thread, a volume or a fluid: one of them at least";
export const anyInterval = "a distance, hours or months: one of them at least";
