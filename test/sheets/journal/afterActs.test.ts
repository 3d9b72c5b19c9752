import { describe, expect, test } from "vitest";
import { type Fact, factSchema } from "../../../src/journal/facts/fact.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { isAsked } from "../../../src/sheets/journal/asked.ts";
import type { ActName } from "../../../src/sheets/words/actWords.ts";
import { aroundJob } from "./aroundJob.ts";

const port = "chipper-drain";
const repair = { type: "RepairMade", port, method: "wire coil", lasting: true };
const plan = (followUp: string, on: string) => ({ type: "FollowUpPlanned", followUp, port, on, way: "call" });
const gone = (...facts: readonly object[]) => aroundJob({ type: "machine" }, [repair, ...facts]);

function facts(act: ActName, texts: Readonly<Record<string, string>>, around = gone()): readonly Fact[] {
  const read = readAct(actNamed(act), texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
}
const problems = (act: ActName, texts: Readonly<Record<string, string>>, around = gone()) => {
  const read = readAct(actNamed(act), texts, around);
  return read.ok ? [] : read.problems.map(({ field, accepted }) => [field, accepted]);
};

describe("a look", () => {
  test("that was planned alone stands there already: one tap says what was found, and the port is the planned one", () => {
    const around = gone(plan("year", "2026-11-20"));
    const { given, choiceWords } = actNamed("looked").form(around);
    expect(given).toEqual({ followUp: "year" });
    expect(choiceWords["year"]).toBe("call about chipper-drain, 2026-11-20");
    expect(
      facts(
        "looked",
        { ...given, found: "dry", distance: "61 900" }.distance ? { ...given, found: "dry" } : {},
        around,
      ),
    ).toEqual([{ type: "FollowUpDone", followUp: "year", port, found: "dry" }]);
  });

  test("of several is chosen, and without a choice nothing is written", () => {
    const around = gone(plan("year", "2026-11-20"), plan("week", "2026-11-02"));
    const form = actNamed("looked").form(around);
    expect(form.given).toEqual({});
    // The earliest first, and a look that nobody planned last.
    expect(form.fields["followUp"]).toMatchObject({ choices: ["week", "year", "not planned"] });
    expect(problems("looked", { found: "dry" }, around).map(([field]) => field)).toEqual(["followUp"]);
    expect(facts("looked", { followUp: "week", found: "weeps" }, around)).toMatchObject([{ followUp: "week" }]);
  });

  test("that nobody planned says so, and where it was", () => {
    expect(facts("looked", { found: "drips", at: port, distance: "61900" })).toEqual([
      { type: "FollowUpDone", followUp: null, port, found: "drips", meter: { distance: "61900 km" } },
    ]);
    expect(facts("looked", { found: "dry", at: "all of it" })).toEqual([
      { type: "FollowUpDone", followUp: null, found: "dry" },
    ]);
    const { fields } = actNamed("looked").form(gone(plan("year", "2026-11-20")));
    const asked = (followUp: string) => isAsked("at", fields, (it) => (it === "followUp" ? followUp : ""), "jory");
    expect([asked("year"), asked("not planned")]).toEqual([false, true]);
  });

  test("that was made is not asked for again, and one that was not reached is, if another day was named", () => {
    const done = { type: "FollowUpDone", followUp: "year", found: "dry" };
    const missed = (again?: string) => ({ type: "FollowUpNotReached", followUp: "week", ...(again ? { again } : {}) });
    const open = (...more: readonly object[]) =>
      actNamed("notReached").form(gone(plan("year", "2026-11-20"), plan("week", "2026-11-02"), ...more)).fields[
        "followUp"
      ];
    expect(open(done)).toMatchObject({ choices: ["week"] });
    expect(open(done, missed("2026-11-28"))).toMatchObject({ choices: ["week"] });
    expect(open(done, missed())).toMatchObject({ choices: [] });
  });

  test("not reached is written as that, with the day of the next try under a tap", () => {
    const around = gone(plan("year", "2026-11-20"));
    const form = actNamed("notReached").form(around);
    expect(form.fields["again"]).toEqual({ type: "text", common: ["2026-11-26", "2026-12-02", "2026-12-09"] });
    expect(form.choiceWords["2026-12-02"]).toBe("in a week");
    expect(facts("notReached", { ...form.given, again: "2026-12-02" }, around)).toEqual([
      { type: "FollowUpNotReached", followUp: "year", again: "2026-12-02" },
    ]);
    expect(problems("notReached", { ...form.given, again: "2026-13-02" }, around)).toEqual([
      ["again", "a day, as 2026-06-01"],
    ]);
  });

  test("is planned for the port that was repaired, by call, on a day under a tap", () => {
    const { given } = actNamed("planned").form(gone());
    expect(given).toEqual({ at: port, way: "call" });
    expect(facts("planned", { ...given, on: "2026-12-25" })).toEqual([
      { type: "FollowUpPlanned", followUp: "look-k3f7", port, on: "2026-12-25", way: "call" },
    ]);
  });
});

describe("a repair that came back", () => {
  const at = aroundJob({ type: "port", port }, [repair]);
  const texts = { how: "weep", cause: "oil film under it", foundOn: "2026-11-25" };

  test("is written with its named cause; found today it is now, found before it is that day", () => {
    expect(facts("cameBack", { ...texts, turnsNow: "1 1/2", cost: "85" }, at)).toEqual([
      {
        type: "CameBack",
        port,
        foundAt: "2026-11-25T10:40:00Z",
        how: "weep",
        cause: "oil film under it",
        turnsNow: "1 1/2",
        cost: 85,
      },
    ]);
  });

  test("not before it was made, not after today, and it did not hold later than it failed", () => {
    expect(problems("cameBack", { ...texts, foundOn: "2026-11-24" }, at)).toEqual([
      ["foundOn", "a day from 2026-11-25 on, when it was repaired"],
    ]);
    expect(problems("cameBack", { ...texts, foundOn: "2026-11-26" }, at)).toEqual([
      ["foundOn", "a day up to 2026-11-25"],
    ]);
    expect(problems("cameBack", { ...texts, heldUntil: "2026-11-26" }, at)).toEqual([
      ["heldUntil", "a day up to 2026-11-25"],
    ]);
    expect(problems("cameBack", {}, at).map(([field]) => field)).toEqual(["how", "cause", "foundOn"]);
  });
});
