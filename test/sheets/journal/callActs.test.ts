import { describe, expect, test } from "vitest";
import { type Fact, factSchema } from "../../../src/journal/facts/fact.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed, actOf } from "../../../src/sheets/journal/acts.ts";
import { aroundJob } from "./aroundJob.ts";

const chipper = { type: "MachineMet", machine: "chipper", called: "Wood chipper", units: [] };
const at = (...facts: readonly object[]) => aroundJob({ type: "machine" }, facts, [chipper]);

function facts(act: "call" | "answered", texts: Readonly<Record<string, string>>): readonly Fact[] {
  const read = readAct(actNamed(act), texts, at());
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
}

describe("a call", () => {
  const { given } = actNamed("call").form(at());

  test("is his words, where it is seen, and drops in a counted time where somebody counted", () => {
    expect(facts("call", { ...given, words: "it drips" })).toEqual([{ type: "CallTaken", words: "it drips" }]);
    const counted = { ...given, machine: "chipper", words: "it drips", seenAt: "parked overnight", drops: "7" };
    expect(facts("call", counted)).toEqual([
      {
        type: "CallTaken",
        words: "it drips",
        seenAt: "parked overnight",
        drops: { count: 7, within: "10 min" },
        machine: "chipper",
      },
    ]);
  });

  test("none of seven drops in no time, and no half drops", () => {
    const problems = (texts: Readonly<Record<string, string>>) => {
      const read = readAct(actNamed("call"), texts, at());
      return read.ok ? [] : read.problems.map(({ field }) => field);
    };
    expect(problems({ words: "x", drops: "7" })).toEqual(["within"]);
    expect(problems({ words: "x", drops: "7.5", within: "10" })).toEqual(["drops"]);
    expect(problems({})).toEqual(["words"]);
  });

  test("and its answer read back as the very facts that they were", () => {
    const written = [
      ...facts("call", { machine: "chipper", words: "x", drops: "0", within: "1 h" }),
      ...facts("answered", { advice: "do not drive: we fetch it" }),
    ];
    for (const fact of written) {
      const found = actOf(fact);
      expect(facts(found?.act as "call", found?.texts ?? {})).toEqual([fact]);
    }
  });

  test("is what the job is opened on, once the machine is here", () => {
    const called = { type: "CallTaken", words: "it drips", machine: "chipper" };
    expect(actNamed("open").form(at(called)).given).toEqual({ machine: "chipper" });
    expect(actNamed("open").form(at()).given).toEqual({});
  });
});
