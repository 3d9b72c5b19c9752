import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { benchFields } from "../../../src/apps/web/bench/benchFields.ts";
import { withoutPlace } from "../../../src/apps/web/bench/benchTexts.ts";
import { exampleDay, exampleTexts } from "../../../src/apps/web/bench/exampleTexts.ts";
import { benchName, writtenCase } from "../../../src/apps/web/bench/writtenCase.ts";
import { remedyIds } from "../../../src/mechanics/remedies/method.ts";
import { firstQuestions } from "../../../src/mechanics/remedies/portCase.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { caseSchema } from "../../../src/sheets/caseForm/caseSchema.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";
import { readTyped } from "../../../src/sheets/caseForm/readTyped.ts";
import { schemaProblems } from "../../../src/sheets/caseForm/schemaProblems.ts";
import { threadGiven } from "../../../src/sheets/caseForm/threadGiven.ts";
import { fieldWords } from "../../../src/sheets/words/fieldWords.ts";

const least = { "joint.kind": "gear case level", thread: "M20x1.5", "case.material": "cast aluminium" };
const laid = (texts: Readonly<Record<string, string>>) => {
  const written = writtenCase({ ...least, ...texts });
  if (!written.ok) throw new Error(JSON.stringify(written.problems));
  return written;
};
const documentOf = (texts: Readonly<Record<string, string>>) =>
  laid(texts).document as unknown as Record<string, unknown>;

describe("what stands on the bench is the case, and nothing else", () => {
  test("the worked example, typed, is the example of the house", () => {
    const { today, ...typed } = exampleCase;
    expect(documentOf(exampleTexts())).toEqual(typed);
    expect(exampleDay).toBe(today);
  });

  test("every field of the bench is one that the case knows, and has its words", () => {
    for (const [name, field] of Object.entries(benchFields)) {
      expect(Object.keys(fieldWords)).toContain(name);
      const value = {
        number: "1",
        money: "1",
        choice: "",
        several: "nothing",
        "yes or no": "yes",
        text: "M20x1.5",
        remedy: "wire coil",
      }[field.type];
      const text = field.type === "choice" ? (field.choices[0] ?? "") : value;
      const inList = name.replace(/^(wrenches|bookFigures)\./, "$1.0.");
      const whole = { ...least, "wrenches.0.name": "W-1", "wrenches.0.least": "5", "wrenches.0.most": "25" };
      const book = { "bookFigures.0.torque": "46", "bookFigures.0.source": "sheet" };
      const problems = schemaProblems(caseSchema, documentOf({ ...whole, ...book, [inList]: text }));
      expect(problems, name).toEqual([]);
    }
  });

  test("a question that is not answered is left out, never a no", () => {
    expect(documentOf(least)["asked"]).toEqual({});
    for (const it of firstQuestions) expect(documentOf({ ...least, [`asked.${it}`]: "" })["asked"]).toEqual({});
  });

  test("a yes to pressure or to an earlier repair is no answer until it says how much or by what", () => {
    expect(documentOf({ "asked.pressure": "yes" })["asked"]).toEqual({});
    expect(documentOf({ "asked.pressure": "yes", "asked.pressure.value": "1,2" })["asked"]).toEqual({
      pressure: "1,2 bar",
    });
    expect(documentOf({ "asked.repairedBefore": "yes" })["asked"]).toEqual({});
    const before = { "asked.repairedBefore": "yes", "asked.repairedBefore.method": "wire coil" };
    expect(documentOf(before)["asked"]).toEqual({ repairedBefore: { method: "wire coil" } });
    expect(documentOf({ "asked.pressure": "none", "asked.pressure.value": "3" })["asked"]).toEqual({
      pressure: "none",
    });
  });

  test("the depth of a chamfer is a reading of an O-ring's: for another seal it stays where it was typed and counts for nothing", () => {
    const chamfer = { "seal.chamfer": "3", "seal.chamfer.how": "caliper" };
    expect(documentOf({ ...chamfer, "seal.kind": "O-ring" })["seal"]).toEqual({
      kind: "O-ring",
      chamfer: { value: "3 mm", how: "caliper" },
    });
    expect(documentOf({ ...chamfer, "seal.kind": "bonded seal" })["seal"]).toEqual({ kind: "bonded seal" });
    expect(documentOf(chamfer)).not.toHaveProperty("seal");
  });

  test("what the fluid reaches: none of these is an answer, nothing tapped is not", () => {
    expect(documentOf({ "asked.reaches": "nothing" })["asked"]).toEqual({ reaches: [] });
    expect(documentOf({ "asked.reaches": "tyre,water" })["asked"]).toEqual({ reaches: ["tyre", "water"] });
  });
});

