import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import type { SectionInput } from "../../../src/mechanics/joint/sectionInput.ts";
import type { Outline, Point } from "../../../src/mechanics/joint/sectionOutline.ts";
import { sectionThread } from "../../../src/mechanics/joint/sectionThread.ts";
import { threadFromText } from "../../../src/mechanics/threads/threadText.ts";
import { agrees } from "../../published.ts";
import { inside } from "./insideOutline.ts";

const sizesOf = (text: string) => {
  const read = threadFromText(text);
  if (!read.ok) throw new Error(`${text} is not read`);
  return sectionThread(read.thread);
};

/** A sound taper plug without a point in a hole that is deep enough, in by as many turns as given. */
const wedgedIn = (thread: string, turnsCarrying: number, changes: Partial<SectionInput> = {}): SectionInput => ({
  ...sizesOf(thread),
  threadDepth_mm: 20,
  thinnestWall_mm: 7,
  roomBehind_mm: 11,
  underHead_mm: 20,
  chamfer_mm: 0,
  headDiameter_mm: 30,
  seal: { kind: "taper", outside_mm: 30, inside_mm: 21, thickness_mm: 0 },
  turnsCarrying,
  turnsHealthy: null,
  condition: "good",
  heightLeft: 1,
  goodFrom_mm: null,
  goodTo_mm: null,
  surface: "oiled",
  ...changes,
});

describe("published", () => {
  // ASME B1.20.1-2013, table 2, 1/2-14 NPT: L_1 .320, E_1 .77843, at the small end E_0 .75843, K_0 .7013 (from memory); h .05714.
  test("a 1/2-14 NPT plug that is in by L_1 has E_0 and K_0 at its small end, E_1 at the face", () => {
    const { plug, tip_mm } = portSection(wedgedIn("1/2-14 NPT", 0.32 * 14));
    agrees(tip_mm / 25.4, "0.320");
    const [crests, roots] = [line(plug, "crest"), line(plug, "root")];
    agrees((crests(tip_mm) + roots(tip_mm)) / 25.4, "0.7584");
    agrees((2 * roots(tip_mm)) / 25.4, "0.7013");
    agrees((crests(0) + roots(0)) / 25.4, "0.7784");
  });

  // ISO 7-1:1994: d = 20.955 at the gauge plane, 8.2 mm from the small end; 1:16 takes 0.5125 mm off it there, by hand.
  test("an R 1/2 plug at its gauge length is 20.955 mm at the face and 20.4425 mm at its small end", () => {
    const { plug, tip_mm } = portSection(wedgedIn("R 1/2", 8.2 / (25.4 / 14)));
    const crests = line(plug, "crest");
    expect(tip_mm).toBeCloseTo(8.2, 9);
    expect(2 * crests(0)).toBeCloseTo(20.955, 9);
    expect(2 * crests(tip_mm)).toBeCloseTo(20.4425, 9);
  });

  test.each(["R 1/2", "Rc 1/2", "1/2-14 NPT"])("plug and hole of %s lose 1 mm of diameter in 16", (thread) => {
    const { plug, caseRight, depth_mm } = portSection(wedgedIn(thread, 4.5));
    const crests = line(plug, "crest");
    expect(2 * (crests(0) - crests(16))).toBeCloseTo(1, 9);
    const [mouth, end] = [0, depth_mm].map((y) => Math.min(...at(caseRight, y))) as [number, number];
    expect((2 * (mouth - end) * 16) / depth_mm).toBeCloseTo(1, 9);
  });

  // ISO 7-1:1994, 4, and ASME B1.20.1-2013, 4 (from memory): flanks lean alike from the normal to the axis, not to the cone.
  test.each([
    ["R 1/2", 27.5],
    ["1/2-14 NPT", 30],
    ["3/4-14 NPT", 30],
  ])("every flank of %s leans %s° from the normal to the axis", (thread, angle_deg) => {
    const { plug, turns, P_mm } = portSection(wedgedIn(thread, 4.5));
    const right = plug.filter(({ x_mm }) => x_mm > 0);
    const teeth = turns.filter(({ side, turn }) => side === "right" && turn.to_mm - turn.from_mm > P_mm - 1e-6);
    const leans = [right, ...teeth.map(({ whole }) => whole)].flatMap(flanks_deg);
    expect(leans.length).toBeGreaterThan(20);
    for (const lean of leans) expect(lean).toBeCloseTo(angle_deg, 6);
  });
});

// ISO 7-1:1994, 3 (from memory): an R plug goes into a parallel Rp hole as well, and touches it where its gauge plane lies.
describe("an R plug in an Rp hole", () => {
  const section = portSection(wedgedIn("Rp 1/2", 4.5));

  test("is as tapered as in any other, and the hole is not", () => {
    const crests = line(section.plug, "crest");
    expect(2 * (crests(0) - crests(16))).toBeCloseTo(1, 9);
    expect(new Set(section.caseRight.map(({ x_mm }) => x_mm)).size).toBe(2);
    const tops = section.turns.flatMap(({ metal }) => metal.map(({ x_mm }) => Math.abs(x_mm)));
    expect(Math.min(...tops)).toBeCloseTo(18.631 / 2, 3);
    expect(Math.max(...tops)).toBeCloseTo(20.955 / 2, 9);
  });

  test("touches it at the face alone: 8 mm below there is a quarter of a millimetre between them", () => {
    const crests = line(section.plug, "crest");
    expect(20.955 / 2 - crests(0)).toBeCloseTo(0, 9);
    expect(20.955 / 2 - crests(8)).toBeCloseTo(0.25, 9);
  });
});

