import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { engagedLength, stripForce, turnsLessLeadIn } from "../../../src/mechanics/joint/stripForce.ts";
import {
  crowding,
  externalStripArea,
  firstTurnShare,
  heightFactor,
  internalStripArea,
  thirdRuleForce,
} from "../../../src/mechanics/joint/stripping.ts";
import { exact, type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { kN, MPa, mm, mm2, one, turn } from "../../../src/mechanics/quantity/unit.ts";
import { limits } from "../../../src/mechanics/threads/metricLimits.ts";
import { metricThread, stressArea } from "../../../src/mechanics/threads/metricThread.ts";
import { standardHole, standardPlug } from "../../../src/mechanics/threads/standardClasses.ts";
import { agrees } from "../../published.ts";

const sized = (symbol: string, value: number): Quantity => exact(symbol, value, mm);

/** Shear areas of a 6g plug in a 6H hole, both at least material, over an engaged length. */
function leastMaterial(d: number, P: number, length_mm: number) {
  const thread = metricThread(d, P);
  const { d_min, D2_max, D1_max, d2_min } = limits(thread, standardPlug, standardHole);
  const L = sized("L", length_mm);
  return {
    internal: valueIn(mm2, internalStripArea({ d: d_min, L, P: thread.P, D_2: D2_max, alpha: thread.alpha })),
    external: valueIn(mm2, externalStripArea({ D_1: D1_max, L, P: thread.P, d_2: d2_min, alpha: thread.alpha })),
    stress: valueIn(mm2, stressArea(thread)),
  };
}

// Bickford, "Introduction to the Design and Behavior of Bolted Joints", 4th ed. (test/published/strip_areas.csv): engagement
// of one diameter, 6H/6g. The table rounds its limits on the way, so it is met to 0.06 %, not to its last digit.
describe("Bickford's table of strip areas", () => {
  const rows = readFileSync(new URL("../../published/strip_areas.csv", import.meta.url), "utf8")
    .trim()
    .split(/\r?\n/)
    .slice(2)
    .map((line) => line.split(","));

  const near = (actual: number, printed = ""): void =>
    expect(Math.abs(actual / Number(printed) - 1), `${actual} against ${printed}`).toBeLessThan(6e-4);

  test("has 15 sizes", () => expect(rows.length).toBe(15));

  test.each(rows)(
    "%s: stress area %s, plug strips over %s and hole over %s mm²",
    (name, stress, external, internal) => {
      const [d = 0, P = 0] = (name ?? "").slice(1).split("x").map(Number);
      const found = leastMaterial(d, P, d);
      near(found.stress, stress);
      near(found.external, external);
      near(found.internal, internal);
    },
  );
});

// Handbook of Bolts and Bolted Joints: M10x1.5 6H in aluminium of 130 MPa shear strength must hold 1200 MPa times 58 mm².
describe("the handbook's length of engagement", () => {
  const { P, alpha } = metricThread(10, 1.5);
  const needed_mm = (d: number): number => {
    const A = internalStripArea({ d: sized("d", d), L: sized("L", 1), P, D_2: sized("D_2", 9.206), alpha });
    return 69.6 / valueIn(kN, stripForce({ A, R_m: exact("R_m", 130, MPa), k: exact("k", 1, one) }));
  };

  test("is 21.6 mm with the 9.968 mm that it takes", () => agrees(needed_mm(9.968), "21.6"));

  test("takes the greatest major diameter of 6g for the least, which by ISO 965-1 is 9.732", () => {
    const { d_max, d_min } = limits(metricThread(10, 1.5), standardPlug, standardHole);
    agrees(valueIn(mm, d_max), "9.968");
    agrees(valueIn(mm, d_min), "9.732");
  });

  test("and is 16 % longer with the least one", () => {
    agrees(needed_mm(9.732), "24.9");
    agrees(100 * (needed_mm(9.732) / needed_mm(9.968) - 1), "16");
  });
});

// NASA RP-1228 (Barrett): F = π d_m F_s L / 3. By hand: π · 17.026 · 144 · 3 / 3 = 7.70 kN.
test("two turns of M18x1.5 at a shear strength of 144 MPa hold 7.7 kN by the third rule", () => {
  const F = thirdRuleForce(metricThread(18, 1.5), exact("R_m", 240, MPa), exact("k", 0.6, one), exact("n", 2, turn));
  agrees(valueIn(kN, F), "7.70");
});

test("the third rule stands at 0.46 of the least-material area, as the two sources differ", () => {
  const third = valueIn(mm, metricThread(18, 1.5).d_2) * ((Math.PI * 1.5) / 3);
  agrees(third / leastMaterial(18, 1.5, 1.5).internal, "0.46");
});

describe("Yamamoto's load distribution in one constant", () => {
  /** The share of turn i: what the turns before it leave, shared anew among those that are left. */
  const shares = (k: number, n: number): number[] => {
    let left = 1;
    return Array.from({ length: n }, (_, i) => {
      const share = left * (firstTurnShare.over({ k, n: n - i })[0] as number);
      left -= share;
      return share;
    });
  };

  // Trade figures for a long thread of steel in steel (secondary source): 34, 23, 16, 11, 9, 7 % of the load. One constant
  // fits all six; the form is right.
  test("gives 34, 23, 16, 11, 9 and 7 % to six turns of steel with k = 0.405", () => {
    const printed = ["34", "23", "16", "11", "9", "7"];
    shares(0.405, 6).forEach((share, i) => void agrees(100 * share, printed[i] ?? ""));
  });

  // The first turn by the whole of Yamamoto's form (from memory), which takes its constant from elasticity: the form in one
  // constant gives every row again, but with 0.355 and 0.17 where the reference ranges stand at 0.30 and 0.19.
  const firstTurns: readonly (readonly [string, number, number, readonly (readonly [number, string])[]])[] = [
    [
      "steel in steel",
      0.355,
      0.3,
      [
        [2, "53"],
        [3, "40"],
        [5, "32"],
        [6, "31"],
        [8, "30"],
      ],
    ],
    [
      "steel in aluminium",
      0.17,
      0.19,
      [
        [2, "51"],
        [3, "35"],
        [5, "23"],
        [6, "21"],
        [8, "18"],
      ],
    ],
  ];

  test.each(firstTurns)("gives the first turn of %s with k = %d", (_, k, _ours, rows) => {
    for (const [n, percent] of rows) agrees(100 * (firstTurnShare.over({ k, n })[0] as number), percent);
  });

  test.each(firstTurns)("and within an eighth for %s with the k of the reference ranges", (_, _fitted, k, rows) => {
    for (const [n, percent] of rows)
      expect(Math.abs((100 * (firstTurnShare.over({ k, n })[0] as number)) / Number(percent) - 1)).toBeLessThan(0.125);
  });

  test("shares add to all of the load, and each turn takes less than the one before", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.integer({ min: 2, max: 12 }), (k, n) => {
        const all = shares(k, n);
        expect(all.reduce((sum, it) => sum + it, 0)).toBeCloseTo(1, 10);
        all.slice(1).forEach((share, i) => void expect(share).toBeLessThan(all[i] as number));
      }),
    );
  });

  test("three turns are not crowded, and more are crowded more", () => {
    const f = (n: number): number => firstTurnShare.over({ k: 0.19, n })[0] as number;
    const c = (n: number): number => crowding.over({ n, f: f(n), f_3: f(3) })[0] as number;
    expect(c(3)).toBeCloseTo(1, 12);
    for (const n of [3, 4, 5, 6, 8, 10]) expect(c(n + 1)).toBeGreaterThan(c(n));
  });
});

