import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`pressure ${line}`));
const text = (line: string): string => turnsleft(typed(`pressure ${line}`)).stdout;
const held = '--start "0.70 bar" --end "0.70 bar" --minutes 5';
const vacuum = '--vacuum-start "-0.50 bar" --vacuum-end "-0.49 bar" --vacuum-minutes 5';

describe("published", () => {
  // Gay-Lussac: 1 °C is 0.34 % of the absolute pressure; at 0.7 bar 3 °C alone cost 0.017 bar.
  test("3 °C colder take 0.017 bar off 0.7", () => {
    const it = answer(`${held} --start-temperature "20 °C" --end-temperature "17 °C"`);
    agrees(it.byTemperature_bar, "-0.0175");
  });

  // 25.4 N for each bar on 18 mm; plain geometry.
  test("a vacuum of a bar pulls as hard as a bar pushes", () => {
    agrees(answer('--start "-0.50 bar" --end "-0.50 bar" --minutes 5 --diameter "18 mm"').plugForce_N, "-12.7");
    expect(text('--start "-0.50 bar" --end "-0.50 bar" --minutes 5 --diameter "18 mm"')).toContain(
      "It pulls the plug inward with 13 N",
    );
  });
});

describe("water on the other side", () => {
  test("is passed by pressure and vacuum together, failed by either", () => {
    expect(answer(`${held} ${vacuum}`)).toMatchObject({
      waterTest: "passed",
      vacuum: { verdict: "holds", loss_bar: 0.01 },
    });
    expect(text(`${held} ${vacuum}`)).toMatch(/^Passed for water on the other side: pressure and vacuum both held\.\n/);
    const lost = vacuum.replace("-0.49", "-0.30");
    expect(answer(`${held} ${lost}`)).toMatchObject({ waterTest: "failed", vacuum: { verdict: "leaks" } });
    expect(answer(`${held.replace('"0.70 bar" --minutes', '"0.50 bar" --minutes')} ${vacuum}`).waterTest).toBe(
      "failed",
    );
    expect(answer(`${held} ${vacuum.replace("-0.49", "-0.46")}`).waterTest).toBe("cannot tell");
  });

  test("is not told where only a pressure was held, and the text says what is missing", () => {
    expect(answer(held)).toMatchObject({ waterTest: null, vacuum: null });
    expect(text(held)).toContain("only pressure and vacuum together");
  });
});

describe("what is said", () => {
  test("no more digits than the gauge has, and nothing is taken out that nobody gave", () => {
    const lost = text('--start "0.70 bar" --end "0.52 bar" --minutes 5');
    expect(lost).toMatch(/^Leaks\. 0\.18 bar went\.\n/);
    expect(lost).toContain("nothing is taken out");
    expect(lost).toContain("0.036 bar a minute");
    expect(
      text('--start "0.70 bar" --end "0.52 bar" --minutes 5 --start-temperature "20 °C" --end-temperature "20 °C"'),
    ).toMatch(/^Leaks\. 0\.18 bar went, temperature taken out\./);
  });

  test("the working shows the correction, the loss, its rate and the force", () => {
    const formulas = answer(`${held} ${vacuum} --diameter "20 mm"`).working.map(
      (it: { formula: string }) => it.formula,
    );
    for (const equation of [
      "p_c = (p_2 + p_0) * T_1 / T_2 - p_0",
      "v = Dp / t",
      "F = p * pi / 4 * D^2",
      "Dp = p_c - p_1",
    ])
      expect(formulas).toContain(equation);
    expect(text(`${held} --working`)).toContain("Gay-Lussac");
  });
});

describe("mistakes", () => {
  test.each([
    [`${held} --start-temperature "20 °C"`, /^--end-temperature: given nothing/],
    [`${held} --end-temperature "20 °C"`, /^--start-temperature: given nothing/],
    [`${held} --start-temperature 20 --end-temperature "20 °C"`, /^--start-temperature: given "20"/],
    [`${held} --vacuum-start "-0.50 bar"`, /^--vacuum-end: given nothing/],
    [`${held} --vacuum-end "-0.50 bar"`, /^--vacuum-start: given nothing/],
    [`${held} --vacuum-start "-0.50 bar" --vacuum-end "-0.50 bar"`, /^--vacuum-minutes: given nothing/],
    [`${held} ${vacuum.replace("-0.50 bar", "0.50 bar")}`, /^--vacuum-start: given "0\.50 bar"; accepted: a vacuum/],
    [
      `--start "-0.5 bar" --end "-0.5 bar" --minutes 5 ${vacuum}`,
      /^--vacuum-start: given "[−-]0\.50 bar"; accepted: a pressure at/,
    ],
    ['--start "0 bar" --end "0 bar" --minutes 5', /^--start: given "0 bar"/],
    ['--start 0.7 --end "0.7 bar" --minutes 5', /^--start: given "0\.7"/],
    ['--start "0.7 bar" --end "0.7 bar" --minutes 0', /^--minutes: given "0 min"/],
    [`${held} --gauge "0 bar"`, /^--gauge: given "0 bar"/],
    [`${held} --allowed none`, /^--allowed: given "none"/],
    [`${held} --outside 1`, /^--outside: given "1"/],
    [`${held} --diameter 20`, /^--diameter: given "20"/],
  ])("pressure %s", (line, expected) => {
    const { status, stdout, stderr } = turnsleft(typed(`pressure ${line}`));
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.slice("turnsleft: ".length)).toMatch(expected);
  });
});

test("each example of --help runs, plainly and as JSON with its working", () => {
  const examples = [...turnsleft(["pressure", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(3);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});
