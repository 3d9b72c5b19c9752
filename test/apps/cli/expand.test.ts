import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const warmed = '--volume "1.2 L" --from "20 °C" --to "90 °C"';
const answer = (line: string) => documentOf(typed(`expand ${line}`));
const text = (line: string): string => turnsleft(typed(`expand ${line}`)).stdout;

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string): string {
  const { status, stdout, stderr } = turnsleft(typed(`expand ${line}`));
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

// API MPMS 11.1, lubricating oils, K1 = 0.34878, worked apart from this code for 1.2 L from 20 to 90 °C; aluminium 23e-6 1/K.
describe("the worked example of API MPMS 11.1", () => {
  test("880 kg/m³: ratio 1.053573, 64.3 ml more, 58.5 ml net of aluminium, 3.24 mm at 18 ml/mm", () => {
    const it = answer(`${warmed} --density "880 kg/m³" --case aluminium --per-mm "18 ml/mm"`);
    agrees(it.ratio, "1.053573");
    agrees(it.expanded_ml, "1264.3");
    agrees(it.grown_ml, "64.3");
    agrees(it.net_ml, "58.5");
    agrees(it.levelRise_mm, "3.24");
  });

  test.each([
    ["12 ml/mm", "4.86"],
    ["25 ml/mm", "2.33"],
  ])("at %s the level rises %s mm", (perMm, printed) => {
    agrees(answer(`${warmed} --density "880 kg/m³" --case aluminium --per-mm "${perMm}"`).levelRise_mm, printed);
  });

  test.each([
    ["860", "65.9"],
    ["900", "62.8"],
  ])("%s kg/m³ gains %s ml", (density, printed) => {
    agrees(answer(`${warmed} --density "${density} kg/m³"`).grown_ml, printed);
  });

  test("18 ml/mm rise 3.57 mm where the case is not counted, and that is listed", () => {
    const it = answer(`${warmed} --density "880 kg/m³" --per-mm "18 ml/mm"`);
    agrees(it.levelRise_mm, "3.57");
    expect(it.assumed).toEqual([expect.objectContaining({ reading: "case", value: "does not grow" })]);
  });
});

describe("what is assumed", () => {
  test("a density that nobody gave is 880 from memory, and its range is carried", () => {
    const it = answer(warmed);
    expect(it.assumed).toEqual([
      { reading: "density", value: "880 kg/m³, of 860 to 910", source: "density of gear oils (from memory)" },
    ]);
    agrees(it.grown_ml, "64.3");
    agrees(it.grownRange_ml[1], "65.9");
    expect(it.grownRange_ml[0]).toBeLessThan(it.grown_ml);
    expect(text(warmed)).toContain("Assumed: density 880 kg/m³");
  });

  test("a density that was given is not listed, even the ordinary one", () => {
    const it = answer(`${warmed} --density "880 kg/m³"`);
    expect(it).toMatchObject({ assumed: [], grownRange_ml: null, net_ml: null, levelRise_mm: null });
  });

  test("the expansion of the case is from memory, and says so", () => {
    const [, metal] = answer(`${warmed} --case iron`).assumed;
    expect(metal).toMatchObject({ reading: "expansion of iron", value: "11e-6 1/K, of 10 to 12" });
    expect(metal.source).toContain("from memory");
  });
});

test("light alloy takes more off than iron", () => {
  const net = (metal: string): number => answer(`${warmed} --case ${metal}`).net_ml;
  expect(net("magnesium")).toBeLessThan(net("aluminium"));
  expect(net("aluminium")).toBeLessThan(net("iron"));
  expect(net("iron")).toBeLessThan(answer(warmed).grown_ml);
});

test("there and back again is where it was", () => {
  const back = answer('--volume "1264.29 ml" --from "90 °C" --to "20 °C"');
  expect(back.expanded_ml).toBeCloseTo(1200, 0);
  agrees(back.grown_ml, "-64.3");
  expect(answer('--volume "1.2 L" --from "20 °C" --to "20 °C"')).toMatchObject({ ratio: 1, grown_ml: 0 });
});

test("the level comes first, in two digits; cooling shrinks and falls; the working comes last", () => {
  const line = `--case aluminium --per-mm "18 ml/mm"`;
  expect(text(`${warmed} ${line}`)).toMatch(/^The level rises 3\.2 mm from 20 °C to 90 °C\.\n1\.2 L grow by 64 ml/);
  expect(text(`${warmed} ${line}`)).toContain("58 ml more than its aluminium case");
  const cooled = text(`--volume "1.2 L" --from "90 °C" --to "20 °C" ${line}`);
  expect(cooled).toMatch(/^The level falls \d\.\d mm[^\n]*\n1\.2 L shrink by 61 ml/);
  expect(text('--volume "1.2 L" --from "20 °C" --to "20 °C"')).toMatch(/^Nothing changes/);
  expect(text(warmed)).not.toContain("alpha_60");
  expect(text(`${warmed} --working`)).toMatch(
    /alpha_60[\s\S]*dV = V_1 \* \(r - 1\)[^\n]*\n[^\n]*\n {6}API MPMS 11\.1[^\n]*\n$/,
  );
});

test("the keys are there whatever was asked", () => {
  const keys = ["ratio", "expanded_ml", "grown_ml", "grownRange_ml", "net_ml", "levelRise_mm", "assumed", "working"];
  expect(Object.keys(answer(warmed))).toEqual(keys);
  expect(Object.keys(answer(`${warmed} --case iron --per-mm "18 ml/mm"`))).toEqual(keys);
});

describe("mistakes", () => {
  test.each([
    ['--from "20 °C" --to "90 °C"', /^--volume: given nothing; accepted: the fill at the first temperature/],
    [
      '--volume 1.2 --from "20 °C" --to "90 °C"',
      /^--volume: given "1\.2"; accepted: a number with its unit, as "1\.2 L"/,
    ],
    ['--volume "2 quarts" --from "20 °C" --to "90 °C"', /^--volume: given "2 quarts"; accepted: US qt or imp qt/],
    ['--volume "0 L" --from "20 °C" --to "90 °C"', /^--volume: given "0 L"; accepted: more than nothing/],
    ['--volume "1.2 L" --from "-60 °C" --to "90 °C"', /^--from: given "−60 °C"; accepted: -50 to 150 °C/],
    ['--volume "1.2 L" --from "20 °C" --to "200 °C"', /^--to: given "200 °C"; accepted: -50 to 150 °C/],
    [`${warmed} --density "0.88 kg/m³"`, /^--density: given "0\.88 kg\/m³"; accepted: 800\.9 to 1163\.5 kg\/m³/],
    [`${warmed} --density 880`, /^--density: given "880"; accepted: a number with its unit, as "880 kg\/m³"/],
    [`${warmed} --case tin`, /^--case: given "tin"; accepted: "aluminium", "magnesium" or "iron"$/],
    [`${warmed} --per-mm "18 ml"`, /^--per-mm: given "18 ml"; accepted: ml\/mm/],
  ])("expand %s", (line, expected) => expect(mistake(line)).toMatch(expected));
});

test("the example of --help runs, plainly and as JSON", () => {
  const line = /Example:\n {2}turnsleft (.+)\n/.exec(turnsleft(["expand", "--help"]).stdout)?.[1] ?? "";
  expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
  expect(documentOf(typed(line)).working.length).toBeGreaterThan(5);
});
