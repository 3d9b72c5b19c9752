import { describe, expect, test } from "vitest";
import type { Port } from "../../../src/mechanics/joint/port.ts";
import { internalStripArea } from "../../../src/mechanics/joint/stripping.ts";
import { exactly } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { cm3, g, mm, mm2, percent, turn } from "../../../src/mechanics/quantity/unit.ts";
import { bushThread, bushWall } from "../../../src/mechanics/remedies/fitBush.ts";
import { chips, rangeOf } from "../../../src/mechanics/remedies/fitChips.ts";
import { coilDrill, coilOf, longestCoil } from "../../../src/mechanics/remedies/fitCoil.ts";
import { crookedness, stopTurns, tipDepth } from "../../../src/mechanics/remedies/fitDepth.ts";
import { fullDepth, overrun, tapForms } from "../../../src/mechanics/remedies/fitOverrun.ts";
import {
  clearOfTorn,
  clears,
  percentOfIsoThread,
  percentOfThread,
  tappingDrill,
} from "../../../src/mechanics/remedies/fitTapping.ts";
import { leastBoss, wallNeeds } from "../../../src/mechanics/remedies/fitWall.ts";
import { completed } from "../../../src/mechanics/remedies/givenCase.ts";
import { nextSizes } from "../../../src/mechanics/remedies/largerThread.ts";
import { metricSizes } from "../../../src/mechanics/tables/iso261.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { wireCoilHole } from "../../../src/mechanics/threads/wireCoilHole.ts";
import { agrees } from "../../published.ts";
import { given } from "./changedCase.ts";

const length = (symbol: string, value_mm: number): Quantity =>
  reading(symbol, exactly(value_mm), mm, `test.${symbol}`, "assumed");
const inMm = (q: Quantity | null): number => (q ? valueIn(mm, q) : Number.NaN);
const portOf = (thread: string, lengths: Partial<Port>): Port => ({
  ...completed(given({ thread, seal: { outside: undefined, inside: undefined } })).portCase.port,
  ...lengths,
});

describe("percent of thread", () => {
  // Machinery's Handbook, table of tapping drills: 0-80 with a drill of 1.30 mm leaves 54 %. 0.0600 in, 80 threads to the inch.
  test("0-80 drilled 1.30 mm leaves 54 %", () => {
    const q = percentOfThread({ d: length("d", 1.524), D_t: length("D_t", 1.3), P: length("P", 25.4 / 80) });
    agrees(valueIn(percent, q), "54");
  });

  // Common practice, no source: the drill is the diameter less the pitch, 77 % by the American count and 92 % of ISO's depth.
  test.each([
    [14, 1.5],
    [20, 1.5],
    [20, 2.5],
  ])("M%sx%s drilled to d - P leaves 77 % by the American count and 92 % by ISO's", (d, P) => {
    const thread = metricThread(d, P);
    const D_t = tappingDrill(thread);
    agrees(valueIn(percent, percentOfThread({ d: thread.d, D_t, P: thread.P })), "77");
    agrees(valueIn(percent, percentOfIsoThread({ d: thread.d, D_t, P: thread.P })), "92");
  });
});

// Common practice, no source: torn threads stand up to 0.4 mm over their nominal major diameter.
describe("a larger thread takes a torn one away", () => {
  test.each([
    [14, 16, "just"],
    [18, 20, "just"],
    [18, 22, "surely"],
  ] as const)("M%sx1.5 to M%sx1.5: %s", (torn, larger, verdict) => {
    expect(clears(metricThread(torn, 1.5), metricThread(larger, 1.5))).toBe(verdict);
  });

  test("a drill of 18.5 against 18.0 to 18.4 clears by 0.1 to 0.5 mm on the diameter", () => {
    const clear = clearOfTorn(metricThread(18, 1.5), metricThread(20, 1.5));
    agrees(inMm(clear), "0.3");
    expect(clears(metricThread(18, 1.5), metricThread(19, 1.5))).toBe("not");
  });

  test.each([
    ["M14x1.5", 14, 1.5, "M16x1.5"],
    ["M18x1.5", 18, 1.5, "M20x1.5"],
    ["M20x1.5", 20, 1.5, "M22x1.5"],
    ["M14x1.25", 14, 1.25, "M16x1.5"],
  ])("the next plug size of %s", (_, d, P, next) => {
    expect(nextSizes(metricThread(d, P)).map(({ designation }) => designation)).toEqual([next]);
  });

  test("above M64 there is none", () => expect(nextSizes(metricThread(64, 1.5))).toEqual([]));
});

