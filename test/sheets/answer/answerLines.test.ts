import { describe, expect, test } from "vitest";
import { answerLines } from "../../../src/sheets/answer/answerLines.ts";
import { rangeText, turnsText } from "../../../src/sheets/words/figures.ts";
import { closesWord, oddsText, stripsWord } from "../../../src/sheets/words/oddsWords.ts";
import { type Changes, documentOf, sound, textOf, weighed } from "../../mechanics/remedies/changedCase.ts";

const empty = { seal: { material: "aluminium" } };
const refused = { joint: { kind: "spark plug" } };
const cases: readonly (readonly [name: string, changes: Changes])[] = [
  ["narrow", {}],
  ["open", { left: { turns: "6" } }],
  ["empty", empty],
  ["refused", refused],
  ["healthy", { left: sound }],
  ["hardly anything known", { plug: undefined, seal: undefined, surface: undefined, wrenches: undefined }],
];
/** The answer itself, up to the first blank line, on one line. */
const first = (changes: Changes): string => textOf(changes).split("\n\n")[0]?.replaceAll("\n", " ") ?? "";

describe("the answer stands first", () => {
  test("a narrow window: the pull, and what has more room", () => {
    expect(first({})).toMatch(
      /^Pull to 12 N·m \(8\.9 lbf·ft\) on W-1\. That window is narrow\. More room: a longer plug,/,
    );
  });
  test("an open one: the pull alone", () => {
    expect(first({ left: { turns: "6" } })).toBe("Pull to 12 N·m (8.9 lbf·ft) on W-1.");
  });
  test("an empty one: no torque, need and limit, and what would do", () => {
    expect(first(empty)).toMatch(
      /^As found: No torque closes this: the flat aluminium washer needs \d+ N·m, the careful limit is \d+\. Would do: a longer plug/,
    );
  });
  test("where nothing weighed opens a window it says what is left to do", () => {
    const hopeless = { joint: { kind: "gear case level" }, thread: "M8", left: { turns: "2.5", withWasher: true } };
    const bare = {
      ...hopeless,
      plug: undefined,
      seal: { outside: "11.5 mm", inside: "8.4 mm" },
      levels: { floorBelowM12_Nm: 30 },
    };
    const ranges = { "strip model": { value: 0.02 } };
    expect(first({ ...bare, ranges })).toMatch(/Nothing that is left of it opens a window\. Would do: /);
  });
  test("a refusal: its reason, what is allowed instead, its rule and who may override", () => {
    expect(first(refused)).toBe(
      "Refused. Combustion pressure drives the part out: no make-do there, and no other plug or seal than its own. " +
        "Instead: a solid bushing or a wire-coil insert made for it; another cylinder head. Rule 3 combustion. Nobody overrides it.",
    );
  });
  test("refused as found, and a longer plug would do", () => {
    expect(first({ left: { turns: "3.3" } })).toMatch(/^Refused\. 1¾ turns caught; .* Would do: a longer plug/);
  });
  test("no wrench here has a mark in the window", () => {
    const wrenches = [{ name: "W-3", least: "60 N·m", most: "340 N·m" }];
    expect(first({ wrenches })).toMatch(/and no wrench here sets this\.$/);
  });
});

describe("the text", () => {
  test.each(cases)("is no wider than a terminal and says nothing twice: %s", (_, changes) => {
    const lines = textOf(changes, [10]).split("\n");
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
    const sentences = textOf(changes)
      .replace(/\n +(?=\S)/g, " ")
      .split(/\n|(?<=[.?]) /)
      .map((it) => it.trim())
      .filter((it) => /^[A-Z].{20,}[.?]$/.test(it));
    expect(sentences.filter((it, i) => sentences.indexOf(it) !== i)).toEqual([]);
  });

  test.each(cases)("ends by saying that it is an estimate, and no approval to drive: %s", (_, changes) => {
    expect(textOf(changes).replace(/\n +/g, " ")).toContain(
      "An estimate to help a competent person, not an approval to drive",
    );
  });

  test("the odds asked for stand in it, in words", () => {
    const text = textOf({}, [10, 46]);
    expect(text).toMatch(/10 N·m: strips fewer than 1 in 100, closes about 9 in 10\n/);
    expect(text).toMatch(/46 N·m: strips about 9 in 10, closes nearly always\n/);
    expect(textOf({})).not.toContain("Odds");
  });

  test("the working shows formula, figures put in, result and source", () => {
    const lines = answerLines(weighed({}), documentOf({}), [], true).join("\n");
    expect(lines).toContain("n = n_c - n_l\n");
    expect(lines).toContain("VDI 2230");
    expect(textOf({})).not.toContain("n = n_c - n_l");
  });

  test("fields of the case that a mechanic has other words for are not named by their keys", () => {
    expect(textOf({ left: { condition: undefined } })).toContain("condition of the turns: doubtful");
    expect(textOf({})).not.toMatch(/(case|plug|seal|left)\.\w/);
  });
});

describe("figures in words", () => {
  test.each([
    [0.0005, "rare"],
    [0.005, "fewer than 1 in 100"],
    [0.0096, "about 1 in 100"],
    [0.04, "about 1 in 30"],
    [0.1, "about 1 in 10"],
    [0.39, "about 2 in 5"],
    [0.5, "about half"],
    [0.75, "about 3 in 4"],
    [0.9, "about 9 in 10"],
    [0.99, "nearly all"],
  ])("odds of %d: %s", (probability, words) => {
    expect(oddsText(probability)).toBe(words);
  });
  test("what strips and what closes", () => {
    expect([stripsWord(1e-4), stripsWord(0.99), closesWord(1e-4), closesWord(0.99)]).toEqual([
      "stripping is rare",
      "strips nearly always",
      "hardly ever closes",
      "closes nearly always",
    ]);
  });
  test("a need is rounded up, a limit down, and tenths are shown where whole figures would hide the room", () => {
    expect(rangeText(11.2, 41.9)).toBe("12 to 41 N·m");
    expect(rangeText(11.76, 12.13)).toBe("11.8 to 12.1 N·m");
  });
  test("turns by quarters, never fewer than none", () => {
    expect([2, 2.25, 3.5, 0.75, 0, -0.6].map(turnsText)).toEqual(["2", "2¼", "3½", "¾", "0", "0"]);
  });
});
