import { describe, expect, test } from "vitest";
import { type Changes, changedCase } from "../../mechanics/remedies/changedCase.ts";
import { turnsleft, typed } from "./turnsleft.ts";

const example = "examples/chain-case-level.json";

/** Exit 2, nothing on standard output, one line on standard error: the field, what was given, what is accepted. */
function mistake(options: readonly string[], input?: string): string {
  const { status, stdout, stderr } = turnsleft(options, input);
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

describe("what was typed", () => {
  test.each([
    ["", /^command: given nothing; accepted: weigh, thread, photo, limits, /],
    ["wiegh case.json", /^command: given "wiegh"; accepted: weigh$/],
    ["loosen", /^command: given "loosen"; accepted: weigh, thread, photo, limits, /],
    ["--verison", /^--verison: given an option that is not known here; accepted: --version$/],
    [`weigh ${example} --jsno`, /^--jsno: given an option that is not known here; accepted: --json$/],
    [`weigh ${example} --att 10`, /accepted: --at$/],
    ["weigh", /^case\.json: given nothing; accepted: a file, - for standard input, or --template$/],
    [
      `weigh ${example} ${example}`,
      /^weigh: given "examples\/chain-case-level\.json" as well; accepted: turnsleft weigh/,
    ],
    ["weigh nowhere.json", /^case\.json: given "nowhere\.json"; accepted: a file that can be read \(ENOENT\)$/],
    ["weigh examples", /^case\.json: given "examples"; accepted: a file that can be read \(EISDIR\)$/],
    ["weigh README.md", /^case\.json: given "README\.md"; accepted: JSON; /],
    [`weigh ${example} --at`, /^--at: given nothing; accepted: odds at these torques/],
    [`weigh ${example} --at ten`, /^--at: given "ten"; accepted: torques in N·m with commas between them/],
    [`weigh ${example} --at 10,,20`, /^--at: given "10,,20"/],
    [`weigh ${example} --at "10 N·m"`, /^--at: given "10 N·m"/],
    [`weigh ${example} --at 0`, /^--at: given "0"/],
    [`weigh ${example} --at 1e2`, /^--at: given "1e2"/],
    [
      `weigh ${example} --svg nowhere/port.svg`,
      /^--svg: given "nowhere\/port\.svg"; accepted: a file that can be written \(ENOENT\)$/,
    ],
    ["limits", /^thread: given nothing; accepted: /],
    ["limits M20x1.7", /^thread: given "M20x1\.7"; accepted: .*2\.5, 2, 1\.5/],
    [
      "limits M20x1.5 --plug 6z",
      /^--plug: given "6z"; accepted: pitch grade 3 4 5 6 7 8 9, crest grade 4 6 8, deviation e f g h/,
    ],
    ["limits M20x1.5 --plug 5h5g", /^--plug: given "5h5g"/],
    [
      "limits M20x1.5 --hole 9H",
      /^--hole: given "9H"; accepted: pitch grade 4 5 6 7 8, crest grade 4 5 6 7 8, deviation G H/,
    ],
    ["strip M20x1.5", /^--length: given nothing; accepted: engaged length/],
    ["strip M20x1.5 --length 20", /^--length: given "20"; accepted: a number with its unit, as "20 mm"/],
    ['strip M20x1.5 --length "20 N"', /^--length: given "20 N"; accepted: mm, /],
    ['strip M20x1.5 --length "-20 mm"', /^--length: given "−20 mm"; accepted: more than nothing/],
    ['strip M20x1.5 --length "20 mm" --basis most', /^--basis: given "most"; accepted: "least" or "basic"$/],
    ['strip M20x1.5 --length "20 mm" --material cheese', /^--material: given "cheese"; accepted: "EN AC-46000"/],
    [
      'torque --thread M20x1.5 --friction 0.12 --bearing "23 mm"',
      /^--force: given nothing; accepted: either --force or --torque/,
    ],
    [
      'torque --thread M20x1.5 --force "20 kN" --torque "46 N·m" --friction 0.12 --bearing "23 mm"',
      /^--force: given "20 kN"; accepted: either --force or --torque, one of them$/,
    ],
    [
      'torque --thread M20x1.5 --force 20 --friction 0.12 --bearing "23 mm"',
      /^--force: given "20"; accepted: a number with/,
    ],
    [
      'torque --thread M20x1.5 --force "20 kN" --friction oily --bearing "23 mm"',
      /^--friction: given "oily"; accepted: a number/,
    ],
    [
      'torque --force "20 kN" --friction 0.12 --bearing "23 mm"',
      /^--thread: given nothing; accepted: a parallel thread/,
    ],
    ["convert 46 lbf·ft", /^quantity: given "46"; accepted: a number with its unit/],
    ['convert "46 N·m"', /^unit: given nothing; accepted: the unit wanted/],
    ['convert "46 N·m" zorg', /^unit: given "zorg"; accepted: N·m, /],
    ['convert "46 N·m" mm', /^unit: given "mm"; accepted: N·m, /],
    [
      'convert "2 pints" L',
      /^quantity: given "2 pints"; accepted: US pt or imp pt; "pints" alone names more than one unit$/,
    ],
    ['convert "2 L" quart', /^unit: given "quart"; accepted: US qt or imp qt$/],
    ['convert "1,234.5 mm" in', /^quantity: given "1,234\.5 mm"; accepted: one decimal mark and no group separators/],
  ])("turnsleft %s", (line, expected) => {
    expect(mistake(typed(line))).toMatch(expected);
  });
});

describe("what stands in a case", () => {
  const weighed = (changes: Changes): string => mistake(["weigh", "-", "--json"], JSON.stringify(changedCase(changes)));

  test.each([
    [{ jiont: {} }, /^jiont: given a key that is not known here; accepted: "joint"$/],
    [{ ranges: { "strengh A380": { value: 200 } } }, /^ranges\.strengh A380: .*; accepted: "strength A380"$/],
    [{ levels: { stripOds: 0.01 } }, /^levels\.stripOds: .*; accepted: "stripOdds"$/],
    [{ case: { threadDepth: "16" } }, /^case\.threadDepth: given "16"; accepted: a number with its unit/],
    [{ thread: "M20x1.7" }, /^thread: given "M20x1\.7"/],
    [{ plug: { tolerance: "6z" } }, /^plug\.tolerance: given "6z"/],
    [{ case: { material: "cheese" } }, /^case\.material: given "cheese"/],
    [{ plug: { underHead: "-13 mm" } }, /^plug\.underHead: given "-13 mm"; accepted: nothing below zero/],
    [{ left: { turns: { low: "4", likely: "3", high: "5" } } }, /low, likely and high in this order/],
    [{ today: "2026-02-30" }, /^today: given "2026-02-30"/],
  ])("%j", (changes, expected) => {
    expect(weighed(changes)).toMatch(expected);
  });

  test("several mistakes are one line that tells how many more", () => {
    expect(weighed({ thread: "M21", today: "soon" })).toMatch(/^thread: .* \(and 1 more, the next at today\)$/);
  });

  test("not JSON, and JSON that is no case", () => {
    expect(mistake(["weigh", "-"], "{ thread: M20 }")).toMatch(/^case\.json: given "-"; accepted: JSON; /);
    expect(mistake(["weigh", "-"], "[]")).toMatch(/^case: given \[\]; accepted: a case: one JSON object$/);
    expect(mistake(["weigh", "-"], "")).toMatch(/^case\.json: given "-"; accepted: JSON; /);
  });
});
