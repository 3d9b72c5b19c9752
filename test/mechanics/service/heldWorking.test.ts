import { describe, expect, test } from "vitest";
import type { Step } from "../../../src/mechanics/quantity/working.ts";
import { held } from "../../../src/mechanics/service/held.ts";
import type { HeldCase } from "../../../src/mechanics/service/heldCases.ts";
import { heldWorking } from "../../../src/mechanics/service/heldWorking.ts";
import { agrees } from "../../published.ts";

const cases = (rows: readonly (readonly [number, number | null])[]): readonly HeldCase[] =>
  rows.map(([from_days, to_days]) => ({ method: "seal", from_days, to_days }));

function stepsOf(rows: readonly (readonly [number, number | null])[]): readonly Step[] {
  const all = cases(rows);
  const [only] = held(all).methods;
  if (!only) throw new Error("no method");
  return heldWorking(only, all);
}

/** The results of the steps of one equation, in their order. */
const results = (steps: readonly Step[], begins: string): readonly string[] =>
  steps.filter(({ formula }) => formula.startsWith(begins)).map(({ result }) => result);

// aml, maintained arm, as in Miller, Survival Analysis (1981); figures by R survival 3.5-3.
const aml = [
  [9, 9],
  [13, 13],
  [13, null],
  [18, 18],
  [23, 23],
  [28, null],
  [31, 31],
  [34, 34],
  [45, null],
  [48, 48],
  [161, null],
] as const;

describe("published", () => {
  test("the working of the maintained arm ends at the shares and errors as published", () => {
    const steps = stepsOf(aml);
    const shares = results(steps, "S = S_0");
    const printed = [".9091", ".8182", ".7159", ".6136", ".4909", ".3682", ".1841"];
    expect(shares).toHaveLength(printed.length);
    for (const [i, it] of printed.entries()) agrees(Number(shares[i]), it);
    agrees(Number(results(steps, "s_S")[0]), ".0867");
    expect(results(steps, "ln L")[0]).toMatch(/^-35\.7, the greatest there is$/);
  });

  // Newcombe, Statistics in Medicine 17 (1998), 857, method 3: 1 of 29 is .0061 to .1718; Jeffreys by R qbeta .0037 to .1501.
  test("1 of 29 ends at Newcombe's limits by Wilson, and at those of Jeffreys and the exact interval", () => {
    const steps = stepsOf([[5, 5], ...Array.from({ length: 28 }, () => [30, null] as const)]);
    const wilson = results(steps, "p_z = (p");
    agrees(Number(wilson[0]), ".0061");
    agrees(Number(wilson[1]), ".1718");
    const [jeffreys, exact] = results(steps, "p_z = B");
    expect(jeffreys?.split(" to ").map((it) => Number(it).toFixed(4))).toEqual(["0.0037", "0.1501"]);
    expect(exact?.split(" to ").map((it) => Number(it).toFixed(4))).toEqual(["0.0009", "0.1776"]);
  });

  // Turnbull's small example: 5/16, 5/48, 5/24, 3/8.
  test("failures seen at checks end at their masses, with the gradient that proves them", () => {
    const steps = stepsOf([
      [0, 2],
      [2, 4],
      [3, 5],
      [0, 3],
      [5, null],
      [4, 7],
      [6, null],
      [1, 3],
    ]);
    const proof = steps.find(({ formula }) => formula.startsWith("sum over the cases"));
    expect(proof?.substituted).toBe("0.3125 in (1, 2], 0.1042 in (2, 3], 0.2083 in (3, 4], 0.375 in (6, 7]");
    expect(proof?.result).toBe("greatest gradient 1, least where a share lies 1, of 1");
    expect(results(steps, "S = S_0")).toEqual([]);
  });
});

test("what nobody looked at has no working, and every step names its source", () => {
  expect(stepsOf([[0, null]])).toEqual([]);
  for (const { source, result } of stepsOf(aml)) expect([source, result]).not.toContain("");
});

test("where the last at risk has failed the chain stops at nought", () => {
  const steps = stepsOf([
    [3, 3],
    [5, 5],
  ]);
  expect(results(steps, "S = S_0").at(-1)).toBe("0");
  expect(results(steps, "s_S")).toHaveLength(1);
});
