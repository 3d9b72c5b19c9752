import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`volume ${line}`));
const text = (line: string): string => turnsleft(typed(`volume ${line}`)).stdout;
const ofFour = (out: string): string => `--out "${out} L" --expected "4.3 L"`;

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string): string {
  const { status, stdout, stderr } = turnsleft(typed(`volume ${line}`));
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

// The bands are judgement: under 45 % far too little, to 75 % low, to 115 % as expected, above too much.
describe("bands, and whether anything is filled", () => {
  test.each([
    ["0", "far too little", true],
    ["1.9", "far too little", true],
    ["2.9", "low", false],
    ["3.2", "low", false],
    ["3.3", "as expected", false],
    ["4.05", "as expected", false],
    ["4.9", "as expected", false],
    ["5.0", "too much", true],
  ])("%s of 4.3 L is %s", (out, band, stop) => expect(answer(ofFour(out))).toMatchObject({ band, stop }));

  test("a stop is the first word and an answer, exit 0; nothing else begins so", () => {
    for (const out of ["1.9", "5.0"]) {
      const { status, stdout, stderr } = turnsleft(typed(`volume ${ofFour(out)}`));
      expect([status, stderr]).toEqual([0, ""]);
      expect(stdout).toMatch(/^STOP before you fill anything/);
    }
    for (const out of ["3.0", "4.05"]) expect(text(ofFour(out))).not.toContain("STOP");
  });

  // NIST SP 811 (2008), B.8: an imperial pint is 0.568 L, so 4.3 of them are 2.44 L.
  test("2.2 of 4.3 L is low, and just what pints would make of it: a stop", () => {
    const it = answer(ofFour("2.2"));
    expect(it).toMatchObject({ band: "low", stop: true, fitsAsRead: false });
    agrees(it.ratio, "0.512");
    expect(it.unitPairs[0]).toMatchObject({ writtenAs: "imp pt", meant: "L", asWritten: true });
    agrees(it.unitPairs[0].ratio, "0.5683");
    expect(text(ofFour("2.2"))).toContain("It would fit if the expected figure is in imp pt, not L.");
  });

  test("94 % is as expected and says nothing more", () => {
    expect(text(ofFour("4.05"))).toBe("94 % of what should have come out: as expected.\n");
    expect(answer(ofFour("4.05"))).toMatchObject({ fitsAsRead: true, unitPairs: [] });
  });

  test("near the edge of a band the next one is named, far from it none", () => {
    expect(text(ofFour("3.3"))).toContain('it is "low"');
    expect(text(ofFour("4.05"))).not.toContain("it is");
  });

  test("what was in it is told in two digits, and that it ran dry", () => {
    expect(text(ofFour("2.9"))).toMatch(/it held 2\.\d to 3\.\d L/);
    expect(text(ofFour("0"))).toContain("Nothing was in it");
  });
});

describe("units that are mistaken for each other", () => {
  // NIST SP 811 (2008), B.8: 0.9463529 L and 1.1365225 L.
  test("US and imperial quarts are told apart, without a stop where it may be an ordinary drain", () => {
    const line = '--out "2.0 US qt" --expected "2.0 imp qt"';
    const it = answer(line);
    expect(it).toMatchObject({ band: "as expected", stop: false, fitsAsRead: false });
    expect(it.unitPairs[0]).toMatchObject({ writtenAs: "US qt", meant: "imp qt", asWritten: true });
    agrees(it.unitPairs[0].ratio, "0.8327");
    expect(text(line)).toContain("what came out was imp qt, not US qt");
  });

  test("an ordinary drain in litres is not picked apart", () => {
    expect(text(ofFour("3.8")).trim().split("\n")).toHaveLength(1);
  });

  test("four times what should have come out is US gallons written as litres", () => {
    // NIST SP 811 (2008), B.8: 3.785412 L.
    expect(answer('--out "16.3 L" --expected "4.3 L"')).toMatchObject({ band: "too much", stop: true });
    expect(text('--out "16.3 L" --expected "4.3 L"')).toContain("the expected figure is in US gal, not L");
  });
});

describe("flush", () => {
  const flushed = `${ofFour("4.05")} --flush-in "0.3 L" --flush-out "0.28 L"`;

  test("is balanced by itself: 20 ml stayed in, less than two jugs can tell", () => {
    const it = answer(flushed);
    agrees(it.flushLeft_ml, "20");
    expect(it.ratio).toBe(answer(ofFour("4.05")).ratio);
    // Two jugs of 3 %: the root of 9² and 8.4² is 12.3 ml.
    agrees(it.flushLeftUncertainty_ml, "12");
    expect(text(flushed)).toContain("two jugs can tell");
    expect(text(`${ofFour("4.05")} --flush-in "0.3 L" --flush-out "0.1 L"`)).toContain("about 200 ml stayed inside");
    expect(text(`${ofFour("4.05")} --flush-in "0.3 L" --flush-out "0.5 L"`)).toContain("More flush came back");
  });

  test("goes on the bill beside the fill, and is no part of it", () => {
    expect(answer(flushed)).toMatchObject({ flushUsed_L: 0.3, fluidUsed_L: null });
    expect(text(flushed)).toContain("For the bill: 0.3 L of flush beside the fill.");
    expect(answer(`${flushed} --fill "4.3 L"`).fluidUsed_L).toBe(4.6);
    expect(text(`${flushed} --fill "4.3 L"`)).toContain("For the bill: 4.6 L of fluid, the flush included.");
  });
});

test("the keys are there whatever was asked, the odds make up one, and what was assumed is listed", () => {
  const keys = ["ratio", "band", "stop", "odds", "before_L", "fitsAsRead", "unitPairs", "flushLeft_ml"];
  const rest = ["flushLeftUncertainty_ml", "flushUsed_L", "fluidUsed_L", "assumed", "working"];
  const it = answer(ofFour("2.2"));
  expect(Object.keys(it)).toEqual([...keys, ...rest]);
  expect(Object.keys(answer(`${ofFour("2.2")} --flush-in "0.3 L" --flush-out "0.3 L"`))).toEqual([...keys, ...rest]);
  const odds: readonly number[] = Object.values(it.odds);
  expect(odds.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 2);
  expect(it.assumed.map(({ reading }: { reading: string }) => reading)).toEqual(["jug", "stays in the case"]);
});

test("the working comes last, and only where it is asked for", () => {
  expect(text(`${ofFour("4.05")} --working`)).toMatch(/^94 %[\s\S]*r = V_out \/ V_exp[\s\S]*volume balance\n$/);
});

describe("mistakes", () => {
  test.each([
    ['--out "2.2 L"', /^--expected: given nothing; accepted: what should have/],
    ['--expected "4.3 L"', /^--out: given nothing; accepted: what came out/],
    ['--out 2.2 --expected "4.3 L"', /^--out: given "2\.2"; accepted: a number with its unit, as "2\.2 L"/],
    ['--out "2 pints" --expected "4.3 L"', /^--out: given "2 pints"; accepted: US pt or imp pt/],
    ['--out "2 L" --expected "2 gallons"', /^--expected: given "2 gallons"; accepted: US gal or imp gal/],
    ['--out "2 kg" --expected "4.3 L"', /^--out: given "2 kg"; accepted: /],
    ['--out "-1 L" --expected "4.3 L"', /^--out: given "−1 L"; accepted: nothing below zero/],
    ['--out "1 L" --expected "0 L"', /^--expected: given "0 L"; accepted: more than nothing/],
    [
      `${ofFour("4")} --flush-in "0.3 L"`,
      /^--flush-out: given nothing; accepted: --flush-in and --flush-out together$/,
    ],
    [
      `${ofFour("4")} --flush-out "0.3 L"`,
      /^--flush-in: given nothing; accepted: --flush-in and --flush-out together$/,
    ],
  ])("volume %s", (line, expected) => expect(mistake(line)).toMatch(expected));
});

test("the example of --help runs, plainly and as JSON", () => {
  const line = /Example:\n {2}turnsleft (.+)\n/.exec(turnsleft(["volume", "--help"]).stdout)?.[1] ?? "";
  expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
  expect(documentOf(typed(line)).stop).toBe(true);
});
