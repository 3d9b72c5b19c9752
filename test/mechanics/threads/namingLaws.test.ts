import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { type Random, xoshiro128 } from "../../../src/mechanics/quantity/random.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { type CandidateThread, namingCandidates } from "../../../src/mechanics/threads/namingCandidates.ts";
import { aboveInRange, readingOfRange, readingOfShiftedRange } from "../../../src/mechanics/threads/namingDensity.ts";
import type { ThreadEvidence } from "../../../src/mechanics/threads/namingEvidence.ts";
import { type ThreadNaming, threadCandidates } from "../../../src/mechanics/threads/threadName.ts";
import {
  drawn,
  gaps,
  outside,
  read,
  simulatedGaps,
  simulatedOutside,
  simulatedTaper,
  taper,
} from "./namingReadings.ts";

const length = (max: number) => fc.double({ min: 0, max, noNaN: true });
const designation = fc.constantFrom(...namingCandidates().map((it) => it.designation));

const anyEvidence: fc.Arbitrary<ThreadEvidence> = fc.oneof(
  fc.tuple(length(1000), fc.double({ min: 1e-6, max: 5, noNaN: true })).map(([x, u]) => outside(x, u)),
  fc.tuple(fc.integer({ min: 1, max: 40 }), length(1000)).map(([count, x]) => gaps(count, x)),
  fc.tuple(length(10), fc.boolean()).map(([P, seats]): ThreadEvidence => {
    return { type: "pitch gauge", leaf: exact("P", P, mm), seats };
  }),
  length(10).map((P): ThreadEvidence => ({ type: "pitch", pitch: exact("P", P, mm) })),
  length(1000).map((x): ThreadEvidence => {
    return { type: "bore", diameter: read(x, 0.15), wearUpTo: exact("w", 0, mm) };
  }),
  fc.tuple(length(20), length(100)).map(([turns, x]): ThreadEvidence => {
    return { type: "travel", turns, length: read(x, 0.25) };
  }),
  fc.tuple(length(3), length(40)).map(([change, over]) => taper(change - 1, over)),
  fc
    .record({
      unknown: fc.constantFrom("plug" as const, "hole" as const),
      known: fc.option(designation, { nil: null, freq: 8 }),
      turns: length(20),
      felt: fc.constantFrom("tight" as const, "free" as const),
    })
    .map((it): ThreadEvidence => ({ type: "mesh", ...it })),
  fc.tuple(length(60), length(60)).map(([plug, sister]): ThreadEvidence => {
    return { type: "hexagon", plug: read(plug, 0.1), sister: read(sister, 0.1) };
  }),
);
const someEvidence = fc
  .tuple(anyEvidence, fc.array(anyEvidence, { maxLength: 4 }))
  .map(([one, more]): [ThreadEvidence, ...ThreadEvidence[]] => [one, ...more]);

