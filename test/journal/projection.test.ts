import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Entry, entryId, inJournalOrder } from "../../src/journal/entry.ts";
import { jobSheet } from "../../src/journal/job/jobProjection.ts";
import { followed, project } from "../../src/journal/projection.ts";
import { sheetOf } from "./job/sheetOf.ts";
import { drained, gearCase, loose, opened, out, service, written } from "./written.ts";

const withdrawn = (entry: string) => ({ type: "EntryWithdrawn" as const, entry, reason: "wrong port" });
const corrected = (entry: string, is: object) => ({ type: "EntryCorrected" as const, entry, reason: "misread", is });

describe("what is withdrawn is out of the picture and stays in the file", () => {
  test("a withdrawn drain leaves the unit as it was, and the log says that it was withdrawn", () => {
    const sheet = sheetOf(opened, gearCase, loose("fill"), drained("2.3 L"), withdrawn("bench/4"));
    expect(sheet.units).toMatchObject({ "gear-case": { fluid: "unknown", drained: null } });
    expect(sheet.log.map(({ fact }) => fact.type)).toEqual(["EntryWithdrawn"]);
  });

  test("withdrawing the withdrawal brings it back", () => {
    const sheet = sheetOf(
      opened,
      gearCase,
      loose("fill"),
      drained("2.3 L"),
      withdrawn("bench/4"),
      withdrawn("bench/5"),
    );
    expect(sheet.units).toMatchObject({ "gear-case": { fluid: "drained" } });
  });

  test("it takes back what it undid: a port opened by mistake stays torqued", () => {
    const facts = [...service, out("drain"), withdrawn(`bench/${service.length + 1}`)];
    expect(sheetOf(...facts).ports).toMatchObject({ drain: { state: "torqued" } });
  });
});

describe("what is corrected is read as it should have been written", () => {
  test("in its own place", () => {
    const sheet = sheetOf(opened, gearCase, loose("fill"), drained("2.3 L"), corrected("bench/4", drained("2.2 L")));
    expect(sheet.units).toMatchObject({ "gear-case": { drained: { out: "2.2 L" } } });
  });

  test("a correction of the correction counts, by either name", () => {
    const twice = (name: string) =>
      sheetOf(
        opened,
        gearCase,
        drained("2.3 L"),
        corrected("bench/3", drained("2.2 L")),
        corrected(name, drained("2.1 L")),
      );
    for (const name of ["bench/3", "bench/4"])
      expect(twice(name).units).toMatchObject({ "gear-case": { drained: { out: "2.1 L" } } });
  });

  test("a withdrawn correction lets the first word stand", () => {
    const sheet = sheetOf(opened, drained("2.3 L"), corrected("bench/2", drained("2.2 L")), withdrawn("bench/3"));
    expect(sheet.units).toMatchObject({ "gear-case": { drained: { out: "2.3 L" } } });
  });
});

test("a projection does not hang on the order in which entries came", () => {
  const entries = written(service);
  fc.assert(
    fc.property(fc.shuffledSubarray([...entries], { minLength: entries.length }), (arrived) => {
      expect(project(jobSheet, arrived)).toEqual(project(jobSheet, entries));
    }),
  );
});

test("following in pieces, late ones and amendments among them, comes to the same as reading once", () => {
  const lines = [
    ...service,
    out("drain"),
    withdrawn(`bench/${service.length + 1}`),
    corrected("bench/7", drained("2.2 L")),
  ];
  const entries = written(lines.map((fact, i) => [fact, { device: i % 3 === 0 ? "phone" : "bench" }] as const));
  const renamed = written(lines.map((fact, i) => [fact, { device: `d${i}` }] as const));
  expect(new Set([...entries, ...renamed].map(entryId)).size).toBeGreaterThan(entries.length);
  const piecesOf = (all: readonly Entry[]) => fc.array(fc.shuffledSubarray([...all]), { maxLength: 6 });
  fc.assert(
    fc.property(piecesOf(entries), (pieces) => {
      const seen = new Set<Entry>();
      let folded: { entries: readonly Entry[]; state: ReturnType<typeof jobSheet.apply> } = {
        entries: [],
        state: jobSheet.empty,
      };
      for (const piece of [...pieces, entries]) {
        const added = piece.filter((it) => !seen.has(it)).sort(inJournalOrder);
        for (const it of added) seen.add(it);
        folded = followed(jobSheet, folded, added);
      }
      expect(folded.state).toEqual(project(jobSheet, entries));
    }),
  );
});
