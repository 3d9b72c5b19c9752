import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { engineLabelRange, gearLabelRange, gradeFromText } from "../../../src/mechanics/fluid/gradesText.ts";

const both = ["2019", "2005"];

describe("grades from text", () => {
  test.each([
    ["75W-90", { type: "gear", winter: "75W", hot: "90", editions: both }],
    ["SAE 75w90", { type: "gear", winter: "75W", hot: "90", editions: both }],
    [" 80 W / 90 ", { type: "gear", winter: "80W", hot: "90", editions: both }],
    ["85W–140", { type: "gear", winter: "85W", hot: "140", editions: both }],
    ["SAE 90", { type: "gear", winter: null, hot: "90", editions: both }],
    ["80W", { type: "gear", winter: "80W", hot: null, editions: both }],
    ["75W-80", { type: "gear", winter: "75W", hot: "80", editions: both }],
    ["75W-75", { type: "gear", winter: "75W", hot: "75", editions: ["2019"] }],
    ["SAE 70", { type: "gear", winter: null, hot: "70", editions: ["2019"] }],
    ["10W-40", { type: "engine", winter: "10W", hot: "40" }],
    ["0W20", { type: "engine", winter: "0W", hot: "20" }],
    ["05W-30", { type: "engine", winter: "5W", hot: "30" }],
    ["SAE 30", { type: "engine", winter: null, hot: "30" }],
    ["SAE 10W", { type: "engine", winter: "10W", hot: null }],
    ["ISO VG 68", { type: "ISO VG", VG_mm2_s: 68 }],
    ["iso vg68", { type: "ISO VG", VG_mm2_s: 68 }],
    ["VG 2,2", { type: "ISO VG", VG_mm2_s: 2.2 }],
    ["ISO 220", { type: "ISO VG", VG_mm2_s: 220 }],
  ])("%j", (text, label) => expect(gradeFromText(text)).toEqual({ ok: true, label }));

  test.each([
    ["90", { type: "BareNumber", given: "90", accepted: ["SAE 90"] }],
    ["68", { type: "BareNumber", given: "68", accepted: ["ISO VG 68"] }],
    ["80", { type: "BareNumber", given: "80", accepted: ["80W", "SAE 80"] }],
    ["10", { type: "BareNumber", given: "10", accepted: ["10W", "ISO VG 10"] }],
    ["77", { type: "BareNumber", given: "77", accepted: [] }],
    ["75W-40", { type: "TwoStandards", winter: "75W", hot: "40" }],
    ["10W-90", { type: "TwoStandards", winter: "10W", hot: "90" }],
    ["85W-80", { type: "RowsExclude", winter: "85W", hot: "80" }],
    ["25W-20", { type: "RowsExclude", winter: "25W", hot: "20" }],
    ["", { type: "NotAGrade", given: "" }],
    ["ATF", { type: "NotAGrade", given: "ATF" }],
    ["75W-90 GL-5", { type: "NotAGrade", given: "75W-90 GL-5" }],
    ["-90", { type: "NotAGrade", given: "-90" }],
  ])("%j is refused", (text, problem) => expect(gradeFromText(text)).toEqual({ ok: false, problem }));

  test.each(["100W-90", "75W-95", "SAE 45", "ISO VG 70", "90W"])("%j names the grades there are", (text) => {
    const read = gradeFromText(text);
    expect(read).toMatchObject({ ok: false, problem: { type: "NoSuchGrade" } });
    if (!read.ok && read.problem.type === "NoSuchGrade") expect(read.problem.accepted.length).toBeGreaterThan(9);
  });

  test("answers any text at all, and what it accepts has viscosities", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^(SAE|ISO VG)? ?\d{0,4}W?-?\d{0,4}$/)), (text) => {
        const read = gradeFromText(text);
        if (!read.ok) return read.problem.type !== undefined;
        const { label } = read;
        if (label.type === "ISO VG") return label.VG_mm2_s >= 2.2;
        if (label.type === "engine") return engineLabelRange(label) !== null;
        return label.editions.length > 0 && label.editions.every((it) => gearLabelRange(label, it) !== null);
      }),
    );
  });
});

describe("viscosities at 100 °C that a label allows", () => {
  test("75W-90 allows the row of 90", () =>
    expect(gearLabelRange({ winter: "75W", hot: "90" }, "2019")).toEqual({ from_mm2_s: 13.5, below_mm2_s: 18.5 }));
  test("80W-80 of 2019 allows what both rows allow", () =>
    expect(gearLabelRange({ winter: "80W", hot: "80" }, "2019")).toEqual({ from_mm2_s: 8.5, below_mm2_s: 11 }));
  test("75W alone has no upper end", () =>
    expect(gearLabelRange({ winter: "75W", hot: null }, "2005")).toEqual({ from_mm2_s: 4.1, below_mm2_s: null }));
  test("75 is no grade of 2005", () => expect(gearLabelRange({ winter: null, hot: "75" }, "2005")).toBeNull());
  test("10W-40 allows the row of 40", () =>
    expect(engineLabelRange({ winter: "10W", hot: "40" })).toEqual({ from_mm2_s: 12.5, below_mm2_s: 16.3 }));
});
