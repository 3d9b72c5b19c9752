import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { metricSizes } from "../../../src/mechanics/tables/iso261.ts";
import { metricThreadFromText } from "../../../src/mechanics/threads/metricText.ts";

describe("metric threads from text", () => {
  test.each([
    ["M20x1.5", "M20x1.5"],
    ["M20 x 1,5", "M20x1.5"],
    ["M20×1.5", "M20x1.5"],
    [" m 20 X 1.50 ", "M20x1.5"],
    ["M20*1.5", "M20x1.5"],
    ["M20", "M20x2.5"],
    ["M8", "M8x1.25"],
    ["M1,6", "M1.6x0.35"],
    ["M64", "M64x6"],
  ])("%j is %s", (text, designation) => {
    const read = metricThreadFromText(text);
    expect(read.ok && read.thread.designation).toBe(designation);
  });

  test.each(["", "M", "20x1.5", "M20x", "M20x1.5x3", "M-20", "M20x-1.5", "M20 1.5", "M1.234.5", "G 1/2", "M20x1.5-6g"])(
    "%j is no metric thread",
    (text) => expect(metricThreadFromText(text)).toEqual({ ok: false, problem: { type: "not a metric thread" } }),
  );

  test.each(["M20x0", "M20x1.3", "M20x99"])("%j names the pitches that M20 has", (text) =>
    expect(metricThreadFromText(text)).toEqual({
      ok: false,
      problem: { type: "not a standard pitch", d_mm: 20, pitches_mm: [2.5, 2, 1.5, 1, 0.75] },
    }),
  );

  test("M26 has no coarse pitch that could be meant", () =>
    expect(metricThreadFromText("M26")).toEqual({
      ok: false,
      problem: { type: "no coarse pitch", d_mm: 26, pitches_mm: [1.5] },
    }));

  test.each(["M0", "M1.5", "M64.5x6", "M100x6", "M9999999999999999999999"])("%j is outside the range", (text) =>
    expect(metricThreadFromText(text)).toEqual({
      ok: false,
      problem: { type: "outside the range", least: "M1.6", most: "M64" },
    }),
  );

  test.each([
    ["M19x1.5", ["M18", "M20"]],
    ["M63.5", ["M63", "M64"]],
  ])("%j names the diameters on either side", (text, nearest) =>
    expect(metricThreadFromText(text)).toEqual({ ok: false, problem: { type: "not a standard diameter", nearest } }),
  );

  test("reads the designation of every size of the series", () => {
    for (const { designation, d_mm, P_mm } of metricSizes) {
      const read = metricThreadFromText(designation);
      expect(read.ok && read.thread.designation, designation).toBe(`M${d_mm}x${P_mm}`);
    }
  });

  test("answers any text at all", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^ ?[Mm] ?\d{0,3}[.,]?\d? ?[x×]? ?\d?[.,]?\d{0,2}$/)),
        (text) => {
          const read = metricThreadFromText(text);
          return read.ok
            ? metricSizes.some((it) => it.designation === read.thread.designation)
            : read.problem.type !== undefined;
        },
      ),
    );
  });
});
