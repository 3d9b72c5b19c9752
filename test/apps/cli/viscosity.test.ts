import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`viscosity ${line}`));
const text = (line: string): string => turnsleft(typed(`viscosity ${line}`)).stdout;

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string): string {
  const { status, stdout, stderr } = turnsleft(typed(`viscosity ${line}`));
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

describe("published", () => {
  // ASTM D2270-10, worked examples, as the chemical-engineering library "chemicals" (C. Bell) quotes them.
  test.each([
    ["73.30", "8.86", 92],
    ["22.83", "5.05", 156],
  ])("%s and %s mm²/s have the viscosity index %i", (kv40, kv100, index) => {
    expect(answer(`--kv40 ${kv40} --kv100 ${kv100}`).index).toBe(index);
  });

  // 493.39 over 19.043 mm²/s, by ASTM D341 worked apart in R 4.2.2.
  test("oil of 100 and 15 mm²/s is 26 times as thick at 10 °C as at 90, and finds its level as slowly", () => {
    const line = '--kv40 100 --kv100 15 --temperature "10 °C"';
    expect(answer(line).timesHot).toBe(26);
    expect(turnsleft(typed(`viscosity ${line}`)).stdout).toContain(
      "26 times as slowly as at 90 °C: wait before you call it full",
    );
    expect(answer("--kv40 100 --kv100 15").timesHot).toBeNull();
  });

  // Computed apart, in R 4.2.2, from the equations of ASTM D341 as two public sources quote them.
  test.each([
    ["48", "8", "1245.1 460.64 229.70 126.31 22.862 12.770 9.985 5.4537"],
    ["100", "15", "2614.8 986.50 493.39 269.89 46.017 24.787 19.043 9.9073"],
    ["140", "14.5", "9764.6 2648.6 1066.498 489.4501 54.195 25.968 19.093 9.0532"],
    ["350", "26", "43202 9916.497 3539.0 1460.3 117.98 50.718 35.640 15.171"],
    ["220", "18.7", "22822 5472.9 2023.2 863.34 78.189 35.147 25.184 11.252"],
  ])("an oil of %s and %s mm²/s follows ASTM D341 to four digits", (kv40, kv100, row) => {
    const printed = row.split(" ");
    for (const [i, t] of [-12, 0, 10, 20, 60, 80, 90, 120].entries()) {
      const { kv_mm2s } = answer(`--kv40 ${kv40} --kv100 ${kv100} --temperature "${t} °C"`);
      expect(kv_mm2s).toBe(Number(Number(printed[i]).toPrecision(4)));
    }
  });

  // SAE J306 (February 2019), table 1.
  test.each([
    ["13.5", "SAE 90"],
    ["18.4", "SAE 90"],
    ["13.49", "SAE 85"],
    ["6.5", "SAE 75"],
    ["41", "SAE 250"],
  ])("%s mm²/s at 100 °C is %s", (kv100, grade) => {
    expect(answer(`--kv40 900 --kv100 ${kv100}`)).toMatchObject({ grade, edition: "2019" });
  });

  // The 2005 edition has no row below 80 (from memory).
  test("an oil of 6.5 mm²/s is a 75 of 2019 and no grade of 2005", () => {
    expect(answer("--kv40 40 --kv100 6.5 --edition 2005").grade).toBeNull();
    expect(text("--kv40 40 --kv100 6.5 --edition 2005")).toContain("J306:2005 begins at 7 mm²/s");
  });

  // SAE J300, table 1: 40 is 12.5 to below 16.3; 16 is 6.1 to below 8.2, 20 is 6.9 to below 9.3. ISO 3448, table 1: VG 100.
  test("gear, engine and industrial grades are named side by side", () => {
    expect(answer("--kv40 100 --kv100 15")).toMatchObject({ engineGrades: ["SAE 40"], isoGrade: "ISO VG 100" });
    expect(answer("--kv40 40 --kv100 7.5")).toMatchObject({ engineGrades: ["SAE 16", "SAE 20"], isoGrade: null });
  });
});

test("the keys are there whether a temperature is asked for or not", () => {
  const keys = [
    "index",
    "kv_mm2s",
    "grade",
    "edition",
    "engineGrades",
    "isoGrade",
    "timesHot",
    "reach",
    "label",
    "labelFits",
    "working",
  ];
  expect(Object.keys(answer("--kv40 100 --kv100 15"))).toEqual(keys);
  expect(Object.keys(answer('--kv40 100 --kv100 15 --temperature "20 °C" --label "SAE 90"'))).toEqual(keys);
  expect(answer("--kv40 100 --kv100 15")).toMatchObject({ kv_mm2s: null, reach: null, label: null, labelFits: null });
});

describe("what is printed", () => {
  test("the viscosity asked for comes first, in two digits where nobody measured, in three between the points", () => {
    expect(text('--kv40 100 --kv100 15 --temperature "20 °C"')).toMatch(/^270 mm²\/s at 20 °C\.\n/);
    expect(text('--kv40 100 --kv100 15 --temperature "60 °C"')).toMatch(/^46 mm²\/s at 60 °C\.\n/);
    expect(text('--kv40 100 --kv100 15 --temperature "80 °C"')).toMatch(/^24\.8 mm²\/s at 80 °C\.\n/);
    expect(text('--kv40 100 --kv100 15 --temperature "-12 °C"')).toMatch(/^About 2600 mm²\/s at -12 °C\.\n/);
  });

  test("how far the line reaches is said below 0 °C, beyond the points, and not between them", () => {
    expect(text('--kv40 100 --kv100 15 --temperature "-12 °C"')).toContain("no W grade can be told");
    expect(text('--kv40 100 --kv100 15 --temperature "20 °C"')).toContain("beyond 40 and 100 °C");
    expect(text('--kv40 100 --kv100 15 --temperature "60 °C"')).not.toMatch(/beyond|W grade/);
  });

  test("the working comes last, and only where it is asked for", () => {
    const line = '--kv40 100 --kv100 15 --temperature "20 °C"';
    expect(text(line)).not.toContain("ASTM D341-20");
    expect(text(`${line} --working`)).toMatch(/ASTM D341-20[\s\S]*ASTM D2270-10[^\n]*\n$/);
  });
});

describe("a label", () => {
  test("is held against the viscosity that was measured", () => {
    expect(answer("--kv40 100 --kv100 15 --label 75W-90").labelFits).toBe(true);
    expect(answer("--kv40 100 --kv100 13 --label 75W-90").labelFits).toBe(false);
    expect(text("--kv40 100 --kv100 13 --label 75W-90")).toContain("Not 75W-90: 13 mm²/s is too thin.");
    expect(text("--kv40 100 --kv100 19 --label 75W-90")).toContain("too thick");
    expect(answer('--kv40 110 --kv100 15 --label "ISO VG 100"').labelFits).toBe(true);
    expect(answer('--kv40 111 --kv100 15 --label "ISO VG 100"').labelFits).toBe(false);
  });

  // 80W begins at 8.5 mm²/s in 2019 and at 7.0 in 2005 (from memory), where 80 goes down to 7.0 as well.
  test("that fits only under the other edition is told so", () => {
    expect(text("--kv40 60 --kv100 8 --label 80W-80")).toContain("it fits under J306:2005");
    expect(answer("--kv40 60 --kv100 8 --label 80W-80 --edition 2005").labelFits).toBe(true);
  });

  // SAE J306:2019: 90 is 13.5 to below 18.5; the index of each corner is that of ASTM D2270 read the other way.
  test("alone gives ranges, and lists the index that it supposes", () => {
    const it = answer('--label 75W-90 --base mineral --temperature "0 °C"');
    expect(it).toMatchObject({ index: null, grade: "SAE 90", kv100Range_mm2s: [13.5, 18.5], indexRange: [95, 105] });
    expect(it.assumed).toEqual([
      { reading: "viscosity index", value: "95 to 105", source: expect.stringContaining("memory") },
    ]);
    const [least, most] = it.kvRange_mm2s;
    expect(least).toBeLessThan(it.kv_mm2s);
    expect(most).toBeGreaterThan(it.kv_mm2s);
    // The ends are those of an oil at each corner, weighed by its two viscosities.
    const [kv40, kv100] = [it.kv40Range_mm2s[0], it.kv100Range_mm2s[0]];
    expect(answer(`--kv40 ${kv40} --kv100 ${kv100}`).index).toBe(105);
    const corner = answer(`--kv40 ${kv40} --kv100 ${kv100} --temperature "0 °C"`).kv_mm2s;
    expect(corner / least).toBeCloseTo(1, 1);
    expect(text('--label 75W-90 --base mineral --temperature "0 °C"')).toMatch(
      /^2100 to 5300 mm²\/s at 0 °C, by the label/,
    );
  });

  test("of an industrial grade leaves the gear grade open where its range spans two", () => {
    const it = answer('--label "ISO VG 220" --base mineral');
    expect(it).toMatchObject({ grade: null, grades: ["SAE 90", "SAE 110"], kv40Range_mm2s: [198, 242] });
  });

  test("of an unknown base spans what mineral and synthetic span", () => {
    const of = (base: string) => answer(`--label 75W-90 ${base}`).indexRange;
    expect(of("")).toEqual([of("--base mineral")[0], of("--base synthetic")[1]]);
  });
});

describe("mistakes", () => {
  test.each([
    ["", /^--kv40: given nothing; accepted: --kv40 and --kv100 together, or --label alone$/],
    ["--kv40 100", /^--kv100: given nothing/],
    ["--kv40 10 --kv100 15", /^--kv40: given "10"; accepted: more than at 100 °C \(15\): oil grows thinner with heat$/],
    ["--kv40 100 --kv100 0.1", /^--kv100: given "0\.1"; accepted: nu from 0\.21 up to 20000000 mm²\/s/],
    ["--kv40 thick --kv100 15", /^--kv40: given "thick"; accepted: a number/],
    ['--kv40 "100 mm" --kv100 15', /^--kv40: given "100 mm"; accepted: mm²\/s/],
    [
      "--kv40 100 --kv100 15 --temperature 20",
      /^--temperature: given "20"; accepted: a number with its unit, as "20 °C"/,
    ],
    [
      '--kv40 100 --kv100 15 --temperature "-90 °C"',
      /^--temperature: given "−90 °C"; accepted: -71 to \d+ °C for this oil/,
    ],
    ["--kv40 100 --kv100 15 --edition 1991", /^--edition: given "1991"; accepted: 2019 or 2005$/],
    ["--kv40 100 --kv100 15 --base mineral", /^--base: given "mineral"; accepted: --label alone with it/],
    ["--label 90", /^--label: given "90"; accepted: SAE 90; a bare number names no standard$/],
    ["--label 80W", /^--label: given "80W"; accepted: a grade with an upper end, as 75W-90/],
    ["--label 75W-40", /^--label: given "75W-40"; accepted: two numbers of one standard/],
    ["--label 85W-80", /^--label: given "85W-80"; accepted: two rows that one oil can meet/],
    ["--label 75W-75 --edition 2005", /^--label: given "75W-75"; accepted: a grade that J306:2005 has/],
    ["--label thick", /^--label: given "thick"; accepted: a grade, as 75W-90/],
    ["--label 75W-90 --base palm", /^--base: given "palm"; accepted: mineral, synthetic or unknown$/],
  ])("viscosity %s", (line, expected) => expect(mistake(line)).toMatch(expected));
});

test("each example of --help runs, plainly and as JSON", () => {
  const examples = [...turnsleft(["viscosity", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(2);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});

test("cSt is mm²/s", () => {
  const { kv_mm2s } = answer('--kv40 "100 cSt" --kv100 "15 mm²/s" --temperature "20 °C"');
  agrees(kv_mm2s, "269.9");
});
