import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { held, smallNumbersBelow } from "../../../src/mechanics/service/held.ts";
import { type HeldCase, watched } from "../../../src/mechanics/service/heldCases.ts";
import { heldCurve } from "../../../src/mechanics/service/heldCurve.ts";
import { agrees } from "../../published.ts";
import { at, between, mixedSets, shuffled, until } from "./heldSets.ts";

const repair = (method: string, from_days: number, to_days: number | null): HeldCase => ({
  method,
  from_days,
  to_days,
});

/** The invented workshop's record: three sealants, of which two came back, and three bushings that hold. */
const record: readonly HeldCase[] = [
  repair("sealant", 71, 71),
  repair("sealant", 5, 5),
  repair("sealant", 88, null),
  repair("bushing", 286, null),
  repair("bushing", 208, null),
  repair("bushing", 173, null),
  repair("bushing", 0, null),
];

describe("published", () => {
  // The workshop's worked example, Jeffreys at 95 %.
  test("2 of 3 sealants came back: the true share may be anywhere from 18 to 96 %", () => {
    const sealant = held(record).methods.find(({ method }) => method === "sealant");
    expect(sealant?.smallNumbers).toMatchObject({ type: "small numbers", cameBack: 2, cases: 3 });
    agrees(100 * (sealant?.smallNumbers?.low ?? Number.NaN), "18");
    agrees(100 * (sealant?.smallNumbers?.high ?? Number.NaN), "96");
  });

  // R 4.2.2, the reference's ten repairs in days.
  test("ten repairs seen at checks have Turnbull's masses and no Kaplan-Meier curve", () => {
    const checks: readonly (readonly [number, number | null])[] = [
      [0, 7],
      [7, 30],
      [30, 90],
      [365, null],
      [365, null],
      [365, null],
      [90, null],
      [90, null],
      [30, null],
      [30, 365],
    ];
    const [method] = held(checks.map(([from, to]) => repair("sealant", from, to))).methods;
    expect(method?.kaplanMeier).toBeNull();
    expect(method?.turnbull.at(-1)).toMatchObject({ from: 365, to: null });
    agrees(method?.turnbull.at(-1)?.mass ?? Number.NaN, ".5714286");
    agrees(method?.weibull?.shape ?? Number.NaN, ".440188");
    agrees(method?.weibull?.scale ?? Number.NaN, "857.799");
  });
});

describe("what a case says", () => {
  test("equal days are the day, unequal ones an interval, no second day that it holds", () => {
    expect(watched(repair("x", 71, 71))).toEqual(at(71));
    expect(watched(repair("x", 7, 30))).toEqual(between(7, 30));
    expect(watched(repair("x", 0, 7))).toEqual(between(0, 7));
    expect(watched(repair("x", 88, null))).toEqual(until(88));
    expect(watched(repair("x", 0, 0))).toEqual(at(0));
  });

  test("from 0 without a second day nobody ever looked", () => expect(watched(repair("x", 0, null))).toBeNull());
});

