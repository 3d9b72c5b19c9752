import { describe, expect, test } from "vitest";
import { stripForce } from "../../../src/mechanics/joint/stripForce.ts";
import {
  externalStripArea,
  internalStripArea,
  plugYieldForce,
  thirdRuleForce,
} from "../../../src/mechanics/joint/stripping.ts";
import { bearingDiameter, clampForce, tighteningTorque } from "../../../src/mechanics/joint/torque.ts";
import { normal, triangular, uniform } from "../../../src/mechanics/quantity/distribution.ts";
import { formula, numericalFormula } from "../../../src/mechanics/quantity/formula.ts";
import { exact, type Quantity, taken } from "../../../src/mechanics/quantity/quantity.ts";
import {
  degC,
  degF,
  inches,
  km,
  kN,
  L,
  MPa,
  m,
  mm,
  mm2,
  Nm,
  one,
  turn,
  type Unit,
  um,
} from "../../../src/mechanics/quantity/unit.ts";
import { estimate, type Step, working, written } from "../../../src/mechanics/quantity/working.ts";
import { limits } from "../../../src/mechanics/threads/metricLimits.ts";
import { metricThread, stressArea } from "../../../src/mechanics/threads/metricThread.ts";
import { standardHole, standardPlug } from "../../../src/mechanics/threads/standardClasses.ts";
import { printedResult, recomputed } from "./recomputed.ts";

const thread = metricThread(20, 1.5);
const { alpha } = thread;
const sizes = limits(thread, standardPlug, standardHole);
const n = exact("n", 3.5, turn);
const length = exact("L", 5.25, mm);
const R_m = taken("R_m", normal(185, 28), MPa, "strength of the case");
const k = taken("k", normal(0.63, 0.05), one, "shear ratio of the case");
const mu = taken("mu", uniform(0.09, 0.16), one, "friction");
const D_b = bearingDiameter(exact("D_o", 26, mm), exact("D_i", 20.4, mm));
const path = { thread, D_b, mu_th: mu, mu_b: mu };
const A = internalStripArea({ d: sizes.d_min, L: length, P: thread.P, D_2: sizes.D2_max, alpha });
const A_s = externalStripArea({ D_1: sizes.D1_max, L: length, P: thread.P, d_2: sizes.d2_min, alpha });
const strips = stripForce({ A, R_m, k });

const asked: readonly Quantity[] = [
  ...Object.values(sizes),
  A_s,
  tighteningTorque(path, strips),
  clampForce(path, taken("T", triangular(18, 20, 22), Nm, "wrench")),
  plugYieldForce(thread, stressArea(thread), exact("R_p", 420, MPa), mu),
  thirdRuleForce(thread, R_m, k, n),
];
const steps = working(...asked);

describe("every line of the working of an M20x1.5 plug can be worked out again from what it prints", () => {
  /** Steps along preferred numbers are a table, not arithmetic. */
  const arithmetic = steps.filter(({ formula }) => !formula.includes("R40("));
  const numerical = ({ formula }: Step): boolean => /^(\w+_6|es_g) = /.test(formula);

  test("and there are many", () => expect(arithmetic.length).toBeGreaterThan(20));

  test.each(arithmetic.map((step) => [step.formula, step.substituted, step] as const))("%s: %s", (_, text, step) => {
    const scale = numerical(step) ? "numbers" : "SI";
    const { value, half } = printedResult(step, scale);
    // Figures of four digits leave half a thousandth each; most formulas here have two or three of them.
    expect(Math.abs(recomputed(text, scale) - value)).toBeLessThan(half + 1e-3 * Math.abs(value));
  });

  test("no symbol is left unsaid", () => {
    for (const { substituted, formula } of arithmetic)
      expect(substituted, formula).not.toMatch(/[A-Za-z]_|\b(?!pi|deg|sqrt|cos|tan|mm|kN|MPa|turns|m|N|µm)[A-Za-z]+\b/);
  });
});

describe("the order of the lines", () => {
  test("each line stands once", () => {
    const lines = steps.map(({ formula, substituted }) => `${formula} | ${substituted}`);
    expect(new Set(lines).size).toBe(lines.length);
  });

  test("what a line is made of stands before it", () => {
    const place = new Map<string, number>();
    steps.forEach(({ formula, result }, i) => void place.set(`${formula} -> ${result}`, i));
    const placeOf = (q: Quantity): number =>
      q.origin.type === "worked" ? (place.get(`${q.origin.formula} -> ${written(q)}`) ?? Number.NaN) : -1;
    const visited = new Set<Quantity>();
    const visit = (q: Quantity): void => {
      if (q.origin.type !== "worked" || visited.has(q)) return;
      visited.add(q);
      for (const input of Object.values(q.origin.inputs)) {
        expect(placeOf(input), `${input.symbol} before ${q.symbol}`).toBeLessThan(placeOf(q));
        visit(input);
      }
    };
    asked.forEach(visit);
    expect(visited.size).toBeGreaterThanOrEqual(steps.length);
  });

  test("a reading has no line, and nothing asked gives none", () => {
    expect(working(R_m)).toEqual([]);
    expect(working()).toEqual([]);
  });
});

