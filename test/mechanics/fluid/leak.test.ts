import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ordinaryDrop } from "../../../src/mechanics/fluid/drop.ts";
import { dripFlow } from "../../../src/mechanics/fluid/dropCount.ts";
import { leakClass } from "../../../src/mechanics/fluid/leakClass.ts";
import { distanceFor, lossOverDistance } from "../../../src/mechanics/fluid/leakDistance.ts";
import { headPressure } from "../../../src/mechanics/fluid/leakHead.ts";
import {
  filmOnSmoothGround,
  flowFromVolume,
  poolVerdict,
  spotArea,
  spotVolume,
} from "../../../src/mechanics/fluid/leakPool.ts";
import { leakTriage } from "../../../src/mechanics/fluid/leakTriage.ts";
import { stopSigns } from "../../../src/mechanics/fluid/stopSigns.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import {
  exact,
  type Quantity,
  reading,
  standardUncertainty,
  valueIn,
} from "../../../src/mechanics/quantity/quantity.ts";
import { cm2, d, kg_m3, km, miles, min, ml, ml_d, ml_km, ml_mm, mm, Pa } from "../../../src/mechanics/quantity/unit.ts";
import { leakClasses, leakSights } from "../../../src/mechanics/tables/leakClasses.ts";
import { agrees } from "../../published.ts";

const k18 = exact("k", 18, ml_mm);
const level = (h: number, u: number, id: string): Quantity => reading("h", normal(h, u), mm, id, "wire hook");

