import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { metricSizes, sizesOfDiameter } from "../../../src/mechanics/tables/iso261.ts";

// ISO 262:1998, table 1: the selection for screws, bolts and nuts, coarse pitch first.
test.each([
  [6, [1]],
  [7, [1]],
  [8, [1.25, 1]],
  [10, [1.5, 1.25, 1]],
  [12, [1.75, 1.5, 1.25]],
  [14, [2, 1.5]],
  [16, [2, 1.5]],
  [18, [2.5, 2, 1.5]],
  [20, [2.5, 2, 1.5]],
  [22, [2.5, 2, 1.5]],
  [24, [3, 2]],
  [27, [3, 2]],
  [30, [3.5, 2]],
  [33, [3.5, 2]],
  [36, [4, 3]],
  [39, [4, 3]],
  [42, [4.5, 3]],
])("ISO 262 selects M%s with the pitches %j", (d, pitches) => {
  const selected = sizesOfDiameter(d).filter((size) => size.selected);
  expect(selected.map(({ P_mm }) => P_mm)).toEqual(pitches);
  for (const { source } of selected) expect(source.firmness).toBe("published");
});

test("ISO 261 has no coarse pitch for the diameters of plugs alone", () => {
  for (const d of [15, 17, 25, 26, 28, 32, 35, 38, 40, 50, 55, 58, 62])
    expect(sizesOfDiameter(d).filter(({ series }) => series === "coarse")).toEqual([]);
});

test("every size for which limits are printed is in the series", () => {
  const text = readFileSync(new URL("../../published/iso965_6g6H.csv", import.meta.url), "utf8");
  const printed = text
    .split(/\r?\n/)
    .slice(2)
    .filter((row) => row !== "")
    .map((row) => row.split(",")[0]);
  const ours = new Set(metricSizes.map(({ designation }) => designation));
  expect(printed.filter((designation) => !ours.has(designation ?? ""))).toEqual([]);
});

test("no size is listed twice, and diameters ascend while pitches descend within the series", () => {
  expect(new Set(metricSizes.map(({ designation }) => designation)).size).toBe(metricSizes.length);
  const ordered = metricSizes.filter(({ series }) => series !== "outside ISO 261");
  for (const [i, size] of ordered.slice(1).entries()) {
    const before = ordered[i] ?? size;
    expect(size.d_mm > before.d_mm || (size.d_mm === before.d_mm && size.P_mm < before.P_mm), size.designation).toBe(
      true,
    );
  }
});
