import { describe, expect, test } from "vitest";
import { documentOf, sound, textOf, weighed } from "./changedCase.ts";

const byEye = { left: { counted: "by eye" } };
const felt = { left: { counted: "felt" } };

describe("what to measure next", () => {
  test("a count by eye promises what the same count with a dot then gives", () => {
    const promised = weighed(byEye).next.measurements.find(({ reading }) => reading === "left.turns");
    const given = weighed({}).asFound.window;
    expect(promised?.limitThen_Nm).toBeCloseTo(given?.limit_Nm ?? 0, 9);
    expect(promised?.limitNow_Nm).toBeCloseTo(weighed(byEye).asFound.window?.limit_Nm ?? 0, 9);
  });

  test("counting again comes first where the count is what spreads most, and its gain grows with the doubt", () => {
    const [eye, hand] = [weighed(byEye).next, weighed(felt).next];
    expect(hand.measurements[0]?.reading).toBe("left.turns");
    expect(hand.shares[0]?.term).toBe("turns");
    const gain = ({ measurements }: typeof eye): number => {
      const counted = measurements.find(({ reading }) => reading === "left.turns");
      return (counted?.limitThen_Nm ?? 0) - (counted?.limitNow_Nm ?? 0);
    };
    expect(gain(hand)).toBeGreaterThan(gain(eye));
  });

  test("a count with a dot, a measured height and a named alloy leave nothing to measure", () => {
    const { next } = weighed({ left: { height: "0.7" }, case: { material: "EN AC-46000" } });
    expect(next.measurements).toEqual([]);
  });

  test("the shares of the spread add to one and are in order", () => {
    const { shares } = weighed(byEye).next;
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shares.map(({ share }) => share)).toEqual(shares.map(({ share }) => share).toSorted((a, b) => b - a));
  });

  /** The model's sigma of the logarithm is 0.20 by the method, the own ranges' variances add to the rest. */
  test("the model's share is its variance over the whole", () => {
    const { shares } = weighed({ left: { counted: "with a dot" } }).next;
    const share = (term: string): number => shares.find((it) => it.term === term)?.share ?? Number.NaN;
    // Wrench: uniform 4 %, a variance of 0.04²/3 of the logarithm, to first order.
    expect(share("model") / share("wrench")).toBeCloseTo(0.2 ** 2 / (0.04 ** 2 / 3), 0);
  });

  test("says in one sentence what is worth the walk, and that nothing is where nothing is", () => {
    expect(textOf(felt)).toMatch(/Measure next\n {2}Count the turns again with a dot: the limit would rise from/);
    expect(textOf({})).toContain("Nothing here is worth measuring again");
  });

  test("a refused port and a healthy one are asked for nothing", () => {
    expect(documentOf({ joint: { kind: "spark plug" } }).measureNext).toEqual([]);
    expect(documentOf({ left: sound }).measureNext).toEqual([]);
  });
});
