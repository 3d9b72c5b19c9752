import { describe, expect, test } from "vitest";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { candidateNamed, knownDesignation, namingCandidates } from "../../../src/mechanics/threads/namingCandidates.ts";
import type { ThreadEvidence } from "../../../src/mechanics/threads/namingEvidence.ts";
import { bindTurns, FREE_TURNS } from "../../../src/mechanics/threads/namingMesh.ts";
import { type ThreadNaming, threadCandidates } from "../../../src/mechanics/threads/threadName.ts";
import { gaps, outside, read, taper } from "./namingReadings.ts";

const first = ({ candidates }: ThreadNaming): string => candidates[0]?.designation ?? "";
const probability = ({ candidates }: ThreadNaming, designation: string): number =>
  candidates.find((it) => it.designation === designation)?.probability ?? Number.NaN;
const tight = (turns: number, known: string | null, unknown: "plug" | "hole" = "plug"): ThreadEvidence => ({
  type: "mesh",
  unknown,
  known,
  turns,
  felt: "tight",
});

// Common practice, no source: readings and verdicts of an experienced mechanic.
describe("a plug of 21.85 mm", () => {
  test("with eight gaps over 12.1 mm is M22x1.5, rival 7/8-14, settled by spinning a known plug", () => {
    const naming = threadCandidates([outside(21.85), gaps(8, 12.1)]);
    expect(first(naming)).toBe("M22x1.5");
    expect(naming.rivals[0]).toBe("7/8-14 UNF");
    expect(naming.showTwo).toBe(false);
    expect(naming.warnings).toEqual([]);
    expect(naming.separateBy).toMatchObject({ type: "spin a known plug", known: "M22x1.5", freeTurns: 4 });
    const pieces = naming.candidates.slice(0, 2).map((it) => it.pieces[1]?.reading?.expected_mm[0].toFixed(1));
    expect(pieces).toEqual(["12.0", "14.5"]);
  });

  test("with eight gaps over 10.5 mm had its crests counted and is M22x1.5 all the same; count again", () => {
    const naming = threadCandidates([outside(21.85), gaps(8, 10.5)]);
    expect(first(naming)).toBe("M22x1.5");
    expect(naming.warnings).toEqual(["counted crests"]);
    expect(naming.candidates[0]?.pieces.map((it) => it.explainedBy)).toEqual(["thread", "crestsCounted"]);
    expect(naming.separateBy).toMatchObject({ type: "gaps", atLeast: 8 });
  });
});

// Common practice, no source: ports that are mistaken for one another, by the outside diameter of the plug and ten gaps.
describe("ports mistaken for one another", () => {
  test.each([
    ["M10x1", [9.8, 9.97], 10.0],
    ["G 1/8", [9.6, 9.73], 9.1],
    ["M12x1.25", [11.7, 11.97], 12.5],
    ["M12x1.5", [11.7, 11.97], 15.0],
    ["M12x1.75", [11.7, 11.97], 17.5],
    ["M14x1.25", [13.7, 13.97], 12.5],
    ["M14x1.5", [13.7, 13.97], 15.0],
    ["G 1/4", [12.95, 13.16], 13.4],
    ["M16x1.5", [15.74, 15.97], 15.0],
    ["5/8-18 UNF", [15.65, 15.8], 14.1],
    ["G 3/8", [16.45, 16.66], 13.4],
    ["M20x1.5", [19.74, 19.97], 15.0],
    ["3/4-16 UNF", [18.8, 19.0], 15.9],
    ["G 1/2", [20.7, 20.95], 18.1],
    ["M22x1.5", [21.74, 21.97], 15.0],
    ["7/8-14 UNF", [22.0, 22.2], 18.1],
    ["M26x1.5", [25.74, 25.97], 15.0],
    ["1-14 UNS", [25.1, 25.3], 18.1],
    ["G 3/4", [26.2, 26.44], 18.1],
    ["M8x1.25", [7.8, 7.97], 12.5],
    ["5/16-18 UNC", [7.8, 7.9], 14.1],
    ["M6x1", [5.8, 5.97], 10.0],
    ["1/4-20 UNC", [6.15, 6.3], 12.7],
  ] as const)("%s", (designation, ends, length) => {
    for (const x of ends) expect(first(threadCandidates([outside(x), gaps(10, length)])), `${x}`).toBe(designation);
  });

  // Derived: in each pair both may read the same outside diameter.
  test.each([
    ["5/16-18 UNC", "M8x1.25", 7.85],
    ["5/8-18 UNF", "M16x1.5", 15.8],
    ["7/8-14 UNF", "M22x1.5", 21.9],
    ["G 1/8", "M10x1", 9.7],
    ["1/4-18 NPT", "M14x1.5", 13.65],
    ["G 1", "M33x2", 32.9],
  ])("%s and %s are not told apart by the outside diameter, but by gaps", (a, b, x) => {
    const alone = threadCandidates([outside(x)]);
    const ratio = probability(alone, a) / probability(alone, b);
    expect(ratio).toBeGreaterThan(1 / 400);
    expect(ratio).toBeLessThan(400);
    for (const [right, wrong] of [
      [a, b],
      [b, a],
    ] as const) {
      const with12 = threadCandidates([outside(x), gaps(12, 12 * candidateNamed(right).P_mm)]);
      expect(probability(with12, right)).toBeGreaterThan(probability(with12, wrong));
    }
  });

  test("18 threads to the inch shown beside 1.5 mm ask for more than a short count", () => {
    const naming = threadCandidates([outside(15.75), gaps(4, 5.8)]);
    expect(naming.showTwo).toBe(true);
    expect(naming.candidates.slice(0, 2).map((it) => it.designation)).toEqual(
      expect.arrayContaining(["M16x1.5", "5/8-18 UNF"]),
    );
    const by = naming.separateBy;
    expect(by?.type === "gaps" ? by.atLeast : 0).toBeGreaterThanOrEqual(8);
  });
});

