import { describe, expect, test } from "vitest";
import { weibull } from "../../../src/mechanics/service/weibull.ts";
import { weibullLikelihood } from "../../../src/mechanics/service/weibullLikelihood.ts";
import { at, between, until } from "./heldSets.ts";

describe("refusals", () => {
  test("fewer than two failures are too few, fewer than five are flagged", () => {
    expect(weibull([at(3), until(5), until(9)])).toEqual({
      type: "not fitted",
      reason: "too few failures",
      failures: 1,
    });
    expect(weibull([])).toEqual({ type: "not fitted", reason: "too few failures", failures: 0 });
    expect(weibull([2, 3, 5, 9].map(at))).toMatchObject({ type: "fitted", fewFailures: true });
    expect(weibull([2, 3, 5, 9, 11].map(at))).toMatchObject({ type: "fitted", fewFailures: false });
  });

  test("a failure on the day of the repair has no place in the distribution", () => {
    expect(weibull([at(0), at(4), until(5)])).toMatchObject({ reason: "failure at 0" });
  });

  test("failures that may all have come at one moment have no greatest likelihood", () => {
    for (const set of [
      [at(4), at(4), until(3)],
      [between(0, 9), between(3, 7), until(3)],
      [between(0, 7), between(0, 7)],
    ])
      expect(weibull(set)).toMatchObject({ reason: "no greatest likelihood" });
  });

  test("failures all found at the first check, with others watched longer, have no greatest likelihood", () => {
    expect(weibull([between(0, 7), between(0, 7), until(300)])).toMatchObject({ reason: "no greatest likelihood" });
    expect(weibull([between(0, 90), between(0, 90), until(30), until(95)]).type).toBe("fitted");
  });

  test("what is refused for want of a maximum rises for ever", () => {
    const set = [at(4), at(4), until(3)];
    const along = [1, 10, 100, 1000].map((beta) => weibullLikelihood(set, { beta, delta: beta * Math.log(4) }).value);
    along.slice(1).forEach((value, i) => {
      expect(value).toBeGreaterThan(along[i] ?? 0);
    });
  });
});
