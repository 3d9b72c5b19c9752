import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";

const root = new URL("../../..", import.meta.url).pathname;
const program = `${root}dist/src/apps/cli/main.js`;

function held(csv: string, ...options: string[]) {
  return spawnSync(process.execPath, [program, "held", "-", ...options], { input: csv, encoding: "utf8", cwd: root });
}

const answer = (csv: string) => JSON.parse(held(csv, "--json").stdout).methods;

const head = "method,from_days,to_days\n";

describe("held", () => {
  /** The invented workshop: Jeffreys 95 % for 2 of 3, Brown, Cai and DasGupta (2001). */
  test("says 18 to 96 % for two of three that came back", () => {
    const { stdout } = held(readFileSync(`${root}examples/held.csv`, "utf8"));
    expect(stdout).toContain("2 of 3 came back; with three cases the true rate may be anywhere from 18 to 96 %");
  });

  /** aml, maintained arm: Kaplan-Meier with Greenwood's error, R survival 3.5-3; Weibull R survreg. */
  test("gives the maintained arm of the leukaemia trial as published", () => {
    const rows = ["9,9", "13,13", "13,", "18,18", "23,23", "28,", "31,31", "34,34", "45,", "48,48", "161,"];
    const [method] = answer(head + rows.map((row) => `maintained,${row}`).join("\n"));
    expect(method).toMatchObject({ method: "maintained", cases: 11, cameBack: 7, neverLookedAt: 0 });
    const printed = [
      [9, ".909091", ".0866784"],
      [13, ".818182", ".1162913"],
      [18, ".715909", ".1396650"],
      [23, ".613636", ".1526323"],
      [31, ".490909", ".1641933"],
      [34, ".368182", ".1626689"],
      [48, ".184091", ".1534927"],
    ] as const;
    expect(method.kaplanMeier).toHaveLength(printed.length);
    printed.forEach(([t, survival, error], i) => {
      expect(method.kaplanMeier[i].t).toBe(t);
      agrees(method.kaplanMeier[i].survival, survival);
      agrees(method.kaplanMeier[i].standardError, error);
    });
    agrees(method.weibull.shape, "1.03185424");
    agrees(method.weibull.scale, "60.3228898");
    agrees(method.weibull.logLikelihood, "-35.7039563147");
  });

  /** Turnbull's small example: masses 5/16, 5/48, 5/24, 3/8. */
  test("gives the interval-censored example with its last interval open or closed as the data say", () => {
    const rows = ["0,2", "2,4", "3,5", "0,3", "5,", "4,7", "6,", "1,3"];
    const [{ turnbull, kaplanMeier, cases }] = answer(head + rows.map((row) => `seal,${row}`).join("\n"));
    expect(cases).toBe(8);
    expect(kaplanMeier).toBeNull();
    const shares = [".3125", ".1041667", ".2083333", ".375"];
    expect(turnbull).toHaveLength(shares.length);
    for (const [i, share] of shares.entries()) agrees(turnbull[i].mass, share);
    expect(turnbull.slice(0, 3).map(({ from, to }: { from: number; to: number }) => [from, to])).toEqual([
      [1, 2],
      [2, 3],
      [3, 4],
    ]);
  });

  test("leaves out what nobody looked at and says so", () => {
    const [method] = answer(`${head}bung,0,\nbung,30,\nbung,12,12`);
    expect(method).toMatchObject({ cases: 2, cameBack: 1, neverLookedAt: 1 });
    expect(held(`${head}bung,0,\n`).stdout).toContain("never looked at: silence is not success");
  });

  // aml, both arms (Miller, Survival Analysis, 1981): log-rank chi-squared 3.396, p .0653; median 31, by log-log from 13
  // without end; R survival 3.5-3.
  test("holds two methods against one another, and tells the median", () => {
    const arms = {
      maintained: ["9,9", "13,13", "13,", "18,18", "23,23", "28,", "31,31", "34,34", "45,", "48,48", "161,"],
      not: ["5,5", "5,5", "8,8", "8,8", "12,12", "16,", "23,23", "27,27", "30,30", "33,33", "43,43", "45,45"],
    };
    const csv =
      head +
      Object.entries(arms)
        .flatMap(([arm, rows]) => rows.map((row) => `${arm},${row}`))
        .join("\n");
    const { compared, methods } = JSON.parse(held(csv, "--json", "--compare", "maintained, not").stdout);
    agrees(compared.chiSquare, "3.396");
    agrees(compared.p, ".0653");
    expect(methods[0].median_days).toEqual([13, 31, null]);
    expect(held(csv, "--compare", "maintained, not").stdout).toMatch(
      /^maintained and not: these cases cannot tell them apart/,
    );
  });

  // The success run: ln(1 - .95) / ln(.9) = 28.4.
  test("says how many without one coming back would show that 9 in 10 hold", () => {
    const [method] = answer(`${head}seal,30,\nseal,40,`);
    expect(method.casesToShow90).toBe(29);
    expect(held(`${head}seal,30,\nseal,40,`).stdout).toContain("29 in a row without one coming back");
    expect(answer(`${head}seal,30,30`)[0].casesToShow90).toBeNull();
  });

  test("prints how every figure was got, below its method", () => {
    const { stdout } = held(`${head}seal,5,5\nseal,71,71\nseal,88,`, "--working");
    for (const equation of [
      "p_z = (p + z^2",
      "S = S_0 * (1 - d / n)",
      "s_S = S * sqrt(G)",
      "alpha_ij / P_i <= n",
      "ln L =",
    ])
      expect(stdout).toContain(equation);
    expect(stdout).toContain("Wilson, JASA 22 (1927), 209");
  });

  test.each([
    ["seal", "two methods"],
    ["seal, seal", "two methods"],
    ["seal, glue", "seal, bung"],
    ["seal, bung", "a method whose failures are all known to the day"],
  ])("refuses to compare %j", (methods, accepted) => {
    const { status, stdout, stderr } = held(`${head}seal,5,5\nbung,2,9`, "--compare", methods);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turnsleft: --compare: given /);
    expect(stderr).toContain(accepted);
  });

  test.each([
    ["method,from,to\nseal,1,2", "the columns method, from_days, to_days"],
    [`${head}seal,5,3`, "5 or later"],
    [`${head}seal,soon,`, "a number of days"],
    [`${head},3,4`, "the name of a method"],
    [head, "at least one case"],
  ])("refuses %j on one line", (csv, accepted) => {
    const { status, stdout, stderr } = held(csv);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(stderr.trimEnd().split("\n")).toHaveLength(1);
    expect(stderr).toContain(accepted);
  });
});
