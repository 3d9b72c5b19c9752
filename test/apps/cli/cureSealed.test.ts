import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const clock = 'cure --bead "3 mm" --temperature "12 °C" --humidity "65 %"';
const answer = (line: string) => documentOf(typed(`${clock} ${line}`));
const text = (line: string): string => turnsleft(typed(`${clock} ${line}`)).stdout;
const formulas = (line: string): readonly string[] =>
  answer(line).working.map((step: { formula: string }) => step.formula);
const seat = '--bead-on "23.7 mm" --seat-inside "20.4 mm" --seat-outside "27 mm"';

describe("published", () => {
  // Plain geometry: pi/4 · 2² · pi · 24 = 236.9 mm³, pi/4 · 3² · 70 = 494.8 mm³.
  test("a bead of 2 mm round 24 mm is 0.24 ml, one of 3 mm 70 mm long 0.49", () => {
    agrees(
      answer('--bead-diameter "2 mm" --bead-on "24 mm" --seat-inside "20.4 mm" --seat-outside "27 mm"').bead_ml,
      "0.24",
    );
    agrees(answer('--bead-diameter "3 mm" --bead-length "70 mm"').bead_ml, "0.49");
  });

  // Half, less the 1.65 mm to the inner edge over the breadth pi/4 · 2² / 0.2 mm: 0.395.
  test("2 mm pressed to 0.2 mm sends 39 % inward", () => {
    const it = answer(`--bead-diameter "2 mm" ${seat} --film "0.2 mm"`);
    expect(it).toMatchObject({ inwardShare: 0.39, covers: "the whole seat", beadAdvice: "thinner, or farther out" });
    expect(it.inwardRange_ml).toBeNull();
  });

  // Bingham paste of 200 to 500 Pa (from memory), 3 mm long, balance of forces: 12 to 30 kPa in 0.1 mm, 2.4 to 6 in 0.5 mm.
  test.each([
    ["0.1 mm", [12, 30]],
    ["0.5 mm", [2.4, 6]],
  ])("uncured paste in %s holds %j kPa", (gap, ends) => expect(answer(`--gap "${gap}"`).pasteHolds_kPa).toEqual(ends));

  // 60° geometry of M18x1.5, 6H/6g, 10 mm: the clearance holds 0.06 ml.
  test("of 0.3 ml on 10 mm of M18x1.5 all but 0.06 ml goes inside", () => {
    const it = answer('--on-thread "0.3 ml" --thread M18x1.5 --engaged "10 mm"');
    agrees(it.threadHolds_ml, "0.06");
    agrees(it.squeezedInside_ml, "0.2");
  });

  // MIL-A-46106B, group III: 205 °C.
  test("silicone bears 205 °C and no more", () => {
    expect(answer('--hottest "205 °C"').heat).toMatchObject({ verdict: "bears it", room_K: 0 });
    expect(answer('--hottest "206 °C"').heat.verdict).toBe("too hot");
    expect(text('--hottest "206 °C"')).toMatch(/^Not silicone: 206 °C is more than it bears/);
  });
});

test("a thinner bead sends less inward, and without a film the range of films is told", () => {
  const share = (d: string): number => answer(`--bead-diameter "${d}" ${seat}`).inwardShare;
  expect(share("1 mm")).toBeLessThan(share("2 mm"));
  const { inward_ml, inwardRange_ml } = answer(`--bead-diameter "2 mm" ${seat}`);
  expect(inwardRange_ml[0]).toBeLessThan(inward_ml);
  expect(inwardRange_ml[1]).toBeGreaterThan(inward_ml);
  expect(text(`--bead-diameter "2 mm" ${seat}`)).toContain("by the film left under the head");
});

test("inside a thread the way is longer than a straight gap, and along the helix practically without end", () => {
  const { insideThread } = answer('--thread M20x1.5 --engaged "12 mm"');
  expect(insideThread).toMatchObject({ depth_mm: 12, flankOnFlank: "practically never" });
  // Twice the way takes four times as long; each figure has two digits.
  expect(Math.abs(insideThread.slack_h / insideThread.straightGap_h - 4)).toBeLessThan(0.3);
  expect(text("")).toContain("Where flank lies on flank it practically never cures");
});

