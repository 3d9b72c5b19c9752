import { describe, expect, test } from "vitest";
import { mean, standardDeviation } from "../../../src/mechanics/quantity/distribution.ts";
import { levelsWith, referenceLevels } from "../../../src/mechanics/tables/levels.ts";
import { type RangeName, referenceRanges } from "../../../src/mechanics/tables/referenceRanges.ts";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { writtenRange } from "../../../src/sheets/caseForm/overrides.ts";
import { type Changes, changedCase, documentOf, weighed } from "../../mechanics/remedies/changedCase.ts";

const found = (changes: Changes) => {
  const { window } = documentOf({ left: { turns: "5" }, ...changes }).asFound;
  if (!window) throw new Error("refused");
  return window;
};
const told = (changes: Changes): string[] => {
  const read = readCase(changedCase(changes), null);
  return read.ok ? [] : read.problems.map(({ field, accepted }) => `${field}: ${accepted}`);
};
const base = found({});

describe("a range given with the case moves the window the right way", () => {
  test.each([
    ["strength cast aluminium", { mean: 300, cv: 0.1 }, "limit_Nm", "up"],
    ["shear ratio cast aluminium", { value: 0.5 }, "limit_Nm", "down"],
    ["strip model", { median: 1, sigma: 0.2 }, "limit_Nm", "up"],
    ["lead-in", { low: 0.8, high: 1.2 }, "limit_Nm", "down"],
    ["count with a dot", { value: 0.5 }, "limit_Nm", "down"],
    ["height doubtful", { low: 0.9, likely: 0.95, high: 1 }, "limit_Nm", "up"],
    ["height effect", { value: 0.42 }, "limit_Nm", "up"],
    ["sharing exponent", { value: 1 }, "limit_Nm", "down"],
    ["friction oiled", { low: 0.2, high: 0.3 }, "limit_Nm", "up"],
    ["friction oiled", { low: 0.2, high: 0.3 }, "need_Nm", "up"],
    ["seal flat fibre", { value: 4 }, "need_Nm", "down"],
    ["wrench over 10 N·m", { low: -0.1, high: 0.1 }, "need_Nm", "up"],
    ["wrench over 10 N·m", { low: -0.1, high: 0.1 }, "limit_Nm", "down"],
  ] as const)("%s %j: %s %s", (name, range, figure, way) => {
    const changed = found({ ranges: { [name]: range } })[figure];
    if (way === "up") expect(changed).toBeGreaterThan(base[figure] * 1.001);
    else expect(changed).toBeLessThan(base[figure] * 0.999);
  });

  test("it is echoed as it was given, with its source; the others stay as they are", () => {
    const { ranges } = documentOf({ ranges: { "strip model": { value: 0.7 } } });
    expect(ranges["strip model"]).toEqual({ value: 0.7, unit: "", source: "given with the case (judgement)" });
    expect(ranges["lead-in"]).toMatchObject({ low: 0, high: 0.8, unit: "turns" });
  });

  test("every reference range, echoed and given back, is the same range", () => {
    for (const [name, { distribution }] of Object.entries(referenceRanges)) {
      const read = readCase(changedCase({ ranges: { [name]: writtenRange(distribution) } }), null);
      if (!read.ok) throw new Error(`${name}: ${read.problems[0].accepted}`);
      const again = read.given.ranges[name as RangeName].distribution;
      expect(mean(again)).toBeCloseTo(mean(distribution), 12);
      expect(standardDeviation(again)).toBeCloseTo(standardDeviation(distribution), 12);
    }
  });

  test.each([
    [{ "strength A380": { low: 300, high: 200 } }, "ranges.strength A380: figures in order"],
    [{ "strength A380": { value: -1 } }, "ranges.strength A380: figures above 0"],
    [{ "friction oiled": { low: -0.1, high: 0.1 } }, "ranges.friction oiled: figures above 0"],
    [{ "height good": { low: 0.8, high: 1.2 } }, "ranges.height good: shares above 0, up to 1"],
    [{ "lead-in": { mean: 0.4, sd: 0.2 } }, "ranges.lead-in: figures from 0 to 10"],
    [{ "sharing exponent": { median: 1, sigma: 1 } }, "ranges.sharing exponent: figures from 0 to 10"],
    [{ "wrench over 10 N·m": { low: -1, high: 1 } }, "ranges.wrench over 10 N·m: shares of the figure set"],
    [{ "strip model": { value: "0.85" } }, 'ranges.strip model: { "value" }, { "low", "high" }'],
    [{ "strip model": {} }, 'ranges.strip model: { "value" }, { "low", "high" }'],
    [{ "strip modle": { value: 1 } }, 'ranges.strip modle: "strip model"'],
  ])("%j is told", (ranges, line) => {
    expect(told({ ranges })[0]).toContain(line);
  });
});