describe("figures", () => {
  // ISO 965-2 type tables: 6g/6H limits of M20x1.5 are 18.994, 18.854, 19.216 and 18.676; four digits would spoil them.
  test.each([
    [18.994, mm, "18.994 mm"],
    [18.8541, mm, "18.854 mm"],
    [19.2160000001, mm, "19.216 mm"],
    [20, mm, "20 mm"],
    [20.4, mm, "20.4 mm"],
    [1.299038, mm, "1.299 mm"],
    [0.1623797, mm, "0.1624 mm"],
    [123.4567, mm, "123.457 mm"],
    [-0.032, mm, "-0.032 mm"],
    [0, mm, "0 mm"],
    [0.7094219, inches, "0.70942 in"],
    [0.0156891, m, "0.015689 m"],
    [236.0381, um, "236 µm"],
    [1234.567, km, "1235 km"],
    [46.09771, Nm, "46.1 N·m"],
    [12.34567, kN, "12.35 kN"],
    [271.4961, mm2, "271.5 mm²"],
    [0.123456, one, "0.1235"],
    [3, one, "3"],
    [50_000, Nm, "50000 N·m"],
    [1.98765, L, "1.988 L"],
  ] as const satisfies readonly (readonly [number, Unit, string])[])(
    "%d in its unit prints as it should: %#",
    (value, unit, printed) => expect(estimate(exact("x", value, unit))).toBe(printed),
  );

  test("the limits of M20x1.5 stand in the working as the tables print them", () => {
    const results = steps.map(({ result }) => result);
    for (const printed of ["18.994 mm", "18.854 mm", "19.216 mm", "18.676 mm", "19.732 mm"])
      expect(results).toContain(printed);
  });

  // JCGM 100:2008, 7.2.6: two digits of the uncertainty are enough, and the estimate ends where it does.
  test.each([
    [44.7123, 3.2, "44.7 ± 6.4 N·m"],
    [44.7123, 0.032, "44.712 ± 0.064 N·m"],
    [447.123, 32, "447 ± 64 N·m"],
    [4471.23, 320, "4471 ± 640 N·m"],
  ])("%d with a standard uncertainty of %d is %s", (value, u, printed) =>
    expect(written(taken("T", normal(value, u), Nm, "test"))).toBe(printed),
  );
});

describe("what would be read otherwise is bracketed", () => {
  const square = formula("A = pi / 4 * d^2", { d: mm, A: mm2 }, "test");
  const sum = formula("y = d + es", { d: mm, es: um, y: mm }, "test");
  const line = (q: Quantity): Step => working(q).at(-1) as Step;

  test("a length under a power", () => {
    const step = line(square({ d: exact("d", 8, mm) }));
    expect(step.substituted).toBe("pi / 4 * (8 mm)^2");
    expect(recomputed(step.substituted, "SI")).toBeCloseTo(16e-6 * Math.PI, 15);
  });

  test("a negative figure", () =>
    expect(line(sum({ d: exact("d", 20, mm), es: exact("es", -32, um) })).substituted).toBe("20 mm + (-32 µm)"));

  test("and a bare number is not", () => {
    const y = formula("y = x^2", { x: one, y: one }, "test");
    expect(line(y({ x: exact("x", 3, one) })).substituted).toBe("3^2");
  });
});

// Found on 2026-11-27: what a nought was divided by was left standing as a symbol, "3 turns + 0 mm / P".
test("a figure beside a nought is said too", () => {
  const shifted = formula("n = n_0 + dz / P", { n_0: turn, dz: mm, P: mm, n: turn }, "test");
  const [step] = working(shifted({ n_0: exact("n_0", 3, turn), dz: exact("dz", 0, mm), P: exact("P", 1.5, mm) }));
  expect(step?.substituted).toBe("3 turns + 0 mm / 1.5 mm");
});

test("a numerical value equation prints the numbers it takes, whatever unit they were read in", () => {
  // ISO 965-1 (form from memory): the pitch counts in millimetres, given as 0.05 in here.
  const T_d = numericalFormula("T = 180 * P^(2/3) - 3.15 / sqrt(P)", { P: mm, T: um }, "test");
  const [step] = working(T_d({ P: exact("P", 0.05, inches) })) as [Step];
  expect(step.substituted).toBe("180 * (1.27 mm)^(2/3) - 3.15 / sqrt(1.27 mm)");
  expect(recomputed(step.substituted, "numbers")).toBeCloseTo(printedResult(step, "numbers").value, 1);
  const twice = numericalFormula("b = 2 * t + 32", { t: degC, b: one }, "test");
  expect(working(twice({ t: exact("t", 122, degF) }))[0]?.substituted).toBe("2 * 50 °C + 32");
});
