import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BookFigure, bookTorque_Nm, bookVerdict } from "../../../src/mechanics/joint/bookFigures.ts";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { kgf_cm, kgf_m, lbf_ft, lbf_in, Nm, type Unit } from "../../../src/mechanics/quantity/unit.ts";

const figure = (
  value: number,
  unit: Unit = Nm,
  seal: BookFigure["seal"] = null,
  surface: BookFigure["surface"] = null,
): BookFigure => ({
  torque: exact("T", value, unit),
  source: `${value} ${unit.symbol}`,
  seal,
  surface,
});

const fibre = { kind: "flat washer", material: "fibre" } as const;
const aluminium = { kind: "flat washer", material: "aluminium" } as const;

/** The wrench of ISO 6789 over 10 N·m deviates by 4 %. */
const judged = (
  figures: readonly BookFigure[],
  { seal = fibre as typeof fibre | typeof aluminium, need_Nm = 5, light = true, deviation = 0.04 } = {},
) => bookVerdict(figures, seal, "oiled", need_Nm, light, deviation);

test("no figure gives no verdict, and one is that one", () => {
  expect(judged([])).toBeNull();
  const only = figure(46);
  expect(judged([only])).toEqual({ type: "one figure", figure: only });
});

describe("the same for the wrench", () => {
  test("54 and 56 are: the middle is 55", () => {
    const verdict = judged([figure(56), figure(54)]);
    expect(verdict).toEqual({ type: "same for the wrench", between_Nm: 55 });
    expect(verdict && bookTorque_Nm(verdict)).toBe(55);
  });

  test("54 and 57 are not: that is more than 4 %", () =>
    expect(judged([figure(54), figure(57)])?.type).toBe("unresolved"));

  test("8.0 and 8.4 are for a small wrench of 6 %, and not for one of 4 %", () => {
    expect(judged([figure(8), figure(8.4)], { deviation: 0.06 })?.type).toBe("same for the wrench");
    expect(judged([figure(8), figure(8.4)])?.type).toBe("unresolved");
  });

  test("the middle lies between the ends, whatever stands between", () => {
    const torque = fc.integer({ min: 10, max: 300 });
    fc.assert(
      fc.property(
        torque,
        fc.array(fc.double({ min: 1, max: 1.039, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (least, ratios) => {
          const verdict = judged([figure(least), ...ratios.map((it) => figure(least * it))]);
          expect(verdict?.type).toBe("same for the wrench");
          const middle = (least * (1 + Math.max(...ratios))) / 2;
          if (verdict) expect(Math.abs(bookTorque_Nm(verdict) - middle)).toBeLessThanOrEqual(0.5 + 1e-9);
        },
      ),
    );
  });
});

describe("the same figure in another unit", () => {
  test.each([
    ["34 lbf·ft and 46 N·m", 34, lbf_ft, 46],
    ["408 lbf·in and 46 N·m", 408, lbf_in, 46],
    ["470 kgf·cm and 46 N·m", 470, kgf_cm, 46],
    ["4.7 kgf·m and 46 N·m", 4.7, kgf_m, 46],
    ["25 lbf·ft and 34 N·m", 25, lbf_ft, 34],
    ["15 lbf·ft and 20 N·m", 15, lbf_ft, 20],
    ["30 lbf·ft and 40 N·m", 30, lbf_ft, 40],
  ])("%s are one", (_, value, unit, torque_Nm) => {
    const verdict = judged([figure(torque_Nm), figure(value, unit)]);
    expect(verdict).toMatchObject({ type: "same in another unit", unit: unit.symbol });
    // The lower of the two counts; they differ by less than anybody can pull.
    expect(verdict && bookTorque_Nm(verdict)).toBeCloseTo(Math.min(torque_Nm, value * unit.inSI), 9);
  });

  // Found when this suite was written: half a unit of both figures together was allowed, so 45 N·m passed for 34 lbf·ft.
  test("45 N·m is not 34 lbf·ft: it would be printed as 33", () =>
    expect(judged([figure(45), figure(34, lbf_ft)])?.type).toBe("same for the wrench"));

  test("40 N·m is not 34 lbf·ft at all", () =>
    expect(judged([figure(40), figure(34, lbf_ft)])?.type).toBe("unresolved"));

  test("every whole figure in lbf·ft is recognised in the N·m it rounds to", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 300 }), (value) => {
        const rounded = Math.round(value * lbf_ft.inSI);
        expect(judged([figure(value, lbf_ft), figure(rounded)])?.type).toBe("same in another unit");
      }),
    );
  });
});

describe("figures of different joints", () => {
  const both = [figure(35, Nm, "fibre"), figure(48, Nm, "aluminium")];

  test.each([
    ["fibre", fibre, 35],
    ["aluminium", aluminium, 48],
  ] as const)("35 for fibre and 48 for flat aluminium: under %s each has its own", (_, seal, torque_Nm) => {
    const verdict = judged(both, { seal });
    expect(verdict?.type).toBe("different joints");
    expect(verdict && bookTorque_Nm(verdict)).toBe(torque_Nm);
  });

  test("the kind of seal is enough where the book names no material", () => {
    const verdict = judged([figure(48, Nm, "flat washer"), figure(20, Nm, "bonded seal")], { seal: aluminium });
    expect(verdict).toMatchObject({ type: "different joints", figure: { torque: { value: 48 } } });
  });

  // Found when this suite was written: figures for one seal and two surfaces were left unresolved.
  test("38 dry and 46 oiled for one seal: oiled it is 46", () => {
    const verdict = judged([figure(38, Nm, "fibre", "dry"), figure(46, Nm, "fibre", "oiled")]);
    expect(verdict).toMatchObject({ type: "different joints", figure: { torque: { value: 46 } } });
  });

  test("two books that agree for this seal outvote neither: the third is another joint's", () => {
    const verdict = judged([figure(35, Nm, "fibre"), figure(36, Nm, "fibre"), figure(48, Nm, "aluminium")]);
    expect(verdict).toEqual({ type: "same for the wrench", between_Nm: 36 });
  });

  test("two that both count for this seal and stand apart stay unresolved among themselves", () => {
    const verdict = judged([figure(30, Nm, "fibre"), figure(36, Nm, "fibre"), figure(20, Nm, "bonded seal")]);
    expect(verdict).toMatchObject({ type: "unresolved", figure: { torque: { value: 30 } } });
  });

  test("without a figure for this seal nothing is resolved", () =>
    expect(judged([figure(20, Nm, "bonded seal"), figure(48, Nm, "aluminium")])?.type).toBe("unresolved"));
});

describe("unresolved", () => {
  const apart = [figure(48), figure(35), figure(41)];

  test.each([
    [5, 35],
    [35, 35],
    [38, 41],
    [45, 48],
    // None reaches it: the lowest, which strips least.
    [60, 35],
  ])("in a light alloy with a need of %d it is the lower one that reaches it: %d", (need_Nm, torque_Nm) => {
    const verdict = judged(apart, { need_Nm });
    expect(verdict).toMatchObject({ type: "unresolved", lower: true });
    expect(verdict && bookTorque_Nm(verdict)).toBe(torque_Nm);
  });

  test("in iron it is the highest", () =>
    expect(judged(apart, { light: false })).toMatchObject({
      type: "unresolved",
      lower: false,
      figure: { torque: { value: 48 } },
    }));

  test("the order in which the books lie there does not matter", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([figure(48), figure(35), figure(41)], { minLength: 3, maxLength: 3 }),
        (figures) => {
          expect(judged(figures)).toEqual(judged(apart));
        },
      ),
    );
  });
});
