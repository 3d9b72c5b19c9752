import { expect } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { type Around, readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed, actOf } from "../../../src/sheets/journal/acts.ts";
import type { ActName } from "../../../src/sheets/words/actWords.ts";

/** What was typed is this fact, which the journal keeps; and the fact is read again from the texts that it gives for putting it right. */
export function expectReadsBack(act: ActName, texts: Readonly<Record<string, string>>, around: Around, fact: object) {
  expect(factSchema.parse(fact)).toEqual(fact);
  expect(readAct(actNamed(act), texts, around)).toEqual({ ok: true, facts: [fact], card: null });
  const found = actOf(fact as never);
  expect(found?.act).toBe(act);
  expect(readAct(actNamed(act), found?.texts ?? {}, { ...around, corrects: true })).toMatchObject({ facts: [fact] });
}
