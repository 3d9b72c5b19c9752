import { describe, expect, test } from "vitest";
import { caseTexts } from "../../../src/apps/web/bench/caseTexts.ts";
import { knownOverTyped } from "../../../src/apps/web/bench/typedOver.ts";
import { weighedBench } from "../../../src/apps/web/bench/weighedBench.ts";
import { writtenCase } from "../../../src/apps/web/bench/writtenCase.ts";
import { casesOfDemo } from "../../../src/demo/cases.ts";
import { demoJournal } from "../../../src/demo/demoJournal.ts";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { caseFromJournal } from "../../../src/sheets/journal/caseFromJournal.ts";

const port = "chipper-drain";
const { entries } = demoJournal("2026-11-25T10:40:00Z", "test");
const workshop = project(
  shop,
  entries.filter(({ job }) => job === null),
);
const sheet = project(
  jobSheet,
  entries.filter(({ job }) => job === "0412"),
);
const asked = { crack: "no", pressure: "1.2 bar", reaches: [] };

describe("on the bench it is typed as a hand would have", () => {
  test("bare figures beside their units, a pressure behind its yes, an earlier repair behind its own", () => {
    const repairedBefore = { method: "wire coil", cause: "pulled out" };
    expect(caseTexts({ asked: { ...asked, repairedBefore } })).toEqual({
      "asked.crack": "no",
      "asked.pressure": "yes",
      "asked.pressure.value": "1.2",
      "asked.reaches": "nothing",
      "asked.repairedBefore": "yes",
      "asked.repairedBefore.method": "wire coil",
      "asked.repairedBefore.cause": "pulled out",
    });
    // A method by a name that is none of ours is asked for again.
    const foreign = caseTexts({ asked: { ...asked, repairedBefore: { method: "some paste" } } });
    expect(foreign["asked.repairedBefore"]).toBe("yes");
    expect(foreign).not.toHaveProperty("asked.repairedBefore.method");
  });

  test.each(Object.entries(casesOfDemo))("%s comes back from the bench as it was written", (_, written) => {
    const { air: _air, asked: answers, ...asks } = written as typeof written & { air?: unknown };
    const { overrides: _overrides, ...plain } = answers as typeof answers & { overrides?: unknown };
    const typed = writtenCase(caseTexts({ ...asks, asked: plain }));
    if (!typed.ok) throw new Error(JSON.stringify(typed.problems));
    const read = (it: object) => readCase(it, "2026-11-25");
    expect(read(typed.document)).toEqual(read({ ...asks, asked: plain }));
  });
});

test("what the journal knows takes the place of what was typed whole: no old evidence, no other figure's seal", () => {
  const typed = {
    "left.turns": "3",
    "case.threadDepth": "16",
    "case.threadDepth.how": "rule",
    "bookFigures.0.torque": "40",
    "bookFigures.0.source": "plate",
    "bookFigures.0.seal": "copper",
    "bookFigures.1.torque": "46",
    "seal.kind": "flat washer",
  };
  const known = { "case.threadDepth": "18", "bookFigures.0.torque": "34", "bookFigures.0.source": "service sheet" };
  const { "left.turns": turns, "bookFigures.1.torque": second, "seal.kind": seal } = typed;
  expect(knownOverTyped(known, typed)).toEqual({
    ...known,
    "left.turns": turns,
    "bookFigures.1.torque": second,
    "seal.kind": seal,
  });
});

describe("what was weighed on the bench is kept as the engine said it", () => {
  const weighed = (texts: Readonly<Record<string, string>>) =>
    weighedBench(texts, port as never, "2026-11-25", "1.2.3");

  test("carried from the journal to the bench and back it has the figures that were written down on the day", () => {
    const first = sheet.ports[port as never]?.weighed;
    const again = weighed(caseTexts(caseFromJournal(port, sheet, workshop)));
    if (!again.ok) throw new Error(JSON.stringify(again.problems));
    expect(factSchema.safeParse(again.fact).error).toBeUndefined();
    expect([again.fact.engine, again.fact.port, again.fact.case["today"]]).toEqual(["1.2.3", port, "2026-11-25"]);
    expect(again.fact.asFound).toEqual(first?.asFound);
    expect(again.fact.options.map(({ id, window, refused }) => [id, window, refused])).toEqual(
      first?.options.map(({ id, window, refused }) => [id, window, refused]),
    );
  });

  test("a ring that stands on the bench under a taper plug is no part of what was weighed", () => {
    const port = { "joint.kind": "gear case drain", "case.material": "cast aluminium", "left.turns": "4.5" };
    const taper = weighed({ ...port, thread: "R 1/2", "seal.kind": "bonded seal", "seal.outside": "28" });
    if (!taper.ok) throw new Error(JSON.stringify(taper.problems));
    expect(taper.fact.case).not.toHaveProperty("seal");
    expect(readCase(taper.fact.case, null).ok).toBe(true);
    const parallel = weighed({ ...port, thread: "G 1/2", "seal.kind": "bonded seal" });
    expect(parallel.ok && parallel.fact.case["seal"]).toEqual({ kind: "bonded seal" });
  });

  test("what does not read is not weighed, by the names of its fields", () => {
    const none = weighed({ thread: "M20x1.5" });
    expect(none.ok ? [] : none.problems.map(({ field }) => field)).toEqual(["joint.kind", "case.material"]);
    const wrong = weighed({
      "joint.kind": "gear case drain",
      thread: "M20x1.5",
      "case.material": "cast aluminium",
      "left.turns": "many",
    });
    expect(wrong.ok ? [] : wrong.problems.map(({ field }) => field)).toEqual(["left.turns"]);
  });
});
