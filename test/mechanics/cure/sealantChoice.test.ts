import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { daysLeft, heatVerdict, labelChecks, reopening } from "../../../src/mechanics/cure/label.ts";
import { type SealingCase, sealingChoice } from "../../../src/mechanics/cure/sealantChoice.ts";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { d, degC, h, mm } from "../../../src/mechanics/quantity/unit.ts";

const sound: SealingCase = {
  taper: false,
  thread: "sound",
  gap: null,
  holdsSnug: true,
  score: null,
  washerAtHand: true,
  openedOften: false,
  oily: false,
  lightAlloy: true,
  timeToRoad: null,
};
const worn = (gap_mm: number | null): SealingCase => ({
  ...sound,
  thread: "worn",
  gap: gap_mm === null ? null : exact("c", gap_mm, mm),
});
const choice = (over: Partial<SealingCase>, from = sound) => sealingChoice({ ...from, ...over });

describe("which class for which gap", () => {
  test("a sound thread on a good seat takes a new washer and no paste", () => {
    expect(choice({})).toMatchObject({ row: "sound thread, good seat", means: ["new washer at full torque"] });
    expect(choice({}).avoid).toContain("any paste");
    expect(choice({ washerAtHand: false }).means).toEqual(["bonded seal", "O-ring plug"]);
  });

  test("a scored seat takes a bonded seal or an O-ring plug, else silicone under the head", () => {
    const found = choice({ score: exact("s", 0.1, mm) });
    expect(found.means).toEqual(["bonded seal", "O-ring plug", "silicone under the head"]);
    expect(found.avoid).toContain("copper washer at low torque");
    expect(choice({ score: exact("s", 0.15, mm) })).toMatchObject({
      row: "scored too deep",
      first: ["dress the seat"],
    });
  });

  test("a worn thread takes an anaerobic by its gap, with activator in light alloy", () => {
    expect(choice({}, worn(0.25))).toMatchObject({
      row: "worn thread, narrow gap",
      means: ["low or medium anaerobic with activator"],
    });
    expect(choice({ lightAlloy: false }, worn(0.25)).means).toEqual(["low or medium anaerobic"]);
    expect(choice({}, worn(0.25)).avoid).toContain("high-strength anaerobic");
    expect(choice({}, worn(0.26)).means).toEqual([
      "high-viscosity anaerobic with activator",
      "silicone under the head",
    ]);
    expect(choice({}, worn(0.5)).avoid).toContain("anaerobic locker");
    expect(choice({}, worn(null))).toMatchObject({ row: "worn thread, gap not known", first: ["measure the gap"] });
  });

  test("a torn thread, a wider gap or a plug that does not hold snug takes a repair, silicone only as a stated makeshift", () => {
    for (const found of [choice({}, worn(0.51)), choice({ thread: "torn" }), choice({ holdsSnug: false })]) {
      expect(found.means).toEqual(["thread repair", "silicone under the head, stated temporary"]);
      expect(found.avoid).toContain("anaerobic");
    }
  });

  test("a taper thread takes paste or tape, a parallel one never tape", () => {
    expect(choice({ taper: true })).toMatchObject({
      means: ["paste or tape for taper threads"],
      avoid: ["overtightening a cast boss"],
    });
    expect(choice({}).avoid).toContain("PTFE tape on a parallel thread");
  });

  test("a plug opened often takes no anaerobic, and less than a day waits for none", () => {
    const often = choice({ openedOften: true }, worn(0.2));
    expect(often).toMatchObject({ means: ["gasket, reusable"], because: ["opened often"] });
    const hasty = choice({ timeToRoad: exact("t", 5, h) }, worn(0.2));
    expect(hasty.means).toEqual(["bonded seal", "silicone with a splash wait"]);
    expect(hasty.because).toEqual(["less than a day"]);
    expect(choice({ timeToRoad: exact("t", 2, d) }, worn(0.2)).because).toEqual([]);
    expect(choice({ timeToRoad: exact("t", 5, h) })).toMatchObject({
      means: ["new washer at full torque"],
      because: [],
    });
  });

  test("an oily joint is cleaned to bare metal before anything that bonds", () => {
    expect(choice({ oily: true }, worn(0.2)).first).toEqual(["clean to bare metal"]);
    expect(choice({ oily: true }).first).toEqual([]);
  });
});

