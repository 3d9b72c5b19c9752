import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { carryingTurns, leadIn } from "../../../src/mechanics/joint/carryingTurns.ts";
import { mean, quantile, standardDeviation } from "../../../src/mechanics/quantity/distribution.ts";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { turn } from "../../../src/mechanics/quantity/unit.ts";
import type { WeighedClosure } from "../../../src/mechanics/remedies/weighedClosure.ts";
import { turnsRemarkSentences } from "../../../src/sheets/words/windowReasons.ts";
import { type Changes, documentOf, remedy, sound, weighed } from "./changedCase.ts";

const caught = ({ turns }: WeighedClosure): number => (turns ? valueIn(turn, turns.caught) : Number.NaN);

/** P 1.5, ring 2 mm, plug 13 mm under the head with a point of 1 mm: reach 10 mm with the ring, 12 mm without; hole 16 mm. */
const found = (changes: Changes) => weighed(changes).asFound;

describe("counted: a ring costs t/P turns", () => {
  test("counted bare, closed on a ring of 2 mm: 3.5 - 2/1.5", () => {
    expect(caught(found({}))).toBeCloseTo(3.5 - 2 / 1.5, 9);
  });
  test("counted on the ring, closed on it: as counted", () => {
    expect(caught(found({ left: { withWasher: true } }))).toBeCloseTo(3.5, 9);
  });
  test("counted on the ring, closed without: 3.5 + 2/1.5, and thread is known to be left ahead", () => {
    const sealed = remedy(weighed({ left: { withWasher: true } }), "sealant, no washer");
    expect(caught(sealed)).toBeCloseTo(3.5 + 2 / 1.5, 9);
    expect(sealed.turns?.remarks).toEqual([]);
  });
  test("where nobody measured the hole the gain is remarked", () => {
    const changes = { left: { withWasher: true }, case: { threadDepth: undefined } };
    expect(remedy(weighed(changes), "sealant, no washer").turns?.remarks).toEqual(["thread ahead not measured"]);
  });
  test("where the thread ends before, only what is left of it is gained: 3.5 + (11 - 10)/1.5", () => {
    const sealed = remedy(weighed({ left: { withWasher: true, goodTo: "11 mm" } }), "sealant, no washer");
    expect(caught(sealed)).toBeCloseTo(3.5 + 1 / 1.5, 9);
    expect(sealed.turns?.remarks).toEqual(["thread ends here"]);
  });
  test("its uncertainty is that of a length held between nothing and the ring, here against 20 000 strata", () => {
    const sealed = remedy(weighed({ left: { withWasher: true, goodTo: "11 mm" } }), "sealant, no washer");
    const [ring, u_ring, u_ahead] = [2, 0.05, Math.hypot(1, 0.05, 0.05, 0.3)];
    const ahead = { type: "normal", mean: 1, sd: u_ahead } as const;
    const strata = Array.from({ length: 20_000 }, (_, i) => quantile(ahead, (i + 0.5) / 20_000));
    const gains = strata.map((it) => Math.min(ring, Math.max(0, it)));
    const gain = gains.reduce((sum, it) => sum + it, 0) / gains.length;
    const spread = gains.reduce((sum, it) => sum + (it - gain) ** 2, 0) / gains.length;
    const whole = strata.filter((it) => it > ring).length / strata.length;
    const u = Math.sqrt(spread + whole * u_ring ** 2) / 1.5;
    expect(standardDeviation(sealed.turns?.count ?? none)).toBeCloseTo(Math.hypot(0.15, u), 4);
  });
  test("inches: the same ring in another unit costs the same turns", () => {
    expect(caught(found({ seal: { thickness: `${2 / 25.4} in` } }))).toBeCloseTo(3.5 - 2 / 1.5, 9);
  });
});

describe("a longer plug gains up to the end of the thread", () => {
  const longer = (changes: Changes) => remedy(weighed(changes), "longer plug");

  test("here 4 mm: 3.5 - 2/1.5 + 6/1.5 with the ring, and it passes right through", () => {
    expect(caught(longer({}))).toBeCloseTo(3.5 - 2 / 1.5 + 6 / 1.5, 9);
    expect(longer({}).turns).toMatchObject({ passesThrough: true, leadInShare: 0 });
    expect(longer({}).checks).toContainEqual({ type: "plug length", underHead_mm: 19, longerBy_mm: 6 });
  });
  test("with too little room behind it ends in the hole", () => {
    const inside = longer({ case: { roomBehind: "2.5 mm" } });
    expect(inside.checks).toContainEqual({ type: "plug length", underHead_mm: 18, longerBy_mm: 5 });
    expect(inside.turns?.passesThrough).toBe(false);
    expect(caught(inside)).toBeCloseTo(3.5 - 2 / 1.5 + 5 / 1.5, 9);
  });
  test.each([
    ["thread ends where the plug ends", { left: { goodTo: "9.9 mm" } }],
    ["depth not measured", { case: { threadDepth: undefined } }],
    ["plug length not measured", { plug: { underHead: undefined } }],
    ["no room behind", { plug: { underHead: "18 mm" }, case: { roomBehind: "0 mm" }, left: { turns: "6" } }],
  ])("not offered: %s", (reason, changes) => {
    const { notOffered, remedies } = weighed(changes);
    expect(notOffered.map((it) => it.reason)).toContain(reason);
    expect(remedies.map(({ id }) => id)).not.toContain("longer plug");
  });

  test("beyond the end of the thread nothing more is gained, however long the plug", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 19, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (l, by) => {
          const at = (underHead_mm: number) => {
            const { portCase } = weighed({});
            const { asFound, port, ranges } = portCase;
            const underHead = { ...(asFound.plug.underHead ?? portCase.port.thread.d), value: underHead_mm / 1e3 };
            return carryingTurns(port, asFound, { ...asFound, plug: { ...asFound.plug, underHead } }, ranges);
          };
          const [longEnough, longer] = [at(l), at(l + by)];
          expect(longer?.count).toMatchObject({
            type: "normal",
            mean: expect.closeTo(mean(longEnough?.count ?? none), 9),
          });
          expect(longer?.leadInShare).toBe(0);
        },
      ),
      { numRuns: 50, examples: [[19, 7.5e-10]] },
    );
  });
});

