import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holdingMedian, kaplanMeier } from "../../../src/mechanics/service/kaplanMeier.ts";
import { logRank, restrictedMean } from "../../../src/mechanics/service/kaplanMeierCompared.ts";
import { agrees } from "../../published.ts";
import { at, eightRepairs, exactSets, fans, maintained, nonmaintained, shuffled, until } from "./heldSets.ts";

const curve = kaplanMeier(maintained, 0.95);

// R 4.2.2 with survival 3.5-3: survfit, survdiff.
describe("published", () => {
  test("the maintained remissions fall at 9 13 18 23 31 34 48 as Kaplan-Meier's do in R", () => {
    const survival = [".909091", ".818182", ".715909", ".613636", ".490909", ".368182", ".184091"];
    const error = [".0866784", ".1162913", ".1396650", ".1526323", ".1641933", ".1626689", ".1534927"];
    expect(curve.map(({ t }) => t)).toEqual([9, 13, 18, 23, 31, 34, 48]);
    expect(curve.map(({ atRisk }) => atRisk)).toEqual([11, 10, 8, 7, 5, 4, 2]);
    survival.forEach((printed, i) => {
      agrees(curve[i]?.survival ?? Number.NaN, printed);
    });
    error.forEach((printed, i) => {
      agrees(curve[i]?.standardError ?? Number.NaN, printed);
    });
  });

  test("their median is 31, and by the log-log band from 13 on", () => {
    expect(holdingMedian(curve)).toEqual({ t: 31, low: 13, high: null });
  });

  // The band on ln S that R draws by default comes of the same standard error: S exp(±z s/S), cut off at 1.
  test("by the log band their median is from 18 on", () => {
    const z = 1.959963984540054;
    const limit = (signed: number) =>
      curve.find((it) => it.survival * Math.exp((signed * (it.standardError ?? 0)) / it.survival) <= 0.5);
    expect(limit(-z)?.t).toBe(18);
    expect(limit(z)).toBeUndefined();
  });

  test("the two arms differ by a log-rank chi squared of 3.3963886990", () => {
    const { chiSquared, p } = logRank(maintained, nonmaintained) ?? { chiSquared: 0, p: 0 };
    agrees(chiSquared, "3.3963886990");
    agrees(p, ".0653393220");
  });

  test("within 24 weeks the arms hold 20.9205 and 17.0694 weeks in the mean", () => {
    agrees(restrictedMean(curve, 24), "20.9205");
    agrees(restrictedMean(kaplanMeier(nonmaintained, 0.95), 24), "17.0694");
  });

  test("of 70 fans 12 failed, over 344 440 hours", () => {
    expect([fans.length, fans.filter(({ type }) => type === "failed at").length]).toEqual([70, 12]);
    expect(fans.reduce((sum, { t }) => sum + t, 0)).toBe(344_440);
  });

  test.each([
    [450, ".9857142857"],
    [4600, ".8272342445"],
    [6100, ".7954175428"],
    [8750, ".7070378158"],
  ])("at %d hours the share of fans that run is %s", (t, printed) => {
    agrees(kaplanMeier(fans, 0.95).find((it) => it.t === t)?.survival ?? Number.NaN, printed);
  });

  test("the fans' first log-log band and last standard error are R's", () => {
    const points = kaplanMeier(fans, 0.95);
    agrees(points[0]?.low ?? Number.NaN, ".902896");
    agrees(points[0]?.high ?? Number.NaN, ".997975");
    agrees(points.at(-1)?.standardError ?? Number.NaN, ".0980419769");
  });

  test("a failure and a repair that holds at one reading are both at risk there", () => {
    const points = kaplanMeier(eightRepairs, 0.95);
    expect(points.map(({ t, atRisk }) => [t, atRisk])).toEqual([
      [500, 8],
      [1200, 6],
      [3000, 5],
    ]);
    [".875", ".7291667", ".5833333"].forEach((printed, i) => {
      agrees(points[i]?.survival ?? Number.NaN, printed);
    });
    agrees(points[2]?.low ?? Number.NaN, ".180189");
    agrees(points[2]?.high ?? Number.NaN, ".844069");
  });
});

describe("laws", () => {
  test("the curve falls from at most 1 to at least 0, and lies in its band", () => {
    fc.assert(
      fc.property(exactSets, (set) => {
        let last = 1;
        for (const { survival, low, high } of kaplanMeier(set, 0.95)) {
          expect(survival).toBeLessThan(last);
          expect(survival).toBeGreaterThanOrEqual(0);
          if (low !== null && high !== null)
            expect(low <= survival && survival <= high && low >= 0 && high <= 1).toBe(true);
          last = survival;
        }
      }),
    );
  });

  test("where nothing is cut short it is the share that is left, with the binomial's standard error", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 2, maxLength: 40 }), (times) => {
        for (const { t, survival, standardError } of kaplanMeier(times.map(at), 0.95)) {
          const left = times.filter((it) => it > t).length / times.length;
          expect(survival).toBeCloseTo(left, 12);
          if (standardError !== null)
            expect(standardError).toBeCloseTo(Math.sqrt((left * (1 - left)) / times.length), 12);
        }
      }),
    );
  });

  test("the order of the cases changes nothing", () => {
    fc.assert(
      fc.property(shuffled(exactSets), ([a, b]) => {
        expect(kaplanMeier(b, 0.95)).toEqual(kaplanMeier(a, 0.95));
      }),
    );
  });

  test("a case that nobody saw again before the first failure changes nothing after it", () => {
    fc.assert(
      fc.property(exactSets, (set) => {
        expect(kaplanMeier([...set, until(0.5)], 0.95)).toEqual(kaplanMeier(set, 0.95));
      }),
    );
  });

  test("a surer band is wider", () => {
    fc.assert(
      fc.property(exactSets, (set) => {
        const [narrow, wide] = [kaplanMeier(set, 0.8), kaplanMeier(set, 0.99)];
        narrow.forEach(({ low, high }, i) => {
          if (low === null || high === null) return;
          expect(wide[i]?.low).toBeLessThan(low);
          expect(wide[i]?.high).toBeGreaterThan(high);
        });
      }),
    );
  });

  test("where the last at risk has failed there is no standard error", () => {
    const [, last] = kaplanMeier([at(3), at(5)], 0.95);
    expect(last).toEqual({ t: 5, survival: 0, standardError: null, atRisk: 1, failures: 1, low: null, high: null });
  });

  test("the median of an even number of failures lies half-way", () => {
    expect(holdingMedian(kaplanMeier([1, 2, 4, 8].map(at), 0.95)).t).toBe(3);
    expect(holdingMedian(kaplanMeier([1, 2, 3, 4, 5, 6].map(at), 0.95)).t).toBe(3.5);
    expect(holdingMedian(kaplanMeier([until(9)], 0.95))).toEqual({ t: null, low: null, high: null });
  });

  test("the log-rank test is the same both ways, and nought between equals", () => {
    fc.assert(
      fc.property(exactSets, exactSets, (a, b) => {
        expect(logRank(b, a)?.chiSquared ?? 0).toBeCloseTo(logRank(a, b)?.chiSquared ?? 0, 9);
        expect(logRank(a, a)?.chiSquared ?? 0).toBeCloseTo(0, 12);
      }),
    );
  });

  test("the restricted mean of cases all watched to the horizon is the mean of their times cut there", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 30 }), (times) => {
        const cut = times.reduce((sum, t) => sum + Math.min(t, 20), 0) / times.length;
        expect(restrictedMean(kaplanMeier(times.map(at), 0.95), 20)).toBeCloseTo(cut, 9);
      }),
    );
  });
});
