import { expect } from "vitest";
import type { SumAnswer, SumRead } from "../../../src/sheets/sums/sumAnswer.ts";

/** The answer of a bench. @throws if it could not be read. */
export function answerOf(read: SumRead): SumAnswer {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.answer;
}

/** What a bench said of its fields instead of an answer: what is accepted there, "" for one that is wanted. */
export function problemsOf(read: SumRead): Readonly<Record<string, string>> {
  expect(read.ok).toBe(false);
  return read.ok ? {} : Object.fromEntries(read.problems.map(({ field, accepted }) => [field, accepted]));
}