describe("laws", () => {
  test("the areas grow with the engaged length, turn by turn", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 12, noNaN: true }), (n) => {
        const L = engagedLength({ n: exact("n", n, turn), P: sized("P", 1.5) });
        const [some, one_turn] = [leastMaterial(20, 1.5, valueIn(mm, L)), leastMaterial(20, 1.5, 1.5)];
        expect(some.internal / one_turn.internal).toBeCloseTo(n, 9);
        expect(some.external / one_turn.external).toBeCloseTo(n, 9);
      }),
    );
  });

  test("a full height keeps all, and none keeps 1 - s", () => {
    const eta = (h: number): number => heightFactor({ s: exact("s", 0.42, one), h: exact("h", h, one) }).value;
    expect(eta(1)).toBe(1);
    expect(eta(0)).toBeCloseTo(0.58, 12);
  });

  // Tap-drill practice (common practice, no source): 60 to 72 % of thread height raises the strength by 5 % only. The upper rule,
  // s = 0.42, comes within a percent of the strength; the lower one, in proportion to the height, would give 20 %.
  test("the upper rule gains little more than practice does from 60 to 72 % of height", () => {
    const eta = (s: number, h: number): number => heightFactor({ s: exact("s", s, one), h: exact("h", h, one) }).value;
    expect(Math.abs((eta(0.42, 0.72) / eta(0.42, 0.6) - 1.05) * 100)).toBeLessThan(1.1);
    expect(eta(1, 0.72) / eta(1, 0.6)).toBeCloseTo(1.2, 12);
  });

  test("the lead-in comes off the count", () =>
    expect(turnsLessLeadIn({ n_c: exact("n_c", 3.5, turn), n_l: exact("n_l", 0.4, turn) }).value).toBeCloseTo(3.1, 12));
});
