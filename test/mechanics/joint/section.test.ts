import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { conditions } from "../../../src/mechanics/joint/port.ts";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import type { SectionInput } from "../../../src/mechanics/joint/sectionInput.ts";
import type { Outline } from "../../../src/mechanics/joint/sectionOutline.ts";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { agrees } from "../../published.ts";
import { inside } from "./insideOutline.ts";

/** M20x1.5 whole, with what the table of ISO 724 prints for D_1; d_3 by ISO 898-1. */
const whole: SectionInput = {
  designation: "M20x1.5",
  d_mm: 20,
  P_mm: 1.5,
  d2_mm: 19.0257215,
  D1_mm: 18.376,
  d3_mm: 18.16,
  flank_deg: 30,
  threadDepth_mm: 16,
  thinnestWall_mm: 7,
  roomBehind_mm: 11,
  underHead_mm: 13,
  chamfer_mm: 1,
  headDiameter_mm: 27,
  seal: { kind: "flat washer", outside_mm: 26, inside_mm: 20.4, thickness_mm: 2 },
  turnsCarrying: 10 / 1.5,
  turnsHealthy: 10 / 1.5,
  condition: "good",
  heightLeft: 1,
  goodFrom_mm: null,
  goodTo_mm: null,
  surface: "oiled",
};

describe("published", () => {
  const wholeTeeth = portSection(whole).turns.filter(
    ({ side, turn }) => side === "right" && Math.abs(turn.to_mm - turn.from_mm - 1.5) < 1e-9,
  );

  // ISO 68-1:1998, figure 1: the ridge of the hole is P/4 wide at D_1 and 7/8 P wide at D.
  test("a turn of M20x1.5 is 0.375 mm wide at its top and 1.3125 mm at its foot", () => {
    expect(wholeTeeth.length).toBeGreaterThanOrEqual(10);
    for (const { whole: outline } of wholeTeeth) {
      const [foot, top] = [20, 18.376].map((D) => depthsAt(outline, D / 2)) as [number[], number[]];
      agrees(Math.max(...top) - Math.min(...top), "0.375");
      agrees(Math.max(...foot) - Math.min(...foot), "1.3125");
    }
  });

  // ISO 68-1:1998, figure 1: the crest of the bolt is P/8 wide.
  test("the crest of the plug is 0.1875 mm wide", () => {
    const crests = portSection(whole).plug.filter(
      ({ x_mm, y_mm }) => Math.abs(x_mm - 10) < 1e-9 && y_mm > -1 && y_mm < 9,
    );
    const widths = crests.slice(1).map(({ y_mm }, i) => y_mm - (crests[i]?.y_mm ?? 0));
    agrees(Math.min(...widths.filter((width) => width > 1e-9)), "0.1875");
  });

  test("flanks of hole and plug enclose 60°", () => {
    for (const { whole: outline } of wholeTeeth) expect(flankAngles_deg(outline)).toEqual([60, 60]);
    const right = portSection(whole).plug.filter(({ x_mm, y_mm }) => x_mm > 0 && y_mm < 9);
    const plugAngles = flankAngles_deg(right);
    expect(plugAngles.length).toBeGreaterThanOrEqual(12);
    expect(new Set(plugAngles)).toEqual(new Set([60]));
  });

  // M20x1.5, 16 mm deep: 10.67 turns; the reach is 13 - 2 - 1 = 10 mm, 6.67 turns. Reckoned by hand.
  test("a plug 13 mm long over a 2 mm washer with a 1 mm point leaves 4 of 10.67 turns unused", () => {
    const { count } = portSection(whole);
    agrees(count.sound, "6.67");
    agrees(count["beyond the plug"], "4.00");
    agrees(count.gone, "0.00");
  });
});

