import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`sealant ${line}`));
const text = (line: string): string => turnsleft(typed(`sealant ${line}`)).stdout;
const names = (line: string): readonly string[] => answer(line).means.map((it: { means: string }) => it.means);
const steel = '--metals steel --temperature "22.5 °C"';

describe("published", () => {
  // Petrie, Handbook of Adhesives and Sealants, p. 388: full strength in 24 h at room temperature.
  test("full strength in 24 h at room temperature, twice that 10 K colder (from memory)", () => {
    const full = (T: string): number =>
      answer(`--state worn --gap "0.2 mm" --metals steel --temperature "${T}"`).means[0].full_h;
    agrees(full("22.5 °C"), "24");
    agrees(full("12.5 °C"), "48");
  });

  // US Army TM 10-3930-643-20, 2-12c: -54 to 149 °C.
  test("an anaerobic bears 150 °C, PTFE tape 125 (EN 751-3)", () => {
    const heat = (line: string): string => answer(line).means[0].heat.verdict;
    expect(heat(`--state worn --gap "0.2 mm" ${steel} --hottest "150 °C"`)).toBe("bears it");
    expect(heat(`--state worn --gap "0.2 mm" ${steel} --hottest "151 °C"`)).toBe("too hot");
    expect([heat('--taper --hottest "125 °C"'), heat('--taper --hottest "126 °C"')]).toEqual(["bears it", "too hot"]);
  });

  // T = tau · pi · d_2² · l / 2 for M18x1.5 (a check value only), 10 mm: 9, 23, 55 N·m at 2, 5 and 12 N/mm²; worked apart.
  test("what breaks each class loose on 10 mm of M18x1.5", () => {
    const { low, medium, high } = answer('--state worn --gap "0.2 mm" --thread M18x1.5 --engaged "10 mm"').breakaway_Nm;
    agrees(low[0], "9");
    agrees(low[1], "23");
    expect([low[1], medium[1]]).toEqual([medium[0], high[0]]);
    agrees(medium[1], "55");
  });

  // Petrie p. 388: no cure above about 30 mil, 0.76 mm. Grades to 0.25 and 0.5 mm from memory.
  test.each([
    ["0.25 mm", "low or medium anaerobic"],
    ["0.3 mm", "high-viscosity anaerobic"],
    ["0.5 mm", "high-viscosity anaerobic"],
    ["0.51 mm", "thread repair"],
  ])("a gap of %s takes %s", (gap, means) => expect(names(`--state worn --gap "${gap}"`)[0]).toBe(means));

  // MIL-A-46106B: silicone is not fuel-resistant.
  test("silicone does not hold fuel, and comes last", () => {
    const line = `--state worn --gap "0.4 mm" ${steel} --fluid fuel`;
    expect(names(line)).toEqual(["high-viscosity anaerobic", "silicone under the head"]);
    expect(text(line)).toContain("Not silicone under the head: it does not bear fuel");
  });
});

