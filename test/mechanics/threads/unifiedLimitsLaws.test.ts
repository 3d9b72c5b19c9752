import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { inches } from "../../../src/mechanics/quantity/unit.ts";
import { unifiedSizes } from "../../../src/mechanics/tables/asmeB1Sizes.ts";
import { unifiedHoleClasses, unifiedPlugClasses } from "../../../src/mechanics/threads/unifiedClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "../../../src/mechanics/threads/unifiedLimits.ts";
import { unifiedThread } from "../../../src/mechanics/threads/unifiedThread.ts";

const threads = unifiedSizes.map(unifiedThread);

test("every thread of the series has its limits in order in every class, and any plug goes into any hole", () => {
  expect(threads.length).toBeGreaterThan(150);
  for (const thread of threads) {
    const plugs = unifiedPlugClasses.map((it) => unifiedPlugLimits(thread, it));
    const holes = unifiedHoleClasses.map((it) => unifiedHoleLimits(thread, it));
    for (const { d_max, d_min, d2_max, d2_min } of plugs) {
      expect(d2_min.value < d2_max.value && d2_max.value < d_min.value, thread.designation).toBe(true);
      expect(d_min.value < d_max.value && d_max.value <= thread.d.value * (1 + 1e-12), thread.designation).toBe(true);
      for (const { D2_min } of holes) expect(d2_max.value).toBeLessThanOrEqual(D2_min.value * (1 + 1e-12));
    }
    for (const { D1_min, D1_max, D2_min, D2_max } of holes)
      expect(D1_min.value < D1_max.value && D1_max.value < D2_max.value && D2_min.value < D2_max.value).toBe(true);
  }
});

test("a higher class is never wider", () => {
  const width = (a: { value: number }, b: { value: number }): number => Math.round(Math.abs(a.value - b.value) * 1e9);
  for (const thread of threads) {
    const plugs = unifiedPlugClasses.map((it) => unifiedPlugLimits(thread, it));
    const holes = unifiedHoleClasses.map((it) => unifiedHoleLimits(thread, it));
    const widths = [
      plugs.map(({ d2_max, d2_min }) => width(d2_max, d2_min)),
      plugs.map(({ d_max, d_min }) => width(d_max, d_min)),
      holes.map(({ D2_max, D2_min }) => width(D2_max, D2_min)),
    ];
    for (const it of widths) expect(it, thread.designation).toEqual([...it].sort((a, b) => b - a));
  }
});

test("pitch and major limits stand on whole ten-thousandths of an inch", () => {
  for (const thread of threads)
    for (const limit of [...Object.values(unifiedPlugLimits(thread, "2A")), unifiedHoleLimits(thread, "2B").D2_max]) {
      const tenThousandths = valueIn(inches, limit) * 1e4;
      expect(Math.abs(tenThousandths - Math.round(tenThousandths)), thread.designation).toBeLessThan(1e-6);
    }
});
