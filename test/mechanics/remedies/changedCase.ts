import type { GivenCase } from "../../../src/mechanics/remedies/givenCase.ts";
import type { RemedyId } from "../../../src/mechanics/remedies/method.ts";
import type { Remedy } from "../../../src/mechanics/remedies/remedy.ts";
import { type Weighed, weigh } from "../../../src/mechanics/remedies/weigh.ts";
import { type AnswerDocument, answerDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { answerLines } from "../../../src/sheets/answer/answerLines.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";

/** Fields of a case to put in place of the example's; undefined leaves one out, an object is laid over the example's. */
export type Changes = Readonly<Record<string, unknown>>;

/** The example of the house with some of its fields changed. */
export function changedCase(changes: Changes): Record<string, unknown> {
  const example: Changes = exampleCase;
  const merged = Object.entries(changes).map(([key, value]) => {
    const before = example[key];
    return [key, isPlain(value) && isPlain(before) ? { ...before, ...value } : value];
  });
  return JSON.parse(JSON.stringify({ ...example, ...Object.fromEntries(merged) }));
}

/** The same, read. */
export function given(changes: Changes): GivenCase {
  const read = readCase(changedCase(changes), "2026-11-25");
  if (!read.ok) throw new Error(read.problems.map(({ field, accepted }) => `${field}: ${accepted}`).join("; "));
  return read.given;
}

/** The same, weighed. */
export const weighed = (changes: Changes): Weighed => weigh(given(changes));

/** The answer to it as one document. */
export function documentOf(changes: Changes, at_Nm: readonly number[] = []): AnswerDocument {
  const form = changedCase(changes);
  const read = readCase(form, "2026-11-25");
  if (!read.ok) throw new Error(read.problems.map(({ field }) => field).join());
  return answerDocument(weigh(read.given), read.ordinary, form, at_Nm, "0.0.0");
}

/** The answer to it for a terminal. */
export const textOf = (changes: Changes, at_Nm: readonly number[] = []): string =>
  answerLines(weighed(changes), documentOf(changes, at_Nm), at_Nm, false).join("\n");

/** One of its remedies. */
export function remedy({ remedies }: Weighed, id: RemedyId): Remedy {
  const found = remedies.find((it) => it.id === id);
  if (!found) throw new Error(`${id} was not weighed`);
  return found;
}

/** Every turn of a sound hole is there and good, and so are the plug and its seal. */
export const sound = { turns: "8", condition: "good", catch: "snug" } as const;

const isPlain = (value: unknown): value is Changes =>
  typeof value === "object" && value !== null && !Array.isArray(value);
