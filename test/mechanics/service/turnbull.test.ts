import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kaplanMeier } from "../../../src/mechanics/service/kaplanMeier.ts";
import { logLikelihood, selfConsistent, turnbull } from "../../../src/mechanics/service/turnbull.ts";
import { innermostIntervals, mayLieIn } from "../../../src/mechanics/service/turnbullIntervals.ts";
import { agrees } from "../../published.ts";
import { at, between, exactSets, maintained, mixedSets, shuffled, tenAtChecks, until } from "./heldSets.ts";

const small = [
  between(0, 2),
  between(2, 4),
  between(3, 5),
  between(0, 3),
  until(5),
  between(4, 7),
  until(6),
  between(1, 3),
];

// Worked to convergence with R 4.2.2; R's own survfit stops after three or four digits and is no check of these.
describe("published", () => {
  test("the small set falls in (1,2] (2,3] (3,4] (6,7]", () => {
    const { masses, logLikelihood: ll } = turnbull(small);
    expect(masses.map(({ from, to }) => [from, to])).toEqual([
      [1, 2],
      [2, 3],
      [3, 4],
      [6, 7],
    ]);
    [".3125", ".1041667", ".2083333", ".375"].forEach((printed, i) => {
      agrees(masses[i]?.mass ?? Number.NaN, printed);
    });
    agrees(ll, "-8.58834277127");
  });

  test("ten repairs seen at checks fall by 90 days or hold beyond 365", () => {
    const { masses, logLikelihood: ll } = turnbull(tenAtChecks);
    expect(masses.map(({ from, to }) => [from, to])).toEqual([
      [0, 7],
      [7, 30],
      [30, 90],
      [365, null],
    ]);
    [".1", ".1", ".2285714", ".5714286"].forEach((printed, i) => {
      agrees(masses[i]?.mass ?? Number.NaN, printed);
    });
    agrees(ll, "-10.5782057166");
  });

  // By hand: the gradient conditions of Gentleman and Geyer hold exactly at 5/16, 5/48, 5/24 and 3/8.
  test("the small set's masses are 5/16, 5/48, 5/24 and 3/8", () => {
    const exact = [5 / 16, 5 / 48, 5 / 24, 3 / 8];
    turnbull(small).masses.forEach(({ mass }, i) => {
      expect(mass).toBeCloseTo(exact[i] ?? 0, 12);
    });
  });
});

describe("innermost intervals", () => {
  test("a moment that ends an interval lies in it, one that begins it does not", () => {
    expect(innermostIntervals([at(4), between(2, 4)])).toEqual([{ from: 4, to: 4 }]);
    expect(innermostIntervals([at(2), between(2, 4)])).toEqual([
      { from: 2, to: 2 },
      { from: 2, to: 4 },
    ]);
    expect(mayLieIn({ from: 2, to: 2 }, between(2, 4))).toBe(false);
    expect(mayLieIn({ from: 4, to: 4 }, between(2, 4))).toBe(true);
  });

  test("a repair that still holds at a time did not fail at that time", () => {
    expect(innermostIntervals([at(5), until(5)])).toEqual([
      { from: 5, to: 5 },
      { from: 5, to: null },
    ]);
    expect(mayLieIn({ from: 5, to: 5 }, until(5))).toBe(false);
  });

  test("each case may have failed in at least one of them", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const inner = innermostIntervals(set);
        expect(set.every((it) => inner.some((stretch) => mayLieIn(stretch, it)))).toBe(true);
      }),
    );
  });
});

describe("laws", () => {
  test("the gradient proves that no likelihood is greater", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const { certificate } = turnbull(set);
        expect(certificate.greatestGradient).toBeLessThan(1 + 1e-9);
        expect(certificate.leastGradientOfMass).toBeGreaterThan(1 - 1e-9);
        expect(certificate.shortBy_atMost).toBeLessThan(1e-7);
      }),
      { numRuns: 300 },
    );
  });

  test("any other masses have no greater likelihood", () => {
    const weights = fc.array(fc.double({ min: 1e-3, max: 1, noNaN: true }), { minLength: 60, maxLength: 60 });
    fc.assert(
      fc.property(mixedSets, weights, (set, drawn) => {
        const inner = innermostIntervals(set);
        const rows = set.map((it) => inner.map((stretch) => mayLieIn(stretch, it)));
        const total = inner.reduce((sum, _, j) => sum + (drawn[j] ?? 0), 0);
        const other = inner.map((_, j) => (drawn[j] ?? 0) / total);
        expect(logLikelihood(rows, other)).toBeLessThanOrEqual(turnbull(set).logLikelihood + 1e-7);
      }),
    );
  });

  test("a step of self-consistency never lowers the likelihood", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const inner = innermostIntervals(set);
        const rows = set.map((it) => inner.map((stretch) => mayLieIn(stretch, it)));
        let masses: readonly number[] = inner.map(() => 1 / inner.length);
        for (let step = 0; step < 30; step++) {
          const next = selfConsistent(rows, masses);
          expect(logLikelihood(rows, next)).toBeGreaterThanOrEqual(logLikelihood(rows, masses) - 1e-10);
          masses = next;
        }
      }),
    );
  });

  test("a step of self-consistency leaves the estimate where it is", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const { masses } = turnbull(set);
        const rows = set.map((it) => masses.map((stretch) => mayLieIn(stretch, it)));
        const next = selfConsistent(
          rows,
          masses.map(({ mass }) => mass),
        );
        masses.forEach(({ mass }, j) => {
          expect(next[j]).toBeCloseTo(mass, 8);
        });
      }),
    );
  });

  test("the masses are positive, in order of time, and add to 1", () => {
    fc.assert(
      fc.property(mixedSets, (set) => {
        const { masses } = turnbull(set);
        expect(masses.every(({ mass }) => mass > 0)).toBe(true);
        expect(masses.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(1, 12);
        masses.slice(1).forEach(({ from }, i) => {
          expect(from).toBeGreaterThanOrEqual(masses[i]?.to ?? Number.NaN);
        });
      }),
    );
  });

  test("where every failure is known to the day it is Kaplan-Meier's curve", () => {
    const same = (set: Parameters<typeof kaplanMeier>[0]): void => {
      const points = kaplanMeier(set, 0.95);
      const { masses } = turnbull(set);
      const dated = masses.filter(({ to }) => to !== null);
      expect(dated.map(({ from, to }) => [from, to])).toEqual(points.map(({ t }) => [t, t]));
      let left = 1;
      points.forEach(({ survival }, i) => {
        left -= dated[i]?.mass ?? Number.NaN;
        expect(left).toBeCloseTo(survival, 9);
      });
    };
    same(maintained);
    fc.assert(fc.property(exactSets, same));
  });

  test("the order of the cases changes nothing", () => {
    fc.assert(
      fc.property(shuffled(mixedSets), ([a, b]) => {
        expect(turnbull(b)).toEqual(turnbull(a));
      }),
    );
  });

  test("hundreds of cases at scattered checks are brought to the same proof", () => {
    const many = Array.from({ length: 300 }, (_, i) => {
      const from = (i * 37) % 101;
      return i % 3 === 0 ? until(from + 1) : between(from, from + 1 + ((i * 53) % 29));
    });
    expect(turnbull(many).certificate.greatestGradient).toBeLessThan(1 + 1e-10);
  });

  test("no case has no curve, and one that holds has none to fall", () => {
    expect(turnbull([]).masses).toEqual([]);
    expect(turnbull([until(5)]).masses).toEqual([{ from: 5, to: null, mass: 1 }]);
  });
});