describe("laws", () => {
  test("as many turns are drawn as are given, on either side, and the rest is told", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const section = portSection({ ...input, goodFrom_mm: null, goodTo_mm: null, condition: "doubtful" });
        for (const side of ["right", "left"]) {
          const drawn = section.turns
            .filter((it) => it.side === side && it.turn.state === "worn")
            .reduce((sum, { turn }) => sum + (turn.to_mm - turn.from_mm) / input.P_mm, 0);
          expect(drawn + section.doNotFit_turns).toBeCloseTo(input.turnsCarrying, 4);
        }
      }),
    );
  });

  test("the turns that are left are the innermost the plug reaches; those nearer the face are gone", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const { bands, engaged_mm } = portSection({ ...input, goodFrom_mm: null, goodTo_mm: null, condition: "poor" });
        for (const { state, from_mm, to_mm } of bands) {
          if (state === "worn") expect(to_mm).toBeCloseTo(engaged_mm, 9);
          if (state === "gone") expect(from_mm).toBe(0);
          if (state === "beyond the plug") expect(from_mm).toBeCloseTo(engaged_mm, 9);
        }
      }),
    );
  });

  test("measured ends of good thread are drawn where they were measured", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const section = portSection({ ...input, threadDepth_mm: 20, goodFrom_mm: 5, goodTo_mm: 12, condition: "good" });
        const metal = section.bands.filter(({ state }) => state !== "gone");
        expect(metal[0]?.from_mm).toBeCloseTo(5, 9);
        expect(metal.at(-1)?.to_mm).toBeCloseTo(12, 9);
      }),
    );
  });

  test("bands follow each other from the face to the end of the hole", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const { bands, depth_mm } = portSection(input);
        const ends = [0, ...bands.map(({ to_mm }) => to_mm)];
        bands.forEach(({ from_mm }, i) => {
          expect(from_mm).toBeCloseTo(ends[i] ?? Number.NaN, 6);
        });
        expect(ends.at(-1)).toBeCloseTo(depth_mm, 6);
      }),
    );
  });

  test("the sides of the helix lie half a pitch apart", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const { turns, P_mm, engaged_mm } = portSection(input);
        for (const { side, turn, whole: outline } of turns) {
          if (turn.to_mm - turn.from_mm < P_mm - 1e-6) continue;
          const turnsOff = (middle(outline) - engaged_mm) / P_mm + (side === "right" ? 0.5 : 0);
          expect(turnsOff - Math.round(turnsOff)).toBeCloseTo(0, 5);
        }
      }),
    );
  });

  test("a worn turn has the fraction of height that is left", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const { turns } = portSection({ ...input, condition: "doubtful" });
        for (const { turn, metal } of turns.filter((it) => it.turn.state === "worn")) {
          if (turn.to_mm - turn.from_mm < input.P_mm - 1e-6) continue;
          const inner = Math.min(...metal.map(({ x_mm }) => Math.abs(x_mm)));
          expect((input.d_mm / 2 - inner) / ((input.d_mm - input.D1_mm) / 2)).toBeCloseTo(input.heightLeft, 6);
        }
      }),
    );
  });

  test("the plug nowhere enters a whole turn of the hole", () => {
    fc.assert(
      fc.property(sections, (input) => {
        const { plug, turns } = portSection(input);
        for (const { side, whole: outline } of turns)
          for (const point of plug)
            if (point.x_mm > 0 === (side === "right")) expect(inside(point, outline, 1e-6)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });

  // A ring of 2.5 mm in a chamfer of 3.25 mm: 12 - 3.25 = 8.75 mm are left of the reach, 5.83 turns. Reckoned by hand.
  test("no turn is drawn under the chamfer of an O-ring, and those that do not fit below it are told", () => {
    const seal = { kind: "O-ring", outside_mm: 25, inside_mm: 20, thickness_mm: 0, chamfer_mm: 3.25 } as const;
    const section = portSection({ ...whole, seal, turnsCarrying: 8 });
    agrees(section.count.sound, "5.83");
    agrees(section.doNotFit_turns, "2.17");
    for (const { state, from_mm } of section.bands) if (state !== "gone") expect(from_mm).toBeGreaterThanOrEqual(3.25);
    const toTheFace = portSection({ ...whole, seal, turnsCarrying: 5, goodFrom_mm: 0, goodTo_mm: 16 });
    agrees(toTheFace.count.sound, "5.83");
    const unknown = portSection({ ...whole, seal, turnsCarrying: 5, underHead_mm: null });
    agrees(unknown.count.sound, "5.00");
  });

  test("an unknown length has no value and is not drawn as true", () => {
    const unknown = {
      threadDepth_mm: null,
      thinnestWall_mm: null,
      roomBehind_mm: null,
      underHead_mm: null,
      chamfer_mm: null,
    };
    fc.assert(
      fc.property(sections, (input) => {
        const section = portSection({ ...input, ...unknown });
        for (const { id, value_mm, drawn } of section.dimensions)
          if (id !== "seal") expect([value_mm, drawn]).toEqual([null, "unknown"]);
        expect(section.wallKnown || section.behindKnown).toBe(false);
        expect(section.behind_mm).toBeGreaterThanOrEqual(section.tip_mm);
      }),
    );
  });

  test("what is clear of a plug that passes through is the room less what sticks out", () => {
    const section = portSection({ ...whole, underHead_mm: 21 });
    const clear = section.dimensions.find(({ id }) => id === "clear");
    // 21 - 2 = 19 mm below the face, 3 beyond the 16 of the hole, 8 of the 11 behind are left.
    expect(clear?.value_mm).toBeCloseTo(8, 9);
    expect(portSection({ ...whole, underHead_mm: 21, roomBehind_mm: 2 }).dimensions.at(-1)?.value_mm).toBeCloseTo(
      -1,
      9,
    );
    expect(portSection(whole).dimensions.some(({ id }) => id === "clear")).toBe(false);
  });
});

/** Ports with threads from M8 to M33 and any lengths that may be met. */
const sections: fc.Arbitrary<SectionInput> = fc
  .record({
    thread: fc.constantFrom<[number, number]>(
      [8, 1.25],
      [12, 1.5],
      [14, 1.25],
      [18, 1.5],
      [20, 2.5],
      [24, 1.5],
      [33, 2],
    ),
    threadDepth_mm: fc.option(fc.double({ min: 2, max: 40, noNaN: true })),
    thinnestWall_mm: fc.option(fc.double({ min: 1, max: 40, noNaN: true })),
    roomBehind_mm: fc.option(fc.double({ min: 0.5, max: 60, noNaN: true })),
    underHead_mm: fc.option(fc.double({ min: 5, max: 40, noNaN: true })),
    chamfer_mm: fc.option(fc.double({ min: 0, max: 3, noNaN: true })),
    turnsCarrying: fc.double({ min: 0, max: 12, noNaN: true }),
    turnsHealthy: fc.option(fc.double({ min: 4, max: 12, noNaN: true })),
    condition: fc.constantFrom(...conditions),
    heightLeft: fc.double({ min: 0.25, max: 1, noNaN: true }),
    goodFrom_mm: fc.option(fc.double({ min: 0, max: 10, noNaN: true })),
    goodTo_mm: fc.option(fc.double({ min: 0, max: 30, noNaN: true })),
  })
  .map(({ thread: [d_mm, P_mm], ...rest }) => {
    const { d_2, D_1, d_3, designation } = metricThread(d_mm, P_mm);
    const basic = { d2_mm: valueIn(mm, d_2), D1_mm: valueIn(mm, D_1), d3_mm: valueIn(mm, d_3) };
    const sizes = { designation, d_mm, P_mm, ...basic };
    return { ...whole, ...sizes, ...rest };
  });

const depthsAt = (outline: Outline, x_mm: number): number[] =>
  outline.filter((point) => Math.abs(point.x_mm - x_mm) < 2e-3).map(({ y_mm }) => y_mm);

const middle = (outline: Outline): number => {
  const depths = outline.map(({ y_mm }) => y_mm);
  return (Math.min(...depths) + Math.max(...depths)) / 2;
};

/** Twice the angle of each flank with the diameter, for edges that are neither along the axis nor across it. */
function flankAngles_deg(outline: Outline): number[] {
  return outline.flatMap((a, i) => {
    const b = outline[i + 1];
    if (!b || Math.abs(a.x_mm - b.x_mm) < 1e-6 || Math.abs(a.y_mm - b.y_mm) < 1e-6) return [];
    const slope = Math.abs((b.y_mm - a.y_mm) / (b.x_mm - a.x_mm));
    return [Math.round(((2 * Math.atan(slope) * 180) / Math.PI) * 1e6) / 1e6];
  });
}