describe("published", () => {
  // Hydrostatics: 832.6 kg/m³ (oil of 880 at 90 °C).
  test("a head of 10 mm of hot oil is 82 Pa", () =>
    agrees(valueIn(Pa, headPressure(exact("rho", 832.6, kg_m3), exact("h", 10, mm))), "82"));

  // Worked apart from this program: films of 0.33 to 0.98 mm, 0.033 ml a drop.
  test("a pool of 75 mm holds 1.5 to 4.3 ml; in 5 min that is 9 to 26 drops a minute", () => {
    const A = spotArea(exact("D", 75, mm));
    const [low, high] = [0.33, 0.98].map((e) => spotVolume(A, exact("e", e, mm)));
    if (!low || !high) throw new Error("no films");
    agrees(valueIn(ml, low), "1.5");
    agrees(valueIn(ml, high), "4.3");
    const perMinute = (V: Quantity) => valueIn(ml_d, flowFromVolume(V, exact("t", 5, min))) / 1440;
    agrees(perMinute(low), "0.29");
    agrees(perMinute(high), "0.87");
    agrees(perMinute(low) / 0.033, "9");
    agrees(perMinute(high) / 0.033, "26");
  });

  test("a square centimetre of smooth ground holds 0.03 to 0.10 ml", () => {
    const volume = spotVolume(exact("A", 1, cm2), filmOnSmoothGround);
    const half_ml = (Math.sqrt(3) * standardUncertainty(volume)) / ml.inSI;
    agrees(valueIn(ml, volume) - half_ml, "0.03");
    agrees(valueIn(ml, volume) + half_ml, "0.10");
  });

  // US Army TM 5-3895-383-24, 1-10: I no drops, II drops that do not fall, III drops that fall. ISO/TR 11340, table 1.
  test("each sight has its class", () => {
    expect(leakSights.map((sight) => leakClasses[sight].pmcs)).toEqual(["none", "I", "I", "II", "III", "III"]);
    expect(leakSights.map((sight) => leakClasses[sight].isoTr11340)).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

test("what is seen names the class, and wetness that nobody wiped and watched is a weep", () => {
  const seen = (wet: boolean, comesAgain: boolean | null, drops: "none" | "hanging" | "falling" | "in a string") =>
    leakClass({ wet, comesAgain, drops }).sight;
  expect([
    seen(false, null, "none"),
    seen(true, false, "none"),
    seen(true, true, "none"),
    seen(true, null, "none"),
    seen(true, null, "hanging"),
    seen(true, null, "falling"),
    seen(true, null, "in a string"),
  ]).toEqual(["dry", "stain", "weep", "weep", "drop hanging", "drip", "stream"]);
});

test("a pool fails above 75 mm within five minutes, and one watched longer tells nothing", () => {
  const verdict = (D: number, t: number) => poolVerdict(exact("D", D, mm), exact("t", t, min));
  expect([verdict(75, 5), verdict(80, 5), verdict(80, 10)]).toEqual(["passes", "fails", "watched too long"]);
});

describe("loss over a distance", () => {
  const loss = (fall: number, u: number, s: Quantity) =>
    lossOverDistance(k18, level(0, u, "then"), level(-fall, u, "now"), s);

  test("9 mm at 18 ml/mm over 420 km are 162 ml, 0.386 ml/km", () => {
    const found = loss(9, 0.5, exact("s", 420, km));
    if (found.type !== "loses") throw new Error(found.type);
    agrees(valueIn(ml, found.lost), "162");
    agrees(valueIn(ml_km, found.perDistance), "0.386");
    agrees(found.per100km_ml, "38.6");
    expect(standardUncertainty(found.lost) / ml.inSI).toBeCloseTo(18 * 0.5 * Math.SQRT2, 9);
    agrees(valueIn(km, distanceFor(exact("V", 108, ml), found.perDistance)), "280");
  });

  test("a fall within the doubt of its readings is no loss seen, with what it may be at the most", () => {
    const found = loss(1, 1, exact("s", 420, km));
    if (found.type !== "no loss seen") throw new Error(found.type);
    expect(valueIn(ml_km, found.most)).toBeCloseTo((18 + 18 * Math.SQRT2 * 1.6448536) / 420, 5);
    expect(loss(-3, 0.5, exact("s", 420, km)).type).toBe("no loss seen");
  });

  test("units of distance do not matter, and a longer way at the same fall loses less a kilometre", () =>
    fc.assert(
      fc.property(fc.double({ min: 50, max: 5000, noNaN: true }), (s) => {
        const rate = (it: Quantity) => {
          const found = loss(9, 0.5, it);
          return found.type === "loses" ? found.perDistance.value : Number.NaN;
        };
        expect(rate(exact("s", s / 1.609344, miles)) / rate(exact("s", s, km))).toBeCloseTo(1, 10);
        expect(rate(exact("s", 2 * s, km))).toBeLessThan(rate(exact("s", s, km)));
      }),
    ));
});

describe("what may be said of a drip", () => {
  const flow = dripFlow({ drops: 7, time: exact("t", 10, min), id: "drops" }, ordinaryDrop, 0.95);
  const margin = exact("V", 8 * 22, ml);
  const nothing = { stopSigns: [], breather: "free" } as const;

  // Q10, design page, not published: 8 mm at 22 ml/mm last 3.5 to 9 days parked, half of that driven.
  test("7 drops in 10 min with 8 mm to the limit: three and a half to nine days parked", () => {
    const found = leakTriage(nothing, margin, flow);
    if (found.type !== "lasts") throw new Error(found.type);
    const days = (t: Quantity | null): number => (t ? valueIn(d, t) : Number.NaN);
    agrees(days(found.parked.low), "3.5");
    agrees(days(found.parked.high), "9");
    expect(days(found.driven.low)).toBeCloseTo(days(found.parkedHonest.low) / 2, 9);
    expect(days(found.parkedHonest.low)).toBeLessThan(days(found.parked.low));
    expect(days(found.parkedHonest.high)).toBeGreaterThan(days(found.parked.high));
  });

  test("any stop sign comes before everything, then the breather, then what was not asked", () => {
    for (const sign of stopSigns)
      expect(leakTriage({ stopSigns: [sign], breather: "blocked" }, margin, flow)).toEqual({
        type: "do not drive",
        signs: [sign],
      });
    expect(leakTriage({ stopSigns: null, breather: "blocked" }, margin, flow).type).toBe("free the breather first");
    expect(leakTriage({ stopSigns: null, breather: null }, margin, flow)).toEqual({
      type: "ask first",
      questions: ["stop signs", "breather"],
    });
    expect(leakTriage({ stopSigns: [], breather: null }, margin, flow)).toEqual({
      type: "ask first",
      questions: ["breather"],
    });
    expect(leakTriage(nothing, exact("V", 0, ml), flow).type).toBe("margin used up");
  });

  test("no drop seen leaves the far end open", () => {
    const none = dripFlow({ drops: 0, time: exact("t", 30, min), id: "drops" }, ordinaryDrop, 0.95);
    const found = leakTriage(nothing, margin, none);
    if (found.type !== "lasts") throw new Error(found.type);
    expect([found.parked.low, found.parked.high, found.driven.high]).toEqual([null, null, null]);
    expect(found.parkedHonest.low?.value).toBeGreaterThan(0);
  });
});
