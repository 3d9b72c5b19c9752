import { readFileSync } from "node:fs";
import fc from "fast-check";
import type { FailedAt, FailedBetween, HeldUntil, Watched } from "../../../src/mechanics/service/heldCases.ts";

export const at = (t: number): FailedAt => ({ type: "failed at", t });
export const between = (from: number, to: number): FailedBetween => ({ type: "failed between", from, to });
export const until = (t: number): HeldUntil => ({ type: "held until", t });

/** Remissions of 23 patients, test/published/aml.csv. */
export const maintained = rows("aml.csv")
  .filter(([group]) => group === "Maintained")
  .map(([, weeks, ended]) => known(weeks, ended));
export const nonmaintained = rows("aml.csv")
  .filter(([group]) => group === "Nonmaintained")
  .map(([, weeks, ended]) => known(weeks, ended));

/** 70 fans of diesel generators, test/published/diesel_fans.csv. */
export const fans = rows("diesel_fans.csv").map(([hours, failed]) => known(hours, failed));

/** Eight repairs over kilometres, with a failure and a repair that still holds at one reading. */
export const eightRepairs = [
  at(500),
  until(500),
  at(1200),
  until(3000),
  at(3000),
  until(5000),
  until(8000),
  until(10000),
];

/** Ten repairs seen only at checks, in days. */
export const tenAtChecks: readonly Watched[] = [
  between(0, 7),
  between(7, 30),
  between(30, 90),
  until(365),
  until(365),
  until(365),
  until(90),
  until(90),
  until(30),
  between(30, 365),
];

/** Sets of failures known to the day and repairs that still hold. */
export const exactSets = fc.array(
  fc.tuple(fc.integer({ min: 1, max: 40 }), fc.boolean()).map(([t, failed]) => (failed ? at(t) : until(t))),
  { minLength: 1, maxLength: 40 },
);

/** Sets of all three kinds. */
export const mixedSets: fc.Arbitrary<Watched[]> = fc.array(
  fc
    .tuple(fc.constantFrom("at", "between", "until"), fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 20 }))
    .map(([kind, from, more]) =>
      kind === "at" ? at(from + 1) : kind === "between" ? between(from, from + more) : until(from + 1),
    ),
  { minLength: 1, maxLength: 30 },
);

/** The same cases in another order. */
export const shuffled = <W>(sets: fc.Arbitrary<W[]>): fc.Arbitrary<readonly [W[], W[]]> =>
  sets.chain((set) =>
    fc.tuple(fc.constant(set), fc.shuffledSubarray(set, { minLength: set.length, maxLength: set.length })),
  );

function rows(file: string): readonly (readonly string[])[] {
  const lines = readFileSync(new URL(`../../published/${file}`, import.meta.url), "utf8")
    .trim()
    .split("\n");
  return lines.slice(2).map((line) => line.split(","));
}

function known(t: string | undefined, failed: string | undefined): FailedAt | HeldUntil {
  return failed === "1" ? at(Number(t)) : until(Number(t));
}
