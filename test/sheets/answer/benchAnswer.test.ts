import { describe, expect, test } from "vitest";
import { answerDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { benchAnswer, weighBench } from "../../../src/sheets/answer/benchAnswer.tsx";
import { benchPapers } from "../../../src/sheets/answer/benchPapers.ts";
import { benchWays, wayDetails } from "../../../src/sheets/answer/benchWays.tsx";
import { casePageLines } from "../../../src/sheets/answer/casePageLines.ts";
import { ownerLines } from "../../../src/sheets/answer/ownerLines.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";

function weighedOf(written: unknown) {
  const found = weighBench(written, "2026-11-25");
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const document = answerDocument(found.weighed, found.ordinary, null, [], "");
  return { ...found, document };
}

const example = weighedOf(exampleCase);
const refused = weighedOf({ ...exampleCase, asked: { ...exampleCase.asked, crack: "yes" } });
const unasked = weighedOf({ ...exampleCase, asked: {} });
const empty = weighedOf({ ...exampleCase, seal: { ...exampleCase.seal, material: "copper" } });

describe("the bench says what the command line says", () => {
  test("the figure to pull is the advice of the document", () => {
    const { figure, sign } = benchAnswer(example.weighed, null, false);
    expect(sign).toBe("pull");
    expect(Number(figure?.newtonMetres)).toBe(example.document.asFound.window?.advice_Nm);
  });

  test("no sentence of an answer is lost between its first words, its because and its why", () => {
    const { sentences, because, reasons } = benchAnswer(example.weighed, null, false);
    const all = [...sentences, because, ...reasons].join(" ");
    for (const it of example.document.asFound.because) expect(all).toContain(it);
  });

  test("the papers have every word of the terminal's, in order", () => {
    const words = (lines: readonly string[]): string => lines.join(" ").replace(/\s+/g, " ").trim();
    const { owner, casePage } = benchPapers(example.weighed, example.document);
    const flat = (paper: typeof owner): string =>
      words(paper.flatMap(({ heading, lines }) => [heading ?? "", ...lines]));
    expect(flat(owner)).toBe(words(ownerLines(example.weighed)));
    expect(flat(casePage)).toBe(words(casePageLines(example.weighed)));
    expect(owner.filter(({ heading }) => heading !== null)).toHaveLength(3);
  });

  test("every way is in the row once, those that may be offered first and in their order", () => {
    const ways = benchWays(example.weighed, example.document);
    expect(ways.map(({ id }) => id).toSorted()).toEqual(example.document.remedies.map(({ id }) => id).toSorted());
    expect(ways.flatMap(({ place, id }) => (place === null ? [] : [id]))).toEqual(
      example.document.ranking.map(({ id }) => id),
    );
    for (const { id } of ways)
      expect(wayDetails(id, example.weighed, example.document)?.rows.length).toBeGreaterThan(0);
  });
});

describe("no torque where none may be", () => {
  test.each([
    ["refused", refused],
    ["a question open", unasked],
  ])("%s: no figure, no window, no odds", (_, { weighed }) => {
    const { figure, strip, pictures, sign } = benchAnswer(weighed, "30", true);
    expect({ figure, strip, sign, window: pictures?.window, odds: pictures?.odds }).toEqual({
      figure: null,
      strip: null,
      sign: "refused",
      window: null,
      odds: null,
    });
  });

  test("an empty window: no figure, and the word says so", () => {
    const { figure, sign, sentences } = benchAnswer(empty.weighed, null, false);
    expect([figure, sign]).toEqual([null, "no torque"]);
    expect(sentences.join(" ")).toContain("Would do:");
  });

  test("an open question is what comes next, with its field", () => {
    expect(benchAnswer(unasked.weighed, null, false).next?.field).toBe("asked.crack");
  });
});

describe("odds", () => {
  test("at a torque that was tried, in any unit of torque; none where it does not read", () => {
    const at = (tried: string | null) => benchAnswer(example.weighed, tried, true).pictures?.odds?.at ?? null;
    expect(at(null)).toBe("46");
    expect(at("20")).toBe("20");
    expect(at("20,5")).toBe("20.5");
    expect(at("10 lbf·ft")).toBe("13.6");
    for (const text of ["20x", "", "0", "-3", "20 mm"]) expect(at(text), text).toBeNull();
  });
});
