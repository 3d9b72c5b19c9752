import { describe, expect, test } from "vitest";
import { holeClassFromText, plugClassFromText } from "../../../src/mechanics/threads/toleranceClass.ts";

describe("tolerance classes", () => {
  test("6g gives both diameters grade 6 and deviation g", () => {
    const zone = { grade: 6, deviation: "g" };
    expect(plugClassFromText(" 6g ")).toEqual({
      ok: true,
      toleranceClass: { designation: "6g", pitch: zone, major: zone },
    });
  });

  test("5g6g gives the pitch diameter grade 5 and the major diameter grade 6", () => {
    expect(plugClassFromText("5g 6g")).toEqual({
      ok: true,
      toleranceClass: {
        designation: "5g6g",
        pitch: { grade: 5, deviation: "g" },
        major: { grade: 6, deviation: "g" },
      },
    });
  });

  test("4H5H gives the pitch diameter grade 4 and the minor diameter grade 5", () => {
    expect(holeClassFromText("4H5H")).toEqual({
      ok: true,
      toleranceClass: {
        designation: "4H5H",
        pitch: { grade: 4, deviation: "H" },
        minor: { grade: 5, deviation: "H" },
      },
    });
  });

  test.each([
    ["5g", { type: "no such grade", of: "crest diameter", grade: "5" }],
    ["10g", { type: "no such grade", of: "pitch diameter", grade: "10" }],
    ["2g6g", { type: "no such grade", of: "pitch diameter", grade: "2" }],
    ["06g", { type: "no such grade", of: "pitch diameter", grade: "06" }],
    ["6k", { type: "no such deviation", deviation: "k" }],
    ["6H", { type: "no such deviation", deviation: "H" }],
    ["6gg", { type: "no such deviation", deviation: "gg" }],
    ["5g6k", { type: "no such deviation", deviation: "k" }],
    ["g6", { type: "not a tolerance class" }],
    ["6g6g6g", { type: "not a tolerance class" }],
    ["", { type: "not a tolerance class" }],
  ])("%j is no class of a plug, and what is accepted is said", (given, problem) => {
    const accepted = { pitchGrades: [3, 4, 5, 6, 7, 8, 9], crestGrades: [4, 6, 8], deviations: ["e", "f", "g", "h"] };
    expect(plugClassFromText(given)).toEqual({ ok: false, problem: { ...problem, given, accepted } });
  });

  test.each([
    ["3H", { type: "no such grade", of: "pitch diameter", grade: "3" }],
    ["9H", { type: "no such grade", of: "pitch diameter", grade: "9" }],
    ["6H9H", { type: "no such grade", of: "crest diameter", grade: "9" }],
    ["6h", { type: "no such deviation", deviation: "h" }],
    ["6Hx", { type: "no such deviation", deviation: "Hx" }],
    ["H", { type: "not a tolerance class" }],
  ])("%j is no class of a hole, and what is accepted is said", (given, problem) => {
    const accepted = { pitchGrades: [4, 5, 6, 7, 8], crestGrades: [4, 5, 6, 7, 8], deviations: ["G", "H"] };
    expect(holeClassFromText(given)).toEqual({ ok: false, problem: { ...problem, given, accepted } });
  });
});
