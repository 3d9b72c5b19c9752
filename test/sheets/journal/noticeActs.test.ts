import { describe, expect, test } from "vitest";
import { type Fact, factSchema } from "../../../src/journal/facts/fact.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { aroundJob } from "./aroundJob.ts";

const at = (...facts: readonly object[]) => aroundJob({ type: "machine" }, facts);
const whine = { type: "AlsoNoticed", notice: "also-1", words: "a whine", look: "today" };
const belt = { type: "AlsoNoticed", notice: "also-2", words: "belt cracked", look: "2026-12-09" };

function facts(act: "noticed" | "settled", texts: Readonly<Record<string, string>>, around = at()): readonly Fact[] {
  const read = readAct(actNamed(act), texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
}

describe("what was also noticed", () => {
  test("is one tap where it is looked at today, and two where it is later", () => {
    const { given } = actNamed("noticed").form(at());
    expect(facts("noticed", { ...given, noticed: "a whine" })).toEqual([
      { type: "AlsoNoticed", notice: "also-k3f7", words: "a whine", look: "today" },
    ]);
    expect(facts("noticed", { ...given, noticed: "a whine", look: "2026-12-09" })).toMatchObject([
      { look: "2026-12-09" },
    ]);
  });

  test("is not looked at on a day that has been", () => {
    const read = readAct(actNamed("noticed"), { noticed: "a whine", look: "2026-11-24" }, at());
    expect(read.ok ? [] : read.problems.map(({ field, accepted }) => [field, accepted])).toEqual([
      ["look", "a day from 2026-11-25 on"],
    ]);
  });

  test("is settled by its name: of one alone without a choice, and one that is settled is not asked for again", () => {
    const { given } = actNamed("settled").form(at(whine));
    expect(given).toEqual({ notice: "also-1" });
    const [settled] = facts("settled", { ...given, settled: "put right" }, at(whine));
    expect(settled).toEqual({ type: "NoticeSettled", notice: "also-1", words: "put right" });
    expect(actNamed("settled").form(at(whine, belt)).given).toEqual({});
    const left = actNamed("settled").form(at(whine, belt, settled as object));
    expect(left.fields["notice"]).toMatchObject({ choices: ["also-2"] });
    expect(left.choiceWords).toEqual({ "also-2": "belt cracked" });
  });
});
