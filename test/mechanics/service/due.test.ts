import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exact, type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { d, h, km, km_d, miles } from "../../../src/mechanics/quantity/unit.ts";
import {
  type Due,
  latestDistance,
  type MachineToday,
  meterToday,
  nextDue,
  ordinaryDuty,
  type ServiceDone,
  type ServiceInterval,
  severeDuty,
} from "../../../src/mechanics/service/due.ts";
import { checksAfterRepair, daysToDistance } from "../../../src/mechanics/service/dueChecks.ts";
import { dayAfter, dayNumber, daysBetween, daysOfMonths } from "../../../src/mechanics/service/dueDate.ts";
import { fallbackDistance, h_d, type Use, useRate } from "../../../src/mechanics/service/dueUse.ts";
import { agrees } from "../../published.ts";

const odometer = (value: number, unit = km): Quantity => exact("x", value, unit);
const hourMeter = (value: number): Quantity => exact("h", value, h);
const use = (earlier: number, later: number, days: number): Use | null =>
  useRate(
    { meter: odometer(earlier), on: "2026-01-01" },
    { meter: odometer(later), on: dayAfter("2026-01-01", days) },
    fallbackDistance,
  );
const known = (it: Use | null): Use => {
  if (!it) throw new Error("no use");
  return it;
};
const owner = known(use(84_210, 87_960, 100));

const done: ServiceDone = { on: "2026-06-01", odometer: odometer(80_000), hourMeter: hourMeter(1000) };
const machine = (over: Partial<MachineToday>): MachineToday => ({
  today: "2026-06-01",
  odometer: odometer(80_000),
  hourMeter: hourMeter(1000),
  distanceUse: owner,
  hoursUse: null,
  ...over,
});
const interval = (over: Partial<ServiceInterval>): ServiceInterval => ({
  distance: null,
  hours: null,
  days: null,
  ...over,
});
const at = (it: ServiceInterval, on: Partial<MachineToday> = {}, severe = ordinaryDuty): Due =>
  nextDue(it, done, machine(on), severe, null);

describe("published", () => {
  // 84 210 to 87 960 km in 100 days, lognormal CV 0.3; worked apart from this program.
  test("84 210 to 87 960 km in 100 days are 37.5 km a day", () => agrees(valueIn(km_d, owner.rate), "37.5"));

  test("500 km then take 13.3 days, 8.2 to 21.6 at 90 %", () => {
    const { likely, earliest, latest } = daysToDistance(odometer(500), owner);
    agrees(valueIn(d, likely), "13.3");
    agrees(valueIn(d, earliest), "8.2");
    agrees(valueIn(d, latest), "21.6");
  });

  test("20 000 km take 533 days, 329 to 864, so that twelve months come first 9 times in 10", () => {
    const due = at(interval({ distance: odometer(20_000), days: 365 }));
    if (due.type !== "due") throw new Error(due.type);
    const distance = due.limits.find(({ by }) => by === "distance");
    if (!distance) throw new Error("no distance");
    agrees(valueIn(d, distance.likely), "533");
    agrees(valueIn(d, distance.earliest), "329");
    agrees(valueIn(d, distance.latest), "864");
    agrees(due.chanceUseFirst ?? 0, "0.10");
    expect([due.by, due.on, due.earliest, due.latest]).toEqual(["date", "2027-06-01", "2027-04-26", "2027-06-01"]);
  });

  // FHWA VM-1M 2009: 18 054 km a year for light vehicles, 49 km a day.
  test("the fallback is 49 km a day", () => agrees(valueIn(km_d, fallbackDistance), "49"));

  // US Army TM 9-2320-386-24-1-1: 10 % of distance allowed either way.
  test("5000 km may become 5500", () => agrees(valueIn(km, latestDistance(odometer(5000))), "5500"));
});

describe("what is known of the use", () => {
  const sigma = (it: Use) => (it.distribution.type === "lognormal" ? it.distribution.sigma : Number.NaN);

  test("its spread is 0.3 from 60 days on, 0.4 before, and below 14 days the fallback stands", () => {
    expect(known(use(0, 3000, 60)).known).toBe("by its meter");
    expect(sigma(known(use(0, 3000, 60)))).toBeCloseTo(Math.sqrt(Math.log(1.09)), 12);
    expect(known(use(0, 3000, 59)).known).toBe("by its meter, short time");
    expect(sigma(known(use(0, 3000, 59)))).toBeCloseTo(Math.sqrt(Math.log(1.16)), 12);
    const few = known(use(0, 3000, 13));
    expect([few.known, few.rate]).toEqual(["by the fallback", fallbackDistance]);
    expect(sigma(few)).toBeCloseTo(Math.sqrt(Math.log(1.16)), 12);
    expect(known(use(0, 3000, 14)).known).toBe("by its meter, short time");
  });

  test("a meter that stood still tells nothing, and without a fallback nothing is made up", () => {
    expect(known(use(5000, 5000, 90)).known).toBe("by the fallback");
    expect(useRate(null, null, null)).toBeNull();
  });

  test("an hour meter gives hours a day", () => {
    const found = known(
      useRate({ meter: hourMeter(100), on: "2026-01-01" }, { meter: hourMeter(250), on: "2026-04-11" }, null),
    );
    agrees(valueIn(h_d, found.rate), "1.50");
  });

  test("miles and kilometres give the same use", () => {
    const inMiles = known(
      useRate(
        { meter: odometer(84_210 / 1.609344, miles), on: "2026-01-01" },
        { meter: odometer(87_960 / 1.609344, miles), on: "2026-04-11" },
        null,
      ),
    );
    agrees(valueIn(km_d, inMiles.rate), "37.5");
  });
});

