import { describe, expect, test } from "vitest";
import { remedyIds } from "../../../src/mechanics/remedies/method.ts";
import { casePageLines } from "../../../src/sheets/answer/casePageLines.ts";
import { ownerLines } from "../../../src/sheets/answer/ownerLines.ts";
import { ownerNames, ownerSentences } from "../../../src/sheets/words/ownerWords.ts";
import { type Changes, sound, weighed } from "../../mechanics/remedies/changedCase.ts";

const owner = (changes: Changes): string => ownerLines(weighed(changes)).join("\n");
const page = (changes: Changes): string => casePageLines(weighed(changes)).join("\n");

const cases: readonly (readonly [string, Changes])[] = [
  ["hurt", {}],
  ["gone", { left: { condition: "gone" } }],
  ["spark plug", { joint: { kind: "spark plug" } }],
  ["motorcycle", { joint: { kind: "motorcycle sump" } }],
  ["hardly anything known", { plug: undefined, seal: undefined, surface: undefined, wrenches: undefined }],
];

describe("the owner's version", () => {
  test.each(cases)("has at most three rows, each with price, time and what it is: %s", (_, changes) => {
    const text = owner(changes);
    const rows = text.split("\n").filter((it) => /^\d {2}\S/.test(it));
    expect(rows.length).toBeGreaterThanOrEqual(1);
    expect(rows.length).toBeLessThanOrEqual(3);
    expect(text.match(/Price /g)?.length).toBe(rows.length);
    expect(text.match(/Ready /g)?.length).toBe(rows.length);
  });

  test.each(cases)("has no torque and no word of the trade, and says that it is an estimate: %s", (_, changes) => {
    const text = owner(changes);
    expect(text).not.toMatch(
      /N·m|lbf|window|clamp|pitch|torque|M\d+x|wire.coil|insert|bushing|make-do|combustion|port\b|seat|6[gH]\b/i,
    );
    expect(text).toContain("estimates");
    expect(text).toContain("not an approval to drive");
    for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  test("every method has its sentence and its name in an owner's words", () => {
    for (const id of remedyIds) {
      expect(ownerSentences[id]).toMatch(/\.$/);
      expect(ownerNames[id]).not.toMatch(/torque|washer|insert|bush|R\d/);
    }
  });

  test("every reason for a refusal has its sentence in an owner's words", () => {
    const reasons: readonly Changes[] = [
      { joint: { kind: "clamp bolt in a casting" } },
      { asked: { pressure: "3 bar" } },
      { joint: { kind: "coolant drain" }, seal: { kind: "sealant, metal to metal", material: undefined } },
      { asked: { reaches: ["exhaust"] } },
      { joint: { kind: "outboard lower unit" } },
      { asked: { crack: "yes" } },
      { left: { turns: "1" } },
      { left: { turns: undefined } },
      { asked: { repairedBefore: { method: "lower torque" } } },
      { asked: { people: "yes" } },
      { asked: { breather: "blocked" } },
      { asked: { crack: undefined } },
      { seal: { kind: "taper", material: undefined } },
    ];
    for (const changes of reasons) {
      const text = owner(changes);
      expect(text).toMatch(/It cannot stay as it is\. [A-Z]/);
      expect(text).not.toMatch(/make-do|combustion|bushing|clamp|torque|breather|port\b/i);
    }
  });

  test("what closes a spark plug hole is called a spark plug", () => {
    const text = owner({ joint: { kind: "spark plug" }, case: { threadDepth: "26 mm", thinnestWall: "14 mm" } });
    expect(text).toContain("the same spark plug");
    expect(text).not.toMatch(/bolt/);
  });

  test("a sound port is normal service, in one line", () => {
    expect(owner({ left: sound })).toBe("The bolt and its thread are sound: normal service.");
  });
});

describe("the page for a colleague", () => {
  const named: Changes = {
    wrenches: [{ name: "KEEPSAKE", least: "5 N·m", most: "25 N·m", calibrated: "2026-06-01" }],
    bookFigures: [{ torque: "46 N·m", source: "HANDBOOK OF THIS MACHINE" }],
    asked: { overrides: [{ rule: "7 too little", by: "SOMEBODY", reason: "PRIVATE" }] },
    left: { turns: "1" },
  };

  test("names no wrench, no source, no person and no reason of his", () => {
    for (const changes of [named, { ...named, left: { turns: "6" } }]) {
      const text = page(changes);
      expect(text).not.toMatch(/KEEPSAKE|HANDBOOK|SOMEBODY|PRIVATE/);
      expect(text).toContain("M20x1.5");
    }
  });

  test.each(cases)("fits one page and ends with its question and the warning: %s", (_, changes) => {
    const lines = casePageLines(weighed(changes));
    expect(lines.length).toBeLessThanOrEqual(70);
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
    const text = lines.join("\n");
    expect(text).toContain("What would you do");
    expect(text).toContain("not an approval to drive");
    expect(text).toContain("Would do, in this order");
  });

  test("a refused port has no torque on it", () => {
    for (const changes of [
      { left: { condition: "gone" } },
      { joint: { kind: "spark plug" } },
      { asked: { crack: "yes" } },
    ])
      expect(page(changes)).not.toMatch(/N·m|lbf/);
  });
});
