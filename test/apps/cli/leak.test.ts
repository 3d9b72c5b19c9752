import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string, input?: string) => documentOf(typed(`leak ${line}`), input);
const text = (line: string, input?: string): string => turnsleft(typed(`leak ${line}`), input).stdout;
const counted = '--drops 7 --in "10 min"';
const whole = `${counted} --to-limit "8 mm" --per-mm "22 ml/mm" --breather free --signs none`;

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string, input?: string): string {
  const { status, stdout, stderr } = turnsleft(typed(`leak ${line}`), input);
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

describe("published", () => {
  // F. Garwood, Biometrika 28 (1936): 7 events are 2.81 to 14.42; 0 are 0 to 3.69; 20 are 12.22 to 30.89. A drop of
  // 0.020 to 0.050 ml (judgement about 0.002 in³, lubricator practice).
  test.each([
    ["7", 10, "2.81", "14.42"],
    ["20", 5, "12.22", "30.89"],
    ["0", 30, "0.00", "3.69"],
  ])("%s drops in %i minutes are %s to %s on average", (drops, minutes, low, high) => {
    const [least, most] = answer(`--drops ${drops} --in "${minutes} min"`).honest_ml;
    const perDay = (count: string, drop_ml: number): number => ((Number(count) * 1440) / minutes) * drop_ml;
    expect(least).toBe(Number(perDay(low, 0.02).toPrecision(2)));
    expect(most).toBe(Number(perDay(high, 0.05).toPrecision(2)));
  });

  // One drop a minute is 47.5 ml a day, 29 to 72 by the size of a drop (trade tables, 0.002 in³).
  test("a drop a minute is 48 ml a day, 29 to 72", () => {
    const it = answer('--drops 10 --in "10 min"');
    agrees(it.perDay_ml, "48");
    expect(it.bySize_ml).toEqual([29, 72]);
  });

  // Tate with Harkins and Brown's correction, Heertjes (1971), oil of 0.032 N/m: 35 drops a millilitre at 2 mm, 28 at 2.5.
  test.each([
    ["1.5 mm", 0.022],
    ["2 mm", 0.029],
    ["2.5 mm", 0.035],
    ["4 mm", 0.058],
  ])("a lip of %s lets go %d ml", (radius, drop_ml) => {
    const { perDay_ml } = answer(`--drops 100 --in "100 min" --lip-radius "${radius}"`);
    // Two digits are told a day and two stand here: half a unit of the last of each.
    expect(Math.abs(perDay_ml - 1440 * drop_ml)).toBeLessThanOrEqual(0.5 + 1440 * 0.0005);
  });

  // Worked apart in R 4.2.2, limits verified by substitution: x 0, 180, 420 km, y 2, 6, 9 mm, limit 15 mm.
  const readings = "distance_km,below_mm\n0,2\n180,6\n420,9\n";
  test.each([
    ["0.5 mm", "682", "886"],
    ["1 mm", "616", "1060"],
  ])("read to %s the limit lies at 768 km, %s to %s", (readTo, earliest, latest) => {
    const it = answer(`--readings - --limit "15 mm" --read-to "${readTo}"`, readings);
    expect(it).toMatchObject({ type: "reached", at_km: 768, left_km: 348 });
    expect([it.earliest_km, it.latest_km]).toEqual([Number(earliest), Number(latest)]);
    expect(it.leftAtLeast_km).toBe(it.earliest_km - 420);
  });
  test("two readings 420 km apart put it at 780 km, 625 to 1076", () => {
    const it = answer('--readings - --limit "15 mm"', "distance_km,below_mm\n0,2\n420,9\n");
    expect(it).toMatchObject({ at_km: 780, earliest_km: 625, latest_km: 1080 });
  });

  // 12 mm at 18 ml/mm are 216 ml.
  test("12 mm over 5000 km are 4.3 ml in 100 km", () => {
    const it = answer('--fallen "12 mm" --per-mm "18 ml/mm" --over "5000 km" --fill "1.2 L"');
    expect(it).toMatchObject({ type: "loses", lost_ml: 220, per100km_ml: 4.3, shareLost: 0.18, shareVerdict: "warn" });
    // Two readings of 1 mm each: 1.41 mm of 12.
    agrees(it.lostUncertainty_ml, "25");
  });

  // US Army TM 5-3895-383-24, 1-10; ISO/TR 11340, table 1, as quoted.
  test.each([
    ["weep", "I", 2],
    ["drop hanging", "II", 3],
    ["drip", "III", 4],
    ["stream", "III", 5],
  ])("a %s is class %s and %i", (look, pmcs, isoTr11340) => {
    expect(answer(`--look "${look}"`)).toMatchObject({ pmcs, isoTr11340 });
  });
});

describe("7 drops in 10 minutes", () => {
  test("are 20 to 50 ml a day parked, 8 to 100 with the short count", () => {
    expect(text(whole).split("\n").slice(0, 3)).toEqual([
      "20 to 50 ml a day parked, by the size of a drop (8 to 100 with the short count).",
      "That is 0.9 to 2.3 mm of level a day.",
      "To the limit 3 to 8.5 days parked (1.5 to 21 days with the short count); half of that, or worse, when driven.",
    ]);
  });

  test("have a message of one paragraph with the stop words and its caution", () => {
    const { message } = answer(whole);
    expect(message).not.toContain("\n");
    for (const words of ["tyre", "brake", "exhaust", "belt", "water", "noise", "turn to a string", "no long hot run"])
      expect(message).toContain(words);
    expect(message).toMatch(/This is an estimate to help, not an approval to drive; .* local rules come first\.$/);
    expect(text(whole)).toContain(`"${message}"`);
  });

  test("last half as long when driven, by the careful end", () => {
    const it = answer(whole);
    expect(it.driven_days[0] / it.parkedHonest_days[0]).toBeCloseTo(0.5, 1);
    expect(it.parkedHonest_days[0]).toBeLessThan(it.parked_days[0]);
    expect(it.working.map((step: { formula: string }) => step.formula)).toContain("t = V / Q");
  });

  test("are no days before signs and breather are known", () => {
    expect(answer(counted)).toMatchObject({ triage: "ask first", questions: ["stop signs", "breather"] });
    expect(answer(counted).message).toContain("Before you drive, tell us");
  });
});

describe("what goes first", () => {
  test("a blocked breather, in the answer and in the message", () => {
    const blocked = `${counted} --signs none --breather blocked`;
    expect(text(blocked)).toMatch(/^Free the breather first/);
    expect(answer(blocked).message).toContain("Its breather is blocked");
    expect(text("--readings examples/levels.csv --breather blocked")).toMatch(/^Free the breather first/);
  });

  test("a stop sign, before the breather", () => {
    const tyre = `${whole.replace("--signs none", '--signs "oil on a tyre, noise"')}`.replace("free", "blocked");
    expect(text(tyre)).toMatch(/^Do not drive: oil on a tyre, noise\. Fetch it\./);
    expect(answer(tyre)).toMatchObject({ triage: "do not drive", parked_days: null });
    expect(answer(tyre).message).toContain("we will have it fetched");
  });
});

describe("figures that do not tell", () => {
  test("no drop in half an hour is still less than 9 ml a day", () => {
    expect(text('--drops 0 --in "30 min"')).toMatch(/^No drop seen: less than 9 ml a day/);
  });

  test("a level that hardly fell is no loss seen", () => {
    const it = answer('--fallen "1 mm" --per-mm "18 ml/mm" --over "5000 km" --to-limit "8 mm"');
    expect(it).toMatchObject({ type: "no loss seen", per100km_ml: null, left_km: null });
    expect(it.per100kmMost_ml).toBeGreaterThan(0);
  });

  test("readings within their own error are not enough data, and rising ones do not fall", () => {
    const rows = (...below: number[]): string =>
      `distance_km,below_mm\n${below.map((it, i) => `${100 * i},${it}`).join("\n")}\n`;
    expect(answer("--readings -", rows(0, 1, 0))).toMatchObject({ type: "not enough data", at_km: null });
    expect(text("--readings -", rows(0, 1, 0))).toMatch(/^Not enough data/);
    expect(answer("--readings -", rows(9, 5, 1)).type).toBe("not falling");
    expect(text("--readings -", rows(0, 5, 11))).toMatch(/^Act now/);
  });

  test("a near end is rounded down and a far end up", () => {
    const it = answer("--readings examples/levels.csv");
    expect(text("--readings examples/levels.csv")).toContain("as early as 6700, as late as 13000");
    expect([it.earliest_km, it.latest_km]).toEqual([6790, 12600]);
  });
});

describe("mistakes", () => {
  test.each([
    [
      "",
      /^--drops: given nothing; accepted: --drops and --in, or --fallen, --readings, --look, --spot, --through or --closed-at$/,
    ],
    ["--drops 7", /^--in: given nothing/],
    ['--drops few --in "10 min"', /^--drops: given "few"; accepted: a whole number of drops, as 7$/],
    ["--drops 7 --in 10", /^--in: given "10"; accepted: a number with its unit, as "10 min"/],
    [`${counted} --fallen "2 mm"`, /^--fallen: given "2 mm"; accepted: nothing beside --drops/],
    [`${counted} --lip-radius "90 mm"`, /^--lip-radius: given "90 mm"; accepted: a lip of about 0\.5 to 6 mm/],
    [`${counted} --breather maybe`, /^--breather: given "maybe"; accepted: "free", "blocked" or "none"$/],
    [`${counted} --signs smoke`, /^--signs: given "smoke"; accepted: none, or oil on a tyre/],
    [`${counted} --to-limit "8"`, /^--to-limit: given "8"/],
    ['--fallen "12 mm" --over "5000 km"', /^--per-mm: given nothing/],
    ['--fallen "12 mm" --per-mm "18 ml/mm"', /^--over: given nothing/],
    ["--look wet", /^--look: given "wet"; accepted: dry, stain/],
    ["--readings no-such.csv", /given "no-such\.csv"; accepted: a file that can be read/],
    ['--readings examples/levels.csv --read-to "0 mm"', /^--read-to: given "0 mm"; accepted: more than nothing/],
  ])("leak %s", (line, expected) => expect(mistake(line)).toMatch(expected));

  test("a level that is no figure is named by its line and column", () => {
    expect(mistake("--readings -", "distance_km,below_mm\n0,0\n100,low\n")).toMatch(/^line 3, below_mm: given "low"/);
  });
});

test("each example of --help runs, plainly and as JSON with its working", () => {
  const examples = [...turnsleft(["leak", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(7);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});
