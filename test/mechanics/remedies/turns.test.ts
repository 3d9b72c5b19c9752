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

describe("turns under the chamfer of an O-ring carry nothing", () => {
  // The rings of the example's thread: a cord of 2.5 mm. Its chamfer is 2.5 · (1.09 + 1.34 + 1.45)/3 = 3.2333 mm deep; below it are
  // 12 - 3.2333 = 8.7667 mm of the plug's reach, 5.844 turns. By hand.
  const all = { left: { turns: "8" } };
  const oRing = { kind: "O-ring", material: undefined, outside: undefined, inside: undefined, thickness: undefined };

  test("eight turns from the face: only those below it are counted, and that is said", () => {
    const cut = remedy(weighed(all), "other seal: O-ring");
    expect(caught(cut)).toBeCloseTo(5.8444, 4);
    expect(cut.turns?.remarks).toEqual(["under the chamfer"]);
    const asFound = found({ ...all, seal: oRing });
    expect(caught(asFound)).toBeCloseTo(5.8444, 4);
    expect(asFound.window?.limit_Nm).toBeLessThan(
      found({ ...all, seal: { ...oRing, kind: "none" } }).window?.limit_Nm ?? 1e9,
    );
  });

  test("three and a half at the plug's end lie below it, and all of them count", () => {
    const cut = remedy(weighed({}), "other seal: O-ring");
    expect(caught(cut)).toBeCloseTo(3.5, 9);
    expect(cut.turns?.remarks).toEqual([]);
  });

  test("good thread measured from the face begins below it", () => {
    const reckoned = { left: { turns: undefined, goodFrom: "0 mm", goodTo: "16 mm" } };
    expect(caught(found({ ...reckoned, seal: oRing }))).toBeCloseTo(5.8444, 4);
    const deeper = { left: { turns: undefined, goodFrom: "4 mm", goodTo: "16 mm" } };
    expect(caught(found({ ...deeper, seal: oRing }))).toBeCloseTo(8 / 1.5, 9);
  });

  test("where the plug was not measured a count in the chamfered hole stands, and a chamfer yet to be cut takes none to all of it", () => {
    const unmeasured = { plug: { underHead: undefined } };
    expect(caught(found({ ...unmeasured, seal: oRing }))).toBeCloseTo(3.5, 9);
    const cut = remedy(weighed(unmeasured), "other seal: O-ring");
    const whole = 3.23333 / 1.5;
    expect(caught(cut)).toBeCloseTo(3.5 - whole / 2, 4);
    const count = cut.turns?.count;
    expect(count?.type === "triangular" && [count.low, count.high]).toEqual([
      expect.closeTo(3.5 - whole, 4),
      expect.closeTo(3.5, 9),
    ]);
    expect(cut.checks).toContainEqual(expect.objectContaining({ type: "chamfer cut for the ring", blind: true }));
  });

  // Below a chamfer of 3 mm are 12 - 3 = 9 mm of the plug's reach, 6 turns; below one of 2.4 mm, as ports of ISO 6149-1 of this size
  // have it (from memory), 9.6 mm; below an eighth of an inch 8.825 mm.
  test.each([
    ["3 mm", 6],
    ["2.4 mm", 6.4],
    ["1/8 in", 8.825 / 1.5],
  ])(
    "a chamfer that was measured %s deep leaves as many as lie below that, and nothing is taken for it",
    (depth, turns) => {
      const measured = weighed({ ...all, seal: { ...oRing, chamfer: depth } });
      expect(caught(measured.asFound)).toBeCloseTo(turns, 9);
      expect(measured.asFound.turns?.remarks).toEqual(["under the chamfer"]);
      expect(measured.assumed.map(({ reading }) => reading)).not.toContain("seal.chamfer");
      expect(caught(remedy(measured, "longer plug"))).toBeGreaterThan(turns);
    },
  );

  test("its depth is said as it was measured, and no more that nobody measured it", () => {
    const said = (seal: object) => documentOf({ ...all, seal }).asFound.because.join(" ");
    expect(said(oRing)).toMatch(/chamfer are not counted\. Its depth was not measured/);
    const measured = said({ ...oRing, chamfer: { value: "3 mm", how: "caliper" } });
    expect(measured).toMatch(/chamfer are not counted\. Its depth as measured: 3 mm \(caliper\)\./);
    expect(measured).not.toMatch(/not measured|is taken/);
  });

  // Depth rod 0.3, rule on the plug's point 0.3, caliper under its head 0.05 mm: over the pitch, no less than what a dot leaves.
  test("how it was measured is in the doubt of the turns", () => {
    const doubt = (how: string) => {
      const seal = { ...oRing, chamfer: { value: "8 mm", how } };
      return standardDeviation(found({ ...all, seal }).turns?.count ?? none);
    };
    expect(doubt("depth rod")).toBeCloseTo(Math.hypot(0.3, 0.3, 0.05) / 1.5, 6);
    expect(doubt("felt")).toBeGreaterThan(doubt("depth rod"));
  });

  test("another seal knows nothing of it, and a larger thread is chamfered anew", () => {
    const measured = weighed({ ...all, seal: { ...oRing, chamfer: "3 mm" } });
    expect(remedy(measured, "other seal: bonded seal").closure.seal.chamfer).toBeNull();
    const next = measured.repairs.find(({ id }) => id === "next size");
    expect(next?.repaired?.asFound.seal).toMatchObject({ kind: "O-ring", chamfer: null });
  });

  test("a ring between two faces lies in no chamfer", () => {
    expect(caught(found({ ...all, seal: { ...oRing, thickness: "2 mm" } }))).toBeCloseTo(8 - 2 / 1.5, 9);
  });

  // ISO 6149-1:2006 (from memory): ports M12 to M22 take a ring of 2.2 mm in a cavity 2.4 mm deep. O-ring handbooks (from memory):
  // a cord of 2.62 mm lies in a triangle of 3.45 to 3.6 mm, one of 3.53 in 4.65 to 4.8.
  test.each([
    [2.2, 2.4, 2.4],
    [2.62, 3.45, 3.6],
    [3.53, 4.65, 4.8],
  ])("the chamfer of a cord of %s mm is taken from %s to %s mm among others", (cord, least, most) => {
    const seal = { ...oRing, inside: "20 mm", outside: `${20 + 2 * cord} mm` };
    const from = remedy(weighed({ thread: "M20x1.5" }), "other seal: O-ring").checks;
    expect(from.some(({ type }) => type === "chamfer cut for the ring")).toBe(true);
    const taken = weighed({ seal }).assumed.find(({ reading }) => reading === "seal.chamfer");
    expect(taken).toBeDefined();
    expect(1.09 * cord).toBeLessThanOrEqual(least);
    expect(1.45 * cord).toBeGreaterThanOrEqual(most);
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
