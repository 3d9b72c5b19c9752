import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm, um } from "../../../src/mechanics/quantity/unit.ts";
import { metricSizes } from "../../../src/mechanics/tables/iso261.ts";
import { holeLimits, limits, plugLimits } from "../../../src/mechanics/threads/metricLimits.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import {
  type HoleClass,
  holeClasses,
  type PlugClass,
  plugClasses,
} from "../../../src/mechanics/threads/toleranceClass.ts";
import {
  holePitchTolerance,
  majorTolerance,
  minorTolerance,
  plugPitchTolerance,
} from "../../../src/mechanics/threads/toleranceGrade.ts";

const threads = metricSizes.map(({ d_mm, P_mm }) => metricThread(d_mm, P_mm));

const everyPlugClass: readonly PlugClass[] = plugClasses.deviations.flatMap((deviation) =>
  plugClasses.pitchGrades.flatMap((pitch) =>
    plugClasses.crestGrades.map((major) => ({
      designation: `${pitch}${deviation}${major}${deviation}`,
      pitch: { grade: pitch, deviation },
      major: { grade: major, deviation },
    })),
  ),
);

const everyHoleClass: readonly HoleClass[] = holeClasses.deviations.flatMap((deviation) =>
  holeClasses.pitchGrades.flatMap((pitch) =>
    holeClasses.crestGrades.map((minor) => ({
      designation: `${pitch}${deviation}${minor}${deviation}`,
      pitch: { grade: pitch, deviation },
      minor: { grade: minor, deviation },
    })),
  ),
);

test("every thread of the series has every class of a plug, with its limits in order and none above basic size", () => {
  expect(everyPlugClass.length).toBe(84);
  for (const thread of threads)
    for (const plugClass of everyPlugClass) {
      const { d_max, d_min, d2_max, d2_min } = plugLimits(thread, plugClass);
      const inOrder =
        d_min.value < d_max.value &&
        d2_min.value < d2_max.value &&
        d2_max.value < d_max.value &&
        d_max.value <= thread.d.value &&
        d2_max.value <= thread.d_2.value;
      if (!inOrder) expect.fail(`${thread.designation} ${plugClass.designation}`);
    }
});

test("every thread of the series has every class of a hole, with its limits in order and none below basic size", () => {
  expect(everyHoleClass.length).toBe(50);
  for (const thread of threads)
    for (const holeClass of everyHoleClass) {
      const { D1_min, D1_max, D2_min, D2_max } = holeLimits(thread, holeClass);
      const inOrder =
        D1_min.value < D1_max.value &&
        D2_min.value < D2_max.value &&
        D1_min.value < D2_min.value &&
        D1_min.value >= thread.D_1.value &&
        D2_min.value >= thread.d_2.value;
      if (!inOrder) expect.fail(`${thread.designation} ${holeClass.designation}`);
    }
});

test("any plug goes into any hole of its thread", () => {
  for (const thread of threads)
    for (const plugClass of everyPlugClass.filter(({ pitch, major }) => pitch.grade === 6 && major.grade === 6))
      for (const holeClass of everyHoleClass.filter(({ pitch, minor }) => pitch.grade === 6 && minor.grade === 6)) {
        const { d2_max, D2_min } = limits(thread, plugClass, holeClass);
        if (d2_max.value > D2_min.value) expect.fail(`${thread.designation} ${plugClass.designation}`);
      }
});

test("a coarser grade is never tighter", () => {
  for (const thread of threads) {
    const series = [
      plugClasses.crestGrades.map((grade) => majorTolerance(thread, grade)),
      plugClasses.pitchGrades.map((grade) => plugPitchTolerance(thread, grade)),
      holeClasses.crestGrades.map((grade) => minorTolerance(thread, grade)),
      holeClasses.pitchGrades.map((grade) => holePitchTolerance(thread, grade)),
    ];
    for (const tolerances of series)
      tolerances.slice(1).forEach((it, i) => {
        expect(it.value, thread.designation).toBeGreaterThan(tolerances[i]?.value ?? Number.POSITIVE_INFINITY);
      });
  }
});

test("a larger thread of the same pitch never has a tighter pitch diameter", () => {
  for (const P of new Set(metricSizes.map(({ P_mm }) => P_mm))) {
    const ofPitch = metricSizes.filter(({ P_mm }) => P_mm === P);
    const tolerances = ofPitch.map(({ d_mm }) => plugPitchTolerance(metricThread(d_mm, P), 6).value);
    expect(tolerances).toEqual([...tolerances].sort((a, b) => a - b));
  }
});

test("the width of every zone is its tolerance and each limit carries no uncertainty", () => {
  for (const thread of threads) {
    const [plugClass] = everyPlugClass;
    const [holeClass] = everyHoleClass;
    if (!plugClass || !holeClass) throw new Error("no classes");
    const found = limits(thread, plugClass, holeClass);
    const width = valueIn(mm, found.d2_max) - valueIn(mm, found.d2_min);
    expect(1000 * width).toBeCloseTo(valueIn(um, plugPitchTolerance(thread, plugClass.pitch.grade)), 6);
    for (const limit of Object.values(found)) expect(limit.contributions).toEqual({});
  }
});

test("a diameter beyond the steps of the standard throws", () => {
  expect(() => plugPitchTolerance(metricThread(200, 3), 6)).toThrow(RangeError);
  expect(() => plugPitchTolerance(metricThread(0.9, 0.2), 6)).toThrow(RangeError);
});
