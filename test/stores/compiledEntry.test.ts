import fc from "fast-check";
import { expect, test } from "vitest";
import { demoJournal } from "../../src/demo/demoJournal.ts";
import { entryFrom } from "../../src/journal/parse.ts";
import { compiledEntryFrom } from "../../src/stores/compiledEntry.ts";

const { entries } = demoJournal("2026-11-25T10:40:00Z", "test");

const saidBy = (read: (document: unknown) => unknown, document: unknown): unknown => {
  try {
    return read(document);
  } catch (fault) {
    return (fault as Error).message;
  }
};

/** One of the values of a document, somewhere in it, and what stands in its place. */
function changed(document: unknown, at: readonly number[], to: unknown): unknown {
  const [first, ...deeper] = at;
  if (typeof document !== "object" || document === null || first === undefined) return to;
  const keys = Object.keys(document);
  const key = keys[first % (keys.length + 1)] ?? "another";
  const inner = (document as Record<string, unknown>)[key];
  const copy: Record<string, unknown> | unknown[] = Array.isArray(document) ? [...document] : { ...document };
  if (to === undefined && deeper.length === 0) delete (copy as Record<string, unknown>)[key];
  else (copy as Record<string, unknown>)[key] = changed(inner, deeper, to);
  return copy;
}

test("the compiled check takes what the plain one takes: every entry of the workshop's year", () => {
  for (const entry of entries) expect(compiledEntryFrom(entry)).toBe(entryFrom(entry));
});

test("and refuses what it refuses, in the same words, wherever an entry is changed", () => {
  const facts = entries.map(({ fact }) => fact);
  const odd = fc.oneof(
    fc.constantFrom(undefined, null, "", 0, -1, 1.5, true, [], {}, "2.25 L", "bench"),
    fc.constantFrom(...facts),
  );
  const change = fc.record({
    of: fc.constantFrom(...entries),
    at: fc.array(fc.nat(12), { minLength: 1, maxLength: 4 }),
    to: odd,
  });
  let refused = 0;
  fc.assert(
    fc.property(change, ({ of, at, to }) => {
      const document = changed(of, at, to);
      const plain = saidBy(entryFrom, document);
      if (typeof plain === "string") refused++;
      expect(saidBy(compiledEntryFrom, document)).toEqual(plain);
    }),
    { numRuns: 2000 },
  );
  expect(refused).toBeGreaterThan(500);
});
