import { describe, expect, test } from "vitest";
import { InputMistake } from "../../../src/apps/cli/mistake.ts";
import { type Classes, threadSizes } from "../../../src/apps/cli/threadSizes.ts";
import { turnsleft, typed } from "./turnsleft.ts";

/** The line of the mistake in this thread with these classes. */
function mistakeIn(thread: string, classes: Classes): string {
  try {
    threadSizes(thread, classes);
  } catch (fault) {
    if (fault instanceof InputMistake) return fault.message;
    throw fault;
  }
  throw new Error("nothing was wrong");
}

describe("a thread that is not known", () => {
  test.each([
    [
      "foo",
      /^thread: given "foo"; accepted: .*M20x1\.5.*"1\/4-20 UNC", "G 1\/2", "R 1\/2", "Rc 1\/2", "Rp 1\/2", "1\/2-14 NPT", "STI M20x1\.5"$/,
    ],
    ["M20x1.7", /^thread: given "M20x1\.7"; accepted: a pitch of M20: /],
    ["1/4-21 UNC", /^thread: given "1\/4-21 UNC"; accepted: .*1\/4-20 UNC.*1\/4-28 UNF/],
    ["3/11-20", /^thread: given "3\/11-20"; accepted: a standard size; the nearest: /],
    ["G 9/16", /^thread: given "G 9\/16"; accepted: G .*1\/2.*3\/4/],
    ["1/2-18 NPT", /^thread: given "1\/2-18 NPT"; accepted: .*14 threads per inch/],
    ["STI M20x1.7", /^thread: given "M20x1\.7"/],
    ["STI 1/4-20", /^thread: given "STI 1\/4-20"/],
  ])("%s", (thread, said) => expect(mistakeIn(thread, {})).toMatch(said));
});

describe("a class that does not exist is answered with those that do", () => {
  test.each<[string, Classes, RegExp]>([
    ["M20x1.5", { plug: "6z" }, /^--plug: given "6z"; accepted: pitch grade 3 4 5 6 7 8 9/],
    ["1/4-20 UNC", { plug: "9A" }, /^--plug: given "9A"; accepted: 1A, 2A or 3A$/],
    ["1/4-20 UNC", { hole: "2A" }, /^--hole: given "2A"; accepted: 1B, 2B or 3B$/],
    ["#10-32", { plug: "1A" }, /^--plug: given "1A"; accepted: 2A or 3A$/],
    ["G 1/2", { plug: "C" }, /^--plug: given "C"; accepted: A or B$/],
    ["G 1/2 A", { plug: "B" }, /^--plug: given "B"; accepted: A$/],
    ["G 1/2", { hole: "6H" }, /^--hole: given "6H"; accepted: no class/],
    ["R 1/2", { plug: "A" }, /^--plug: given "A"; accepted: no class/],
    ["1/2 NPT", { plug: "2A" }, /^--plug: given "2A"; accepted: no class/],
    ["STI M20x1.5", { plug: "6g" }, /^--plug: given "6g"; accepted: no class/],
    ["STI M20x1.5", { hole: "6H" }, /^--hole: given "6H"; accepted: 5H or 4H5H/],
  ])("%s %o", (thread, classes, said) => expect(mistakeIn(thread, classes)).toMatch(said));
});

test.each(["limits foo", 'limits "1/4-20 UNC" --plug 9A', 'limits "G 1/2" --plug C'])(
  "%s ends with 2 and one line",
  (line) => {
    const { status, stdout, stderr } = turnsleft(typed(line));
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  },
);