describe("held", () => {
  test("the methods come in the order of their names, with their own counts", () => {
    const { methods } = held(record);
    expect(
      methods.map(({ method, cases, cameBack, neverLookedAt }) => [method, cases, cameBack, neverLookedAt]),
    ).toEqual([
      ["bushing", 3, 0, 1],
      ["sealant", 3, 2, 0],
    ]);
  });

  test("the time watched is what each is known to have held", () => {
    expect(held(record).methods.map(({ watched_days }) => watched_days)).toEqual([286 + 208 + 173, 71 + 5 + 88]);
    expect(held([repair("x", 7, 30)]).methods[0]?.watched_days).toBe(7);
  });

  test("where every failure is known to the day both curves are given", () => {
    const [bushing, sealant] = held(record).methods;
    expect(sealant?.kaplanMeier?.map(({ t, atRisk }) => [t, atRisk])).toEqual([
      [5, 3],
      [71, 2],
    ]);
    expect(sealant?.turnbull.map(({ from, to }) => [from, to])).toEqual([
      [5, 5],
      [71, 71],
      [88, null],
    ]);
    expect(bushing?.kaplanMeier).toEqual([]);
    expect(bushing?.turnbull).toEqual([{ from: 286, to: null, mass: 1 }]);
  });

  test("no Weibull distribution without two failures, and it says why", () => {
    const [bushing, sealant] = held(record).methods;
    expect([bushing?.weibull, bushing?.weibullMissing]).toEqual([null, "too few failures"]);
    expect([sealant?.weibull?.fewFailures, sealant?.weibullMissing]).toEqual([true, null]);
  });

  test("a method that nobody looked at has no figure but that", () => {
    expect(held([repair("x", 0, null), repair("x", 0, null)]).methods[0]).toMatchObject({
      cases: 0,
      cameBack: 0,
      neverLookedAt: 2,
      watched_days: 0,
      wilson95: [0, 1],
      jeffreys95: [0, 1],
      kaplanMeier: null,
      turnbull: [],
      weibull: null,
    });
  });

  test("numbers are small below twenty cases", () => {
    const many = (n: number) => held(Array.from({ length: n }, (_, i) => repair("x", i + 1, null))).methods[0];
    expect(many(smallNumbersBelow - 1)?.smallNumbers).not.toBeNull();
    expect(many(smallNumbersBelow)?.smallNumbers).toBeNull();
  });

  test("the answer goes through JSON unchanged", () => {
    const answer = held(record);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
});

describe("laws", () => {
  const cases = fc.array(
    fc
      .tuple(
        fc.constantFrom("sealant", "bushing", "insert"),
        fc.integer({ min: 0, max: 60 }),
        fc.constantFrom(null, 0, 7, 30),
      )
      .map(([method, from, more]) => repair(method, from, more === null ? null : from + more)),
    { minLength: 1, maxLength: 30 },
  );

  test("what nobody looked at changes no figure but its own count", () => {
    fc.assert(
      fc.property(cases, (some) => {
        const more = [...some, ...some.map(({ method }) => repair(method, 0, null))];
        const figures = (of: readonly HeldCase[]) => held(of).methods.map((it) => ({ ...it, neverLookedAt: 0 }));
        expect(figures(more)).toEqual(figures(some));
      }),
    );
  });

  test("the order of the cases changes nothing", () => {
    fc.assert(
      fc.property(shuffled(cases), ([a, b]) => {
        expect(held(b)).toEqual(held(a));
      }),
    );
  });

  test("the cases of one method say nothing of another", () => {
    fc.assert(
      fc.property(cases, (some) => {
        const alone = held(some.filter(({ method }) => method === "sealant")).methods;
        expect(held(some).methods.filter(({ method }) => method === "sealant")).toEqual(alone);
      }),
    );
  });

  test("every case is counted once", () => {
    fc.assert(
      fc.property(cases, (some) => {
        expect(held(some).methods.reduce((sum, it) => sum + it.cases + it.neverLookedAt, 0)).toBe(some.length);
      }),
    );
  });
});

describe("the curve as it is drawn", () => {
  test("levels and falls follow each other without a gap from day 0 to the last", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const curve = heldCurve(set);
        if (!curve) throw new Error("a set with cases has a curve");
        const pieces = [...curve.levels, ...curve.falls]
          .filter(({ from_days, to_days }) => to_days > from_days)
          .toSorted((a, b) => a.from_days - b.from_days);
        let day = 0;
        for (const { from_days, to_days } of pieces) {
          expect(from_days).toBe(day);
          day = to_days;
        }
        expect(day).toBe(curve.horizon_days);
      }),
    );
  });

  test("each level has the share the fall before it left, inside its band", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const curve = heldCurve(set);
        for (const { from_days, survival, band } of curve?.levels ?? []) {
          expect(survival).toBe(curve?.falls.findLast(({ to_days }) => to_days <= from_days)?.after ?? 1);
          if (band) expect(band[0] <= survival + 1e-9 && survival <= band[1] + 1e-9).toBe(true);
        }
      }),
    );
  });

  test("it is thin from the day on which fewer than three are watched", () => {
    const curve = heldCurve([at(10), until(20), until(30), until(40)]);
    expect(curve?.levels.map(({ from_days, to_days, few }) => [from_days, to_days, few])).toEqual([
      [0, 10, false],
      [10, 20, false],
      [20, 40, true],
    ]);
  });

  test("three that hold are no certainty: the band goes down to Jeffreys' limit for 3 of 3", () => {
    const curve = heldCurve([until(286), until(208), until(173)]);
    agrees(curve?.levels[0]?.band?.[0] ?? Number.NaN, ".4644167570");
    expect(curve?.levels.map(({ to_days }) => to_days)).toEqual([173, 208, 286]);
    const lows = curve?.levels.map(({ band }) => band?.[0] ?? 1) ?? [];
    lows.slice(1).forEach((low, i) => {
      expect(low).toBeLessThan(lows[i] ?? 0);
    });
  });

  test("the ticks are at most six, with who was known to hold until then", () => {
    expect(heldCurve([at(10), between(5, 30), until(365)])?.ticks).toEqual([
      { at_days: 0, watched: 3 },
      { at_days: 90, watched: 1 },
      { at_days: 180, watched: 1 },
      { at_days: 270, watched: 1 },
      { at_days: 360, watched: 1 },
    ]);
    for (const days of [1, 5, 6, 29, 400, 3000, 20_000])
      expect(heldCurve([until(days)])?.ticks.length).toBeLessThanOrEqual(6);
  });

  test("no case has no curve", () => expect(heldCurve([])).toBeNull());
});