describe("a reading is handed on as it was typed", () => {
  test.each([
    ["13", "13 mm"],
    ["13,05", "13,05 mm"],
    ["1/2 in", "1/2 in"],
    ["13 mm", "13 mm"],
    ["80,5x", "80,5x"],
    ["1,234.5", "1,234.5"],
    ["99999", "99999 mm"],
  ])('"%s" is "%s"', (typed, written) => {
    expect(documentOf({ "plug.underHead": typed })["plug"]).toEqual({ underHead: written });
  });

  test("a mistyped one is refused by name, with what is accepted, and told at its field", () => {
    const { document, places } = laid({ "plug.underHead": "80,5x", "left.turns": "3" });
    const read = readCase(document, "2026-11-25");
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems.map(({ field }) => benchName(field, places))).toEqual(["plug.underHead"]);
    expect(read.problems[0]?.given).toContain("80,5x");
  });

  test("how it is known goes with it", () => {
    expect(documentOf({ "plug.underHead": "13", "plug.underHead.how": "rule" })["plug"]).toEqual({
      underHead: { value: "13 mm", how: "rule" },
    });
  });
});

describe("what the bench writes needs no second check", () => {
  const names = Object.keys(benchFields).map((name) => name.replace(/^(wrenches|bookFigures)\./, "$1.0."));
  const typed = ["", " ", "M20x1.5", "13", "13,05", "80,5x", "-1", "1e3", "of another version"];
  const soundText = (name: string): readonly string[] => {
    const field = benchFields[withoutPlace(name)];
    switch (field?.type) {
      case "choice":
        return field.choices;
      case "remedy":
        return remedyIds;
      case "several":
        return [field.none, ...field.choices, field.choices.join(",")];
      case "yes or no":
        return ["yes", "no"];
      case "money":
        return ["13", "13,5"];
      default:
        return typed;
    }
  };
  const anyBench = (textsOf: (name: string) => readonly string[]) =>
    fc.record(Object.fromEntries(names.map((name) => [name, fc.constantFrom("", ...textsOf(name))])));

  test("whatever is typed and tapped, it is a case of the schema", () => {
    fc.assert(
      fc.property(anyBench(soundText), (texts) => {
        expect(schemaProblems(caseSchema, laid({ ...texts, ...least }).document)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test("whatever else was kept there, it is a case of the schema or the bench says why not", () => {
    fc.assert(
      fc.property(
        anyBench((name) => [...soundText(name), ...typed]),
        (texts) => {
          const written = writtenCase({ ...texts, ...least });
          if (written.ok) expect(schemaProblems(caseSchema, written.document)).toEqual([]);
          else expect(written.problems.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 100 },
    );
  });

  test("it asks for what the schema asks for, and no more", () => {
    const wanting = (document: unknown) => schemaProblems(caseSchema, document).map(({ field }) => field);
    const empty = writtenCase({});
    expect(empty.ok ? [] : empty.problems.map(({ field, given }) => [field, given])).toEqual(
      wanting({ joint: {}, case: {}, left: {} }).map((field) => [field, "nothing"]),
    );
    for (const name of Object.keys(least)) {
      const lacking = writtenCase(Object.fromEntries(Object.entries(least).filter(([it]) => it !== name)));
      expect(lacking.ok ? [] : lacking.problems.map(({ field }) => field)).toEqual([name]);
    }
  });

  test("a choice of another version and a price in words are told at their fields, in the schema's words", () => {
    const texts = { ...least, "left.condition": "middling", "asked.reaches": "tyre,moon", "wish.ceiling": "cheap" };
    const written = writtenCase(texts);
    const document = {
      ...{ joint: { kind: "gear case level" }, thread: "M20x1.5", case: { material: "cast aluminium" } },
      ...{ left: { condition: "middling" }, wish: { ceiling: "cheap" } },
    };
    const ours = written.ok ? [] : written.problems.filter(({ field }) => field !== "asked.reaches");
    const theirs = schemaProblems(caseSchema, document);
    const told = (problems: typeof theirs) => problems.map(({ field, accepted }) => `${field}: ${accepted}`).toSorted();
    expect(told(ours)).toEqual(told(theirs));
    expect(written.ok ? [] : written.problems.map(({ field }) => field)).toContain("asked.reaches");
  });

  test("read as typed or as a document it is the same case, but for what no bench asks", () => {
    const { document } = laid(exampleTexts());
    expect(readTyped(document, exampleDay, threadGiven)).toEqual(readCase(document, exampleDay));
  });
});

describe("lists", () => {
  test("an element that is not complete yet is left out, and mistakes still find their place on the bench", () => {
    const wrenches = {
      "wrenches.0.name": "W-1",
      "wrenches.2.name": "W-3",
      "wrenches.2.least": "5",
      "wrenches.2.most": "x",
    };
    const { document, places } = laid(wrenches);
    expect(document.wrenches).toEqual([{ name: "W-3", least: "5 N·m", most: "x" }]);
    expect(benchName("wrenches[0].most", places)).toBe("wrenches.2.most");
  });
});
