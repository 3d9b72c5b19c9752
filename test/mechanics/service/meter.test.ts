import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exact, type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { h, km, km_d, miles, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import { dayAfter } from "../../../src/mechanics/service/dueDate.ts";
import { fallbackDistance, h_d } from "../../../src/mechanics/service/dueUse.ts";
import { lastFigures, meterVerdict } from "../../../src/mechanics/service/meter.ts";
import { agrees } from "../../published.ts";

const usual: Quantity = exact("r", 37.5, km_d);
const verdict = (before: number, after: number, days: number, units: readonly [Unit, Unit] = [km, km]) =>
  meterVerdict(
    { meter: exact("x", before, units[0]), on: "2026-01-01" },
    { meter: exact("x", after, units[1]), on: dayAfter("2026-01-01", days) },
    usual,
  );

test("a meter that goes on as it did is plausible, with its rate", () => {
  const found = verdict(84_210, 87_960, 100);
  if (found.type !== "plausible" || !found.rate) throw new Error(found.type);
  agrees(valueIn(km_d, found.rate), "37.5");
  expect(verdict(84_210, 84_210, 0)).toEqual({ type: "plausible", rate: null });
});

test("a falling meter that nothing explains is falling", () => {
  expect(verdict(87_960, 84_210, 100).type).toBe("falling");
  expect(verdict(87_960, 87_959, 1).type).toBe("falling");
});

test("more than 2000 km a day is too fast, 2000 is not", () => {
  expect(verdict(1000, 1000 + 20_001, 10)).toMatchObject({ type: "too fast" });
  expect(verdict(1000, 1000 + 20_000, 10).type).toBe("plausible");
  expect(verdict(1000, 3001, 0).type).toBe("too fast");
});

// NIST SP 811: a mile is 1.609344 km.
describe("a jump of 1.609", () => {
  test("a meter that changed to miles falls, and reads on in miles", () => {
    const found = verdict(87_960, 55_000, 20);
    if (found.type !== "unit changed") throw new Error(found.type);
    expect([found.of, found.readIn]).toEqual(["later", "mi"]);
    agrees(valueIn(km, found.corrected), "88513.9");
  });

  test("a kilometre figure put down as miles jumps, and reads on in kilometres", () => {
    expect(verdict(55_000, 89_000, 20, [miles, miles])).toMatchObject({
      type: "unit changed",
      of: "later",
      readIn: "km",
    });
  });

  test("an earlier figure put down as kilometres that were miles", () => {
    const found = verdict(52_000, 84_500, 30);
    if (found.type !== "unit changed") throw new Error(found.type);
    expect([found.of, found.readIn]).toEqual(["earlier", "mi"]);
    agrees(valueIn(km, found.corrected), "83685.9");
  });

  test("a slip of the pen is no change of unit", () => {
    expect(verdict(87_960, 78_960, 100).type).toBe("falling");
    expect(verdict(87_960, 187_960, 30).type).toBe("too fast");
  });
});

describe("rolling over", () => {
  test("99 900 then 150 counts on past 99 999, and so does 999 900", () => {
    const five = verdict(99_900, 150, 10);
    if (five.type !== "rolled over") throw new Error(five.type);
    expect([five.after, valueIn(km, five.corrected)]).toEqual([99_999, expect.closeTo(100_150, 6)]);
    expect(verdict(999_900, 150, 10)).toMatchObject({ type: "rolled over", after: 999_999 });
    expect(lastFigures.values).toEqual([99_999, 999_999]);
  });

  test("a meter far from its end has fallen", () => expect(verdict(60_000, 150, 10).type).toBe("falling"));
});

test("hour meters hold no more than 24 hours a day, and have no miles", () => {
  const hours = (before: number, after: number, days: number) =>
    meterVerdict(
      { meter: exact("h", before, h), on: "2026-01-01" },
      { meter: exact("h", after, h), on: dayAfter("2026-01-01", days) },
      exact("r", 2, h_d),
    ).type;
  expect([hours(100, 340, 10), hours(100, 341, 10), hours(100, 62, 10)]).toEqual(["plausible", "too fast", "falling"]);
});

test("dates out of order and meters of two kinds are told first", () => {
  const later = { meter: exact("x", 10, km), on: "2025-12-31" };
  expect(meterVerdict({ meter: exact("x", 5, km), on: "2026-01-01" }, later, fallbackDistance).type).toBe(
    "dates out of order",
  );
  expect(meterVerdict({ meter: exact("h", 5, h), on: "2025-01-01" }, later, fallbackDistance).type).toBe(
    "different meters",
  );
});

describe("laws", () => {
  test("whatever is driven at an ordinary rate is plausible, in kilometres and in miles", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900_000 }),
        fc.integer({ min: 1, max: 700 }),
        fc.double({ min: 0, max: 110, noNaN: true }),
        (start, days, rate) => {
          expect(verdict(start, start + rate * days, days).type).toBe("plausible");
          const inMiles = (start + rate * days) / 1.609344;
          expect(verdict(start / 1.609344, inMiles, days, [miles, miles]).type).toBe("plausible");
        },
      ),
    ));

  test("a figure is never corrected to less than the one before, nor to more than three times the usual", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999_999 }),
        fc.integer({ min: 0, max: 999_999 }),
        fc.integer({ min: 1, max: 400 }),
        (before, after, days) => {
          const found = verdict(before, after, days);
          if (found.type !== "unit changed" && found.type !== "rolled over") return;
          const earlier = found.type === "unit changed" && found.of === "earlier";
          const [from, to] = earlier ? [valueIn(km, found.corrected), after] : [before, valueIn(km, found.corrected)];
          expect(to).toBeGreaterThanOrEqual(from - 1e-6);
          expect(to - from).toBeLessThanOrEqual(3 * 37.5 * days + 1e-6);
        },
      ),
    ));
});