test("whatever is known, there is something to do, and nothing of it is to be avoided", () =>
  fc.assert(
    fc.property(
      fc.record({
        taper: fc.boolean(),
        thread: fc.constantFrom("sound" as const, "worn" as const, "torn" as const),
        gap: fc.option(fc.double({ min: 0, max: 1, noNaN: true }).map((it) => exact("c", it, mm))),
        holdsSnug: fc.boolean(),
        score: fc.option(fc.double({ min: 0.01, max: 0.3, noNaN: true }).map((it) => exact("s", it, mm))),
        washerAtHand: fc.boolean(),
        openedOften: fc.boolean(),
        oily: fc.boolean(),
        lightAlloy: fc.boolean(),
        timeToRoad: fc.option(fc.double({ min: 0.5, max: 72, noNaN: true }).map((it) => exact("t", it, h))),
      }),
      (given) => {
        const { means, avoid } = sealingChoice(given);
        expect(means.length).toBeGreaterThan(0);
        const anaerobic = means.some((it) => it.includes("anaerobic"));
        if (avoid.includes("anaerobic")) expect(anaerobic).toBe(false);
        if (avoid.includes("any paste"))
          expect(means.some((it) => it.includes("silicone") || it.includes("paste"))).toBe(false);
        if (given.gap && given.gap.value > 0.5e-3) expect(anaerobic).toBe(false);
      },
    ),
  ));

describe("the label", () => {
  const answers = { namesThisFluid: null, useBy: null, siliconeType: null } as const;
  const verdicts = (over: object) => labelChecks({ ...answers, ...over }, "2026-11-25").map((it) => it.verdict);

  test("what nobody has looked at is asked, never assumed", () =>
    expect(verdicts({})).toEqual(["asked", "asked", "asked"]));

  test("a label that does not name the fluid, and a date gone by, say no; the date itself is still good", () => {
    expect(verdicts({ namesThisFluid: false, useBy: "2026-11-24" }).slice(0, 2)).toEqual(["no", "no"]);
    expect(verdicts({ namesThisFluid: true, useBy: "2026-11-25" }).slice(0, 2)).toEqual(["yes", "yes"]);
    expect(daysLeft("2027-02-25", "2026-11-25")).toBe(92);
    expect(() => daysLeft("soon", "2026-11-25")).toThrow(RangeError);
  });

  // MIL-A-46106B: acetoxy liberates corrosive acid; oxime restricted in Europe (from memory).
  test("what a silicone gives off is a caution", () => {
    const caution = (siliconeType: "acetoxy" | "oxime" | "alkoxy") =>
      labelChecks({ ...answers, siliconeType }, "2026-11-25").find((it) => it.id === "silicone type")?.caution;
    expect([caution("acetoxy"), caution("oxime"), caution("alkoxy")]).toEqual([
      "corrodes metals",
      "restricted in Europe",
      null,
    ]);
  });
});

// MIL-A-46106B group III 205 °C; US Army TM 10-3930-643-20 about 150 °C; EN 751-3 125 °C.
test("heat: silicone to 205 °C, anaerobic to 150, tape to 125", () => {
  const at = (T: number) => (sealant: "silicone" | "anaerobic" | "PTFE tape") =>
    heatVerdict(sealant, exact("T", T, degC)).verdict;
  expect((["silicone", "anaerobic", "PTFE tape"] as const).map(at(140))).toEqual(["bears it", "bears it", "too hot"]);
  expect((["silicone", "anaerobic"] as const).map(at(160))).toEqual(["bears it", "too hot"]);
  expect(heatVerdict("anaerobic", exact("T", 140, degC)).room_K).toBeCloseTo(10, 9);
});

test("a high-strength anaerobic opens only by heat and strips a weak boss; silicone by a scraper", () => {
  expect(reopening("high")).toEqual({ by: "heat", heatTo_degC: 250, caution: "strips a weak boss" });
  expect(reopening("silicone").by).toBe("scraper and solvent");
  expect([reopening("low").heatTo_degC, reopening("medium").heatTo_degC]).toEqual([null, 250]);
});
