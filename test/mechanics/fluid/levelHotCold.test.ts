import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  levelAtReference,
  netGrowth,
  netRise,
  temperatureDifference,
  type Warming,
} from "../../../src/mechanics/fluid/levelHotCold.ts";
import { exact, type Quantity, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, degF, deltaK, L, ml, ml_mm, mm, one, perK } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const warming = (V_L: number, r: number, alpha: number, DT: number): Warming => ({
  V: exact("V", V_L, L),
  r: exact("r", r, one),
  alpha: exact("alpha", alpha, perK),
  DT: exact("DT", DT, deltaK),
});
const rise_mm = (it: Warming, k: number): number => valueIn(mm, netRise(it, exact("k", k, ml_mm)));

// 1.2 l of 880 kg/m³ at 60 °F, 20 to 90 °C: ratio 1.053573 by API MPMS 11.1, lubricating oils; aluminium 23e-6 (from
// memory). The rest worked apart from this program.
const inAluminium = warming(1.2, 1.053573, 23e-6, 70);
const alone = warming(1.2, 1.053573, 0, 70);

describe("published", () => {
  test("1.2 l grow by 64.3 ml from 20 to 90 °C, by 58.5 net of an aluminium case", () => {
    agrees(valueIn(ml, netGrowth(alone)), "64.3");
    agrees(valueIn(ml, netGrowth(inAluminium)), "58.5");
    agrees(valueIn(ml, netGrowth(alone)) - valueIn(ml, netGrowth(inAluminium)), "5.81");
  });

  test.each([
    [12, "5.36", "4.86"],
    [18, "3.57", "3.24"],
    [25, "2.57", "2.33"],
  ])("at %d ml/mm the level rises", (k, naive, net) => {
    agrees(rise_mm(alone, k), naive);
    agrees(rise_mm(inAluminium, k), net);
  });
});

describe("design page, not published", () => {
  // A.8: 0.075 %/K, 2.4 l, 60 K give 108 ml. The reference's own expansion grows with temperature and goes before it.
  test("2.4 l warmed by 60 K at 0.075 %/K gain 108 ml", () => {
    agrees(valueIn(ml, netGrowth(warming(2.4, 1 + 60 * 0.00075, 0, 60))), "108");
  });
});

describe("laws", () => {
  test("the rise grows with the ratio and falls with the surface", () =>
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1.1, noNaN: true }), fc.double({ min: 8, max: 35, noNaN: true }), (r, k) => {
        const at = (ratio: number, perHeight: number) => rise_mm(warming(1.2, ratio, 23e-6, 70), perHeight);
        expect(at(r + 0.001, k)).toBeGreaterThan(at(r, k));
        expect(Math.abs(at(r, k + 1)) - Math.abs(at(r, k))).toBeLessThanOrEqual(0);
      }),
    ));

  test("a case as it was has no rise", () => expect(rise_mm(warming(1.2, 1, 23e-6, 0), 18)).toBe(0));

  test("the difference of temperature does not mind its scale", () => {
    const inF = temperatureDifference(exact("T", 194, degF), exact("T", 68, degF));
    expect(inF.value).toBeCloseTo(70, 9);
    expect(temperatureDifference(exact("T", 90, degC), exact("T", 20, degC)).value).toBeCloseTo(70, 9);
  });
});

test("a reading less than ten minutes after the run is widened by 2 mm either way, later and cold ones are not", () => {
  const [read, risen]: readonly Quantity[] = [exact("h", -2, mm), exact("Dh", 3, mm)];
  if (!read || !risen) throw new Error("nothing");
  const at = (minutesSinceStop: number | null) => levelAtReference(read, risen, { type: "hot", minutesSinceStop });
  for (const restless of [at(null), at(9)]) {
    expect(restless.reading).toBe("widened");
    expect(standardUncertainty(restless.level) / mm.inSI).toBeCloseTo(2 / Math.sqrt(3), 9);
  }
  for (const settled of [at(10), levelAtReference(read, risen, { type: "cold" })]) {
    expect(settled.reading).toBe("settled");
    expect(valueIn(mm, settled.level)).toBeCloseTo(-5, 9);
    expect(standardUncertainty(settled.level)).toBe(0);
  }
});
