import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blendViscosity, refutasViscosity, topUp } from "../../../src/mechanics/fluid/blend.ts";
import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, reading, standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { L, ml, mm2_s, one } from "../../../src/mechanics/quantity/unit.ts";
import { agrees } from "../../published.ts";

const kv = (nu_mm2_s: number) => exact("nu", nu_mm2_s, mm2_s);
const share = (x: number) => exact("x", x, one);
const walther = (a: number, b: number, x: number) => viscosityOf(blendViscosity(kv(a), kv(b), share(x)));
const refutas = (a: number, b: number, x: number) => viscosityOf(refutasViscosity(kv(a), kv(b), share(x)));

function viscosityOf(read: ReturnType<typeof blendViscosity>): number {
  if (!read.ok) throw new Error(read.problem.type);
  return valueIn(mm2_s, read.nu);
}

// Computed apart from this code, in R 4.2.2; both rules from memory of their sources.
describe("blends computed apart in R", () => {
  test("75 % of 15.0 with 25 % of 8.0 mm²/s gives 12.663, by Refutas 12.669", () => {
    agrees(walther(15, 8, 0.75), "12.663");
    agrees(refutas(15, 8, 0.75), "12.669");
  });
  test("halves of 14.5 and 26 mm²/s give 19.180, by Refutas 19.186", () => {
    agrees(walther(14.5, 26, 0.5), "19.180");
    agrees(refutas(14.5, 26, 0.5), "19.186");
  });
});

const viscosity = fc.double({ min: 3, max: 60, noNaN: true });
const shares = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe("laws", () => {
  test("a blend lies between its parts", () => {
    fc.assert(
      fc.property(viscosity, viscosity, shares, (a, b, x) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        for (const blend of [walther(a, b, x), refutas(a, b, x)])
          expect(blend >= low * (1 - 1e-3) && blend <= high * (1 + 1e-3)).toBe(true);
      }),
    );
  });

  test("naming the parts the other way round changes nothing", () => {
    fc.assert(
      fc.property(viscosity, viscosity, shares, (a, b, x) => {
        expect(walther(a, b, x) / walther(b, a, 1 - x)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("an oil blended with itself stays what it is", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), shares, (a, x) => {
        expect(walther(a, a, x) / a).toBeCloseTo(1, 5);
        expect(refutas(a, a, x) / a).toBeCloseTo(1, 9);
      }),
    );
  });

  test("the two rules agree within 0.5 % between neighbouring grades", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 30, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        shares,
        (a, times, x) => {
          expect(Math.abs(walther(a, a * times, x) / refutas(a, a * times, x) - 1)).toBeLessThan(5e-3);
        },
      ),
    );
  });
});

describe("topping up", () => {
  const oilPart = (V_L: number, nu_mm2_s: number) => ({ V: exact("V", V_L, L), nu: kv(nu_mm2_s) });

  test("0.3 L of 8.0 mm²/s on 0.9 L of 15.0 is one grade down, from 90 to 85", () => {
    const read = topUp(oilPart(0.9, 15), { V: exact("V", 300, ml), nu: kv(8) }, "2019");
    if (!read.ok) throw new Error(read.problem.type);
    const { share, kv100, crossCheck, before, after, gradesUp } = read.topUp;
    agrees(share.value, "0.2500");
    agrees(valueIn(mm2_s, kv100), "12.663");
    agrees(valueIn(mm2_s, crossCheck), "12.669");
    expect(before).toMatchObject({ grade: "90", edition: "2019" });
    expect(after).toMatchObject({ grade: "85", edition: "2019" });
    expect(gradesUp).toBe(-1);
  });

  test("halves of 14.5 mm²/s (90) and 26 mm²/s (140) make 110, one grade up", () => {
    const read = topUp(oilPart(0.6, 14.5), oilPart(0.6, 26), "2005");
    expect(read.ok && read.topUp.after).toMatchObject({ grade: "110", edition: "2005" });
    expect(read.ok && read.topUp.gradesUp).toBe(1);
  });

  test("a little of the same grade keeps it", () => {
    const read = topUp(oilPart(1.2, 15), oilPart(0.05, 14), "2019");
    expect(read.ok && read.topUp.gradesUp).toBe(0);
  });

  test("an oil below every grade gives no count of grades", () => {
    const read = topUp(oilPart(1, 5), oilPart(0.01, 5), "2005");
    expect(read.ok && read.topUp.gradesUp).toBeNull();
  });

  test("the doubt of a volume reaches the viscosity", () => {
    const V = reading("V", normal(0.3, 0.03), L, "added", "jug");
    const read = topUp(oilPart(0.9, 15), { V, nu: kv(8) }, "2019");
    if (!read.ok) throw new Error(read.problem.type);
    const at = (x: number) => walther(8, 15, x);
    const slope = (at(0.2501) - at(0.2499)) / 2e-4;
    const u_x = (0.03 * 0.9) / 1.2 ** 2;
    expect(standardUncertainty(read.topUp.kv100) * 1e6).toBeCloseTo(Math.abs(slope) * u_x, 5);
  });

  test("nothing added, a share above 1 and a viscosity of none are refused", () => {
    expect(topUp(oilPart(1, 15), oilPart(0, 8), "2019")).toMatchObject({ ok: false, problem: { symbol: "V" } });
    expect(blendViscosity(kv(15), kv(8), share(1.2))).toMatchObject({ ok: false, problem: { symbol: "x", most: 1 } });
    expect(refutasViscosity(kv(0.1), kv(8), share(0.5))).toMatchObject({ ok: false, problem: { symbol: "nu" } });
  });
});