describe("a worn plug of 20.85 mm with ten gaps over 18.2 mm", () => {
  const seen = [outside(20.85, 0.1), gaps(10, 18.2)] as const;

  test("is G 1/2 or a taper thread, which two diameters would tell", () => {
    const naming = threadCandidates(seen);
    expect(first(naming)).toBe("G 1/2");
    expect(naming.showTwo).toBe(true);
    expect(naming.rivals.slice(0, 2)).toEqual(["1/2-14 NPT", "R 1/2"]);
    expect(naming.separateBy?.type).toBe("two diameters");
  });

  test("is G 1/2 once both ends measure the same", () => {
    const naming = threadCandidates([...seen, taper(0, 10)]);
    expect(first(naming)).toBe("G 1/2");
    expect(naming.showTwo).toBe(false);
  });

  test("is a taper thread once it grows by 0.62 mm in 10 mm", () => {
    const naming = threadCandidates([...seen, taper(0.62, 10)]);
    expect(["R 1/2", "1/2-14 NPT"]).toContain(first(naming));
    expect(probability(naming, "G 1/2")).toBeLessThan(0.01);
  });
});

describe("an Rp hole, parallel and closed by a taper R plug", () => {
  const bore = (x_mm: number): ThreadEvidence => ({
    type: "bore",
    diameter: read(x_mm, 0.15),
    wearUpTo: exact("w", 0.15, mm),
  });
  const narrows = (change_mm: number): ThreadEvidence => ({
    type: "hole taper",
    change: read(change_mm, 0.21),
    over: exact("l", 10, mm),
  });
  const plug = [outside(20.7), gaps(8, 14.5), taper(0.6, 10)] as const;
  const named = (naming: ThreadNaming) => naming.candidates.map(({ designation }) => designation);

  test("is looked for where something was read of the hole, and of no plug", () => {
    expect(named(threadCandidates(plug))).not.toContain("Rp 1/2");
    expect(named(threadCandidates([...plug, bore(18.6)]))).toContain("Rp 1/2");
    expect(named(threadCandidates([narrows(0)]))).toContain("Rp 1/2");
    expect(named(threadCandidates([tight(4, "R 1/2", "hole")]))).toContain("Rp 1/2");
    expect(named(threadCandidates([tight(4, "R 1/2", "plug")]))).not.toContain("Rp 1/2");
  });

  // ISO 7-1:1994, table 1 (from memory): minor diameter at the gauge plane, and the tolerance on the diameter of a parallel hole.
  test.each([
    ["Rp 1/8", 8.566, 0.071],
    ["Rp 1/4", 11.445, 0.104],
    ["Rp 1/2", 18.631, 0.142],
    ["Rp 1", 30.291, 0.18],
  ])("%s measures %s mm inside, give or take %s", (designation, D_1, tolerance) => {
    const [low, high] = candidateNamed(designation).bore_mm;
    expect(low).toBeCloseTo(D_1 - tolerance, 3);
    expect(high).toBeCloseTo(D_1 + tolerance, 3);
  });

  test("is told from an Rc hole by inside jaws at two depths: the same, or a sixteenth of 10 mm less", () => {
    const both = threadCandidates([...plug, bore(18.6)]);
    expect(named(both).slice(0, 2)).toEqual(["R 1/2", "Rp 1/2"]);
    expect(both.separateBy).toMatchObject({ type: "two bores", between: ["R 1/2", "Rp 1/2"] });
    const parallel = threadCandidates([...plug, bore(18.6), narrows(0)]);
    expect(first(parallel)).toBe("Rp 1/2");
    expect(probability(parallel, "Rp 1/2")).toBeGreaterThan(20 * probability(parallel, "R 1/2"));
    const taperHole = threadCandidates([...plug, bore(18.6), narrows(0.625)]);
    expect(first(taperHole)).toBe("R 1/2");
    expect(probability(taperHole, "R 1/2")).toBeGreaterThan(20 * probability(taperHole, "Rp 1/2"));
  });

  test("stands beside G where the hole alone was read, the likelier the tighter the hole", () => {
    const odds = (x_mm: number): number => {
      const naming = threadCandidates([bore(x_mm), narrows(0), { type: "travel", turns: 5, length: read(9.07, 0.25) }]);
      expect(named(naming).slice(0, 2).toSorted()).toEqual(["G 1/2", "Rp 1/2"]);
      return probability(naming, "Rp 1/2") / probability(naming, "G 1/2");
    };
    expect(odds(18.4)).toBeGreaterThan(1);
    expect(odds(18.7)).toBeLessThan(0.5);
  });

  test("takes an R plug in by hand as an Rc hole does, and binds it there", () => {
    const [R, Rp] = [candidateNamed("R 1/2"), candidateNamed("Rp 1/2")];
    const [least, most] = bindTurns(R, Rp) ?? [Number.NaN, Number.NaN];
    // ISO 7-1:1994, table 1 (from memory): 8.2 mm are 4.52 turns; the plug a turn off, the hole a turn and a quarter.
    expect((least + most) / 2).toBeCloseTo(4.52, 2);
    expect(most - least).toBeCloseTo(4.5, 1);
  });
});

