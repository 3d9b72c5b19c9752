import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Air, referenceAir, slownessIn } from "../../../src/mechanics/cure/air.ts";
import { cureClocks, type SealedJoint } from "../../../src/mechanics/cure/clocks.ts";
import {
  depthAfter,
  type FrontSpeed,
  mm_sqrt_d,
  ordinaryFront,
  timeToDepth,
} from "../../../src/mechanics/cure/front.ts";
import { cureInThread } from "../../../src/mechanics/cure/inThread.ts";
import { exact, type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { d, degC, degF, h, min, mm, one, percent, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { agrees } from "../../published.ts";

const air = (T: number, RH: number): Air => ({ T: exact("T", T, degC), RH: exact("RH", RH, percent) });
const length = (value: number): Quantity => exact("z", value, mm);
const time = (value: number, unit: Unit): Quantity => exact("t", value, unit);
const joint = (over: Partial<SealedJoint>): SealedJoint => ({
  width: length(3),
  open: "one edge",
  air: referenceAir,
  front: ordinaryFront,
  label: null,
  ...over,
});

describe("published", () => {
  // Depth goes with the root of vapour pressure and time (Comyn 1998, from memory); worked apart from this program. One
  // figure is put right: the depth at 23 °C and 80 % stood at 1.27, where sqrt(0.8 / 0.5) = 1.2649.
  test.each([
    [23, 80, "1.60", "0.62", "1.26"],
    [30, 80, "2.42", "0.41", "1.55"],
    [20, 50, "0.83", "1.20", "0.91"],
    [15, 50, "0.61", "1.65", "0.78"],
    [10, 50, "0.44", "2.29", "0.66"],
    [5, 80, "0.50", "2.01", "0.71"],
    [5, 50, "0.31", "3.21", "0.56"],
    [23, 20, "0.40", "2.50", "0.63"],
  ])("%d °C and %d %%: vapour, time and depth against 23/50", (T, RH, vapour, slow, depth) => {
    const f = slownessIn(air(T, RH)).value;
    agrees(1 / f, vapour);
    agrees(f, slow);
    const day = time(1, d);
    const ratio =
      depthAfter(day, air(T, RH), ordinaryFront).likely.value /
      depthAfter(day, referenceAir, ordinaryFront).likely.value;
    agrees(ratio, depth);
  });

  // k = 2.5 mm/√day, 2 to 3 (common practice, no source).
  test.each([
    [0.5, h, "0.36", "0.29", "0.43"],
    [1, h, "0.51", null, null],
    [4, h, "1.02", null, null],
    [24, h, "2.50", null, null],
    [72, h, "4.33", null, null],
    [7, d, "6.61", "5.3", "7.9"],
  ] as const)("depth cured after %d of its unit, %#", (t, unit, likely, least, most) => {
    const depth = depthAfter(time(t, unit), referenceAir, ordinaryFront);
    agrees(valueIn(mm, depth.likely), likely);
    if (least !== null) agrees(valueIn(mm, depth.least), least);
    if (most !== null) agrees(valueIn(mm, depth.most), most);
  });

  test.each([
    [0.5, h, "0.96", null, null],
    [1, h, "3.8", null, null],
    [2, h, "15.4", null, null],
    [3, h, "34.6", "24", "54"],
    [5, d, "4", null, null],
    [10, d, "16", "11", "25"],
  ] as const)("time for %d mm, %#", (z, unit, likely, least, most) => {
    const found = timeToDepth(length(z), referenceAir, ordinaryFront);
    agrees(valueIn(unit, found.likely), likely);
    if (least !== null) agrees(valueIn(unit, found.least), least);
    if (most !== null) agrees(valueIn(unit, found.most), most);
  });

  // "7.5 mm in 7 days": 2.83 mm/√day (Int. J. Adhesion and Adhesives, 2021).
  test("7.5 mm in a week are 2.83 mm/√day", () => {
    const k = exact("k", 2.83, mm_sqrt_d);
    agrees(valueIn(mm, depthAfter(time(7, d), referenceAir, { likely: k, slowest: k, fastest: k }).likely), "7.5");
  });

  // Thirty minutes is common practice; at 10 °C/50 % and 5 °C/80 % it grows to these.
  test.each([
    [23, 50, "30"],
    [10, 50, "69"],
    [5, 80, "60"],
    [30, 80, "30"],
  ])("the least splash time at %d °C and %d %% is %s min", (T, RH, least) =>
    agrees(valueIn(min, cureClocks(joint({ air: air(T, RH) })).mayBeSplashed.leastTime), least),
  );

  test("through a seat 3 mm wide it takes 34.6 h (24 to 54) in the reference air", () => {
    const { curedThrough } = cureClocks(joint({}));
    agrees(valueIn(h, curedThrough.likely), "34.6");
    agrees(valueIn(h, curedThrough.least), "24");
    agrees(valueIn(h, curedThrough.most), "54");
  });

  // In a thread (M18x1.5 as a check value only): 53.5 mm of helix a turn.
  test("10 mm deep: 16 days (11 to 25) in a straight gap, 64 in a slack thread, practically never flank on flank", () => {
    const M18 = metricThread(18, 1.5);
    const days = (it: Quantity): number => valueIn(d, it);
    const gap = cureInThread(M18, length(10), "straight gap", referenceAir, ordinaryFront);
    agrees(days(gap.time.likely), "16");
    agrees(days(gap.time.least), "11");
    agrees(days(gap.time.most), "25");
    const slack = cureInThread(M18, length(10), "slack", referenceAir, ordinaryFront);
    agrees(days(slack.time.likely), "64");
    const tight = cureInThread(M18, length(10), "flank on flank", referenceAir, ordinaryFront);
    agrees(valueIn(mm, tight.firstDay), "0.07");
    expect([gap.verdict, slack.verdict, tight.verdict]).toEqual(["weeks", "weeks", "practically never"]);
    const perTurn = cureInThread(M18, length(1.5), "flank on flank", referenceAir, ordinaryFront);
    agrees(valueIn(mm, perTurn.path), "53.5");
  });
});

describe("design page, not published", () => {
  // A.7 takes 2.75 mm/√day; the reference's 2.5 goes before it. Hours for 2 and 3 mm.
  const k = exact("k", 2.75, mm_sqrt_d);
  const front: FrontSpeed = { likely: k, slowest: k, fastest: k };
  test.each([
    [23, 50, "13", "29"],
    [15, 60, "17", "39"],
    [12, 65, "20", "44"],
    [9, 70, "22", "50"],
    [5, 80, "26", "57"],
  ])("%d °C and %d %%: %s h for 2 mm, %s h for 3 mm", (T, RH, two, three) => {
    agrees(valueIn(h, timeToDepth(length(2), air(T, RH), front).likely), two);
    agrees(valueIn(h, timeToDepth(length(3), air(T, RH), front).likely), three);
  });

  test("10 mm deep takes 13 days in the reference air, 27 at 5 °C and 80 %", () => {
    agrees(valueIn(d, timeToDepth(length(10), referenceAir, front).likely), "13");
    agrees(valueIn(d, timeToDepth(length(10), air(5, 80), front).likely), "27");
  });

  test("12 °C and 65 %: 5 h for the first millimetre", () =>
    agrees(valueIn(h, timeToDepth(length(1), air(12, 65), front).likely), "5"));
});

describe("what governs the splash clock", () => {
  const splashed = (over: Partial<SealedJoint>) => cureClocks(joint(over)).mayBeSplashed;

  test("a skin of 0.5 mm takes longer than thirty minutes with an ordinary silicone", () => {
    const found = splashed({});
    expect(found.because).toBe("skin");
    agrees(valueIn(h, found.time), "0.96");
  });

  test("thirty minutes stand where a fast sealant skins sooner", () => {
    const k = exact("k", 5, mm_sqrt_d);
    const found = splashed({ front: { likely: k, slowest: k, fastest: k } });
    expect([found.because, Math.round(valueIn(min, found.time))]).toEqual(["least time", 30]);
  });

  test("the label's time goes before both where it is longer, and slow air lengthens what was said for the reference air", () => {
    const label = (saidFor: "reference air" | "this air") => ({ time: time(4, h), saidFor });
    const cold = air(10, 50);
    expect(splashed({ label: label("this air"), air: cold }).because).toBe("label");
    agrees(valueIn(h, splashed({ label: label("this air"), air: cold }).time), "4");
    agrees(valueIn(h, splashed({ label: label("reference air"), air: cold }).time), "9.1");
    agrees(valueIn(h, splashed({ label: label("reference air"), air: air(30, 80) }).time), "4");
    expect(splashed({ label: { time: time(10, min), saidFor: "this air" } }).because).toBe("skin");
  });
});

test("cold and dry air are noted, and that thirty minutes is no cure always", () => {
  const notes = (T: number, RH: number) => cureClocks(joint({ air: air(T, RH) })).notes;
  expect(notes(23, 50)).toEqual(["thirty minutes is no cure"]);
  expect(notes(4, 80)).toContain("colder than the chemistry likes");
  expect(notes(23, 25)).toContain("dry air: heating the bay slows it");
});

describe("laws", () => {
  const temperatures = fc.double({ min: 0, max: 40, noNaN: true });
  const humidities = fc.double({ min: 10, max: 95, noNaN: true });
  const depths = fc.double({ min: 0.1, max: 20, noNaN: true });

  test("warmer or damper air cures sooner, and never splashes later", () =>
    fc.assert(
      fc.property(temperatures, humidities, depths, (T, RH, z) => {
        const at = (t: number, rh: number) => timeToDepth(length(z), air(t, rh), ordinaryFront).likely.value;
        expect(at(T + 1, RH)).toBeLessThan(at(T, RH));
        expect(at(T, RH + 1)).toBeLessThan(at(T, RH));
        const splash = (t: number, rh: number) => cureClocks(joint({ air: air(t, rh) })).mayBeSplashed.time.value;
        expect(splash(T + 1, RH)).toBeLessThanOrEqual(splash(T, RH));
      }),
    ));

  test("twice the depth takes four times the time; the ends are in order", () =>
    fc.assert(
      fc.property(temperatures, humidities, depths, (T, RH, z) => {
        const [one_, two] = [z, 2 * z].map((it) => timeToDepth(length(it), air(T, RH), ordinaryFront));
        if (!one_ || !two) throw new Error("nothing");
        expect(two.likely.value / one_.likely.value).toBeCloseTo(4, 9);
        expect(one_.least.value).toBeLessThan(one_.likely.value);
        expect(one_.likely.value).toBeLessThan(one_.most.value);
      }),
    ));

  test("the depth after the time to a depth is that depth", () =>
    fc.assert(
      fc.property(temperatures, humidities, depths, (T, RH, z) => {
        const it = air(T, RH);
        const back = depthAfter(timeToDepth(length(z), it, ordinaryFront).likely, it, ordinaryFront).likely;
        expect(valueIn(mm, back)).toBeCloseTo(z, 9);
      }),
    ));

  test("the splash clock never runs less than thirty minutes, nor cures a seat through before it skins", () =>
    fc.assert(
      fc.property(temperatures, humidities, fc.double({ min: 0.6, max: 6, noNaN: true }), (T, RH, w) => {
        const { mayBeSplashed, curedThrough } = cureClocks(joint({ air: air(T, RH), width: length(w) }));
        expect(valueIn(min, mayBeSplashed.time)).toBeGreaterThanOrEqual(30);
        expect(curedThrough.likely.value).toBeGreaterThan(mayBeSplashed.skin.likely.value);
      }),
    ));

  test("two open edges take a quarter of the time", () =>
    fc.assert(
      fc.property(depths, (w) => {
        const through = (open: SealedJoint["open"]) =>
          cureClocks(joint({ width: length(w), open })).curedThrough.likely.value;
        expect(through("one edge") / through("both edges")).toBeCloseTo(4, 9);
      }),
    ));

  test("units do not matter", () => {
    const inF: Air = { T: exact("T", 50, degF), RH: exact("RH", 0.5, one) };
    expect(slownessIn(inF).value).toBeCloseTo(slownessIn(air(10, 50)).value, 12);
  });
});