describe("a level given with the case", () => {
  test("moves what hangs on it: odds, share of the median, need, floor, narrow", () => {
    expect(found({ levels: { stripOdds: 0.05 } }).limit_Nm).toBeGreaterThan(base.limit_Nm);
    expect(found({ levels: { stripOdds: 0.001 } }).limit_Nm).toBeLessThan(base.limit_Nm);
    expect(found({ levels: { shareOfMedian: 0.1 } }).limit_Nm).toBeCloseTo(0.1 * base.medianStrip_Nm, 6);
    expect(found({ levels: { closeOdds: 0.5 } }).need_Nm).toBeLessThan(base.need_Nm);
    expect(found({ levels: { floorFromM16_Nm: 15 } }).floor_Nm).toBe(15);
    expect(found({ levels: { floorFromM16_Nm: 15 } }).advice_Nm).toBeGreaterThanOrEqual(15);
    expect(found({ levels: { narrowBelow: 10 } }).narrow).toBe(true);
    expect(found({}).narrow).toBe(false);
  });

  test("moves the rules: least turns, least height, healthy share, the wrench's scale and date", () => {
    const refused = (changes: Changes) => weighed(changes).asFound.refused?.rule ?? null;
    expect(refused({ levels: { leastTurns: 2.5 } })).toBe("7 too little");
    expect(refused({ left: { height: "0.4" }, levels: { leastHeight: 0.5 } })).toBe("7 too little");
    const seven = { left: { turns: "7", condition: "good" } };
    expect(weighed({ ...seven, levels: { healthyFrom: 0.9 } }).health.healthy).toBe(false);
    expect(weighed(seven).health.healthy).toBe(true);
    const wrenches = [{ name: "W", least: "5 N·m", most: "100 N·m", calibrated: "2026-01-01" }];
    expect(weighed({ wrenches }).asFound.advice?.type).toBe("no wrench sets this");
    const advised = (levels: Changes) =>
      weighed({ wrenches, levels: { leastShareOfScale: 0.05, ...levels } }).asFound.advice;
    expect(advised({})).toMatchObject({ evidence: "in range and in date" });
    expect(advised({ calibrationDays: 30 })).toMatchObject({ evidence: "out of date" });
  });

  test("is echoed with the others", () => {
    expect(documentOf({ levels: { stripOdds: 0.02 } }).levels).toEqual(levelsWith({ stripOdds: 0.02 }));
    expect(Object.keys(documentOf({}).levels)).toEqual(Object.keys(referenceLevels));
  });

  test.each([
    [{ stripOdds: 0 }, "levels.stripOdds: a share between 0 and 1"],
    [{ closeOdds: 1 }, "levels.closeOdds: a share between 0 and 1"],
    [{ leastTurns: -2 }, "levels.leastTurns: a number above 0"],
    [{ leastTurns: "2" }, "levels.leastTurns: a number"],
    [{ leastTurn: 2 }, 'levels.leastTurn: "leastTurns"'],
  ])("%j is told", (levels, line) => {
    expect(told({ levels })).toEqual([line]);
  });
});
