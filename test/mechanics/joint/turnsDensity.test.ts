import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { crowding, firstTurnShare } from "../../../src/mechanics/joint/stripping.ts";
import type { Count } from "../../../src/mechanics/joint/turnsCount.ts";
import { turnsDensity } from "../../../src/mechanics/joint/turnsDensity.ts";
import {
  type Distribution,
  draw,
  exactly,
  normal,
  triangular,
  uniform,
} from "../../../src/mechanics/quantity/distribution.ts";
import {
  cumulated,
  type LogDensity,
  probabilityBelow,
  quantileOf,
  step,
} from "../../../src/mechanics/quantity/logDensity.ts";
import { xoshiro128 } from "../../../src/mechanics/quantity/random.ts";

const k = 0.19;
const sharing = (n: number, a: number): number => {
  const f = (turns: number): number => firstTurnShare.over({ k, n: turns })[0] as number;
  return n > 3 ? n * (crowding.over({ n, f: f(n), f_3: f(3) })[0] as number) ** -a : n;
};

/** Carrying turns by plain drawing (JCGM 101:2008): count less lead-in, none below nothing, crowded beyond three. */
function drawn(count: Count, leadIn: Distribution, exponent: Distribution, draws: number): Float64Array {
  const random = xoshiro128(20261125);
  return Float64Array.from({ length: draws }, () => {
    const n = Math.max(0, draw(count as Distribution, random) - draw(leadIn, random));
    return sharing(n, draw(exponent, random));
  }).sort();
}

const whole = ({ mass, zero }: LogDensity): number => mass.reduce((sum, it) => sum + it, zero);

const draws = 200_000;
const leadIn = uniform(0, 0.8);
const even = uniform(0, 1);

describe("the turns that carry are those of plain drawing", () => {
  const cases: readonly (readonly [string, Count, Distribution, Distribution])[] = [
    ["two turns with a dot", normal(2, 0.15), leadIn, even],
    ["three and a half, some of them crowded", normal(3.5, 0.15), leadIn, even],
    ["seven, all crowded", normal(7, 0.15), leadIn, even],
    ["one and a half felt, some of it nothing", normal(1.5, 0.5), leadIn, even],
    ["a range given by hand", triangular(1, 2, 4) as Count, leadIn, even],
    ["a range with its peak at an end", triangular(2, 2, 4) as Count, leadIn, even],
    ["a figure without doubt", { type: "exact", value: 3.2 }, leadIn, even],
    ["a plug that passes right through", normal(4, 0.3), exactly(0), even],
    ["a lead-in known exactly", normal(4, 0.3), exactly(0.8), exactly(0.5)],
    // Found when this suite was written: Gauss nodes without their weights made such a lead-in too wide.
    ["a lead-in given by hand", normal(2.5, 0.05), triangular(0, 0.4, 0.8), even],
    [
      "a lead-in given by hand and a figure without doubt",
      { type: "exact", value: 2.5 },
      triangular(0, 0.4, 0.8),
      even,
    ],
    // Found when this suite was written: a lead-in or an exponent without ends asked for an endless grid.
    ["a normal lead-in", normal(2.5, 0.15), normal(0.4, 0.1), even],
    ["a normal exponent", normal(7, 0.15), leadIn, normal(0.5, 0.1)],
  ];

  test.each(cases)("%s", (_, count, lead, exponent) => {
    const density = turnsDensity(count, lead, k, exponent);
    expect(whole(density)).toBeCloseTo(1, 9);
    const below = cumulated(density);
    const sample = drawn(count, lead, exponent, draws);
    for (const p of [0.001, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 0.999]) {
      const x = sample[Math.floor(p * draws)] as number;
      // Five standard errors of the share drawn; where the turns end abruptly, a cell of 1 %.
      const error = 5 * Math.sqrt((p * (1 - p)) / draws) + 1e-4;
      const share = probabilityBelow(density, below, x);
      const within = Math.abs(Math.log(Math.max(x, 1e-9) / Math.max(quantileOf(density, below, p), 1e-9))) < step;
      expect(within || Math.abs(share - p) < error, `${share} against ${p} at ${x} turns`).toBe(true);
    }
  });
});

// The middle of a count less its lead-in is the difference of their means, by symmetry of both.
test.each([
  [2, 1.6],
  [3.2, 2.8],
])("of %d turns counted the middle is %d below three", (counted, middle) => {
  const density = turnsDensity(normal(counted, 0.15), leadIn, k, exactly(0));
  expect(quantileOf(density, cumulated(density), 0.5)).toBeCloseTo(middle, 3);
});

test("the lead-in widens a count as its variance adds", () => {
  const { first, mass } = turnsDensity(normal(2.9, 0.15), leadIn, k, exactly(0));
  const moment = (f: (n: number) => number): number =>
    mass.reduce((sum, it, i) => sum + it * f(Math.exp(first + i * step)), 0);
  const mean = moment((n) => n);
  expect(mean).toBeCloseTo(2.5, 4);
  expect(Math.sqrt(moment((n) => (n - mean) ** 2))).toBeCloseTo(Math.hypot(0.15, 0.8 / Math.sqrt(12)), 3);
});

describe("what cannot carry is nothing", () => {
  test.each([
    ["no turns at all", { type: "exact", value: 0 }],
    ["less than the shortest lead-in", triangular(-2, -1, 0) as Count],
  ] as const satisfies readonly (readonly [string, Count])[])("%s", (_, count) => {
    const density = turnsDensity(count, leadIn, k, even);
    expect(density.zero).toBe(1);
    expect(whole(density)).toBe(1);
  });

  test("half a turn less a lead-in of up to 0.8 is often nothing", () => {
    // Exactly 0.5 less U(0, 0.8): nothing in 3 of 8.
    const density = turnsDensity({ type: "exact", value: 0.5 }, leadIn, k, even);
    expect(density.zero).toBeCloseTo(3 / 8, 2);
  });
});

describe("laws", () => {
  const turns = fc.double({ min: 0.5, max: 9, noNaN: true });
  // From a count with a dot to one by feel.
  const spread = fc.double({ min: 0.15, max: 0.5, noNaN: true });

  test("more turns never carry less", () => {
    fc.assert(
      fc.property(turns, spread, (n, s) => {
        const [some, more] = [n, n + 0.3].map((it) => turnsDensity(normal(it, s), leadIn, k, even)) as [
          LogDensity,
          LogDensity,
        ];
        for (const p of [0.05, 0.5, 0.95]) {
          const [x, y] = [quantileOf(some, cumulated(some), p), quantileOf(more, cumulated(more), p)];
          expect(y).toBeGreaterThanOrEqual(x);
        }
      }),
      { numRuns: 50 },
    );
  });

  // Beyond three turns the crowd is narrower than a cell at its upper end, and interpolation overshoots there a little.
  test("all of the probability is kept, and hardly any of it is negative", () => {
    fc.assert(
      fc.property(turns, spread, (n, s) => {
        const density = turnsDensity(normal(n, s), leadIn, k, even);
        expect(whole(density)).toBeCloseTo(1, 8);
        for (const it of density.mass) expect(it).toBeGreaterThan(-1e-4);
      }),
      { numRuns: 50 },
    );
  });
});
