import { expect, test } from "vitest";
import { metricDiameters_mm, sizesOfDiameter } from "../../../src/mechanics/tables/iso261.ts";
import type { WrittenCase } from "../../../src/sheets/caseForm/caseSchema.ts";
import { ordinaryMetric } from "../../../src/sheets/caseForm/ordinaryMetric.ts";
import { threadGiven } from "../../../src/sheets/caseForm/threadGiven.ts";

const port = (thread: string, plug?: { readonly tolerance: string }): WrittenCase => ({
  joint: { kind: "gear case drain" },
  thread,
  case: { material: "cast aluminium" },
  ...(plug ? { plug } : {}),
  left: {},
});

test("reads every metric size that a case takes just as the reader of all standards does", () => {
  const sizes = metricDiameters_mm
    .filter((d) => d >= 1.6 && d <= 64)
    .flatMap((d) => sizesOfDiameter(d).map(({ P_mm }) => `M${d}x${P_mm}`));
  expect(sizes.length).toBeGreaterThan(50);
  for (const size of sizes) {
    const read = ordinaryMetric(port(size));
    expect(read, size).not.toBeNull();
    expect(read, size).toEqual(threadGiven(port(size), []));
  }
});

test.each([
  ["G 1/2", undefined],
  ["3/4-16 UNF", undefined],
  ["M20x1.4", undefined],
  ["", undefined],
  ["M20x1.5", { tolerance: "5g6g" }],
])("leaves %s %o to the reader of all standards", (thread, plug) => {
  expect(ordinaryMetric(port(thread, plug))).toBeNull();
});
