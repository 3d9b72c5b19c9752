import { describe, expect, test } from "vitest";
import { type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { inches, mm } from "../../../src/mechanics/quantity/unit.ts";
import {
  type UnifiedHoleClass,
  type UnifiedPlugClass,
  unifiedHoleClassFromText,
  unifiedPlugClassFromText,
} from "../../../src/mechanics/threads/unifiedClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "../../../src/mechanics/threads/unifiedLimits.ts";
import { unifiedThreadFromText } from "../../../src/mechanics/threads/unifiedText.ts";
import type { UnifiedThread } from "../../../src/mechanics/threads/unifiedThread.ts";
import { agrees } from "../../published.ts";

// ASME B1.1, table of limits of size: 2A major max/min, pitch max/min; 2B pitch min/max, minor min/max; inch.
// The last column is the outside diameter in mm, printed to 0.01.
describe("limits of classes 2A and 2B as printed", () => {
  test.each([
    ["1/4-20 UNC", ".2489 .2408 .2164 .2127 .2175 .2224 .196 .207", "6.12 6.32"],
    ["1/4-28 UNF", ".2490 .2425 .2258 .2225 .2268 .2311 .211 .220", "6.16 6.32"],
    ["5/16-18 UNC", ".3113 .3026 .2752 .2712 .2764 .2817 .252 .265", "7.69 7.91"],
    ["5/16-24 UNF", ".3114 .3042 .2843 .2806 .2854 .2902 .267 .277", "7.73 7.91"],
    ["3/8-16 UNC", ".3737 .3643 .3331 .3287 .3344 .3401 .307 .321", "9.25 9.49"],
    ["3/8-24 UNF", ".3739 .3667 .3468 .3430 .3479 .3528 .330 .340", "9.31 9.50"],
    ["7/16-14 UNC", ".4361 .4258 .3897 .3850 .3911 .3972 .360 .376", "10.82 11.08"],
    ["1/2-13 UNC", ".4985 .4876 .4485 .4435 .4500 .4565 .417 .434", "12.39 12.66"],
    ["1/2-20 UNF", ".4987 .4906 .4662 .4619 .4675 .4731 .446 .457", "12.46 12.67"],
    ["5/8-18 UNF", ".6236 .6149 .5875 .5828 .5889 .5949 .565 .578", "15.62 15.84"],
    ["3/4-10 UNC", ".7482 .7353 .6832 .6773 .6850 .6927 .642 .663", "18.68 19.00"],
    ["3/4-16 UNF", ".7485 .7391 .7079 .7029 .7094 .7159 .682 .696", "18.77 19.01"],
    ["7/8-14 UNF", ".8734 .8631 .8270 .8216 .8286 .8356 .798 .813", "21.92 22.18"],
    ["1-8 UNC", ".9980 .9830 .9168 .9101 .9188 .9276 .865 .890", "24.97 25.35"],
  ])("%s", (text, row, outside) => {
    const thread = threadOf(text);
    const { d_max, d_min, d2_max, d2_min } = unifiedPlugLimits(thread, "2A");
    const { D1_min, D1_max, D2_min, D2_max } = unifiedHoleLimits(thread, "2B");
    expectInches([d_max, d_min, d2_max, d2_min, D2_min, D2_max, D1_min, D1_max], row);
    const [least = "", most = ""] = outside.split(" ");
    agrees(valueIn(mm, d_min), least);
    agrees(valueIn(mm, d_max), most);
  });
});

// ASME B1.1, table of limits of size, from memory of it as reprinted in handbooks: major max/min, pitch max/min.
// 8-UN and 1-14 UNS come out only with a length of engagement of one diameter.
describe("limits of plugs of other classes and series", () => {
  test.each<[string, UnifiedPlugClass, string]>([
    ["1/4-20 UNC", "1A", ".2489 .2367 .2164 .2108"],
    ["1/4-20 UNC", "3A", ".2500 .2419 .2175 .2147"],
    ["#10-32 UNF", "2A", ".1891 .1831 .1688 .1658"],
    ["#10-32 UNF", "3A", ".1900 .1840 .1697 .1674"],
    ["#4-40 UNC", "2A", ".1112 .1061 .0950 .0925"],
    ["1-12 UNF", "2A", ".9982 .9868 .9441 .9382"],
    ["1-14 UNS", "2A", ".9983 .9880 .9519 .9463"],
    ["1 1/2-8 UN", "2A", "1.4978 1.4828 1.4166 1.4093"],
  ])("%s %s", (text, plugClass, row) => {
    const { d_max, d_min, d2_max, d2_min } = unifiedPlugLimits(threadOf(text), plugClass);
    expectInches([d_max, d_min, d2_max, d2_min], row);
  });
});

// As above: minor min/max, pitch min/max. Below #6 minor limits are printed to four decimals.
describe("limits of holes of other classes", () => {
  test.each<[string, UnifiedHoleClass, string]>([
    ["1/4-20 UNC", "1B", ".196 .207 .2175 .2248"],
    ["1/4-20 UNC", "3B", ".1960 .2067 .2175 .2211"],
    ["1/4-28 UNF", "3B", ".2110 .2190 .2268 .2300"],
    ["5/16-18 UNC", "3B", ".2520 .2630 .2764 .2803"],
    ["1/2-13 UNC", "3B", ".4170 .4284 .4500 .4548"],
    ["#10-32 UNF", "2B", ".156 .164 .1697 .1736"],
    ["#10-32 UNF", "3B", ".1560 .1641 .1697 .1726"],
    ["#8-32 UNC", "2B", ".130 .139 .1437 .1475"],
    ["#4-40 UNC", "2B", ".0849 .0939 .0958 .0991"],
    ["#0-80 UNF", "2B", ".0465 .0514 .0519 .0542"],
    ["1-12 UNF", "2B", ".910 .928 .9459 .9535"],
  ])("%s %s", (text, holeClass, row) => {
    const { D1_min, D1_max, D2_min, D2_max } = unifiedHoleLimits(threadOf(text), holeClass);
    expectInches([D1_min, D1_max, D2_min, D2_max], row);
  });
});

test("1/4-20 UNC shows basic size, allowance and tolerance with what they are made of", () => {
  const { d2_min } = unifiedPlugLimits(threadOf("1/4-20"), "2A");
  const names = namesIn(d2_min);
  for (const symbol of ["d_2min", "d_2max", "d_2r", "es", "T_d2", "T_2A", "L_E", "P", "n", "H", "d"])
    expect(names).toContain(symbol);
});

test("classes 1A and 1B are given for coarse and fine threads from 1/4 inch on only", () => {
  expect(unifiedPlugClassFromText(threadOf("1/4-20"), "1a")).toEqual({ ok: true, toleranceClass: "1A" });
  expect(unifiedHoleClassFromText(threadOf("1/4-28"), "1B")).toEqual({ ok: true, toleranceClass: "1B" });
  const problem = { type: "not a class of this thread", given: "1A", accepted: ["2A", "3A"] };
  for (const text of ["#10-32", "1/4-32 UNEF", "1-16 UN"])
    expect(unifiedPlugClassFromText(threadOf(text), "1A")).toEqual({ ok: false, problem });
  expect(unifiedHoleClassFromText(threadOf("1/4-20"), "2A")).toEqual({
    ok: false,
    problem: { type: "not a class of this thread", given: "2A", accepted: ["1B", "2B", "3B"] },
  });
});

function expectInches(limits: readonly Quantity[], row: string): void {
  const printed = row.split(" ");
  expect(printed.length).toBe(limits.length);
  limits.forEach((limit, i) => {
    agrees(valueIn(inches, limit), `${printed[i]}`);
  });
}

function namesIn(q: Quantity): string[] {
  return q.origin.type === "worked" ? [q.symbol, ...Object.values(q.origin.inputs).flatMap(namesIn)] : [q.symbol];
}

function threadOf(text: string): UnifiedThread {
  const read = unifiedThreadFromText(text);
  if (!read.ok) throw new Error(`${text}: ${read.problem.type}`);
  return read.thread;
}
