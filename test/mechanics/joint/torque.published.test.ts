import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugYieldForce } from "../../../src/mechanics/joint/stripping.ts";
import { bearingDiameter, clampForce, type TorquePath, tighteningTorque } from "../../../src/mechanics/joint/torque.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { kN, MPa, mm, Nm, one } from "../../../src/mechanics/quantity/unit.ts";
import { metricThread, stressArea } from "../../../src/mechanics/threads/metricThread.ts";
import { agrees } from "../../published.ts";

/**
 * The bearing face under a hexagon head: d_w least of ISO 4014, product grade A, and the medium hole of ISO 273 (both from
 * memory), mm. The table names the head and the hole but not their sizes, so these stand apart from it.
 */
const faces: Readonly<Record<number, readonly [d_w: number, d_h: number]>> = {
  8: [11.63, 9],
  10: [14.63, 11],
  12: [16.63, 13.5],
  14: [19.64, 15.5],
  16: [22.49, 17.5],
  18: [25.34, 20],
  20: [28.19, 22],
  22: [31.71, 24],
  24: [33.61, 26],
};

const frictions = [0.1, 0.12, 0.14] as const;

// VDI 2230:2001, table for fine threads, class 8.8 (test/published/vdi_preload.csv, as quoted in trade literature).
const rows = readFileSync(new URL("../../published/vdi_preload.csv", import.meta.url), "utf8")
  .trim()
  .split(/\r?\n/)
  .slice(2)
  .flatMap((line) => {
    const [designation = "", ...printed] = line.split(",");
    const [d = 0, P = 0] = designation.slice(1).split("x").map(Number);
    return frictions.map((mu, i) => ({ designation, d, P, mu, F: printed[i] ?? "", T: printed[3 + i] ?? "" }));
  });

/** Within 1 % of the printed figure. */
const near = (actual: number, printed: string): void =>
  expect(Math.abs(actual / Number(printed) - 1), `${actual} against ${printed}`).toBeLessThan(0.01);

const pathOf = (d: number, P: number, mu: number): TorquePath => {
  const [d_w, d_h] = faces[d] ?? [Number.NaN, Number.NaN];
  const D_b = bearingDiameter(exact("D_o", d_w, mm), exact("D_i", d_h, mm));
  return { thread: metricThread(d, P), D_b, mu_th: exact("mu_th", mu, one), mu_b: exact("mu_b", mu, one) };
};

test("the table has 27 pairs of preload and torque", () => expect(rows.length).toBe(27));

describe.each(rows)("$designation at a friction of $mu", ({ d, P, mu, F, T }) => {
  const path = pathOf(d, P, mu);

  test(`takes ${T} N·m for ${F} kN`, () => near(valueIn(Nm, tighteningTorque(path, exact("F", Number(F), kN))), T));

  test(`is clamped with ${F} kN by ${T} N·m`, () => near(valueIn(kN, clampForce(path, exact("T", Number(T), Nm))), F));

  // ISO 898-1:2013, table 3: the 0.2 % limit of class 8.8 is 640 MPa up to 16 mm and 660 MPa above; VDI takes 90 % of it.
  test(`reaches nine tenths of its yield at ${F} kN`, () => {
    const R_p = exact("R_p", d <= 16 ? 640 : 660, MPa);
    near(0.9 * valueIn(kN, plugYieldForce(path.thread, stressArea(path.thread), R_p, path.mu_th)), F);
  });
});

// ISO 16047:2005, (A.1) by hand for M20x1.5, D_b 23 mm, friction 0.12:
// 1.5/2π + 0.12 · 19.0257/(2 cos 30°) + 0.12 · 23/2 = 0.23873 + 1.31814 + 1.38 = 2.93687 mm.
test("20 kN on an M20x1.5 with a ring of 23 mm mean diameter at 0.12 take 58.7 N·m", () => {
  const D_b = bearingDiameter(exact("D_o", 26, mm), exact("D_i", 20, mm));
  const mu = exact("mu", 0.12, one);
  agrees(valueIn(mm, D_b), "23.0");
  agrees(
    valueIn(Nm, tighteningTorque({ thread: metricThread(20, 1.5), D_b, mu_th: mu, mu_b: mu }, exact("F", 20, kN))),
    "58.74",
  );
});

describe("laws", () => {
  const sizes = fc.constantFrom(...Object.keys(faces).map(Number));
  const pitch = fc.constantFrom(1, 1.25, 1.5, 2);
  const mu = fc.double({ min: 0.05, max: 0.35, noNaN: true });
  const force = fc.double({ min: 0.1, max: 300, noNaN: true });

  test("force to torque and back is the same force", () => {
    fc.assert(
      fc.property(sizes, pitch, mu, force, (d, P, friction, F_kN) => {
        const path = pathOf(d, P, friction);
        const back = clampForce(path, tighteningTorque(path, exact("F", F_kN, kN)));
        expect(valueIn(kN, back) / F_kN).toBeCloseTo(1, 12);
      }),
    );
  });

  test("twice the force takes twice the torque", () => {
    fc.assert(
      fc.property(sizes, pitch, mu, force, (d, P, friction, F_kN) => {
        const path = pathOf(d, P, friction);
        const [once, twice] = [F_kN, 2 * F_kN].map((it) => tighteningTorque(path, exact("F", it, kN)).value);
        expect((twice as number) / (once as number)).toBeCloseTo(2, 12);
      }),
    );
  });

  test("more friction clamps less, and never takes a plug nearer its yield by clamp", () => {
    fc.assert(
      fc.property(sizes, pitch, mu, (d, P, friction) => {
        const [slick, rough] = [pathOf(d, P, friction), pathOf(d, P, friction + 0.01)];
        const T = exact("T", 40, Nm);
        expect(clampForce(rough, T).value).toBeLessThan(clampForce(slick, T).value);
        const yields = ({ thread, mu_th }: TorquePath): number =>
          plugYieldForce(thread, stressArea(thread), exact("R_p", 420, MPa), mu_th).value;
        expect(yields(rough)).toBeLessThan(yields(slick));
      }),
    );
  });
});
