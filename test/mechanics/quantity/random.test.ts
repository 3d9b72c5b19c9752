import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { splitmix32, xoshiro128, xoshiro128Words } from "../../../src/mechanics/quantity/random.ts";

describe("published", () => {
  // xoshiro128starstar.c 1.1 of Blackman and Vigna, outputs as printed in the tests of the Rust crate rand_xoshiro.
  test("xoshiro128** gives the ten outputs printed for the state 1, 2, 3, 4", () => {
    const next = xoshiro128Words([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  // Printed by xoshiro128.py beside this file, which computes the same recurrences in whole numbers.
  test.each([
    [0, [2462723854, 1020716019, 454327756, 1275600319], "0.8868539502021594", "0.6952576198588428"],
    [1, [2527132011, 314344336, 2535364964, 2041432039], "0.5686059948349658", "0.7066688045439214"],
    [2026, [3705979955, 956177921, 506830889, 917415618], "0.3345197973607569", "0.7796083184196677"],
    [4294967295, [920564995, 4230986166, 697614773, 1778835764], "0.19461841469507213", "0.7531063388169332"],
  ])("seed %d gives the state, the 1st and the 1000th number of the reference", (seed, state, first, thousandth) => {
    expect(Array.from({ length: 4 }, splitmix32(seed))).toEqual(state);
    const numbers = Array.from({ length: 1000 }, xoshiro128(seed));
    expect(numbers[0]).toBe(Number(first));
    expect(numbers[999]).toBe(Number(thousandth));
  });
});

describe("laws", () => {
  const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });

  test("every number is a whole multiple of 2^-53 inside the open interval", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const random = xoshiro128(seed);
        for (let i = 0; i < 100; i++) {
          const u = random();
          expect(u > 0 && u < 1 && Number.isInteger(u * 2 ** 53)).toBe(true);
        }
      }),
    );
  });

  test("the same seed repeats the stream, and its neighbour gives another", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const stream = (of: number) => Array.from({ length: 5 }, xoshiro128(of));
        expect(stream(seed)).toEqual(stream(seed));
        expect(stream(seed)).not.toEqual(stream(seed === 0 ? 1 : seed - 1));
      }),
    );
  });

  test("two streams do not disturb each other", () => {
    const alone = Array.from({ length: 20 }, xoshiro128(7));
    const [a, b] = [xoshiro128(7), xoshiro128(8)];
    const beside = Array.from({ length: 20 }, () => {
      b();
      return a();
    });
    expect(beside).toEqual(alone);
  });

  // Chi-square with 255 degrees of freedom: 99.98 % of such sums lie between 179 and 348 (scipy.stats.chi2.ppf).
  test("a million numbers, alone and in pairs of neighbours, fill 256 cells evenly", () => {
    const random = xoshiro128(2026);
    const alone = new Array<number>(256).fill(0);
    const paired = new Array<number>(256).fill(0);
    const lowBits = new Array<number>(256).fill(0);
    for (let i = 0; i < 500_000; i++) {
      const [u, v] = [random(), random()];
      for (const x of [u, v]) {
        add(alone, Math.floor(x * 256));
        add(lowBits, (x * 2 ** 53) % 256);
      }
      add(paired, Math.floor(u * 16) * 16 + Math.floor(v * 16));
    }
    for (const counts of [alone, paired, lowBits]) {
      expect(chiSquare(counts)).toBeGreaterThan(179);
      expect(chiSquare(counts)).toBeLessThan(348);
    }
  });

  test("a seed that is no whole number of 32 bits is refused by name", () => {
    for (const seed of [-1, 0.5, 2 ** 32, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => xoshiro128(seed)).toThrow(/seed/);
    }
  });
});

function add(counts: number[], cell: number): void {
  counts[cell] = (counts[cell] ?? 0) + 1;
}

function chiSquare(counts: readonly number[]): number {
  const expected = counts.reduce((sum, n) => sum + n, 0) / counts.length;
  return counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
}