describe("whichever comes first", () => {
  const hoursUse = useRate(
    { meter: hourMeter(900), on: "2026-01-01" },
    { meter: hourMeter(1000), on: "2026-04-11" },
    null,
  );

  test("distance, hours and date each may govern", () => {
    const by = (it: ServiceInterval) => {
      const due = at(it, { hoursUse });
      return due.type === "due" ? [due.by, due.on] : due.type;
    };
    expect(by(interval({ distance: odometer(1500), hours: hourMeter(100), days: 365 }))).toEqual([
      "distance",
      "2026-07-11",
    ]);
    expect(by(interval({ distance: odometer(15_000), hours: hourMeter(30), days: 365 }))).toEqual([
      "hours",
      "2026-07-01",
    ]);
    expect(by(interval({ distance: odometer(15_000), hours: hourMeter(100), days: 20 }))).toEqual([
      "date",
      "2026-06-21",
    ]);
  });

  test("severe duty halves distance and hours, and leaves the date", () => {
    const both = interval({ distance: odometer(3000), days: 365 });
    const days = (severe: Quantity) => {
      const due = at(both, {}, severe);
      return due.type === "due" ? due.limits.map((it) => valueIn(d, it.likely)) : [];
    };
    expect(days(ordinaryDuty)).toEqual([expect.closeTo(80, 9), 365]);
    expect(days(severeDuty)).toEqual([expect.closeTo(40, 9), 365]);
  });

  test("overdue by any limit is overdue, and by the one farthest past", () => {
    const past = at(interval({ distance: odometer(5000), days: 30 }), {
      today: "2026-07-20",
      odometer: odometer(85_001),
    });
    expect(past).toMatchObject({ type: "overdue", by: "date" });
    const far = at(interval({ distance: odometer(5000), days: 365 }), { odometer: odometer(85_001) });
    expect(far).toMatchObject({ type: "overdue", by: "distance" });
  });

  test("a limit whose meter or use nobody knows is named as missing, never left out in silence", () => {
    const some = at(interval({ hours: hourMeter(100), days: 365 }));
    expect(some).toMatchObject({ type: "due", by: "date", missing: ["hours"] });
    const none = at(interval({ hours: hourMeter(100), distance: odometer(100) }), { odometer: null });
    expect(none).toEqual({ type: "not known", missing: ["distance", "hours"] });
  });

  test("water immersion and milky oil are due now", () =>
    expect(nextDue(interval({ days: 365 }), done, machine({}), ordinaryDuty, "milky oil")).toEqual({
      type: "now",
      because: "milky oil",
    }));
});

test("a meter is carried on by the use to today", () => {
  agrees(valueIn(km, meterToday(odometer(87_960), owner, 20)), "88710");
});

test("after a repair: half an hour, 20 to 30 km, next day, 500 km, each service", () => {
  expect(checksAfterRepair.checks.map((it) => it.id)).toEqual([
    "wipe dry",
    "first look",
    "first hot run",
    "next day",
    "by distance",
    "each service",
  ]);
});

describe("dates", () => {
  test("a month from the last of a long one is the last of the short one", () => {
    expect(dayAfter("2026-01-31", daysOfMonths("2026-01-31", 1))).toBe("2026-02-28");
    expect(dayAfter("2026-01-10", daysOfMonths("2026-01-10", 12))).toBe("2027-01-10");
    expect(daysOfMonths("2027-02-28", 12)).toBe(365);
  });

  test("leap years and month ends", () => {
    expect(dayAfter("2028-02-28", 1)).toBe("2028-02-29");
    expect(dayAfter("2026-12-31", 1)).toBe("2027-01-01");
    expect(dayAfter("2026-11-25", 13.9)).toBe("2026-12-08");
    expect(daysBetween("2026-03-01", "2027-03-01")).toBe(365);
    expect(dayNumber("1970-01-02")).toBe(1);
  });

  test("what is no date throws", () => {
    for (const text of ["2026-02-30", "2026-2-3", "soon", ""]) expect(() => dayNumber(text)).toThrow(RangeError);
  });
});

describe("laws", () => {
  const distances = fc.double({ min: 200, max: 60_000, noNaN: true });
  const rates = fc.integer({ min: 500, max: 30_000 });

  test("ends are in order, and more use is due sooner", () =>
    fc.assert(
      fc.property(distances, rates, fc.integer({ min: 30, max: 800 }), (D, driven, days) => {
        const dueBy = (it: number) => {
          const due = at(interval({ distance: odometer(D), days }), { distanceUse: use(0, it, 100) });
          if (due.type !== "due") throw new Error(due.type);
          return due;
        };
        const due = dueBy(driven);
        expect([due.earliest, due.on, due.latest]).toEqual([due.earliest, due.on, due.latest].sort());
        expect(dueBy(driven + 500).on <= due.on).toBe(true);
        expect(dueBy(driven + 500).chanceUseFirst ?? 0).toBeGreaterThanOrEqual(due.chanceUseFirst ?? 1);
        expect(daysBetween("2026-06-01", due.latest)).toBeLessThanOrEqual(days);
      }),
    ));
});
