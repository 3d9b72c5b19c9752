import { describe, expect, test } from "vitest";
import { foundPort } from "../../../src/mechanics/remedies/foundPort.ts";
import type { RemedyId } from "../../../src/mechanics/remedies/method.ts";
import { weigh } from "../../../src/mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { answerLines } from "../../../src/sheets/answer/answerLines.ts";
import { benchAnswer } from "../../../src/sheets/answer/benchAnswer.ts";
import { benchFound } from "../../../src/sheets/answer/benchFound.ts";
import { benchPapers } from "../../../src/sheets/answer/benchPapers.ts";
import { benchPictures } from "../../../src/sheets/answer/benchPictures.tsx";
import { benchWays, wayDetails } from "../../../src/sheets/answer/benchWays.tsx";
import { casePageLines } from "../../../src/sheets/answer/casePageLines.ts";
import { ownerLines } from "../../../src/sheets/answer/ownerLines.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";

function weighedOf(written: unknown) {
  const read = readCase(written, "2026-11-25");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const weighed = weigh(read.given);
  const document = answerDocument(weighed, read.ordinary, null, [], "");
  return { ...read, weighed, document };
}

const example = weighedOf(exampleCase);
const refused = weighedOf({ ...exampleCase, asked: { ...exampleCase.asked, crack: "yes" } });
const unasked = weighedOf({ ...exampleCase, asked: {} });
const empty = weighedOf({ ...exampleCase, seal: { ...exampleCase.seal, material: "copper" } });

