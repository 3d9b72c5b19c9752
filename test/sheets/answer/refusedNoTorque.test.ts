import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { weigh } from "../../../src/mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { answerLines } from "../../../src/sheets/answer/answerLines.ts";
import { answerSvg } from "../../../src/sheets/answer/answerSvg.tsx";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { type Changes, changedCase, documentOf, weighed } from "../../mechanics/remedies/changedCase.ts";
import { hurtCases } from "../../mechanics/remedies/generatedCases.ts";

/** What refuses every make-do on a thread, whatever else the case says. */
const causes: readonly (readonly [name: string, changes: Changes])[] = [
  ["structure", { joint: { kind: "brake, steering, suspension, wheel or restraint" } }],
  ["clamp bolt", { joint: { kind: "clamp bolt in a casting" } }],
  ["pressure", { asked: { pressure: "90 psi" } }],
  ["pressure port", { joint: { kind: "pressure port" } }],
  ["combustion", { joint: { kind: "spark plug" } }],
  ["motorcycle", { joint: { kind: "motorcycle sump" } }],
  ["reach", { asked: { reaches: ["exhaust"] } }],
  ["water side", { joint: { kind: "outboard lower unit" } }],
  ["crack", { asked: { crack: "yes" } }],
  ["people", { asked: { people: "yes" } }],
  ["other", { joint: { kind: "other" } }],
  ["breather", { asked: { breather: "blocked" } }],
  ["slides over", { left: { catch: "slides over" } }],
  ["gone", { left: { condition: "gone" } }],
  ["height", { left: { height: "0.2" } }],
  ["not counted", { left: { turns: undefined, goodFrom: undefined, goodTo: undefined } }],
  ...["crack", "pressure", "reaches", "people", "repairedBefore", "breather"].map(
    (question) => [`${question} not asked`, { asked: { [question]: undefined } }] as const,
  ),
];

const overrides = [
  { rule: "7 too little", by: "M.T.", reason: "the owner wants it so" },
  { rule: "8 again", by: "M.T.", reason: "the owner wants it so" },
];

/** What else may stand in a case and carries a torque. */
const shopTorques = fc.record({
  bookFigures: fc.constantFrom(
    [],
    [{ torque: "46 N·m", source: "sheet" }],
    [
      { torque: "34 lbf·ft", source: "sheet", seal: "copper" },
      { torque: "35 N·m", source: "manual" },
    ],
  ),
  wrenches: fc.constantFrom([], [{ name: "W", least: "5 N·m", most: "25 N·m", calibrated: "2026-01-01" }]),
  prevailing: fc.constantFrom(undefined, "2 N·m"),
  temperature: fc.constantFrom(undefined, "90 °C"),
});

const refusedCases = fc
  .record({ cause: fc.constantFrom(...causes), hurt: hurtCases, shop: shopTorques, takenOn: fc.boolean() })
  .map(({ cause: [, changes], hurt, shop, takenOn }) => {
    const asked = takenOn ? { overrides, ...(changes["asked"] as Changes) } : changes["asked"];
    const left = { ...(hurt["left"] as Changes), condition: "doubtful", ...(changes["left"] as Changes) };
    return { ...hurt, ...shop, ...changes, left, asked: asked ?? {} };
  });

/** Every torque in a document: keys that end in _Nm, and strings that name one; the echoed case is the mechanic's own. */
function torquesIn(value: unknown, path = ""): readonly string[] {
  if (typeof value === "string") return /N·m|N m\b|Nm\b|lbf|kgf/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (path === "" && key === "case") return [];
    return [...(/_Nm$/.test(key) ? [`${path}.${key}`] : []), ...torquesIn(inner, `${path}.${key}`)];
  });
}

/** The ways of closing what is left; a new thread or a new part is no make-do, and not refused with them. */
const ofWhatIsLeft = ({ id }: { readonly id: string }): boolean => /torque|longer|other seal|sealant/.test(id);

describe("a refused case contains no torque, no limit and no odds anywhere", () => {
  test("the walk finds the torques of a case that is weighed", () => {
    const found = torquesIn(documentOf({}));
    for (const key of ["window.limit_Nm", "strips.0.torque_Nm", "levels.floorFromM16_Nm", "because"])
      expect(found.some((it) => it.includes(key))).toBe(true);
  });

  test.each(causes)("%s", (_, changes) => {
    expect(torquesIn(documentOf(changes, [10, 46]))).toEqual([]);
  });

  test("in the document, in the text and in the picture of many cases", () => {
    fc.assert(
      fc.property(refusedCases, (changes) => {
        const form = changedCase(changes);
        const read = readCase(form, null);
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        const answer = weigh(read.given);
        const document = answerDocument(answer, read.ordinary, form, [10, 46], "0.0.0");
        expect(torquesIn(document)).toEqual([]);
        const { healthy, asFound, remedies, working, ranges, levels, measureNext } = document;
        expect(healthy).toBe(false);
        for (const { refused } of [asFound, ...remedies.filter(ofWhatIsLeft)]) expect(refused).not.toBeNull();
        for (const { window } of remedies) expect(window).toBeNull();
        expect({ working, ranges, levels, measureNext }).toEqual({
          working: [],
          ranges: {},
          levels: {},
          measureNext: [],
        });
        const text = answerLines(answer, document, [10, 46], true).join("\n");
        expect(text).not.toMatch(/N·m|lbf|\d in \d/);
        expect(answerSvg(answer)).not.toMatch(/N·m|lbf/);
      }),
      { numRuns: 300 },
    );
  });
});

test("beside a closure that is weighed, a refused one has no figure of its own", () => {
  fc.assert(
    fc.property(hurtCases, (changes) => {
      const { asFound, remedies } = documentOf({ ...changes, levels: {} });
      for (const { refused, window } of [asFound, ...remedies.filter(ofWhatIsLeft)])
        expect(window === null).toBe(refused !== null);
      for (const closure of [asFound, ...remedies]) {
        if (closure.refused) expect(torquesIn({ ...closure })).toEqual([]);
      }
    }),
    { numRuns: 60 },
  );
});

test("where everything is refused nothing is advised: no wrench, no stop in degrees", () => {
  for (const [, changes] of causes) {
    const { asFound, remedies } = weighed(changes);
    for (const { advice, stop } of [asFound, ...remedies]) expect([advice, stop]).toEqual([null, null]);
  }
});
