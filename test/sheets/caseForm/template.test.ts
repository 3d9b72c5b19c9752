import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { caseSchema } from "../../../src/sheets/caseForm/caseSchema.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";
import { caseTemplate, withoutBlanks } from "../../../src/sheets/caseForm/template.ts";
import { changedCase } from "../../mechanics/remedies/changedCase.ts";
import { accepts, type JsonSchema } from "./jsonSchema.ts";

/** The template with what a mechanic filled in, everything else left blank. */
function filled(values: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const form: Record<string, unknown> = structuredClone(caseTemplate);
  for (const [path, value] of Object.entries(values)) {
    const [group = "", key] = path.split(".");
    if (key) (form[group] as Record<string, unknown>)[key] = value;
    else form[group] = value;
  }
  return form;
}

const required = {
  "joint.kind": "gear case level",
  thread: "M20x1.5",
  "case.material": "cast aluminium",
  "left.turns": "4",
};

describe("the template", () => {
  test("is empty: it names what is required and nothing else", () => {
    const read = readCase(caseTemplate, null);
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(["joint.kind", "thread", "case.material"]);
    expect(withoutBlanks({ ...caseTemplate, questions: undefined })).toEqual({
      joint: {},
      asked: {},
      case: {},
      plug: {},
      seal: {},
      left: {},
      bookFigures: [],
      wrenches: [],
    });
  });

  test("what stays blank was not given", () => {
    const read = readCase(filled(required), null);
    if (!read.ok) throw new Error(read.problems.map(({ field }) => field).join());
    const bare = readCase(
      {
        joint: { kind: "gear case level" },
        thread: "M20x1.5",
        case: { material: "cast aluminium" },
        left: { turns: "4" },
      },
      null,
    );
    if (!bare.ok) throw new Error("the bare case does not read");
    expect(read.given).toEqual(bare.given);
    expect(read.given.asked).toMatchObject({
      crack: null,
      pressure: null,
      reaches: null,
      people: null,
      breather: null,
    });
    expect(read.given.left.condition).toBeNull();
  });

  test("its questions are not read", () => {
    const answered = { ...filled(required), questions: { "asked.crack": "yes", thread: "M8" } };
    const read = readCase(answered, null);
    expect(read.ok && read.given.asked.crack).toBeNull();
    expect(read.ok && read.given.thread.designation).toBe("M20x1.5");
  });

  test("every question asks for a field that a case has, and every field of the example stands in it", () => {
    for (const question of Object.keys(caseTemplate.questions)) {
      const [group = "", key] = question.split(".");
      const place = (caseTemplate as Record<string, unknown>)[group];
      if (key) expect(place).toHaveProperty(key);
      else expect(caseTemplate).toHaveProperty(group);
    }
    for (const [group, value] of Object.entries(exampleCase)) {
      expect(caseTemplate).toHaveProperty(group);
      if (typeof value === "object" && !Array.isArray(value))
        for (const key of Object.keys(value))
          expect((caseTemplate as Record<string, unknown>)[group]).toHaveProperty(key);
    }
  });
});

describe("the JSON Schema of a case", () => {
  const schema = z.toJSONSchema(caseSchema) as JsonSchema;

  test("accepts the example, and the example with ranges, levels, overrides and quantities in every form", () => {
    expect(accepts(schema, exampleCase)).toBe(true);
    const wide = {
      case: {
        threadDepth: { value: "16 mm", how: "wire hook" },
        roomBehind: { low: "9 mm", likely: "11 mm", high: "12 mm" },
      },
      asked: {
        repairedBefore: { method: "sealant", cause: "opened early" },
        overrides: [{ rule: "7", by: "M", reason: "r" }],
      },
      ranges: { "friction oiled": { low: 0.1, high: 0.2 } },
      levels: { stripOdds: 0.02 },
    };
    expect(accepts(schema, changedCase(wide))).toBe(true);
  });

  test.each([
    ["an unknown key", { jiont: {} }],
    ["an unknown key within a group", { left: { trns: "3" } }],
    ["no thread", { thread: undefined }],
    ["an unknown material", { case: { material: "cheese" } }],
    ["an unknown level", { levels: { strip: 1 } }],
    ["a list where a group belongs", { plug: [] }],
    ["reached, not as a list", { asked: { reaches: "tyre" } }],
  ])("refuses %s, as reading does", (_, changes) => {
    expect(accepts(schema, changedCase(changes))).toBe(false);
    expect(readCase(changedCase(changes), null).ok).toBe(false);
  });

  test("describes its fields in words", () => {
    expect(JSON.stringify(schema)).toContain('head face to tip, as \\"13 mm\\"');
  });
});
