import type { FieldWords } from "./fieldWords.ts";

/** How it is asked what stands on the shelf, and what the workshop measures with. */
export const shelfFieldWords = {
  name: { label: "Name on it", hint: "As it is printed." },
  batch: { label: "Batch" },
  shelfDate: { label: "Good until", hint: "As 2026-06-01." },
  labelHours: {
    label: "Its label asks before filling",
    hint: "Hours from closing to filling; the longer of it and ours counts.",
  },
  mostGap: { label: "Fills gaps up to" },
  stock: { label: "What is used up?" },
  instrument: { label: "Which one?" },
  on: { label: "On which day?", hint: "As 2026-06-01." },
  certificate: { label: "Number of the certificate" },
  why: { label: "Why?" },
  tipToCrease: { label: "Tip to crease", hint: "Of the finger that you dip with, by rule." },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const retiredCommon = ["scale out of true", "broken", "lost"];
