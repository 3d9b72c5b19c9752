import { describe, expect, test } from "vitest";
import { type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { metricSizes } from "../../../src/mechanics/tables/iso261.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { wireCoilHole } from "../../../src/mechanics/threads/wireCoilHole.ts";
import { agrees } from "../../published.ts";

// Formulas from memory of DIN 8140 and ASME B18.29.2M, whose pitch diameters agree with the limits of STI taps in
// Machinery's Handbook. The figures were worked from them apart from this program, minor diameters to 0.01. One of them
// is put right: STI M12x1.75 stood at 12.65, where d + H/4 + T_D1(5) = 12 + 0.3789 + 0.265 = 12.644.
describe("wire-coil holes: D_STI, D_2STI, least and greatest minor diameter", () => {
  test.each([
    [6, 1, "7.299 6.650 6.22 6.41"],
    [8, 1.25, "9.624 8.812 8.27 8.48"],
    [10, 1.5, "11.949 10.974 10.32 10.56"],
    [10, 1.25, "11.624 10.812 10.27 10.48"],
    [12, 1.75, "14.273 13.137 12.38 12.64"],
    [12, 1.5, "13.949 12.974 12.32 12.56"],
    [12, 1.25, "13.624 12.812 12.27 12.48"],
    [14, 1.5, "15.949 14.974 14.32 14.56"],
    [14, 1.25, "15.624 14.812 14.27 14.48"],
    [16, 1.5, "17.949 16.974 16.32 16.56"],
    [18, 1.5, "19.949 18.974 18.32 18.56"],
    [18, 2.5, "21.248 19.624 18.54 18.90"],
    [20, 1.5, "21.949 20.974 20.32 20.56"],
    [22, 1.5, "23.949 22.974 22.32 22.56"],
    [24, 1.5, "25.949 24.974 24.32 24.56"],
    [24, 2, "26.598 25.299 24.43 24.73"],
  ])("STI M%sx%s", (d, P, row) => {
    const { D_STI, D_2STI, D1_min, D1_max } = wireCoilHole(metricThread(d, P), "5H");
    const found: readonly Quantity[] = [D_STI, D_2STI, D1_min, D1_max];
    for (const [i, printed] of row.split(" ").entries()) agrees(valueIn(mm, found[i] ?? D_STI), printed);
  });
});

test("a coil of triangle height turns the hole back into its thread: the hole's minor is a quarter H above d", () => {
  for (const { d_mm, P_mm } of metricSizes) {
    const thread = metricThread(d_mm, P_mm);
    const { D_STI, D_2STI, D_1STI, D1_min, D2_min } = wireCoilHole(thread, "4H5H");
    expect(D_1STI.value - thread.d.value).toBeCloseTo(thread.H.value / 4, 12);
    expect(D_2STI.value - thread.d_2.value).toBeCloseTo((3 / 2) * thread.H.value, 12);
    expect(D_STI.value).toBeGreaterThan(D_2STI.value);
    expect([D1_min.value, D2_min.value]).toEqual([D_1STI.value, D_2STI.value]);
  }
});

test("4H5H is tighter than 5H at the pitch diameter and alike at the minor", () => {
  for (const { d_mm, P_mm } of metricSizes) {
    const [tight, wide] = (["4H5H", "5H"] as const).map((it) => wireCoilHole(metricThread(d_mm, P_mm), it));
    expect(tight?.D2_max.value).toBeLessThan(wide?.D2_max.value ?? 0);
    expect(tight?.D1_max.value).toBe(wide?.D1_max.value);
  }
});

test("the hole of M20x1.5 is called STI M20x1.5", () =>
  expect(wireCoilHole(metricThread(20, 1.5), "4H5H").designation).toBe("STI M20x1.5"));