// Common practice, no source: residual wall 0.375 and boss 1.75 of the hole's major diameter, wire-coil holes in castings.
describe("wall and boss of a wire-coil hole", () => {
  test.each([
    [6, 1, "2.7", "12.8"],
    [8, 1.25, "3.6", "16.8"],
    [10, 1.5, "4.5", "20.9"],
    [12, 1.75, "5.4", "25.0"],
    [14, 1.5, "6.0", "27.9"],
    [18, 1.5, "7.5", "34.9"],
    [20, 1.5, "8.2", "38.4"],
    [24, 2, "10.0", "46.5"],
  ])("M%sx%s: %s and %s mm", (d, P, wall, boss) => {
    const { D_STI } = wireCoilHole(metricThread(d, P), "5H");
    const port = portOf(`M${d}x${P}`, { thinnestWall: length("w", 9) });
    agrees(inMm(wallNeeds(port, D_STI)[2].least), wall);
    agrees(inMm(leastBoss({ D_n: D_STI })), boss);
  });

  // A boss of 34.2 mm and an outer thread of 27 leave (34.2 - 27) / 2.
  test("a boss of 34.2 leaves 3.6 mm around an outer thread of 27", () => {
    const port = portOf("M20x1.5", { thinnestWall: length("w", (34.2 - 20) / 2) });
    const [least, quarter] = wallNeeds(port, length("D_n", 27));
    agrees(inMm(least.has), "3.6");
    expect([least.state, quarter.state]).toEqual(["met", "not met"]);
  });

  test("less than 2.5 mm in a light alloy is not cut; 2.4 mm of iron is", () => {
    const wall = { thinnestWall: length("w", 3.4) };
    const left = (material: Port["material"]) =>
      wallNeeds({ ...portOf("M20x1.5", wall), material }, length("D_n", 22))[0].state;
    expect(left("cast aluminium")).toBe("not met");
    expect(left("EN-GJL-250")).toBe("met");
  });

  test("a wall that nobody measured is not known", () => {
    const [least] = wallNeeds(portOf("M20x1.5", { thinnestWall: null }), length("D_n", 22));
    expect([least.state, least.has]).toEqual(["not known", null]);
  });
});

// Common practice, no source: the wall of a bush is what lies between its bore with 2 % over and the root of its outer thread.
describe("the wall of a bush", () => {
  test.each([
    [18, 22, "0.9"],
    [18, 24, "1.9"],
  ])("M%sx1.5 in M%sx1.5 has %s mm", (inner, outer, wall) => {
    agrees(inMm(bushWall(metricThread(outer, 1.5), metricThread(inner, 1.5))), wall);
  });

  // Common practice, no source: M18x1.5 goes in M24x1.5, and M20x1.5 in a bush of 27 mm. The wall of the others is worked by
  // hand from the same sum: M14x1.25 in M18x1, (18 - 1.227 - 14.28) / 2 = 1.25; M8x1.25 in M12x1, 1.31.
  test.each([
    [18, 1.5, "M24x1.5"],
    [20, 1.5, "M27x1.5"],
    [22, 1.5, "M27x1.5"],
    [14, 1.25, "M18x1"],
    [8, 1.25, "M12x1"],
  ])("M%sx%s goes in a bush of %s", (d, P, outer) => {
    expect(bushThread(metricThread(d, P))?.designation).toBe(outer);
  });

  test("every plug thread from M8 to M48 has a bush, never of a diameter of third choice, and each has its 1.2 mm of wall", () => {
    for (const { d_mm, P_mm, choice } of metricSizes) {
      if (d_mm < 8 || d_mm > 48 || P_mm < 1 || choice === 3) continue;
      const outer = bushThread(metricThread(d_mm, P_mm));
      expect(outer, `M${d_mm}x${P_mm}`).not.toBeNull();
      expect(metricSizes.find((it) => it.designation === outer?.designation)?.choice).not.toBe(3);
      expect(inMm(outer ? bushWall(outer, metricThread(d_mm, P_mm)) : null)).toBeGreaterThanOrEqual(1.2);
    }
  });
});

// Common practice, no source: the points of hand taps, 1 to 2 P bottoming, 3.5 to 5 P plug, 7 to 10 P taper.
test("taps of 1.5 mm pitch run out 3, 7.5 and 15 mm", () => {
  expect(tapForms.map((form) => inMm(overrun(form, length("P", 1.5))))).toEqual([3, 7.5, 15]);
});

describe("how deep a thread is cut full", () => {
  const P = length("P", 1.5);
  const depth = (roomBehind: Quantity | null): number =>
    inMm(fullDepth(portOf("M20x1.5", { roomBehind }), length("l_t", 16), P));
  test.each([
    [11, 16],
    [5, 16],
    [4, 15],
    [2, 13],
    [0, 13],
  ])("%s mm behind a hole of 16: %s mm", (room_mm, full_mm) => {
    expect(depth(length("l_b", room_mm))).toBeCloseTo(full_mm, 9);
  });
  test("behind what nobody measured it is taken as blind", () => expect(depth(null)).toBeCloseTo(13, 9));
});