describe("whatever is measured", () => {
  test("probabilities are from 0 to 1, add to 1 and stand in order, and nothing is NaN", () => {
    fc.assert(
      fc.property(someEvidence, (evidence) => {
        const { candidates, showTwo, separateBy } = threadCandidates(evidence);
        const p = candidates.map((it) => it.probability);
        expect(Math.abs(p.reduce((sum, it) => sum + it, 0) - 1)).toBeLessThan(1e-9);
        expect(p.every((it, i) => it >= 0 && it <= (p[i - 1] ?? 1))).toBe(true);
        expect(candidates.every(({ pieces }) => pieces.every((it) => Number.isFinite(it.logLikelihood)))).toBe(true);
        expect(showTwo).toBe((p[0] ?? 0) < 20 * (p[1] ?? 0));
        expect(separateBy === null || (separateBy.wrong >= 0 && separateBy.wrong < 0.4)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("the order of the evidence does not matter", () => {
    const shuffled = someEvidence.chain((evidence) =>
      fc.tuple(fc.constant(evidence), fc.shuffledSubarray(evidence, { minLength: evidence.length })),
    );
    const ranking = ({ candidates, warnings, showTwo, rivals }: ThreadNaming) => ({
      candidates: candidates.map((it) => [it.designation, it.probability]),
      warnings,
      showTwo,
      rivals,
    });
    fc.assert(
      fc.property(shuffled, ([evidence, other]) => {
        const [one, ...more] = other;
        if (!one) return;
        expect(ranking(threadCandidates([one, ...more]))).toEqual(ranking(threadCandidates(evidence)));
      }),
      { numRuns: 40 },
    );
  });

  test("a small change of a reading changes no probability by much", () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 65, noNaN: true }), fc.double({ min: 3, max: 40, noNaN: true }), (x, l) => {
        const p = (dx: number) =>
          new Map(
            threadCandidates([outside(x + dx), gaps(8, l + dx)]).candidates.map((it) => [
              it.designation,
              it.probability,
            ]),
          );
        const [before, after] = [p(0), p(1e-5)];
        for (const [name, value] of before) expect(Math.abs(value - (after.get(name) ?? 9))).toBeLessThan(5e-3);
      }),
      { numRuns: 40 },
    );
  });
});

describe("the densities of a reading", () => {
  const range = fc.tuple(fc.double({ min: -2, max: 2, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));

  test("add to 1 over all readings, with and without wear", () => {
    fc.assert(
      fc.property(range, fc.double({ min: 0.02, max: 0.5, noNaN: true }), length(0.3), ([low, width], sd, wear) => {
        const ends = [low, low + width] as const;
        const [from, to] = [low - wear - 8 * sd, low + width + 8 * sd];
        const step = (to - from) / 4000;
        const sum = (f: (x: number) => number): number =>
          Array.from({ length: 4000 }, (_, i) => f(from + (i + 0.5) * step) * step).reduce((a, b) => a + b, 0);
        expect(sum((x) => readingOfRange(x, ends, sd))).toBeCloseTo(1, 6);
        expect(sum((x) => readingOfShiftedRange(x, ends, -wear, sd))).toBeCloseTo(1, 6);
      }),
      { numRuns: 50 },
    );
  });

  test("fall as fast as what lies above", () => {
    fc.assert(
      fc.property(range, fc.double({ min: 0.3, max: 1, noNaN: true }), ([low, width], sd) => {
        const ends = [low, low + width] as const;
        const x = low + width / 3;
        const slope = (aboveInRange(x - 1e-4, ends, sd) - aboveInRange(x + 1e-4, ends, sd)) / 2e-4;
        expect(slope).toBeCloseTo(readingOfRange(x, ends, sd), 5);
      }),
    );
  });
});

describe("over many plugs of known thread, met as often as their weights say", () => {
  const trials = 300;
  const common = namingCandidates();

  test("the first, or one of two shown, is true at least as often as is claimed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 32 - 1 }), fc.constantFrom(4, 8, 12), (seed, count) => {
        const random = xoshiro128(seed);
        let [right, claimed, variance] = [0, 0, 0];
        for (let i = 0; i < trials; i++) {
          const thread = drawn(common, random);
          const naming = threadCandidates([simulatedOutside(thread, random), simulatedGaps(thread, count, random)]);
          const shown = naming.candidates.slice(0, naming.showTwo ? 2 : 1);
          const p = shown.reduce((sum, it) => sum + it.probability, 0);
          claimed += p;
          variance += p * (1 - p);
          if (shown.some((it) => it.designation === thread.designation)) right++;
        }
        // The claim allows for blunders, which these readings have not, so it may only be too low; four deviations of chance.
        expect(right).toBeGreaterThanOrEqual(claimed - 4 * Math.sqrt(variance));
      }),
      { numRuns: 3 },
    );
  });

  test("a thread named alone is the true one in at least 19 of 20 cases", () => {
    const random = xoshiro128(20);
    let [alone, right] = [0, 0];
    for (let i = 0; i < trials; i++) {
      const thread = drawn(common, random);
      const naming = threadCandidates([simulatedOutside(thread, random), simulatedGaps(thread, 10, random)]);
      if (naming.showTwo) continue;
      alone++;
      if (naming.candidates[0]?.designation === thread.designation) right++;
    }
    expect(alone).toBeGreaterThan(trials / 2);
    expect(right / alone).toBeGreaterThan(0.95);
  });

  test("a pitch or a taper measured besides never lowers the true thread below its rivals on average", () => {
    const further: readonly ((thread: CandidateThread, random: Random) => ThreadEvidence)[] = [
      (thread, random) => simulatedGaps(thread, 8, random),
      simulatedTaper,
    ];
    for (const measured of further) {
      const random = xoshiro128(7);
      let gain = 0;
      for (let i = 0; i < trials; i++) {
        const thread = drawn(common, random);
        const diameter = simulatedOutside(thread, random);
        const before = lead(threadCandidates([diameter]), thread);
        gain += lead(threadCandidates([diameter, measured(thread, random)]), thread) - before;
      }
      expect(gain / trials).toBeGreaterThan(0);
    }
  });

  /** The logarithm of the odds of the true thread over its best rival. */
  function lead({ candidates }: ThreadNaming, thread: CandidateThread): number {
    const of = (isTrue: boolean): number =>
      candidates.find((it) => (it.designation === thread.designation) === isTrue)?.probability ?? Number.NaN;
    return Math.log(of(true) / of(false));
  }
});
