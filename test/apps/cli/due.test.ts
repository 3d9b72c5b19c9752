import { describe, expect, test } from "vitest";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string, input?: string) => documentOf(typed(`due ${line}`), input);
const text = (line: string, input?: string): string => turnsleft(typed(`due ${line}`), input).stdout;
const service = '--last 2026-01-10 --at "84210 km" --now "87960 km" --today 2026-04-20';
const list = (...rows: readonly string[]): string => `on,meter\n${rows.join("\n")}\n`;

describe("published", () => {
  // 37.5 km a day with a coefficient of variation of 0.3: 500 km take 13.3 days, 90 % from 8.2 to 21.6; worked apart.
  test("500 km after a repair come in 13 days, 8 to 21", () => {
    const looks = answer(`${service} --every "20000 km" --repaired 2026-04-20`).looks;
    expect(looks.find(({ id }: { id: string }) => id === "by distance")).toMatchObject({
      on: "2026-05-03",
      earliest: "2026-04-28",
      latest: "2026-05-11",
    });
    expect(looks.map(({ id }: { id: string }) => id)).toEqual([
      "wipe dry",
      "first look",
      "first hot run",
      "next day",
      "by distance",
      "each service",
    ]);
  });

  // NIST SP 811: a mile is 1.609344 km, so 55 000 read as km are 88 513.9 km in miles.
  test("a jump of 1.609 is a change of unit", () => {
    const { readings, plausible } = answer(
      "--meter -",
      list("2026-01-01,84210 km", "2026-01-31,87960 km", "2026-02-20,55000 km"),
    );
    expect(plausible).toBe(false);
    expect(readings[2]).toMatchObject({ verdict: "unit changed", of: "later", readIn: "mi", corrected_km: 88513.92 });
  });
});

describe("a list of meter readings", () => {
  test("rollover, falling and too fast are told, each with its line; miles and kilometres may stand side by side", () => {
    expect(text("--meter -", list("2026-01-01,99900 km", "2026-01-11,150 km"))).toContain("counted on it is 100150 km");
    expect(text("--meter -", list("2026-01-01,87960 km", "2026-04-01,84210 km"))).toMatch(
      /line 3, .*reads less than before/,
    );
    expect(text("--meter -", list("2026-01-01,1000 km", "2026-01-11,90000 km"))).toContain("nothing is used that much");
    expect(answer("--meter -", list("2026-01-01,52325 mi", "2026-04-01,87960 km")).plausible).toBe(true);
    expect(text("--meter -", list("2026-01-01,52325 mi", "2026-04-01,87960 km"))).toBe(
      "All 2 readings can follow one another.\n",
    );
  });

  test("hours hold no more than the day has, and days stand in order", () => {
    expect(answer("--meter -", list("2026-01-01,640 h", "2026-01-11,700 h")).readings[1]).toMatchObject({
      verdict: "plausible",
      perDay_h: 6,
    });
    expect(answer("--meter -", list("2026-01-01,640 h", "2026-01-11,1000 h")).readings[1].verdict).toBe("too fast");
    expect(answer("--meter -", list("2026-01-11,640 h", "2026-01-01,650 h")).readings[1].verdict).toBe(
      "dates out of order",
    );
    expect(answer("--meter -", list("2026-01-01,640 h", "2026-01-11,84210 km")).readings[1].verdict).toBe(
      "different meters",
    );
  });

  test("the example has one of each, and its working has the rates", () => {
    const { readings, working } = answer("--meter examples/meter.csv");
    expect(readings.map(({ verdict }: { verdict: string }) => verdict)).toEqual([
      null,
      "plausible",
      "unit changed",
      "plausible",
      "falling",
      "rolled over",
    ]);
    expect(working.map(({ formula }: { formula: string }) => formula)).toContain("r = (x_2 - x_1) / Dt");
  });
});

describe("what is said", () => {
  test("severe duty is a setting that everybody sees, set or not", () => {
    const every = `${service} --every "20000 km"`;
    expect(answer(every).severe).toBe(1);
    expect(text(every)).toContain("Ordinary duty is set");
    expect(answer(`${every} --severe 0.5`).severe).toBe(0.5);
    expect(text(`${every} --severe 0.5`)).toContain("cut to 0.5 of the interval");
    expect(answer(`${every} --severe 0.5`).limits[0].left).toBe(6250);
  });

  test("after water or milky oil it is due now, whatever the interval", () => {
    expect(answer('--last 2026-01-10 --happened "water immersion"')).toMatchObject({
      type: "now",
      because: "water immersion",
    });
    expect(text(`${service} --every "20000 km" --happened "milky oil"`)).toMatch(/^Due now: milky oil\.\n/);
  });

  test("days are told with two digits, a date alone without a range", () => {
    expect(text(`${service} --every "20000 km"`)).toContain("about 430 days, 260 to 710");
    expect(text("--last 2026-01-10 --today 2026-04-20 --months 12")).toMatch(/^Due about 2027-01-10, by date\.\n/);
  });

  test("the working shows what is left and how fast it goes", () => {
    expect(text(`${service} --every "20000 km" --working`)).toContain(
      "= 84210 km + 20000 km * 1 - 87960 km = 16250 km",
    );
  });
});

describe("mistakes", () => {
  test.each([
    ["", "", /^--last: given nothing; accepted: the day of the last service, as 2026-01-10; or --meter/],
    ["--last 2026-01-10", "", /^--every: given "nothing"; accepted: an interval/],
    [
      '--last 2026-01-10 --happened "flat tyre"',
      "",
      /^--happened: given "flat tyre"; accepted: "water immersion" or "milky oil"/,
    ],
    ["--last 2026-01-10 --months 12 --repaired soon", "", /^--repaired: given "soon"/],
    [
      "--last 2026-01-10 --meter -",
      list("2026-01-01,1 km", "2026-01-02,2 km"),
      /^--last: given "2026-01-10"; accepted: nothing beside --meter/,
    ],
    ["--meter no-such.csv", "", /^--meter: given "no-such\.csv"; accepted: a file that can be read/],
    ["--meter -", "day,km\n2026-01-01,1\n2026-01-02,2\n", /^--meter: given "-"; accepted: the columns on, meter/],
    ["--meter -", list("2026-01-01,1 km"), /^--meter: given "-"; accepted: at least two readings/],
    ["--meter -", list("2026-01-01,1 km", "2026-13-01,2 km"), /^line 3, on: given "2026-13-01"/],
    [
      "--meter -",
      list("2026-01-01,84210", "2026-01-02,2 km"),
      /^line 2, meter: given "84210"; accepted: a number with its unit/,
    ],
    [
      "--meter -",
      list("2026-01-01,1 km", "2026-01-02,2 kg"),
      /^line 3, meter: given "2 kg"; accepted: a distance or hours/,
    ],
  ])("due %s", (line, input, expected) => {
    const { status, stdout, stderr } = turnsleft(typed(`due ${line}`), input);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.slice("turnsleft: ".length)).toMatch(expected);
  });
});

test("each example of --help runs, plainly and as JSON with its working", () => {
  const examples = [...turnsleft(["due", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map((it) => it[1] ?? "");
  expect(examples).toHaveLength(4);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});
