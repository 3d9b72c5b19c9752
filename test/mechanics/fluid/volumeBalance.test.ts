import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fluidUsed, residueShare, volumeBalance } from "../../../src/mechanics/fluid/volumeBalance.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import {
  imperialFluidOunce,
  imperialGallons,
  imperialPint,
  imperialQuart,
  L,
  ml,
  type Unit,
  usFluidOunce,
  usGallons,
  usPint,
  usQuart,
} from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

function balance(out: Quantity, expected: Quantity, flush: { poured: Quantity; caught: Quantity } | null = null) {
  const read = volumeBalance({ out, expected, residue: residueShare, flush });
  if (!read.ok) throw new Error(read.problem.type);
  return read.balance;
}

const litres = (V: number) => exact("V", V, L);
const jug = (V: number, unit: Unit = L) => reading("V", normal(V, 0.03 * V), unit, "out", "jug");

describe("bands of the volume out by the volume expected", () => {
  test.each([
    [0.44, "far too little", true],
    [0.45, "low", false],
    [0.6, "low", false],
    [0.7499, "low", false],
    [0.75, "as expected", false],
    [0.97, "as expected", false],
    [1.15, "as expected", false],
    [1.16, "too much", true],
    [3.8, "too much", true],
    [0, "far too little", true],
  ])("%d is %s", (out, band, stop) => expect(balance(litres(out), litres(1))).toMatchObject({ band, stop }));

  test("the odds of the bands make up one, and sharpen to the band without doubt", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 3, noNaN: true }), (out) => {
        const { odds } = balance(jug(out), litres(1));
        expect(Object.values(odds).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
        const sharp = balance(litres(out), litres(1));
        if (out !== 1.15) expect(sharp.odds[sharp.band]).toBeCloseTo(1, 9);
      }),
    );
  });

  test("a jug at 75 % leaves both bands about even", () => {
    const { odds } = balance(jug(0.75), litres(1));
    expect(odds.low).toBeCloseTo(0.5, 6);
    expect(odds["as expected"]).toBeCloseTo(0.5, 6);
  });
});

test("what stayed in is 2 to 5 % more than came out", () => {
  const before = valueIn(L, balance(litres(1.158), litres(1.2)).before);
  agrees(before, "1.200");
});

test("flush is balanced by itself and charged, and is no part of the ratio", () => {
  const with0 = balance(litres(1.1), litres(1.2));
  const { ratio, flushLeft } = balance(litres(1.1), litres(1.2), {
    poured: exact("V", 300, ml),
    caught: exact("V", 280, ml),
  });
  expect(ratio.value).toBe(with0.ratio.value);
  expect(with0.flushLeft).toBeNull();
  agrees(valueIn(ml, flushLeft ?? litres(9)), "20.0");
  agrees(valueIn(L, fluidUsed(litres(1.2), exact("V", 300, ml))), "1.500");
});

// NIST SP 811 (2008), appendix B.8, and GNU units 2.22.
test.each([
  [usFluidOunce, "29.5735295625"],
  [usPint, "473.176473"],
  [usQuart, "946.352946"],
  [usGallons, "3785.411784"],
  [imperialFluidOunce, "28.4130625"],
  [imperialPint, "568.26125"],
  [imperialQuart, "1136.5225"],
  [imperialGallons, "4546.09"],
])("one %o holds what is printed", (unit, printed_ml) => agrees(unit.inSI * 1e6, printed_ml));

// Ratios of the units as printed: NIST SP 811 (2008), appendix B.8.
describe("a confusion of units is named", () => {
  test.each([
    [0.8327, "US qt", "imp qt"],
    [1.201, "imp qt", "US qt"],
    [0.946, "US qt", "L"],
    [1.0567, "L", "US qt"],
    [1.1365, "imp qt", "L"],
    [0.8799, "L", "imp qt"],
    [0.25, "US qt", "US gal"],
    [4, "US gal", "US qt"],
    [3.785, "US gal", "L"],
    [0.22, "L", "imp gal"],
    [0.5, "US pt", "US qt"],
    [2, "imp qt", "imp pt"],
    [0.568, "imp pt", "L"],
    [2.113, "L", "US pt"],
  ])("a ratio of %d: %s for %s", (ratio, writtenAs, meant) => {
    const { unitPairs } = balance(litres(ratio), litres(1));
    expect(unitPairs.map((it) => `${it.writtenAs} for ${it.meant}`)).toContain(`${writtenAs} for ${meant}`);
  });

  test("2.0 written as US quarts where the jug says imperial ones comes first, since it was so written", () => {
    const { unitPairs, fitsAsRead } = balance(jug(2.0, usQuart), exact("V", 2.0, imperialQuart));
    expect(fitsAsRead).toBe(false);
    expect(unitPairs[0]).toMatchObject({ writtenAs: "US qt", meant: "imp qt", asWritten: true });
    agrees(unitPairs[0]?.ratio ?? 0, "0.8327");
  });

  test("what is left in a drained case is no confusion", () => {
    for (const out of [0.95, 0.965, 0.98, 1]) expect(balance(jug(out), litres(1)).fitsAsRead).toBe(true);
    for (const out of [0.8, 1.2, 0.5, 3.8]) expect(balance(jug(out), litres(1)).fitsAsRead).toBe(false);
  });

  test("millilitres are litres on the jug", () => {
    const { unitPairs } = balance(exact("V", 1057, ml), exact("V", 1, L));
    expect(unitPairs.find((it) => it.writtenAs === "L" && it.meant === "US qt")?.asWritten).toBe(true);
  });

  test("any two units confused are named, whatever stayed in", () => {
    const units = [L, usPint, usQuart, usGallons, imperialPint, imperialQuart, imperialGallons];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom(...units),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 0.0499, noNaN: true }),
        (writtenAs, meant, expected, residue) => {
          if (writtenAs === meant) return true;
          const out = exact("V", expected * (1 - residue), writtenAs);
          const { unitPairs } = balance(out, exact("V", expected, meant));
          return unitPairs.some((it) => it.asWritten && it.writtenAs === writtenAs.symbol && it.meant === meant.symbol);
        },
      ),
    );
  });

  test("a ratio that no confusion gives names none", () =>
    expect(balance(litres(0.7), litres(1)).unitPairs).toEqual([]));
});

test("nothing expected and less than nothing out are refused", () => {
  const read = (out: Quantity, expected: Quantity) =>
    volumeBalance({ out, expected, residue: residueShare, flush: null });
  expect(read(litres(1), litres(0))).toMatchObject({ ok: false, problem: { type: "OutsideLimits", given: 0 } });
  expect(read(litres(-0.1), litres(1))).toMatchObject({ ok: false, problem: { given: -0.1, least: 0 } });
});