describe("what is chosen", () => {
  test("a sound thread takes a washer and no paste, and no tube is asked for", () => {
    expect(text("--state sound --washer")).toMatch(/^New washer at full torque\.\n/);
    expect(text("--state sound --washer")).not.toContain("Ask the label");
    expect(answer("--state sound --washer").avoid).toContain("any paste");
  });

  test("light alloy takes the activator, and bare aluminium without one does not start it", () => {
    const alloy = '--state worn --gap "0.2 mm" --metals "steel, aluminium" --temperature "20 °C"';
    expect(names(alloy)).toEqual(["low or medium anaerobic with activator"]);
    const zinc = '--state worn --gap "0.2 mm" --metals "steel, zinc" --temperature "20 °C"';
    expect(answer(zinc).means[0]).toMatchObject({ cures: false, hindrances: ["needs activator"] });
    expect(answer(`${zinc} --activator`).means[0]).toMatchObject({ cures: true });
  });

  test("too cold is said, and nothing is forced", () => {
    const cold = text('--state worn --gap "0.2 mm" --metals steel --temperature "3 °C"');
    expect(cold).toMatch(/^Nothing of this table stands here/);
    expect(cold).toContain("does not cure reliably below 5 °C");
  });

  test("haste, frequent opening, oil, a deep score and an unknown gap change it", () => {
    expect(names('--state worn --gap "0.2 mm" --within "8 h"')).toEqual(["bonded seal", "silicone with a splash wait"]);
    expect(names('--state worn --gap "0.2 mm" --opened-often')).toEqual(["gasket, reusable"]);
    expect(text('--state worn --gap "0.2 mm" --oily')).toContain("First: clean both sides to bare, dry metal");
    expect(answer('--state sound --score "0.2 mm"').first).toEqual(["dress the seat"]);
    expect(answer("--state worn").first).toEqual(["measure the gap"]);
    expect(names("--state worn --not-snug")[0]).toBe("thread repair");
    expect(names("--state torn")[0]).toBe("thread repair");
  });

  test("how it is undone: a scraper for silicone, tools and heat for an anaerobic", () => {
    expect(answer("--state worn").means[0].undone).toMatchObject({ by: "scraper and solvent", heatTo_degC: null });
    expect(answer('--state worn --gap "0.2 mm"').means[0].undone).toMatchObject({ heatTo_degC: 250 });
    expect(text('--state worn --gap "0.2 mm"')).toContain("give --metals and --temperature");
  });

  test("a tube past its date or for another fluid is not this one", () => {
    expect(text("--state worn --use-by 2026-01-31 --today 2026-11-25")).toMatch(/^Not this tube: it is past its date/);
    expect(text("--state worn --names-fluid no")).toMatch(/^Not this tube: its label does not name this fluid/);
    expect(text("--state sound --washer --names-fluid no")).toMatch(/^New washer/);
  });
});

test("the working shows the cure and the torque that breaks it loose", () => {
  const line = '--state worn --gap "0.2 mm" --metals steel --temperature "12 °C" --thread M20x1.5 --engaged "10 mm"';
  const all = answer(line).working.map((it: { formula: string }) => it.formula);
  expect(all).toEqual(
    expect.arrayContaining(["f = a^((T_0 - T) / 10)", "t = t_0 * f", "T = tau * pi * d_2^2 * l / 2"]),
  );
  expect(text(`${line} --working`)).toContain("shear on the pitch cylinder");
});

describe("mistakes", () => {
  test.each([
    ["", /^--state: given nothing; accepted: sound, worn or torn; or --taper/],
    ["--state tired", /^--state: given "tired"; accepted: "sound", "worn" or "torn"/],
    ["--state worn --gap 0.2", /^--gap: given "0\.2"/],
    ['--state sound --gap "0.2 mm"', /^--gap: given "0\.2 mm"; accepted: --state worn with it/],
    ['--state worn --score "0.05 mm"', /^--score: given "0\.05 mm"; accepted: --state sound with it/],
    ["--state worn --within soon", /^--within: given "soon"/],
    ['--state worn --metals "steel, wood"', /^--metals: given "wood"; accepted: steel, copper/],
    ["--state torn --temperature 12", /^--temperature: given "12"/],
    ["--state worn --hottest hot", /^--hottest: given "hot"/],
    ["--state worn --fluid milk", /^--fluid: given "milk"; accepted: "gear oil", "engine oil", "coolant" or "fuel"/],
    ["--state worn --thread M20x1.5", /^--engaged: given nothing/],
    ['--state worn --engaged "10 mm"', /^--thread: given nothing/],
    ["--state worn --names-fluid maybe", /^--names-fluid: given "maybe"/],
    ["--state worn --use-by 2026-02-30", /^--use-by: given "2026-02-30"/],
  ])("sealant %s", (line, expected) => {
    const { status, stdout, stderr } = turnsleft(typed(`sealant ${line}`));
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.slice("turnsleft: ".length)).toMatch(expected);
  });
});

test("each example of --help runs, plainly and as JSON", () => {
  const examples = [...turnsleft(["sealant", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(2);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).means.length).toBeGreaterThan(0);
  }
});
