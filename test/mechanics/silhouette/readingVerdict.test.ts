import { expect, test } from "vitest";
import { readingGrade, readingReasons } from "../../../src/mechanics/silhouette/readingVerdict.ts";
import type { ThreadReading } from "../../../src/mechanics/silhouette/threadReading.ts";

/** A reading of a sharp photo from the side of a thread of M12x1.5, with nothing against it. */
const clear: ThreadReading = {
  period_px: 25,
  width_px: 200,
  turns: 7,
  similarity: 0.95,
  periodError: 0.001,
  phaseRms: 0.005,
  sidesDiffer: 0.004,
  halfPhaseOff: 0.02,
  swing: 0.2,
  edgeScatter_px: 0.4,
  edgeCount: 12,
  edged: 1,
  edgeOverNoise: 100,
  soft: 0.17,
  gap: 0.02,
  depth: 0.54,
  helixFit: 0.95,
  lead: 1,
  oblique: 0.02,
  taper: 0,
  drawn: { ticks: [], lines: [] },
};

const gradeOf = (it: ThreadReading) => readingGrade(it, readingReasons(it), 0.01);

test("nothing speaks against a clear reading", () => {
  expect(readingReasons(clear)).toEqual([]);
  expect(gradeOf(clear)).toBe("good");
});

test("a covered rim, and what it puts out of step, count as one thing", () => {
  expect(gradeOf({ ...clear, edged: 0.5 })).toBe("fair");
  expect(readingReasons({ ...clear, edged: 0.5, halfPhaseOff: 0.3 })).toEqual(["sides out of step", "rim covered"]);
  expect(gradeOf({ ...clear, edged: 0.5, halfPhaseOff: 0.3 })).toBe("fair");
});

test("a covered rim whose outline is not seen asks for another photo", () => {
  expect(gradeOf({ ...clear, edged: 0.5, halfPhaseOff: null })).toBe("again");
});

test("sides whose pitches differ by 8 % are not both of the thread", () => {
  expect(gradeOf({ ...clear, sidesDiffer: 0.05 })).toBe("fair");
  expect(gradeOf({ ...clear, sidesDiffer: 0.08 })).toBe("again");
});
