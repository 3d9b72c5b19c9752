import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unifiedSizes } from "../../../src/mechanics/tables/asmeB1Sizes.ts";
import { unifiedThreadFromText } from "../../../src/mechanics/threads/unifiedText.ts";

describe("unified threads from text", () => {
  test.each([
    ["1/4-20 UNC", "1/4-20 UNC"],
    ["1/4-20", "1/4-20 UNC"],
    ["1/4 UNC", "1/4-20 UNC"],
    [" 1/4 - 20 unc ", "1/4-20 UNC"],
    [".250-20", "1/4-20 UNC"],
    ["0.25-28 UNF", "1/4-28 UNF"],
    ["#10-32 UNF", "#10-32 UNF"],
    ["10-32", "#10-32 UNF"],
    ["No. 10-24", "#10-24 UNC"],
    ["0.190-32", "#10-32 UNF"],
    ["7/8-14 UNF", "7/8-14 UNF"],
    ["1-14 UNS", "1-14 UNS"],
    ["1-14", "1-14 UNS"],
    ["1-8", "1-8 UNC"],
    ["1-64", "#1-64 UNC"],
    ["2-56", "#2-56 UNC"],
    ["2-4.5", "2-4.5 UNC"],
    ["1 1/2-6 UNC", "1 1/2-6 UNC"],
    ["1-1/2-6", "1 1/2-6 UNC"],
    ["1 1/16-12 UN", "1 1/16-12 UN"],
  ])("%j is %s", (text, designation) => {
    const read = unifiedThreadFromText(text);
    expect(read.ok && read.thread.designation).toBe(designation);
  });

  test.each([
    "",
    "1/4",
    "20",
    "1/4-",
    "M20x1.5",
    "G 1/2",
    "1/2-14 NPT",
    "1/4-20 UNC-2A",
    "1/4-20 XYZ",
    "-1/4-20",
    "1/4--20",
  ])("%j is no unified thread", (text) =>
    expect(unifiedThreadFromText(text)).toEqual({ ok: false, problem: { type: "not a unified thread" } }),
  );

  test("1/4-18 names the threads that 1/4 has", () =>
    expect(unifiedThreadFromText("1/4-18")).toEqual({
      ok: false,
      problem: {
        type: "not a standard pitch",
        size: "1/4",
        accepted: ["1/4-20 UNC", "1/4-28 UNF", "1/4-32 UNEF"],
      },
    }));

  test("5/8 UN names the threads, because several have that series", () =>
    expect(unifiedThreadFromText("5/8 UN")).toMatchObject({ ok: false, problem: { type: "not a standard pitch" } }));

  test("1/4-20 UNF names its true series", () =>
    expect(unifiedThreadFromText("1/4-20 UNF")).toEqual({
      ok: false,
      problem: { type: "another series", given: "UNF", accepted: ["1/4-20 UNC"] },
    }));

  test("11/16 UNC has no such series", () =>
    expect(unifiedThreadFromText("11/16 UNC")).toMatchObject({
      ok: false,
      problem: { type: "no such series", given: "UNC" },
    }));

  test.each(["4 1/2-8", "99/2-10", "1/0-20", "0.05-80"])("%j is outside the range", (text) =>
    expect(unifiedThreadFromText(text)).toEqual({
      ok: false,
      problem: { type: "outside the range", least: "#0", most: "2 1/2" },
    }),
  );

  test.each([
    ["29/32-14", ["7/8", "15/16"]],
    ["#7-32", ["#6", "#8"]],
    ["#99-10", ["#12"]],
  ])("%j names the sizes on either side", (text, nearest) =>
    expect(unifiedThreadFromText(text)).toEqual({ ok: false, problem: { type: "not a standard size", nearest } }),
  );

  test("reads the designation of every size of the series", () => {
    expect(new Set(unifiedSizes.map(({ designation }) => designation)).size).toBe(unifiedSizes.length);
    for (const { designation } of unifiedSizes) {
      const read = unifiedThreadFromText(designation);
      expect(read.ok && read.thread.designation, designation).toBe(designation);
    }
  });

  test("answers any text at all", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^#?\d{0,2}[ -]?\d{1,2}\/?\d{0,2}-?\d{0,2} ?(UNC|UNF)?$/)),
        (text) => {
          const read = unifiedThreadFromText(text);
          return read.ok
            ? unifiedSizes.some((it) => it.designation === read.thread.designation)
            : read.problem.type !== undefined;
        },
      ),
    );
  });
});
