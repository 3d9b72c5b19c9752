import { describe, expect, test } from "vitest";
import { closedAtFromText } from "../../../src/sheets/sums/closedAt.ts";
import { cureSum } from "../../../src/sheets/sums/cureSum.tsx";
import { answerOf, problemsOf } from "./read.ts";

const today = "2026-11-25";
const joint = { bead: "3", temperature: "12", humidity: "65" };

// Vapour: 0.5 of 2809 Pa over 0.65 of 1402 Pa is 1.54 (WMO-No. 8); (3 mm / 2.5 mm)² days of it are 53 h, 2.5 mm being the middle of
// the judged speed.
test("3 mm at 12 °C and 65 % are cured through in about 54 h", () => {
  const it = answerOf(cureSum(joint, today));
  expect([it.sign, it.figure?.value, it.figure?.unit]).toEqual(["Cured through", "54", "h"]);
  expect(it.next?.field).toBe("closed");
  expect(it.picture).toContain("Sealed joint");
});

test("both edges open take a quarter of the time, for the way is half as long", () => {
  const hours = Number(answerOf(cureSum({ ...joint, open: "both" }, today)).figure?.value);
  expect(hours).toBeGreaterThanOrEqual(13);
  expect(hours).toBeLessThanOrEqual(14);
});

test("closed at 11:40 it comes down by the clock, and goes two days later", () => {
  const it = answerOf(cureSum({ ...joint, closed: "11:40" }, today));
  expect(it.sentences[0]).toMatch(/^Comes down at 13:\d\d at the earliest/);
  expect(it.sentences[1]).toMatch(/^Away from 2026-11-27 1\d:\d\d/);
});

test("a label's longer time counts", () => {
  expect(answerOf(cureSum({ ...joint, label: "24" }, today)).sentences[0]).toContain("Comes down 24 h after");
});

describe("a tube that may not be used stops it", () => {
  test.each([
    ["a label that does not name the fluid", { namesFluid: "no" }, "does not name this fluid"],
    ["a date that is past", { useBy: "2026-11-24" }, "past its date, 2026-11-24"],
  ] as const)("%s", (_, label, words) => {
    const it = answerOf(cureSum({ ...joint, ...label }, today));
    expect([it.sign, it.stop, it.figure]).toEqual(["Not this tube", true, null]);
    expect(it.sentences.join(" ")).toContain(words);
    expect(it.sentences.join(" ")).not.toMatch(/Comes down|Away/);
    expect(it.picture).toBeNull();
  });

  test("its last good day is good", () => {
    expect(answerOf(cureSum({ ...joint, useBy: today }, today)).stop).toBe(false);
  });
});

describe("what is missing or mistyped is named", () => {
  test("width, warmth and air are wanted; damp by feel will do", () => {
    expect(problemsOf(cureSum({}, today))).toEqual({ bead: "", temperature: "", humidity: "" });
    expect(cureSum({ bead: "3", temperature: "12", felt: "damp" }, today).ok).toBe(true);
  });

  test.each([
    ["humidity", "165"],
    ["humidity", "65 mm"],
    ["closed", "25:70"],
    ["closed", "2026-02-30 11:40"],
    ["useBy", "soon"],
    ["temperature", "200"],
    ["bead", "0"],
  ])("%s %s", (field, text) => {
    expect(Object.keys(problemsOf(cureSum({ ...joint, [field]: text }, today)))).toEqual([field]);
  });
});

test("a clock time is read in the ways people write it, and no other", () => {
  const at = (text: string): string | null => closedAtFromText(text, today)?.toISOString().slice(0, 16) ?? null;
  expect(["9:05", "09.05", "2026-11-24 9:05", "2026-11-24T09:05", "24:00", "noon"].map(at)).toEqual([
    "2026-11-25T09:05",
    "2026-11-25T09:05",
    null,
    "2026-11-24T09:05",
    null,
    null,
  ]);
});
