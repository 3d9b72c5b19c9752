import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { km, km_d } from "../../../src/mechanics/quantity/unit.ts";
import { dayAfter } from "../../../src/mechanics/service/dueDate.ts";
import { checkedReadings } from "../../../src/mechanics/service/meterList.ts";
import { agrees } from "../../published.ts";

const usual = exact("r", 49.4, km_d);
const list = (...readings: readonly (readonly [days: number, km: number])[]) =>
  checkedReadings(
    readings.map(([days, figure]) => ({ on: dayAfter("2024-01-01", days), meter: exact("x", figure, km) })),
    usual,
  );
const verdicts = (...readings: readonly (readonly [number, number])[]) =>
  list(...readings).map(({ verdict }) => verdict?.type ?? null);

describe("a list of readings", () => {
  test("that goes on as it did is plausible, the first being held against nothing", () =>
    expect(verdicts([0, 80_000], [100, 83_700], [200, 87_500])).toEqual([null, "plausible", "plausible"]));

  test("a slip of the pen is left aside, and the next reading is held against the one before it", () =>
    expect(verdicts([0, 80_000], [100, 38_700], [200, 87_500])).toEqual([null, "falling", "plausible"]));

  // NIST SP 811: a mile is 1.609344 km; 54 400 mi are 87 548.3 km.
  test("one put down in miles counts on, and so does the next in kilometres", () => {
    const found = list([0, 80_000], [100, 83_700], [200, 54_400], [300, 91_000]);
    expect(found.map(({ verdict }) => verdict?.type ?? null)).toEqual([null, "plausible", "unit changed", "plausible"]);
    const third = found[2]?.verdict;
    if (third?.type !== "unit changed") throw new Error(third?.type);
    agrees(valueIn(km, third.corrected), "87548.3");
  });

  test("a first reading in miles is the one that was wrong", () => {
    const found = list([0, 52_000], [30, 84_500], [130, 88_000]);
    expect(found[1]?.verdict).toMatchObject({ type: "unit changed", of: "earlier", readIn: "mi" });
    expect(found[2]?.verdict?.type).toBe("plausible");
  });

  test("a meter that ran over its last figure goes on from nought", () =>
    expect(verdicts([0, 96_000], [80, 99_900], [90, 150], [190, 3900])).toEqual([
      null,
      "plausible",
      "rolled over",
      "plausible",
    ]));

  test("a machine that is used more than most is held against its own rate", () =>
    // 13 900 mi are 22 370 km: by the fallback of 49 km a day the 22 900 would look like a change of unit.
    expect(verdicts([0, 10_000], [30, 13_900], [60, 22_900])).toEqual([null, "plausible", "plausible"]));
});

test("a meter that only rises, by no more than three times the fallback, is never asked about", () =>
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 12 }), (steps) => {
      const upTo = (end: number): number => steps.slice(0, end).reduce((sum, step) => sum + 30 * step, 20_000);
      const readings = steps.map((_, i) => [30 * (i + 1), upTo(i + 1)] as const);
      for (const it of verdicts([0, 20_000], ...readings)) expect([null, "plausible"]).toContain(it);
    }),
  ));
