import { describe, expect, test } from "vitest";
import { threadSum } from "../../../src/sheets/sums/threadSum.tsx";
import { answerOf, problemsOf } from "./read.ts";

const plug = { outside: "21.85", crests: "clean", gaps: "8", along: "12.1" };

describe("published: a designation's pitch and tolerance are those of ISO 261 and ISO 965", () => {
  test("21.85 mm and 8 gaps of 12.1 mm are M22x1.5, whose eight pitches are 12 mm", () => {
    const it = answerOf(threadSum(plug));
    expect(it.figure).toEqual({ value: "M22x1.5", unit: "", also: "" });
    expect(it.because).toContain("8 gaps reach 12.0 mm");
    expect(it.threads[0]).toBe("M22x1.5");
    expect(it.picture).toContain("M22x1.5: crest 8 at 12.0 mm");
    expect(it.working.length).toBeGreaterThan(2);
  });

  test("10.5 mm are seven pitches of 1.5 mm: it asks whether crests were counted", () => {
    const it = answerOf(threadSum({ ...plug, along: "10.5" }));
    expect(it.sign).toBe("Crests counted?");
    expect(it.sentences[0]).toMatch(/^Did you count crests instead of gaps\?/);
    expect(it.next?.field).toBe("counted");
  });

  test("who says that crests were counted is not asked again", () => {
    const it = answerOf(threadSum({ ...plug, along: "10.5", counted: "crests" }));
    expect(it.figure?.value).toBe("M22x1.5");
    expect(it.sentences.join(" ")).not.toContain("crests instead");
    expect(it.because).toContain("7 gaps reach 10.5 mm");
  });
});

test("a leaf of the gauge is named in millimetres or in threads per inch", () => {
  const metric = answerOf(threadSum({ outside: "19.9", seats: "1,5" }));
  expect(metric.figure?.value).toBe("M20x1.5");
  // 16 threads an inch at 3/4 inch are UNF by ASME B1.1.
  expect(answerOf(threadSum({ outside: "18.95", seats: "16/in" })).figure?.value).toBe("3/4-16 UNF");
});

// ISO 7-1:1994, 5 (from memory): a sixteenth of the depth on a taper hole, nothing on a parallel one.
test("a hole is asked for its narrowing where that tells taper from parallel, and named by it", () => {
  const taper = { outside: "20.7", gaps: "8", along: "14.5", grown: "0.6", grownOver: "10", bore: "18.6" };
  expect(answerOf(threadSum(taper)).next?.field).toBe("narrows");
  const parallel = answerOf(threadSum({ ...taper, narrows: "0", narrowsOver: "10" }));
  expect(parallel.figure?.value).toBe("Rp 1/2");
  expect(parallel.because).toContain("a parallel hole, closed by an R plug");
  expect(parallel.next?.sentence).toBe(
    "No other reading at the lift tells Rp 1/2 from R 1/2: the same R plug closes both.",
  );
  expect(answerOf(threadSum({ ...taper, narrows: "0.6", narrowsOver: "10" })).figure?.value).toBe("R 1/2");
  expect(problemsOf(threadSum({ ...taper, narrows: "0.6" }))).toEqual({ narrowsOver: "" });
});

test("binding after two turns stops the hand", () => {
  const it = answerOf(threadSum({ ...plug, felt: "tight", meshTurns: "2" }));
  expect([it.sign, it.stop]).toEqual(["Stop turning", true]);
});

test("a known plug that runs free into the hole speaks for its own thread", () => {
  const doubtful = { outside: "19.9", gaps: "4", along: "5.9" };
  const spun = { ...doubtful, turned: "known", meshIn: "M20x1.5", felt: "free", meshTurns: "6" };
  expect(answerOf(threadSum(spun)).figure).toEqual({ value: "M20x1.5", unit: "", also: "" });
  expect(problemsOf(threadSum({ ...doubtful, turned: "known", felt: "free", meshTurns: "6" }))).toEqual({ meshIn: "" });
});

describe("what is missing or mistyped is named, and nothing stands for it", () => {
  test("an empty bench wants the two readings that name most threads", () => {
    expect(problemsOf(threadSum({}))).toEqual({ outside: "", gaps: "" });
  });

  test("of two readings that belong together the other is wanted", () => {
    expect(problemsOf(threadSum({ gaps: "8" }))).toEqual({ along: "" });
    expect(problemsOf(threadSum({ hexagon: "24" }))).toEqual({ sister: "" });
    expect(problemsOf(threadSum({ ...plug, felt: "tight" }))).toEqual({ meshTurns: "" });
  });

  test("all mistakes are told at once", () => {
    const told = problemsOf(threadSum({ outside: "1,234.5", gaps: "2.5", along: "12 N·m", meshIn: "M21" }));
    expect(Object.keys(told).toSorted()).toEqual(["along", "gaps", "meshIn", "outside"]);
    expect(told["outside"]).toContain("could be read in two ways");
    expect(told["gaps"]).toBe("a whole number from 1 to 60");
  });
});
