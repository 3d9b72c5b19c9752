import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  evidence,
  figureToSet,
  marks,
  usableRange,
  type Wrench,
  wrenchDeviation,
} from "../../../src/mechanics/joint/wrench.ts";
import { support } from "../../../src/mechanics/quantity/distribution.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { deg, lbf_ft, mm, Nm } from "../../../src/mechanics/quantity/unit.ts";
import { levelsWith } from "../../../src/mechanics/tables/levels.ts";
import { rangesWith } from "../../../src/mechanics/tables/referenceRanges.ts";
import { agrees } from "../../published.ts";

const levels = levelsWith({});
const today = "2026-11-25";

const wrench = (least: number, most: number, more: Partial<Wrench> = {}): Wrench => ({
  name: "W-2",
  kind: "click",
  least: exact("T_min", least, Nm),
  most: exact("T_max", most, Nm),
  step: exact("s", 2, Nm),
  calibrated: "2026-03-01",
  crowFoot: null,
  ...more,
});

// ISO 6789:2003, 6.2.3: verified at 20, 60 and 100 % of the greatest figure; below 20 % nothing is known of it.
describe("a figure may be claimed only where the wrench is verified", () => {
  test.each([
    ["18 N·m on 20 to 120", 20, 120, 18, "out of range"],
    ["20 N·m on 20 to 120, below a fifth of 120", 20, 120, 20, "out of range"],
    ["24 N·m on 20 to 120", 20, 120, 24, "in range and in date"],
    ["15 N·m on 40 to 200", 40, 200, 15, "out of range"],
    ["12 N·m on 40 to 200", 40, 200, 12, "out of range"],
    ["12 N·m on 5 to 60", 5, 60, 12, "in range and in date"],
    ["11 N·m on 5 to 60", 5, 60, 11, "out of range"],
    ["60 N·m on 5 to 60", 5, 60, 60, "in range and in date"],
    ["61 N·m on 5 to 60", 5, 60, 61, "out of range"],
  ])("%s", (_, least, most, torque_Nm, verdict) =>
    expect(evidence(wrench(least, most), torque_Nm, today, levels)).toBe(verdict),
  );

  test("the usable part begins at the lowest mark or at a fifth, whichever is more", () => {
    expect(usableRange(wrench(20, 120), levels)).toEqual({ from_Nm: 24, to_Nm: 120 });
    expect(usableRange(wrench(40, 100), levels)).toEqual({ from_Nm: 40, to_Nm: 100 });
    expect(usableRange(wrench(20, 120), levelsWith({ leastShareOfScale: 0.1 }))).toEqual({ from_Nm: 20, to_Nm: 120 });
  });

  test("a scale in lbf·ft is read in N·m", () => {
    const inch = wrench(0, 0, { least: exact("T_min", 10, lbf_ft), most: exact("T_max", 100, lbf_ft) });
    agrees(usableRange(inch, levels).from_Nm, "27.12");
    agrees(usableRange(inch, levels).to_Nm, "135.58");
  });
});

// ISO 6789:2003, 6.3: twelve months where nothing else is laid down.
describe("and only in date", () => {
  test.each([
    ["2025-11-25", "in range and in date"],
    ["2025-11-24", "out of date"],
    ["2024-01-01", "out of date"],
    ["2026-11-25", "in range and in date"],
    // Found when this suite was written: a day that cannot be read, or that is still to come, passed for in date.
    ["2026-11-26", "date not known"],
    ["2027-03-01", "date not known"],
    ["spring", "date not known"],
    ["", "date not known"],
    [null, "date not known"],
  ])("calibrated %s: %s", (calibrated, verdict) =>
    expect(evidence(wrench(10, 60, { calibrated }), 30, today, levels)).toBe(verdict),
  );

  test("without a today nothing is in date", () =>
    expect(evidence(wrench(10, 60), 30, null, levels)).toBe("date not known"));

  test("out of range is said first", () =>
    expect(evidence(wrench(40, 200, { calibrated: "2020-01-01" }), 15, today, levels)).toBe("out of range"));
});