// Common practice, no source: lengths of 1 to 3 d, installed half to three quarters of a pitch shorter, set down by a pitch.
describe("a coil", () => {
  const thread = metricThread(18, 1.5);
  test("of 1.5 diameters in M18x1.5 is 27 mm, lies at 25.9 to 26.3, and wants 28.5 mm of thread", () => {
    const coil = coilOf(thread, 1.5);
    agrees(inMm(coil.L), "27.0");
    agrees(inMm(coil.installed), "26.1");
    agrees(inMm(coil.plate), "28.5");
    agrees(inMm(coil.drilledBlind), "33.0");
    agrees(inMm(coil.bearing), "25.9");
  });
  // Common practice, no source: M18x1.5 of 1.5 d in a casting of 151 MPa shear, bare 82 mm² a turn over 17.2 turns, 214 kN,
  // and 102 kN over the 2.1 of the usual length tables.
  test("of 1.5 diameters in M18x1.5 holds 214 kN bare and 102 kN by the tables at 151 MPa", () => {
    const { D_STI, D_2STI } = wireCoilHole(thread, "5H");
    const L = coilOf(thread, 1.5).bearing;
    const area_mm2 = valueIn(mm2, internalStripArea({ d: D_STI, D_2: D_2STI, L, P: thread.P, alpha: thread.alpha }));
    agrees(area_mm2 / (inMm(L) / 1.5), "82");
    agrees((area_mm2 * 151) / 1e3, "214");
    agrees((area_mm2 * 151) / 2.1 / 1e3, "102");
  });

  test.each([
    [19.5, 1],
    [28.4, 1],
    [28.5, 1.5],
    [100, 3],
  ])("the longest that goes in %s mm has %s diameters", (depth, diameters) => {
    expect(longestCoil(thread, length("l", depth)).diameters).toBe(diameters);
  });
});

test("the drill of every coil lies within the minor diameters of its hole", () => {
  for (const { d_mm, P_mm, choice } of metricSizes) {
    if (d_mm < 5 || d_mm > 39 || P_mm < 0.75 || choice === 3) continue;
    const { D1_min, D1_max } = wireCoilHole(metricThread(d_mm, P_mm), "5H");
    const drill_mm = inMm(coilDrill(D1_min));
    expect(drill_mm, `STI M${d_mm}x${P_mm}`).toBeGreaterThanOrEqual(inMm(D1_min) - 1e-9);
    expect(drill_mm, `STI M${d_mm}x${P_mm}`).toBeLessThanOrEqual(inMm(D1_max) + 1e-9);
  }
});

// Common practice, no source: 18.4 to 18.5 for M18x1.5, about D + 0.25 P: 14.3 and 22.3 within the drill's tenth.
test.each([
  [18, 18.4],
  [14, 14.4],
  [22, 22.4],
])("the coil's drill of M%sx1.5 is %s mm", (d, drill_mm) => {
  expect(inMm(coilDrill(wireCoilHole(metricThread(d, 1.5), "5H").D1_min))).toBeCloseTo(drill_mm, 9);
});

describe("chips, depth stop and a crooked tap", () => {
  // Common practice, no source: 0.4 to 0.6 cm³ and 1 to 2 g of aluminium for a coil in a thread of 14 mm.
  test("a coil of 1 d in M14x1.5 takes about half a cubic centimetre of aluminium, 1 to 2 g", () => {
    const port = portOf("M14x1.5", {});
    const { D_2STI } = wireCoilHole(metricThread(14, 1.5), "5H");
    const { volume, mass, magnetic } = chips(port, D_2STI, length("L", 14), true);
    const { low, high } = rangeOf(volume);
    expect(low).toBeLessThan(0.4);
    expect(high).toBeGreaterThan(0.6);
    agrees(valueIn(cm3, volume), "0.5");
    expect(valueIn(g, mass)).toBeGreaterThan(1);
    expect(valueIn(g, mass)).toBeLessThan(2);
    expect(magnetic).toBe(false);
  });

  test("iron is found by a magnet, magnesium may burn, and so may an alloy nobody tested", () => {
    const of = (material: Port["material"], tested: boolean) =>
      chips({ ...portOf("M20x1.5", {}), material }, length("D_2", 21), length("L", 16), tested);
    expect(of("EN-GJL-200", false)).toMatchObject({ magnetic: true, mayBurn: false });
    expect(of("AZ91D", true)).toMatchObject({ magnetic: false, mayBurn: true });
    expect(of("unknown light alloy", false).mayBurn).toBe(true);
    expect(of("unknown light alloy", true).mayBurn).toBe(false);
  });

  // Found in review: the stop was set at the end of the full thread, where the tap's point would have left it tapered.
  test("for 16 mm of full thread the tip of a bottoming tap goes its 2 P farther, 19 mm or 12.7 turns", () => {
    const P = exact("P", 1.5, mm);
    const l_s = tipDepth({ l_0: length("l_0", 16), o: overrun("bottoming", P) });
    agrees(inMm(l_s), "19.0");
    agrees(valueIn(turn, stopTurns({ l_s, P })), "12.7");
  });

  test("16 mm of 1.5 mm pitch are 10.7 turns, and 1.25° over it leaves the axis by 0.35 mm", () => {
    agrees(valueIn(turn, stopTurns({ l_s: length("l", 16), P: exact("P", 1.5, mm) })), "10.7");
    // 16 mm times tan 1.25° = 16 × 0.021820.
    agrees(inMm(crookedness(length("L", 16))), "0.35");
  });
});