const none = { type: "exact", value: 0 } as const;

describe("the lead-in", () => {
  test("only what still lies in the thread of the hole is wasted", () => {
    const share = (underHead: string) => found({ plug: { underHead }, left: { turns: "6" } }).turns?.leadInShare;
    expect(share("13 mm")).toBe(1);
    expect(share("17.7 mm")).toBe(1);
    expect(share("18.4 mm")).toBeCloseTo(0.6 / 1.2, 9);
    expect(share("19 mm")).toBe(0);
    expect(share("25 mm")).toBe(0);
  });
  test("half of it wastes half", () => {
    const { asFound, portCase } = weighed({ plug: { underHead: "18.4 mm" }, left: { turns: "6" } });
    if (!asFound.turns) throw new Error("not counted");
    expect(mean(leadIn(asFound.turns, portCase.ranges))).toBeCloseTo(0.2, 9);
  });
});

describe("reckoned from the ends of the good thread", () => {
  const ends = { turns: undefined, goodFrom: "4 mm", goodTo: "16 mm" };
  test("[min(reach, good to) - good from] / P", () => {
    expect(found({ left: ends }).turns?.basis).toBe("reckoned");
    expect(caught(found({ left: ends }))).toBeCloseTo((10 - 4) / 1.5, 9);
    expect(caught(found({ left: { ...ends, goodTo: "9 mm" } }))).toBeCloseTo((9 - 4) / 1.5, 9);
    expect(caught(remedy(weighed({ left: ends }), "sealant, no washer"))).toBeCloseTo((12 - 4) / 1.5, 9);
  });
  test("its uncertainty is that of the lengths: a hook at the start, caliper and rule on the plug", () => {
    const { turns } = found({ left: ends });
    const [hook, caliper, rule] = [1, 0.05, 0.3];
    const u = Math.hypot(hook, caliper, caliper, rule) / 1.5;
    expect(standardDeviation(turns?.count ?? none)).toBeCloseTo(u, 6);
  });
});

describe("both given", () => {
  const both = (turns: unknown, goodFrom: unknown) =>
    found({ left: { withWasher: true, turns, goodFrom, goodTo: { value: "16 mm", how: "depth rod" } } }).turns;
  const depthRod = (value: string) => ({ value, how: "depth rod" });

  test("they are weighed by 1/u^2 where they agree", () => {
    const turns = both("3.5", depthRod("4.5 mm"));
    const [n_1, u_1] = [3.5, 0.15];
    const [n_2, u_2] = [5.5 / 1.5, Math.hypot(0.3, 0.05, 0.05, 0.3) / 1.5];
    const [w_1, w_2] = [u_1 ** -2, u_2 ** -2];
    expect(turns?.basis).toBe("counted and reckoned");
    expect(mean(turns?.count ?? none)).toBeCloseTo((n_1 * w_1 + n_2 * w_2) / (w_1 + w_2), 9);
    expect(standardDeviation(turns?.count ?? none)).toBeCloseTo((w_1 + w_2) ** -0.5, 9);
  });
  test("a count given as a range is weighed too", () => {
    const turns = both({ low: "3", likely: "3.5", high: "4" }, depthRod("4.5 mm"));
    expect(turns?.basis).toBe("counted and reckoned");
    expect(standardDeviation(turns?.count ?? none)).toBeLessThan(0.5 / Math.sqrt(6));
  });
  test.each([
    ["the count is too high", "5.5", 5.5 / 1.5],
    ["the lengths are too long", "2", 2],
    ["a range counted too high", { low: "5", likely: "5.5", high: "6" }, 5.5 / 1.5],
  ])("farther apart than two standard deviations they are asked about, and the fewer count: %s", (_, turns, fewer) => {
    const carried = both(turns, depthRod("4.5 mm"));
    expect(carried?.remarks).toContain("count and lengths disagree");
    expect(mean(carried?.count ?? none)).toBeCloseTo(fewer, 9);
  });
  test("the answer asks, and a port whose readings disagree is not called healthy", () => {
    const left = { ...sound, withWasher: true, goodFrom: "7 mm", goodTo: "16 mm" };
    const { healthy, asFound } = documentOf({ left, healthyWithWasher: true });
    expect(healthy).toBe(false);
    expect(asFound.because).toContain(turnsRemarkSentences["count and lengths disagree"]);
    expect(documentOf({ left: { ...sound, withWasher: true }, healthyWithWasher: true }).healthy).toBe(true);
  });
});