describe("what was felt on turning", () => {
  test("two turns, then tight, in an M16x1.5 hole speaks against M16x1.5 and says stop", () => {
    const before = threadCandidates([outside(15.8)]);
    const after = threadCandidates([outside(15.8), tight(2, "M16x1.5")]);
    const odds = (it: ThreadNaming) => probability(it, "5/8-18 UNF") / probability(it, "M16x1.5");
    expect(odds(after)).toBeGreaterThan(5 * odds(before));
    expect(after.warnings).toEqual(["binds: stop turning"]);
  });

  test("four free turns in an M16x1.5 hole confirm M16x1.5", () => {
    const free: ThreadEvidence = { type: "mesh", unknown: "plug", known: "M16x1.5", turns: 4, felt: "free" };
    const naming = threadCandidates([outside(15.85), free]);
    expect(first(naming)).toBe("M16x1.5");
    expect(naming.showTwo).toBe(false);
    expect(naming.warnings).toEqual([]);
  });

  test("a plug that binds in the hole it was found in is likelier a taper thread than before", () => {
    const odds = (it: ThreadNaming) => probability(it, "1/2-14 NPT") / probability(it, "G 1/2");
    const bound = threadCandidates([outside(20.85), tight(4.5, null)]);
    expect(odds(bound)).toBeGreaterThan(odds(threadCandidates([outside(20.85)])));
    expect(bound.warnings).toEqual(["binds: stop turning"]);
  });

  // Common practice, no source: 1.5 in an 18-to-the-inch hole tightens after one to three turns, 1.25 in a 1.5 hole inside
  // the first.
  test("the bind sum gives the turns that mechanics tell of", () => {
    const M16 = candidateNamed("M16x1.5");
    const [least, most] = bindTurns(M16, candidateNamed("5/8-18 UNF")) ?? [Number.NaN, Number.NaN];
    expect(least).toBeLessThan(1.5);
    expect(most).toBeGreaterThan(2);
    expect(most).toBeLessThan(3.5);
    const [tightest] = bindTurns(candidateNamed("M14x1.25"), candidateNamed("M14x1.5")) ?? [Number.NaN];
    expect(tightest).toBeLessThan(2.5);
    expect(bindTurns(M16, M16)).toEqual([FREE_TURNS, FREE_TURNS]);
    expect(bindTurns(candidateNamed("M14x1.5"), M16)).toBeNull();
  });

  // ASME B1.20.1, table 2: 4.48 turns of hand-tight engagement.
  test("an NPT plug is hand tight in its hole after its turns, one to either side for each part", () => {
    const half = candidateNamed("1/2-14 NPT");
    const [least, most] = bindTurns(half, half) ?? [Number.NaN, Number.NaN];
    expect((least + most) / 2).toBeCloseTo(4.48, 2);
    expect(most - least).toBeCloseTo(4, 6);
  });
});

