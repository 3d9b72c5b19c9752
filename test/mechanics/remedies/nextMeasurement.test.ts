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

  test("each reading stands with its share of the spread, and the shares of the document add to one", () => {
    const { measureNext, spread } = documentOf({ ...felt, case: { material: "unknown light alloy" } });
    const share = (term: string): number => spread.find((it) => it.term === term)?.share ?? Number.NaN;
    const of = (reading: string): number => measureNext.find((it) => it.reading === reading)?.share ?? Number.NaN;
    expect(spread.reduce((sum, it) => sum + it.share, 0)).toBeCloseTo(1, 6);
    expect(of("left.turns")).toBeCloseTo(share("turns"), 6);
    expect(of("case.material")).toBeCloseTo(share("strength") + share("shear ratio"), 6);
    expect(textOf(felt)).toMatch(/The count makes \d+ % of\s+the\s+spread\./);
  });

  test("it says what a better reading does to the remedy that would be done, which is that remedy weighed so", () => {
    const [first] = documentOf(felt).measureNext;
    const { best } = first ?? { best: null };
    expect(first?.reading).toBe("left.turns");
    const limitOf = (changes: typeof felt) =>
      documentOf(changes).remedies.find(({ id }) => id === best?.id)?.window?.limit_Nm;
    expect(best?.limitNow_Nm).toBe(limitOf(felt));
    expect(best?.limitThen_Nm).toBe(limitOf({ left: { counted: "with a dot" } }));
  });

  test("a length nobody measured is asked for with what waits for it, also where the port is refused", () => {
    const unknown = { case: { threadDepth: undefined, thinnestWall: undefined, roomBehind: undefined } };
    const { measureFirst } = documentOf({ ...unknown, joint: { kind: "spark plug" } });
    const waits = (reading: string) => measureFirst.find((it) => it.reading === reading)?.decides ?? [];
    expect(waits("case.threadDepth")).toEqual(expect.arrayContaining(["wire coil", "solid bushing"]));
    expect(waits("case.thinnestWall")).toContain("solid bushing");
    expect(documentOf({}).measureFirst).toEqual([]);
    expect(textOf(unknown)).toContain("Hook the depth of the hole");
  });

  test("a refused port and a healthy one are asked for nothing", () => {
    expect(documentOf({ joint: { kind: "spark plug" } }).measureNext).toEqual([]);
    expect(documentOf({ left: sound }).measureNext).toEqual([]);
  });
});