describe("the label is asked, not assumed", () => {
  test("as long as nobody has looked", () => {
    expect(answer("").asked).toEqual(["does the label name this fluid?", "is the sealant in date?"]);
    expect(text("")).toContain("Does it name this fluid?");
  });

  test("a tube that does not name the fluid, or is past its date, is not this one", () => {
    expect(text("--names-fluid no")).toMatch(/^Not this tube: its label does not name this fluid/);
    expect(text("--use-by 2026-10-31 --today 2026-11-25")).toMatch(/^Not this tube: it is past its date, 2026-10-31/);
    const good = answer("--names-fluid yes --use-by 2026-11-25 --today 2026-11-25");
    expect(good.asked).toEqual([]);
    expect(good.label.map((it: { verdict: string }) => it.verdict)).toEqual(["yes", "yes", "asked"]);
  });

  test("what a silicone gives off is minded", () => {
    expect(text("--type acetoxy")).toContain("corrodes metals");
    expect(text("--type oxime")).toContain("restricted in Europe");
    expect(text("--type alkoxy")).not.toMatch(/acid|restricted/);
  });
});

test("a blocked breather blows uncured paste out, a vented case does not", () => {
  expect(answer('--gap "0.1 mm" --pressure "5 kPa"').pasteVerdict).toBe("holds");
  expect(answer('--gap "0.5 mm" --pressure "31 kPa"').pasteVerdict).toBe("is blown out");
});

test("the working shows the bead, the paste and the thread", () => {
  const all = formulas(
    `--bead-diameter "2 mm" ${seat} --gap "0.1 mm" --on-thread "0.3 ml" --thread M20x1.5 --engaged "10 mm"`,
  );
  for (const equation of ["V_b = pi / 4 * d_b^2 * l", "s = 1/2 - a / B", "Dp = 2 * tau_y * l / h", "V_x = V - V_c"])
    expect(all).toContain(equation);
});

describe("mistakes", () => {
  test.each([
    ['--bead-length "75 mm"', /^--bead-diameter: given nothing/],
    ['--bead-diameter "2 mm"', /^--bead-on: given nothing/],
    ['--bead-diameter 2 --bead-length "75 mm"', /^--bead-diameter: given "2"/],
    ['--bead-diameter "2 mm" --bead-on "24 mm"', /^--seat-inside: given nothing/],
    [
      '--bead-diameter "2 mm" --bead-on "24 mm" --bead-length "75 mm"',
      /^--bead-on: given "24 mm"; accepted: nothing beside/,
    ],
    [
      '--bead-diameter "2 mm" --bead-on "24 mm" --seat-inside "27 mm" --seat-outside "20 mm"',
      /^--seat-outside: given "20 mm"/,
    ],
    [`--bead-diameter "2 mm" ${seat} --film "0 mm"`, /^--film: given "0 mm"/],
    ['--on-thread "0.3 ml"', /^--thread: given nothing/],
    ['--on-thread "0.3 ml" --thread M20x1.5', /^--engaged: given nothing/],
    ['--on-thread 0.3 --thread M20x1.5 --engaged "10 mm"', /^--on-thread: given "0\.3"/],
    ["--thread M20x9", /^--thread: given "M20x9"/],
    ['--pressure "5 kPa"', /^--gap: given nothing/],
    ["--gap thin", /^--gap: given "thin"/],
    ["--hottest 120", /^--hottest: given "120"/],
    ["--names-fluid perhaps", /^--names-fluid: given "perhaps"; accepted: "yes", "no" or "unknown"/],
    ["--use-by soon", /^--use-by: given "soon"; accepted: a day as 2026-11-25/],
    ["--use-by 2027-03-31 --today now", /^--today: given "now"/],
    ["--type rubber", /^--type: given "rubber"/],
  ])("cure %s", (line, expected) => {
    const { status, stdout, stderr } = turnsleft(typed(`${clock} ${line}`));
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.slice("turnsleft: ".length)).toMatch(expected);
  });
});

test("each example of --help runs, plainly and as JSON with its working", () => {
  const examples = [...turnsleft(["cure", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(3);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});
