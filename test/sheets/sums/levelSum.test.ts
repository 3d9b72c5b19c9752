import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { levelSum } from "../../../src/sheets/sums/levelSum.tsx";
import { answerOf, problemsOf } from "./read.ts";

describe("published: plain geometry", () => {
  test("60 ml over 2.7 mm are 22 ml a millimetre", () => {
    const it = answerOf(levelSum({ drawn: "60", fallen: "2.7" }));
    expect([it.sign, it.figure?.value, it.figure?.unit]).toEqual(["A millimetre holds", "22", "ml"]);
    expect(it.next?.field).toBe("below");
  });

  test("150 by 120 mm are 18 ml a millimetre, a fifth less where gears cut 10 to 30 %", () => {
    const box = { by: "shape", shape: "box", length: "150", width: "120", depth: "70" };
    expect(answerOf(levelSum(box)).figure?.value).toBe("18");
    expect(answerOf(levelSum({ ...box, gears: "yes" })).figure?.value).toBe("14");
  });

  test("8 mm at 22 ml a millimetre are 176 ml short, in steps that a hook earns", () => {
    const it = answerOf(levelSum({ by: "known", perMm: "22", below: "8", allowed: "8", target: "0" }));
    expect(it.figure?.value).toBe("180");
    expect(it.sentences.join(" ")).toMatch(/Fill 180 ml .* to the lip: 3 full strokes/);
    expect(it.picture).toContain("<svg");
    expect(it.working.length).toBeGreaterThan(0);
  });
});

test("a pour that would run out says stop before it is poured", () => {
  const it = answerOf(levelSum({ by: "known", perMm: "22", below: "2", pour: "500" }));
  expect(it.stop).toBe(true);
  expect(it.sentences.join(" ")).toContain("Stop before you pour");
});

test("law: the lower the level, the more is short", () => {
  const short = (below: number): number =>
    Number(answerOf(levelSum({ by: "known", perMm: "20", below: String(below) })).figure?.value);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 2, max: 20 }), (below, more) => {
      expect(short(below + more)).toBeGreaterThan(short(below));
    }),
    { numRuns: 40 },
  );
});

describe("what is missing or mistyped is named", () => {
  test.each([
    [{}, { drawn: "", fallen: "" }],
    [{ by: "known" }, { perMm: "" }],
    [{ by: "shape" }, { shape: "" }],
    [
      { by: "shape", shape: "ellipse", width: "100" },
      { length: "", height: "", depth: "" },
    ],
    [{ drawn: "60", fallen: "2.7", pour: "200" }, { below: "" }],
  ] as const)("%j wants %j", (texts, wanted) => {
    expect(problemsOf(levelSum(texts))).toEqual(wanted);
  });

  test("a fall that no hook can tell is refused with what would do", () => {
    expect(problemsOf(levelSum({ drawn: "60", fallen: "0.5" }))["fallen"]).toMatch(/^at least \d\.\d mm: draw more$/);
  });

  test("a depth above the case is refused", () => {
    const ball = { by: "shape", shape: "ball", width: "100", depth: "120" };
    expect(problemsOf(levelSum(ball))["depth"]).toContain("less than 100 mm");
  });
});
