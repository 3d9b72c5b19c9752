import fc from "fast-check";
import { expect, test } from "vitest";
import { demoJournal } from "../../src/demo/demoJournal.ts";
import { bodyOf, type Entry } from "../../src/journal/entry.ts";
import type { FactOf } from "../../src/journal/facts/fact.ts";
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
  for (const entry of entries) {
    expect(compiledEntryFrom(entry)).toEqual(entry);
    expect(bodyOf(compiledEntryFrom(entry))).toBe(bodyOf(entry));
  }
});

test("it makes an entry with its keys in the order of their names", () => {
  const keys = entries.map((it) => compiledEntryFrom(it)).flatMap((it) => [Object.keys(it), Object.keys(it.fact)]);
  expect(keys).toEqual(keys.map((it) => it.toSorted()));
});

// Found 2026-11: the schemas pass such a key by, and the entry was kept with whatever stood there, checked by nobody.
test.each([entryFrom, compiledEntryFrom])("what nobody checked does not come along: %o", (read) => {
  const weighed = entries.find(({ fact }) => fact.type === "OptionsWeighed") as Entry;
  const more = structuredClone(weighed);
  const deep = JSON.parse(`${"[".repeat(1000)}${"]".repeat(1000)}`);
  Object.defineProperty((more.fact as FactOf<"OptionsWeighed">).case, "__proto__", { value: deep, enumerable: true });
  expect(bodyOf(more)).not.toBe(bodyOf(weighed));
  expect(bodyOf(read(more))).toBe(bodyOf(weighed));
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
