import { describe, expect, test } from "vitest";
import { type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { bushThread } from "../../../src/mechanics/remedies/fitBush.ts";
import { coilDrill } from "../../../src/mechanics/remedies/fitCoil.ts";
import { shareOfThread, tappingDrill } from "../../../src/mechanics/remedies/fitTapping.ts";
import { nextSizes } from "../../../src/mechanics/remedies/largerThread.ts";
import type { RepairId } from "../../../src/mechanics/remedies/method.ts";
import type { Weighed } from "../../../src/mechanics/remedies/weigh.ts";
import { unifiedSizes } from "../../../src/mechanics/tables/asmeB1Sizes.ts";
import { pipeSizes } from "../../../src/mechanics/tables/iso228.ts";
import { gLimits } from "../../../src/mechanics/threads/pipeLimits.ts";
import { parallelPipeThread } from "../../../src/mechanics/threads/pipeThread.ts";
import type { Thread } from "../../../src/mechanics/threads/thread.ts";
import { threadFromText } from "../../../src/mechanics/threads/threadText.ts";
import { unifiedThread } from "../../../src/mechanics/threads/unifiedThread.ts";
import { unifiedCoilHole } from "../../../src/mechanics/threads/wireCoilHole.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { agrees } from "../../published.ts";
import { changedCase, documentOf, textOf, weighed } from "./changedCase.ts";

function threadOf(text: string): Thread {
  const read = threadFromText(text);
  if (!read.ok) throw new Error(`${text} is not read`);
  return read.thread;
}

/** The example's port in another thread, on rings of that thread's size. */
const onRings = { outside: undefined, inside: undefined, thickness: undefined };
const of = (thread: string, changes: object = {}): Weighed => weighed({ thread, seal: onRings, ...changes });
const whyNot = (found: Weighed, id: RepairId) => found.repairs.find((it) => it.id === id)?.whyNot;

describe("tapping drills of G threads", () => {
  test("lie within the minor diameters of ISO 228-1", () => {
    for (const thread of pipeSizes.map(parallelPipeThread)) {
      const { D1_min, D1_max } = gLimits(thread, "A");
      const drill_mm = valueIn(mm, tappingDrill(thread));
      expect(drill_mm, thread.designation).toBeGreaterThan(valueIn(mm, D1_min));
      expect(drill_mm, thread.designation).toBeLessThan(valueIn(mm, D1_max));
    }
  });

  // Trade tables of tapping drills (common practice, no source).
  test.each([
    ["G 1/8", 8.8],
    ["G 1/4", 11.8],
    ["G 3/8", 15.25],
    ["G 1/2", 19],
    ["G 3/4", 24.5],
    ["G 1", 30.75],
  ])("%s is drilled %s mm", (text, drill_mm) => {
    expect(valueIn(mm, tappingDrill(threadOf(text)))).toBeCloseTo(drill_mm, 9);
  });

  // By hand: (20.955 - 19) / (2 · 0.640327 · 1.8143).
  test("19 mm leave 84 % of G 1/2", () => {
    const thread = threadOf("G 1/2");
    agrees(100 * shareOfThread("G", thread, tappingDrill(thread)).value, "84");
  });
});

const nextOf = (torn: string): readonly string[] => nextSizes(threadOf(torn)).map(({ designation }) => designation);

describe("the next size", () => {
  // By hand: the drill takes the torn major diameter and 0.4 mm over it. G 5/8 would leave the old crests (21.0 < 21.4).
  test("of M20x1.5 is M22x1.5, of its own standard", () => expect(nextOf("M20x1.5")).toEqual(["M22x1.5"]));

  // By hand, d - P of the larger against d + 0.4 of what is torn, which is 6.75, 13.1, 13.1, 14.69, 19.45, 22.63 and 27.39 mm: the
  // metric plug before would bite in the old crests (M14x1.5 12.5, M16x1.5 14.5, M20x1.5 18.5, M24x1.5 22.5), and so would 5/8-18
  // (14.46) in a torn 9/16-18. Major diameters by ASME B1.1: 0.25, 0.5, 0.5625, 0.75, 0.875 and 1.0625 inch.
  test.each([
    ["1/4-20 UNC", "3/8-16 UNC", "M8x1"],
    ["1/2-20 UNF", "5/8-18 UNF", "M16x1.5"],
    ["1/2-13 UNC", "5/8-11 UNC", "M16x1.5"],
    ["9/16-18 UNF", "3/4-16 UNF", "M18x1.5"],
    ["3/4-16 UNF", "7/8-14 UNF", "M22x1.5"],
    ["7/8-14 UNF", "1-12 UNF", "M26x1.5"],
    ["1 1/16-12 UN", "1 1/4-12 UNF", "M30x1.5"],
  ])("of %s is %s, of its own standard, or the metric plug %s", (torn, own, metric) => {
    expect(nextOf(torn)).toEqual([own, metric]);
  });

  // By hand, d - 1.5 of the metric plug and the drill of the G thread against what is torn: 10.13, 13.56, 17.06, 21.36, 26.84, 33.65.
  test.each([
    ["G 1/8", "M12x1.5", "G 1/4"],
    ["G 1/4", "M16x1.5", "G 3/8"],
    ["G 3/8", "M20x1.5", "G 1/2"],
    ["G 1/2", "M24x1.5", "G 3/4"],
    ["G 3/4", "M30x1.5", "G 1"],
    ["G 1", "M36x1.5", "G 1 1/4"],
  ])("of %s is %s, which takes less of the wall, or %s", (torn, metric, pipe) => {
    expect(nextOf(torn)).toEqual([metric, pipe]);
  });

  test("above the largest pipe is a metric plug alone", () => expect(nextOf("G 2")).toEqual(["M64x1.5"]));

  // The example's port is 7 mm from the edge, in light alloy. By hand: 7 - (24 - 20.955)/2 = 5.48 and 7 - (26.441 - 20.955)/2 = 4.26;
  // (26.441 - 24.5)/(2 · 0.640327 · 1.8143) = 84 %, (24 - 22.5)/(0.75 · √3 · 1.5) = 77 %.
  test("of a torn G 1/2 comes with drill, share of thread, clearance and wall of both", () => {
    const found = documentOf({ thread: "G 1/2", seal: onRings }).remedies.find(({ id }) => id === "next size");
    const said = [...(found?.checks ?? []), ...(found?.needs ?? [])].join(" ");
    expect(said).toMatch(/Drill 22\.5 mm: 77 % of thread/);
    expect(said).toMatch(/M24x1\.5 takes the torn thread away whole/);
    expect(said).toMatch(/Wall left 5\.5 mm, wants 2\.5 mm/);
    expect(said).toMatch(
      /Or G 3\/4, .*: drill 24\.5 mm, 84 % of thread\. G 3\/4 takes .* whole\. Wall left 4\.3 mm, wants 2\.5 mm/,
    );
    expect(said).toMatch(/A new plug, M24x1\.5/);
  });

  // By hand: 22 - 1.5 = 20.5 mm; (22 - 20.5)/(0.75 · √3 · 1.5) = 77 % of thread; 7 - (22 - 19.05)/2 = 5.5 mm of wall;
  // 7/8-14: 22.225 - 25.4/14 = 20.41 mm, 77 % as for every thread drilled to d - P.
  test("of a torn 3/4-16 UNF comes with the metric plug beside it, and that is a way of its own", () => {
    const { remedies } = documentOf({ thread: "3/4-16 UNF", seal: onRings });
    const said = (id: string) => {
      const found = remedies.find((it) => it.id === id);
      return [...(found?.checks ?? []), ...(found?.needs ?? [])].join(" ");
    };
    expect(said("next size")).toMatch(/Drill 20\.4 mm: 77 % of thread\. 7\/8-14 UNF takes the torn thread away whole/);
    expect(said("next size")).toMatch(
      /Or M22x1\.5, a metric plug: drill 20\.5 mm, 77 % of thread\. M22x1\.5 takes .* whole\./,
    );
    const metric = said("next size, other thread");
    expect(metric).toMatch(/Drill 20\.5 mm: 77 % of thread\. M22x1\.5 takes the torn thread away whole/);
    expect(metric).toMatch(/A new plug, M22x1\.5/);
    expect(metric).toMatch(/Wall left 5\.5 mm, wants 2\.5 mm/);
    expect(metric).not.toMatch(/\bOr\b/);
  });

  // The same hole as somebody might have found it: full thread from the face to the depth that was cut, on the new plug and its ring.
  test.each([
    ["G 1/2", "next size", "M24x1.5"],
    ["G 1/2", "next size, other thread", "G 3/4"],
    ["3/4-16 UNF", "next size, other thread", "M22x1.5"],
  ] as const)("of a torn %s: %s has the window of a port of sound %s", (torn, id, larger) => {
    const depth = { threadDepth: { value: "16 mm", how: "assumed" } };
    const way = of(torn, { case: depth }).repairs.find((it) => it.id === id);
    const cut = way?.repaired;
    const { underHead, chamfer } = cut?.asFound.plug ?? {};
    const assumed = (length: Quantity | null | undefined) => ({
      value: `${length ? valueIn(mm, length) : 0} mm`,
      how: "assumed",
    });
    const plug = { underHead: assumed(underHead), chamfer: assumed(chamfer), headDiameter: undefined };
    const left = {
      ...{ turns: undefined, condition: "good", catch: "snug", withWasher: true },
      ...{ goodFrom: assumed(null), goodTo: assumed(cut?.port.left.goodTo) },
    };
    const sound = of(larger, { case: depth, plug, left, healthyTurns: undefined, healthyWithWasher: undefined });
    expect(cut?.port.thread.designation).toBe(larger);
    expect(way?.closed?.window?.open).toBe(true);
    for (const edge of ["need_Nm", "limit_Nm", "medianStrip_Nm"] as const) {
      const [now, then] = [way?.closed?.window?.[edge] ?? Number.NaN, sound.asFound.window?.[edge] ?? Number.NaN];
      expect(now / then, edge).toBeCloseTo(1, 4);
    }
  });

  test("of a metric thread is one way, and of a taper thread none", () => {
    const ids = (thread: string, changes: object = {}) => of(thread, changes).repairs.map(({ id }) => id);
    expect(ids("M20x1.5")).not.toContain("next size, other thread");
    expect(ids("R 1/2", { seal: { ...onRings, kind: undefined, material: undefined } })).not.toContain(
      "next size, other thread",
    );
  });

  test("where the wall bears the metric plug alone, that is said of the other", () => {
    // 4 mm: 2.48 and 1.26 mm are left, each known to 0.2 mm or so.
    const found = documentOf({ thread: "G 1/2", seal: onRings, case: { thinnestWall: "4.2 mm" } });
    const said = found.remedies.find(({ id }) => id === "next size")?.checks.join(" ");
    expect(said).toMatch(/Or G 3\/4.*Wall left 1\.5 mm, wants 2\.5 mm/);
    expect(found.remedies.find(({ id }) => id === "next size, other thread")).toMatchObject({
      window: null,
      stands: "does not fit",
    });
  });

  test("none goes from the largest, and none from a taper thread", () => {
    for (const text of ["2 1/2-12 UN", "1/2-14 NPT", "R 1/2"]) expect(nextOf(text)).toEqual([]);
  });
});

// From memory of ASME B18.29.1: the hole of a 1/4-20 coil is .3150 inch over all, .2608 at its least, drilled 17/64 (6.75 mm).
test("a coil for 1/4-20 lies in a hole of .3150 inch, .2608 within", () => {
  const hole = unifiedCoilHole(unifiedThread(unifiedSizes.find(({ designation }) => designation === "1/4-20 UNC")!));
  agrees(valueIn(mm, hole.D_STI) / 25.4, "0.3150");
  agrees(valueIn(mm, hole.D_1STI) / 25.4, "0.2608");
  expect(Math.abs(valueIn(mm, coilDrill(hole.D1_min)) - 6.75)).toBeLessThan(0.06);
});

test("a bush is metric outside, 4 mm or more over an inch thread", () => {
  expect(bushThread(threadOf("G 1/2"))?.designation).toBe("M27x1.5");
  expect(bushThread(threadOf("3/4-16 UNF"))?.designation).toBe("M24x1.5");
  expect(bushThread(threadOf("1/2-14 NPT"))).toBeNull();
});

describe("a port with a pipe or an inch thread", () => {
  test("is weighed, and its methods keep to its series", () => {
    const pipe = of("G 1/2");
    expect(pipe.remedies.some(({ window }) => window?.open)).toBe(true);
    expect(whyNot(pipe, "wire coil")).toBe("no table of its coil holes");
    const fine = of("3/4-16 UNF");
    expect(fine.remedies.some(({ window }) => window?.open)).toBe(true);
    expect(whyNot(fine, "wire coil")).toBeNull();
    // Coils are sold for coarse and fine threads only.
    expect(whyNot(of("3/4-20 UNEF"), "wire coil")).toBe("no coil of this size");
  });

  // A metric thread of nearly the same size and pitch beside it, with the same ring: 3/4-16 is 19.05 x 1.5875, G 1/2 20.955 x
  // 1.814. More pitch is more engaged length for a count of turns.
  test("stands where a metric thread of its size would", () => {
    const seal = { kind: "bonded seal", outside: "28 mm", inside: "22 mm", thickness: "1.5 mm" };
    const limit = (thread: string) => of(thread, { seal }).asFound.window?.limit_Nm ?? 0;
    const [m18, unf, m20] = [limit("M18x1.5"), limit("3/4-16 UNF"), limit("M20x1.5")];
    expect(unf).toBeGreaterThan(0.85 * m18);
    expect(unf).toBeLessThan(1.15 * m20);
    const [g, m22] = [limit("G 1/2"), limit("M22x2")];
    // A turn of their holes shears over 84 and 98 mm² at least material, by hand.
    expect(g).toBeGreaterThan(0.7 * m22);
    expect(g).toBeLessThan(0.95 * m22);
  });

  test("class B of a G plug bears less than class A, and 3A more than 2A", () => {
    const limit = (thread: string, tolerance: string) =>
      of(thread, { plug: { tolerance }, seal: { ...onRings, kind: "bonded seal" } }).asFound.window?.limit_Nm ?? 0;
    // Only the plug's pitch diameter is larger in class A, so where the hole strips they are alike.
    expect(limit("G 1/2", "B")).toBeLessThanOrEqual(limit("G 1/2", "A"));
    expect(limit("3/4-16 UNF", "2A")).toBeLessThan(limit("3/4-16 UNF", "3A"));
  });
});

describe("a taper thread", () => {
  const taper = {
    thread: "1/2-14 NPT",
    seal: { ...onRings, kind: undefined, material: undefined, original: undefined },
  };

  test("has no torque anywhere: no window, no limit, no stop", () => {
    const found = documentOf(taper);
    expect([found.asFound.window, found.remedies.every(({ window }) => window === null)]).toEqual([null, true]);
    expect(found.asFound.refused).toMatchObject({
      rule: "not covered",
      reason: expect.stringMatching(/no torque window/),
    });
    expect([found.ranges, found.levels, found.working]).toEqual([{}, {}, []]);
    expect(found.assumed).toContainEqual(expect.objectContaining({ reading: "seal.kind", value: "taper" }));
  });

  // ASME B1.20.1-2013, table 2: hand-tight 4.48 turns of 1/2-14; ISO 7-1: 8.2 mm of R 1/2 are 4.52 turns.
  test.each([
    ["1/2-14 NPT", "1", /Fewer were counted/],
    ["1/2-14 NPT", "4.5", /The count is within that/],
    ["1/2-14 NPT", "7", /More were counted/],
    ["R 1/2", "4.5", /The count is within that/],
    ["Rp 1/2", "4.5", /The count is within that/],
    ["Rp 1/2", "1.5", /Fewer were counted/],
    ["3/4-14 NPT", "2.5", /Fewer were counted/],
  ])("%s with %s turns by hand is told by its turns", (thread, turns, told) => {
    const because = documentOf({ ...taper, thread, left: { turns } }).asFound.because.join(" ");
    expect(because).toMatch(/goes in [\d.]+ to [\d.]+ turns/);
    expect(because).toMatch(told);
    expect(because).toMatch(/splits/);
  });

  test("4.5 by hand and 1.5 to 3 by wrench are 6 to 7.5 engaged", () => {
    expect(documentOf(taper).asFound.because.join(" ")).toMatch(
      /2\.5 to 6\.5 turns, 4\.5 where both .* then 1\.5 to 3 by wrench: 6 to 7\.5 engaged/,
    );
  });

  // ISO 7-1:1994, table 1 (from memory): gauge length 8.2 mm, the plug a turn off, the hole a turn and a quarter: 4.52 ± 2.25.
  test.each(["R 1/2", "Rc 1/2", "Rp 1/2"])("%s goes in 2.5 to 7 turns by hand", (thread) => {
    expect(documentOf({ ...taper, thread }).asFound.because.join(" ")).toMatch(
      /goes in 2\.5 to 7 turns, 4\.5 where both/,
    );
  });

  test("Rp is a parallel hole for an R plug: no window, its turns, and what becomes of a G plug", () => {
    const found = documentOf({ ...taper, thread: "Rp 1/2" });
    expect([found.asFound.window, found.remedies.every(({ window }) => window === null)]).toEqual([null, true]);
    const because = found.asFound.because.join(" ");
    expect(because).toMatch(/a sound R 1\/2 plug in Rp 1\/2 goes in/);
    expect(because).toMatch(/first turns at its mouth alone, with paste or tape/);
    expect(because).toMatch(/A G plug on a ring is another joint.* weigh it as that/);
    expect(found.assumed).toContainEqual(expect.objectContaining({ reading: "seal.kind", value: "taper" }));
    for (const id of ["next size", "wire coil", "solid bushing", "bonded bush"] as const)
      expect(whyNot(weighed({ ...taper, thread: "Rp 1/2" }), id)).toBe("closed by a taper plug");
  });

  test("a ring in an Rp hole is asked about, and a parallel plug is named", () => {
    const read = readCase(changedCase({ thread: "Rp 1/2" }), "2026-11-25");
    expect(read.ok || read.problems).toContainEqual(
      expect.objectContaining({
        field: "seal.kind",
        accepted: expect.stringMatching(/a ring belongs to a parallel plug/),
      }),
    );
  });

  test("is cut by no method here, and says why", () => {
    const found = weighed(taper);
    for (const id of ["next size", "wire coil", "solid bushing", "bonded bush"] as const)
      expect(whyNot(found, id)).toBe("taper thread");
    const text = textOf(taper).replace(/\s+/g, " ");
    expect(text).toMatch(/no torque window/);
    // Its section counts turns by hand: none of them is said to carry.
    expect(text).toMatch(/3\.5 by hand/);
    expect(text).not.toMatch(/\d carry|worn carry/);
  });

  test("whose twin is healthy takes its book figure, without a stop in degrees", () => {
    const found = weighed({
      ...taper,
      left: { turns: "4.5", condition: "good", catch: "snug" },
      healthyTurns: "4.5",
      bookFigures: [{ torque: "40 N·m", source: "service sheet" }],
    });
    expect(found.health.healthy).toBe(true);
    expect([found.asFound.window, found.asFound.stop]).toEqual([null, null]);
    expect(found.asFound.advice).toMatchObject({ type: "pull", torque_Nm: 40 });
  });
});
