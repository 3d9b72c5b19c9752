import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm2 } from "../../../src/mechanics/quantity/unit.ts";
import { metricThread, stressArea } from "../../../src/mechanics/threads/metricThread.ts";
import { agrees } from "../../published.ts";

// ISO 898-1:2013, table 4, coarse thread (from memory).
test.each([
  [3, 0.5, "5.03"],
  [3.5, 0.6, "6.78"],
  [4, 0.7, "8.78"],
  [5, 0.8, "14.2"],
  [6, 1, "20.1"],
  [7, 1, "28.9"],
  [8, 1.25, "36.6"],
  [10, 1.5, "58.0"],
  [12, 1.75, "84.3"],
  [14, 2, "115"],
  [16, 2, "157"],
  [18, 2.5, "192"],
  [20, 2.5, "245"],
  [22, 2.5, "303"],
  [24, 3, "353"],
  [27, 3, "459"],
  [30, 3.5, "561"],
  [33, 3.5, "694"],
  [36, 4, "817"],
  [39, 4, "976"],
])("M%s with coarse pitch %s has a stress area of %s mm²", (d, P, A_s) => agrees(area_mm2(d, P), A_s));

// ISO 898-1:2013, table 6, fine thread (from memory).
test.each([
  [8, 1, "39.2"],
  [10, 1.25, "61.2"],
  [10, 1, "64.5"],
  [12, 1.5, "88.1"],
  [12, 1.25, "92.1"],
  [14, 1.5, "125"],
  [16, 1.5, "167"],
  [18, 1.5, "216"],
  [20, 1.5, "272"],
  [22, 1.5, "333"],
  [24, 2, "384"],
  [27, 2, "496"],
  [30, 2, "621"],
  [33, 2, "761"],
  [36, 3, "865"],
  [39, 3, "1030"],
])("M%sx%s has a stress area of %s mm²", (d, P, A_s) => agrees(area_mm2(d, P), significant(A_s)));

describe("stress areas printed in Bickford, 4th ed. (test/published/strip_areas.csv)", () => {
  const lines = readFileSync(new URL("../../published/strip_areas.csv", import.meta.url), "utf8")
    .trim()
    .split(/\r?\n/);
  const rows = lines.slice(2).map((line) => line.split(","));

  test("has 15 sizes", () => expect(rows.length).toBe(15));
  for (const [thread = "", A_s = ""] of rows)
    test(`${thread} has a stress area of ${A_s} mm²`, () => {
      const [d = 0, P = 0] = thread.slice(1).split("x").map(Number);
      agrees(area_mm2(d, P), A_s);
    });
});

const area_mm2 = (d: number, P: number): number => valueIn(mm2, stressArea(metricThread(d, P)));

/** "1030" is printed to three figures, so half of its last digit is 5. */
const significant = (printed: string): string => (printed === "1030" ? "1.03e3" : printed);
