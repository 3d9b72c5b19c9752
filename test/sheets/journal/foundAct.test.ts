import { describe, expect, test } from "vitest";
import type { Fact } from "../../../src/journal/facts/fact.ts";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { putRight, readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed, actOf } from "../../../src/sheets/journal/acts.ts";
import { aroundJob } from "./aroundJob.ts";

const found = actNamed("found");
const port = "chipper-drain";
const atPort = aroundJob({ type: "port", port });
const atMachine = aroundJob({ type: "machine" });
const [first, second] = ["a".repeat(64), "b".repeat(64)];

const facts = (texts: Readonly<Record<string, string>>, around = atPort): readonly Fact[] => {
  const read = readAct(found, texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
};
const wanted = (texts: Readonly<Record<string, string>>, around = atPort): readonly string[] => {
  const read = readAct(found, texts, around);
  return read.ok ? [] : read.problems.map(({ field }) => field);
};

describe("what was found", () => {
  test("at a port: words with their photos, how the thread catches and looks, and the seat, each a fact of its own", () => {
    const texts = {
      words: "thread torn",
      photos: `${first},${second}`,
      catch: "gritty",
      condition: "poor",
      seat: "scored",
    };
    expect(facts(texts)).toEqual([
      { type: "ConditionFound", port, words: "thread torn", photos: [first, second] },
      { type: "CatchFelt", port, catch: "gritty", condition: "poor" },
      { type: "SeatJudged", port, seat: "scored" },
    ]);
    expect(facts({ catch: "snug" })).toEqual([{ type: "CatchFelt", port, catch: "snug" }]);
  });

  test("on a machine as it arrives: words and photos alone, whatever was tapped at a port before", () => {
    expect(facts({ words: "drips", photos: first, catch: "gritty" }, atMachine)).toEqual([
      { type: "ConditionFound", words: "drips", photos: [first] },
    ]);
  });

  test("a photo wants a word, a look at the thread wants its catch, and nothing at all is nothing", () => {
    expect(wanted({ photos: first })).toEqual(["words"]);
    expect(wanted({ condition: "poor", words: "torn" })).toEqual(["catch"]);
    expect(wanted({})).toEqual(["words"]);
  });

  test("put right, a photo that was taken off is gone and one that stayed is named still", () => {
    const [earlier] = facts({ words: "thread torn", photos: `${first},${second}` });
    const texts = actOf(earlier as Fact)?.texts ?? {};
    expect(texts["photos"]).toBe(`${first},${second}`);
    const again = (photos: string) => {
      const [now] = facts({ ...texts, photos });
      return putRight(found, earlier as Fact, now as Fact, atPort);
    };
    expect(again(second)).toMatchObject({ photos: [second] });
    expect("photos" in again("")).toBe(false);
  });
});

test.each([
  ["note", { words: "x" }],
  ["out", {}],
  ["turns", { turns: "3", counted: "felt" }],
  ["dry", { dry: "yes", after: "10", how: "paper" }],
] as const)("a photo goes with %s", (act, texts) => {
  const it = actNamed(act);
  expect(it.form(atPort).photos).toBe("last");
  expect(readAct(it, { ...texts, photos: first }, atPort)).toMatchObject({ facts: [{ photos: [first] }] });
  expect(readAct(it, texts, atPort)).toMatchObject({ ok: true });
});