describe("laws", () => {
  const anyTaper = fc.record({
    thread: fc.constantFrom("R 1/8", "Rc 3/8", "Rp 1/2", "R 1/2", "R 1", "1/8-27 NPT", "1/2-14 NPT", "1-11.5 NPT"),
    turns: fc.double({ min: 1, max: 9, noNaN: true }),
    underHead_mm: fc.option(fc.double({ min: 6, max: 40, noNaN: true })),
    chamfer_mm: fc.double({ min: 0, max: 2, noNaN: true }),
    threadDepth_mm: fc.option(fc.double({ min: 6, max: 30, noNaN: true })),
  });

  test("the plug nowhere enters a whole turn of the hole, and touches it", () => {
    fc.assert(
      fc.property(anyTaper, ({ thread, turns, ...lengths }) => {
        const section = portSection(wedgedIn(thread, turns, lengths));
        const touching = section.turns.flatMap(({ side, whole }) =>
          section.plug.filter((point) => point.x_mm > 0 === (side === "right")).map((point) => [point, whole] as const),
        );
        // In a parallel hole the flank that begins above the face is the first to wedge, by less than a hundredth.
        const by = section.taper?.holeIsParallel ? 0.01 : 1e-6;
        expect(touching.some(([point, whole]) => inside(point, whole, by))).toBe(false);
        if (!section.taper?.holeIsParallel)
          expect(touching.some(([point, whole]) => inside(point, whole, -1e-6))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("goes in by its turns, whatever its length, so a longer one stands out further", () => {
    fc.assert(
      fc.property(anyTaper, ({ thread, turns, ...lengths }) => {
        const section = portSection(wedgedIn(thread, turns, { ...lengths, underHead_mm: 45 }));
        expect(section.reach_mm).toBeCloseTo(turns * section.P_mm, 9);
        expect(section.seat_mm + section.tip_mm).toBeCloseTo(45, 9);
        const longer = portSection(wedgedIn(thread, turns, { ...lengths, underHead_mm: 50 }));
        expect(longer.seat_mm - section.seat_mm).toBeCloseTo(5, 9);
      }),
    );
  });

  test("a ring that was measured before the plug was known for a taper one takes no room under its head", () => {
    const seal = { kind: "taper", outside_mm: 26, inside_mm: 20, thickness_mm: 2 } as const;
    const section = portSection(wedgedIn("R 1/2", 4.5, { seal }));
    expect(section.dimensions.some(({ id }) => id === "seal")).toBe(false);
    expect(section.reach_mm).toBeCloseTo(4.5 * section.P_mm, 9);
  });

  test("a plug too short for the turns that were counted lies with its head on the face, and the rest is told", () => {
    const section = portSection(wedgedIn("R 1/2", 6, { underHead_mm: 9, chamfer_mm: 1 }));
    expect([section.seat_mm, section.reach_mm]).toEqual([0, 8]);
    expect(section.doNotFit_turns).toBeCloseTo(6 - 8 / section.P_mm, 9);
  });
});

/** Half the diameter of a cone through the crests or the roots of the right side, at a depth. */
function line(plug: Outline, of: "crest" | "root"): (y_mm: number) => number {
  const right = plug.filter(({ x_mm }) => x_mm > 0).toSorted((a, b) => a.y_mm - b.y_mm);
  const flat = right.flatMap((a, i): Point[][] => {
    const [before, b, after] = [right[i - 1], right[i + 1], right[i + 2]];
    if (!before || !b || !after || b.y_mm - a.y_mm < 1e-6) return [];
    const outer = before.x_mm < a.x_mm && after.x_mm < b.x_mm;
    const inner = before.x_mm > a.x_mm && after.x_mm > b.x_mm;
    return (of === "crest" ? outer : inner) && Math.abs(a.x_mm - b.x_mm) < 0.1 ? [[a, b]] : [];
  });
  const [a, b] = [flat[0]?.[0], flat.at(-1)?.[0]];
  if (!a || !b || a === b) throw new Error(`no two flats of a ${of}`);
  return (y_mm) => a.x_mm + ((b.x_mm - a.x_mm) / (b.y_mm - a.y_mm)) * (y_mm - a.y_mm);
}

const at = (outline: Outline, y: number): number[] =>
  outline.filter(({ y_mm }) => Math.abs(y_mm - y) < 1e-9).map(({ x_mm }) => x_mm);

/** The angle between each flank and the normal to the axis. */
const flanks_deg = (outline: Outline): number[] =>
  outline.flatMap((a, i) => {
    const b = outline[i + 1];
    if (!b || Math.abs(b.x_mm - a.x_mm) < 0.5 || Math.abs(b.y_mm - a.y_mm) < 0.1) return [];
    return [(Math.atan(Math.abs((b.y_mm - a.y_mm) / (b.x_mm - a.x_mm))) * 180) / Math.PI];
  });
