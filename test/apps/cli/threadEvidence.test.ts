import { describe, expect, test } from "vitest";
import { InputMistake } from "../../../src/apps/cli/mistake.ts";
import { type ThreadOptions, threadEvidence } from "../../../src/apps/cli/threadEvidence.ts";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { turnsleft, typed } from "./turnsleft.ts";

describe("what is said and what is written are one", () => {
  test.each<[ThreadOptions, ThreadOptions]>([
    [{ gaps: "8 in 12.1 mm" }, { gaps: "eight gaps in 12,1 mm" }],
    [{ gaps: "12 in 18 mm" }, { gaps: "Twelve  in 18 mm" }],
    [{ travel: "5 turns in 7.6 mm" }, { travel: "five turns in 7.6 mm" }],
    [{ travel: "2.5 turns in 3.8 mm" }, { travel: "two and a half turns in 3.8 mm" }],
    [{ travel: "2.5 turns in 3.8 mm" }, { travel: "2½ in 3.8 mm" }],
    [{ travel: "1 in 1.5 mm" }, { travel: "a turn in 1.5 mm" }],
    [{ meshes: "2 turns, then tight" }, { meshes: "two turns, then tight" }],
    [{ meshes: "2 turns, then tight" }, { meshes: "went in two turns, then hard" }],
    [{ meshes: "2 turns, then tight" }, { meshes: "tight after two turns" }],
    [{ meshes: "0 turns, then tight" }, { meshes: "tight after no turns" }],
    [{ meshes: "1 1/2 turns, tight" }, { meshes: "one and a half turns and then tight" }],
    [{ meshes: "4 turns, free in M22x1.5" }, { meshes: "four easy turns in a known M22x1.5" }],
    [{ meshes: "4 turns, free with 7/8-14 UNF" }, { meshes: "free for four turns with 7/8-14" }],
    [{ gauge: ["18/in"] }, { gauge: ["18 per inch"] }],
  ])("%o and %o", (written, said) => expect(threadEvidence(said)).toEqual(threadEvidence(written)));

  test("a rule in inches is a rule", () => {
    const [evidence] = threadEvidence({ gaps: "8 in 1/2 in" });
    expect(evidence.type === "gaps" && valueIn(mm, evidence.length)).toBeCloseTo(12.7, 12);
  });

  test("in a known hole the plug is unknown, with a known plug the hole", () => {
    const known = { type: "mesh", known: "M22x1.5", turns: 4, felt: "free" };
    expect(threadEvidence({ meshes: "4 turns, free in M22x1.5" })).toEqual([{ ...known, unknown: "plug" }]);
    expect(threadEvidence({ meshes: "4 turns, free with M22x1.5" })).toEqual([{ ...known, unknown: "hole" }]);
    expect(threadEvidence({ meshes: "4 turns, free" })).toEqual([{ ...known, known: null, unknown: "plug" }]);
  });
});

/** The line of the mistake in these options. */
function mistakeIn(options: ThreadOptions): string {
  try {
    threadEvidence(options);
  } catch (fault) {
    if (fault instanceof InputMistake) return fault.message;
    throw fault;
  }
  throw new Error("nothing was wrong");
}

describe("a mistake names the option, what was given and what is accepted", () => {
  test.each<[ThreadOptions, RegExp]>([
    [{}, /^--outside: given nothing; accepted: it, --gaps, --gauge, --bore, --travel, --taper, --narrows or --meshes/],
    [{ hexagon: "27 mm", sister: "24 mm" }, /^--outside: given nothing/],
    [{ outside: "19.9" }, /^--outside: given "19\.9"; accepted: a number with its unit, as "19\.9 mm"/],
    [{ outside: "" }, /^--outside: given ""/],
    [{ outside: "0 mm" }, /^--outside: given "0 mm"; accepted: more than nothing/],
    [{ outside: "20 N·m" }, /^--outside: given "20 N·m"; accepted: mm, /],
    [{ worn: true, gaps: "8 in 12.1 mm" }, /^--worn: given nothing; accepted: --outside with it/],
    [{ worn: "much", outside: "19.9 mm" }, /^--worn: given "much"; accepted: .*"0\.1 mm"/],
    [{ gaps: "8 of 12.1 mm" }, /^--gaps: given "8 of 12\.1 mm"; accepted: "8 in 12\.1 mm"/],
    [{ gaps: "8 in 12 in 3 mm" }, /^--gaps: given "8 in 12 in 3 mm"; accepted: "8 in 12\.1 mm"/],
    [{ gaps: "8 in 12.1" }, /^--gaps: given "12\.1"; accepted: a number with its unit/],
    [{ gaps: "some in 12.1 mm" }, /^--gaps: given "some in 12\.1 mm"; accepted: 1 to 60 whole gaps/],
    [{ gaps: "8 1/2 in 12.1 mm" }, /^--gaps: given "8 1\/2 in 12\.1 mm"; accepted: 1 to 60 whole gaps/],
    [{ gaps: "0 in 12.1 mm" }, /^--gaps: given "0 in 12\.1 mm"/],
    [{ gaps: "900 in 12.1 mm" }, /^--gaps: given "900 in 12\.1 mm"/],
    [{ bore: "wide" }, /^--bore: given "wide"/],
    [{ travel: "no turns in 7.6 mm" }, /^--travel: given "no turns in 7\.6 mm"; accepted: up to 60 turns/],
    [{ narrows: "0.6 mm" }, /^--narrows: given "0\.6 mm"; accepted: "0\.6 mm in 10 mm"/],
    [{ taper: "0.6 mm" }, /^--taper: given "0\.6 mm"; accepted: "0\.6 mm in 10 mm"/],
    [{ taper: "0.6 mm in 0 mm" }, /^--taper: given "0 mm"; accepted: more than nothing/],
    [{ gauge: ["fine"] }, /^--gauge: given "fine"; accepted: "1\.5 mm" or "18\/in" .*"not 1\.25 mm"/],
    [{ gauge: ["1.5"] }, /^--gauge: given "1\.5"; accepted: a number with its unit/],
    [{ gauge: ["0/in"] }, /^--gauge: given "0\/in"/],
    [{ gauge: ["1.5 mm", "not coarse"] }, /^--gauge: given "not coarse"/],
    [{ meshes: "it binds" }, /^--meshes: given "it binds"; accepted: "two turns, then tight"/],
    [{ meshes: "two turns, then purple" }, /^--meshes: given "two turns, then purple"/],
    [{ meshes: "many turns, free" }, /^--meshes: given "many turns, free"/],
    [{ meshes: "4 turns, free in M22x1.7" }, /^--meshes: given .*after "in" a thread that is known here/],
    [{ outside: "20 mm", hexagon: "27 mm" }, /^--sister: given nothing; accepted: with --hexagon/],
    [{ outside: "20 mm", sister: "27 mm" }, /^--hexagon: given nothing; accepted: with --sister/],
    [{ outside: "20 mm", hexagon: "27", sister: "27 mm" }, /^--hexagon: given "27"/],
  ])("%o", (options, said) => expect(mistakeIn(options)).toMatch(said));

  test.each([
    ['thread --gaps "8 of 12.1 mm"', "--gaps"],
    ['thread --outside "20 mm" --svg nowhere/rule.svg', "--svg"],
    ["thread --gauge", "--gauge"],
  ])("%s ends with 2 and one line", (line, option) => {
    const { status, stdout, stderr } = turnsleft(typed(line));
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
    expect(stderr).toContain(option);
  });
});