describe("the bench says what the command line says", () => {
  test("the figure to pull is the advice of the document", () => {
    const { figure, sign } = benchAnswer(example.weighed);
    expect(sign).toBe("pull");
    expect(Number(figure?.newtonMetres)).toBe(example.document.asFound.window?.advice_Nm);
  });

  test("no sentence of an answer is lost between its first words, its because and its why", () => {
    const { sentences, because, reasons } = benchAnswer(example.weighed);
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

  test("the row is what the command line offers, in its order; all ways come once each", () => {
    const offered = (withWorking: boolean): readonly string[] => {
      const lines = answerLines(example.weighed, example.document, [], withWorking);
      const from = lines.findIndex((it) => it.startsWith("In this order"));
      const to = lines.indexOf("", from);
      const names = example.document.remedies.map(({ name }) => name).toSorted((a, b) => b.length - a.length);
      const rows = lines.slice(from, to).filter((it) => /^ {2}\d/.test(it));
      return rows.map((row) => names.find((it) => row.replace(/^ {2}\d+ /, "").startsWith(`${it}:`)) ?? row);
    };
    const { ways, count } = benchWays(example.weighed, example.document, { open: null, all: false });
    expect(ways).toHaveLength(6);
    expect(ways.map(({ place }) => place)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(offered(false)).toEqual(ways.slice(0, 5).map(({ name }) => name));
    expect(ways.map(({ id }) => id)).toEqual(expect.arrayContaining(["solid bushing", "next size"]));

    const all = benchWays(example.weighed, example.document, { open: null, all: true }).ways;
    expect(count).toBe(all.length);
    expect(all.map(({ id }) => id).toSorted()).toEqual(example.document.remedies.map(({ id }) => id).toSorted());
    const priced = all.flatMap(({ name, price }) => (price === null ? [] : [name]));
    expect(priced.toSorted()).toEqual(offered(true).toSorted());
    expect(all.slice(0, priced.length).every(({ price }) => price !== null)).toBe(true);
    for (const { id } of all) expect(wayDetails(id, example.weighed, example.document)?.rows.length).toBeGreaterThan(0);
  });

  test("an open way stays in the row although it is not offered; a port with no offer has an empty row", () => {
    const open = benchWays(example.weighed, example.document, { open: "wire coil", all: false }).ways;
    expect([open.length, open.at(-1)?.id, open.at(-1)?.place]).toEqual([7, "wire coil", null]);
    const none = { ...unasked.weighed, ranking: [] };
    expect(benchWays(none, unasked.document, { open: null, all: false }).ways).toEqual([]);
  });
});

describe("the first answer, given before anything else of it is loaded", () => {
  test.each([
    ["the example", example],
    ["refused", refused],
    ["a question open", unasked],
    ["an empty window", empty],
  ])(
    "%s: its figure and sign are those of the whole answer, its sentence is the first of it",
    (_, { given, weighed }) => {
      const [first, whole] = [benchFound(foundPort(given)), benchAnswer(weighed)];
      expect([first.figure, first.sign, first.narrow]).toEqual([whole.figure, whole.sign, whole.narrow]);
      expect(whole.sentences[0]).toBe(
        whole.sentences[0]?.startsWith("As found") ? `As found: ${first.sentences[0]}` : first.sentences[0],
      );
    },
  );
});

describe("what a card opens to", () => {
  const { weighed, document } = example;
  const details = (id: RemedyId) => wayDetails(id, weighed, document);
  const { ways } = benchWays(weighed, document, { open: null, all: true });

  test("a repair that leaves a plug in a hole is drawn, small on its card and beside the port as found", () => {
    for (const id of ["solid bushing", "next size"] as const) {
      expect(ways.find((it) => it.id === id)?.section, id).toContain("<svg");
      expect(details(id)?.windows, id).toContain("<svg");
    }
    expect(details("next size")?.beforeAfter).toContain("M22x1.5");
    expect(details("solid bushing")?.beforeAfter).not.toContain("M22");
    const { insert } = weighed.repairs.find(({ id }) => id === "solid bushing") ?? {};
    const steel = [...(details("solid bushing")?.beforeAfter ?? "").matchAll(/class="steel bare" d="([^"]*)"/g)];
    const edge = String((insert?.outer_mm ?? 0) / 2);
    // Below the face, as far out as its thread: the head of the plug goes as far, but stands above it.
    expect(steel.filter(([, path = "-"]) => path.includes(edge) && !path.includes("-"))).toHaveLength(1);
    for (const id of ["wire coil", "new part"] as const) expect(details(id)?.beforeAfter, id).toBeNull();
  });

  test("every caution of a way stands once: with the answer, or in its details", () => {
    const answered = benchAnswer(weighed).cautions;
    for (const { id, name, cautions } of document.remedies) {
      const own = details(id as RemedyId)?.rows.find((it) => it.name === "Mind")?.lines ?? [];
      const all = [...answered, ...own];
      expect(all.length, name).toBe(new Set(all).size);
      for (const it of cautions) expect(all, name).toContain(it);
    }
    expect(details("welded and re-cut")?.rows.some((it) => it.name === "Mind")).toBe(false);
    const glued = details("sealant, no washer")
      ?.rows.find((it) => it.name === "Mind")
      ?.lines.join(" ");
    expect(glued).toContain("Never tighten it again after the first heat");
    expect(glued?.match(/skin/g)).toHaveLength(1);
  });
});

describe("no torque where none may be", () => {
  test.each([
    ["refused", refused],
    ["a question open", unasked],
  ])("%s: no figure, no window, no odds", (_, { weighed }) => {
    const { figure, sign } = benchAnswer(weighed);
    const { strip, pictures } = benchPictures(weighed, "30", true);
    expect({ figure, strip, sign, window: pictures?.window, odds: pictures?.odds }).toEqual({
      figure: null,
      strip: null,
      sign: "refused",
      window: null,
      odds: null,
    });
  });

  test("an empty window: no figure, and the word says so", () => {
    const { figure, sign, sentences } = benchAnswer(empty.weighed);
    expect([figure, sign]).toEqual([null, "no torque"]);
    expect(sentences.join(" ")).toContain("Would do:");
  });

  test("an open question is what comes next, with its field", () => {
    expect(benchAnswer(unasked.weighed).next?.field).toBe("asked.crack");
  });
});

describe("odds", () => {
  test("at a torque that was tried, in any unit of torque; none where it does not read", () => {
    const at = (tried: string | null) => benchPictures(example.weighed, tried, true).pictures?.odds?.at ?? null;
    expect(at(null)).toBe("46");
    expect(at("20")).toBe("20");
    expect(at("20,5")).toBe("20.5");
    expect(at("10 lbf·ft")).toBe("13.6");
    for (const text of ["20x", "", "0", "-3", "20 mm"]) expect(at(text), text).toBeNull();
  });
});
