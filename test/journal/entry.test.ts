import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bodyOf, type Entry, inJournalOrder } from "../../src/journal/entry.ts";
import { entryFrom } from "../../src/journal/parse.ts";
import { MalformedEntry } from "../../src/journal/refusals.ts";
import { drained, loose, opened, ordered, written } from "./written.ts";

const [entry] = written([drained("2.25 US qt")]) as readonly [Entry];

describe("an entry", () => {
  test("keeps what was read as it was read, unit and all", () => {
    expect(JSON.parse(bodyOf(entry)).fact.out).toBe("2.25 US qt");
    expect(entryFrom(JSON.parse(bodyOf(entry)))).toEqual(entry);
  });

  test("is one text whatever the order of its keys, and another for another entry", () => {
    const turned = Object.fromEntries(Object.entries(entry).reverse()) as Entry;
    expect(bodyOf(turned)).toBe(bodyOf(entry));
    expect(bodyOf({ ...entry, clock: 2 })).not.toBe(bodyOf(entry));
  });

  test("has its keys in the order of their names in that text, at every depth, and loses none", () => {
    const key = fc.oneof(fc.constantFrom("__proto__", "10", "9", "a", "B", "ä"), fc.string());
    const document = fc.letrec((tie) => ({
      value: fc.oneof({ maxDepth: 4 }, fc.jsonValue({ maxDepth: 0 }), fc.array(tie("value")), tie("object")),
      object: fc.dictionary(key, tie("value"), { maxKeys: 6 }).map((it) => JSON.parse(JSON.stringify(it))),
    })).object;
    // The text that every journal written so far holds: numbers first, as objects have them, then names.
    const byName = (_: string, it: unknown) => {
      if (typeof it !== "object" || it === null || Array.isArray(it)) return it;
      const to = Object.create(null);
      for (const key of Object.keys(it).sort()) to[key] = (it as Record<string, unknown>)[key];
      return to;
    };
    fc.assert(
      fc.property(document, (it) => {
        expect(bodyOf(it as Entry)).toBe(JSON.stringify(it, byName));
      }),
    );
  });

  test("every order of arrival is read in one order", () => {
    const entries = written([
      opened,
      [loose("fill"), { device: "Tablet" }],
      [loose("drain"), { device: "tablet" }],
      opened,
    ]);
    const tied = entries.map((it) => ({ ...it, clock: 7 }));
    fc.assert(
      fc.property(fc.shuffledSubarray([...tied], { minLength: 4 }), (arrived) => {
        expect(ordered(arrived)).toEqual(ordered(tied));
      }),
    );
    expect(ordered(tied).map(({ device, number }) => `${device}/${number}`)).toEqual([
      "Tablet/1",
      "bench/1",
      "bench/2",
      "tablet/1",
    ]);
    expect(inJournalOrder(tied[0] as Entry, tied[0] as Entry)).toBe(0);
  });
});

describe("a malformed entry is refused with the field and what is accepted there", () => {
  const problemsOf = (document: unknown) => {
    try {
      entryFrom(document);
    } catch (fault) {
      if (fault instanceof MalformedEntry) return fault.problems;
      throw fault;
    }
    return [];
  };
  const changed = (changes: object, fact: object = {}) => ({ ...entry, ...changes, fact: { ...entry.fact, ...fact } });

  test.each([
    ["no object", "an entry", "the whole", "an entry: one JSON object"],
    ["a number from 0", changed({ number: 0 }), "number", "a whole number from 1"],
    ["a clock that is no whole number", changed({ clock: 1.5 }), "clock", "a whole number from 1"],
    ["a local time", changed({ at: "2026-11-25T10:40:00+01:00" }), "at", "a moment in UTC, as 2026-11-25T10:40:00Z"],
    [
      "a day that is none",
      changed({ at: "2026-02-30T10:40:00+01:00" }),
      "at",
      "a moment in UTC, as 2026-11-25T10:40:00Z",
    ],
    ["a device with a blank", changed({ device: "bay 1" }), "device", "letters, digits, dot, dash, 1 to 64 characters"],
    ["a volume without a unit", changed({}, { out: "2.25" }), "fact.out", "a volume with its unit"],
    ["a quart that could be two", changed({}, { out: "2.25 qt" }), "fact.out", "a volume with its unit"],
    ["a torque for a volume", changed({}, { out: "28 N·m" }), "fact.out", "a volume with its unit"],
    ["a colour of metal", changed({}, { metal: "gold" }), "fact.metal", "one of: none; paste; flakes; pieces"],
    [
      "a job's fact without a job",
      changed({ job: null }),
      "job",
      "a job for what happened on one, null for what is about the workshop",
    ],
  ])("%s", (_, document, field, accepted) => {
    expect(problemsOf(document)).toEqual([{ field, accepted }]);
  });

  test("a fact or a field that a newer Turnsleft knows says so", () => {
    expect(problemsOf(changed({}, { shade: "amber" }))[0]?.accepted).toMatch(/newer Turnsleft/);
    expect(problemsOf({ ...entry, fact: { type: "PortSung", port: "fill" } })[0]?.accepted).toMatch(/newer Turnsleft/);
  });

  test("all mistakes of an entry are told at once", () => {
    const fields = problemsOf(changed({ number: -1, clock: 0 }, { out: "much" })).map(({ field }) => field);
    expect(fields).toEqual(["number", "clock", "fact.out"]);
  });
});