// ISO 6789:2003, 5.1.5.2: 4 % over 10 N·m, 6 % up to it.
describe("the deviation", () => {
  test.each([
    ["none named", null, 0.04],
    ["up to 60 N·m", wrench(10, 60), 0.04],
    ["up to 10 N·m", wrench(2, 10), 0.06],
    ["up to 11 N·m", wrench(2, 11), 0.04],
  ])("%s", (_, named, share) => expect(support(wrenchDeviation(named, rangesWith({})))).toEqual([-share, share]));
});

describe("the marks of the scale", () => {
  test("are those between the ends asked for", () => {
    expect(marks(wrench(20, 100), 23, 31)).toEqual([24, 26, 28, 30]);
    expect(marks(wrench(20, 100), 24, 30)).toEqual([24, 26, 28, 30]);
    expect(marks(wrench(20, 100), 5, 23)).toEqual([20, 22]);
    expect(marks(wrench(20, 100), 97, 200)).toEqual([98, 100]);
    expect(marks(wrench(20, 100), 20.5, 21.5)).toEqual([]);
    expect(marks(wrench(20, 100), 30, 20)).toEqual([]);
    expect(marks(null, 11.2, 14.9)).toEqual([12, 13, 14]);
  });

  test("lie on the scale, within what was asked and within the wrench", () => {
    const torque = fc.double({ min: 0, max: 200, noNaN: true });
    fc.assert(
      fc.property(torque, torque, fc.constantFrom(0.2, 0.5, 1, 2, 5), (a, b, step) => {
        const named = wrench(10, 120, { step: exact("s", step, Nm) });
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const found = marks(named, from, to);
        for (const mark of found) {
          expect(mark).toBeGreaterThanOrEqual(Math.max(10, from) - 1e-6);
          expect(mark).toBeLessThanOrEqual(Math.min(120, to) + 1e-6);
          expect(Math.abs((mark - 10) / step - Math.round((mark - 10) / step))).toBeLessThan(1e-9);
        }
        const room = Math.min(120, to) - Math.max(10, from);
        expect(found.length).toBeGreaterThanOrEqual(Math.floor(room / step));
      }),
    );
  });
});

// Levers: in line T_set = T L / (L + E); at 90° nothing changes.
describe("a crow-foot", () => {
  const at = (angle_deg: number): Wrench =>
    wrench(10, 100, {
      crowFoot: { lever: exact("L", 400, mm), extension: exact("E", 100, mm), angle: exact("a", angle_deg, deg) },
    });
  const set_Nm = (angle_deg: number): number => valueIn(Nm, figureToSet(at(angle_deg), 50, null));

  test.each([
    ["in line it lengthens the lever: 40 for 50", 0, "40.0"],
    ["at 90° it changes nothing", 90, "50.0"],
    ["at 270° neither", 270, "50.0"],
    ["turned back it shortens the lever", 180, "66.67"],
    ["at 60° half of it counts", 60, "44.44"],
  ])("%s", (_, angle_deg, printed) => agrees(set_Nm(angle_deg), printed));

  test("makes the figure to set grow from in line to across", () => {
    for (let angle = 0; angle < 90; angle += 10) expect(set_Nm(angle + 10)).toBeGreaterThan(set_Nm(angle));
  });

  test("none leaves the figure as it is", () => {
    expect(valueIn(Nm, figureToSet(null, 50, null))).toBe(50);
    expect(valueIn(Nm, figureToSet(wrench(10, 100), 50, null))).toBe(50);
  });

  test("what the thread itself resists is added before the lever counts", () => {
    const T_p = exact("T_p", 5, Nm);
    agrees(valueIn(Nm, figureToSet(wrench(10, 100), 50, T_p)), "55.0");
    agrees(valueIn(Nm, figureToSet(at(0), 50, T_p)), "44.0");
  });
});
