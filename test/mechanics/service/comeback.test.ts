import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { comeback } from "../../../src/mechanics/service/comeback.ts";
import type { HeldCase } from "../../../src/mechanics/service/heldCases.ts";
import { agrees } from "../../published.ts";

const prior = { low: 0.125, likely: 0.25, high: 0.5 };
const one = (from_days: number, to_days: number | null): HeldCase => ({ method: "sealant", from_days, to_days });

describe("the share that comes back within a year", () => {
  test("is the estimate where there is no case of one's own, and where nobody ever looked", () => {
    expect(comeback(prior, "sealant", [])).toEqual({ ...prior, basis: "estimate", cases: 0, cameBack: 0 });
    expect(comeback(prior, "sealant", [one(0, null)]).basis).toBe("estimate");
    expect(comeback(prior, "sealant", [{ ...one(30, 30), method: "wire coil" }]).basis).toBe("estimate");
  });

  test("what still holds before its year is over counts as the part it was watched for", () => {
    expect(comeback(prior, "sealant", [one(365, null)])).toMatchObject({ cases: 1, cameBack: 0 });
    // (4 x 0.25 + 0) / (4 + 73 / 365), (4 x 0.25 + 1) / (4 + 1), (4 x 0.25 + 0) / (4 + 1).
    expect(comeback(prior, "sealant", [one(73, null)]).likely).toBeCloseTo(1 / 4.2, 12);
    expect(comeback(prior, "sealant", [one(71, 71)])).toMatchObject({ cases: 1, cameBack: 1, likely: 0.4 });
    expect(comeback(prior, "sealant", [one(400, 500)])).toMatchObject({ cases: 1, cameBack: 0, likely: 0.2 });
    expect(comeback(prior, "sealant", [one(300, 500)]).cases).toBe(0);
  });

  // Found in review: only those that had come back counted before a year was over, so a young record was all failures.
  test("a young record is not all failures: twenty made in half a year, one of them back", () => {
    const young = [one(60, 60), ...Array.from({ length: 19 }, () => one(182.5, null))];
    const { likely, cases } = comeback(prior, "sealant", young);
    expect(cases).toBe(20);
    // (1 + 1) / (4 + 1 + 19 / 2).
    expect(likely).toBeCloseTo(2 / 14.5, 12);
  });

  // Brown, Cai and DasGupta, Statistical Science 16 (2001), 101: Jeffreys' interval for 2 of 3, 18 to 96 %.
  test("2 of 3 lie between 18 and 96 %", () => {
    const { low, high } = comeback({ low: 0, likely: 0.25, high: 0.5 }, "sealant", [
      one(71, 71),
      one(5, 5),
      one(400, null),
    ]);
    agrees(100 * low, "18");
    agrees(100 * high, "96");
  });

  test("lies between its limits, and never falls when one more has come back", () => {
    const cases = fc.array(
      fc.boolean().map((held) => (held ? one(400, null) : one(30, 30))),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(cases, (own) => {
        const { low, likely, high } = comeback(prior, "sealant", own);
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
        if (own.length !== 19)
          expect(comeback(prior, "sealant", [...own, one(30, 30)]).likely).toBeGreaterThanOrEqual(likely);
      }),
    );
  });
});