describe("other evidence", () => {
  test("a leaf of 1.5 that sits and one of 18 to the inch that does not name M16x1.5", () => {
    const leaf = (P_mm: number, seats: boolean): ThreadEvidence => {
      return { type: "pitch gauge", leaf: exact("P", P_mm, mm), seats };
    };
    const naming = threadCandidates([outside(15.8), leaf(1.5, true), leaf(25.4 / 18, false)]);
    expect(first(naming)).toBe("M16x1.5");
    expect(naming.showTwo).toBe(false);
  });

  test("five turns over 7.6 mm and the bore of the hole name M20x1.5 without its plug", () => {
    const naming = threadCandidates([
      { type: "bore", diameter: read(18.55, 0.15), wearUpTo: exact("w", 0.15, mm) },
      { type: "travel", turns: 5, length: read(7.6, 0.25) },
    ]);
    expect(first(naming)).toBe("M20x1.5");
  });

  test("a pitch from a photograph counts as a pitch", () =>
    expect(first(threadCandidates([outside(19.9), { type: "pitch", pitch: read(1.51, 0.015) }]))).toBe("M20x1.5"));

  test("a hexagon unlike its sister's warns of a foreign plug and gives rare threads more room", () => {
    const hexagon = (plug: number): ThreadEvidence => ({
      type: "hexagon",
      plug: read(plug, 0.1),
      sister: read(19, 0.1),
    });
    const own = threadCandidates([outside(21.95), hexagon(19)]);
    const foreign = threadCandidates([outside(21.95), hexagon(17)]);
    expect(own.warnings).toEqual([]);
    expect(foreign.warnings).toEqual(["foreign plug"]);
    expect(probability(foreign, "7/8-20 UNEF")).toBeGreaterThan(probability(own, "7/8-20 UNEF"));
  });

  test("readings that no thread has say that nothing fits and name nothing", () => {
    const naming = threadCandidates([outside(200), gaps(8, 40)]);
    expect(naming.warnings).toContain("nothing fits");
    expect(naming.showTwo).toBe(true);
    expect(naming.candidates.every((it) => Number.isFinite(it.probability))).toBe(true);
  });
});

test("designations are known in any accepted spelling", () => {
  expect(
    ["M20 x 1,5", "M20", "1/4-20", "G1/2", "Rc 1/2", "Rp 1/2", "1/2 NPT", "M3", "nonsense"].map(knownDesignation),
  ).toEqual(["M20x1.5", "M20x2.5", "1/4-20 UNC", "G 1/2", "R 1/2", "Rp 1/2", "1/2-14 NPT", null, null]);
  expect(() => candidateNamed("M3x0.5")).toThrow(RangeError);
});

test("every size of ISO 261 from M5 to M64 is looked for, with unified and pipe threads, each once", () => {
  const designations = namingCandidates().map((it) => it.designation);
  expect(new Set(designations).size).toBe(designations.length);
  for (const it of ["M5x0.8", "M26x1.5", "M64x6", "#10-24 UNC", "2 1/2-4 UNC", "G 2", "R 1/8", "2-11.5 NPT"])
    expect(designations).toContain(it);
});
