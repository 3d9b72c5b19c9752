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
