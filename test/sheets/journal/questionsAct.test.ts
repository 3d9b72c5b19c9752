import { describe, expect, test } from "vitest";
import { formWith, readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { isAsked } from "../../../src/sheets/journal/asked.ts";
import { aroundJob } from "./aroundJob.ts";

const act = actNamed("asked");
const port = "chipper-drain";

/** A job on which these answers were written down before. */
const around = (...answers: readonly object[]) =>
  aroundJob(
    { type: "port", port },
    answers.map((it) => ({ type: "QuestionsAnswered", port, ...it })),
  );

const all = { crack: "no", pressure: "none", reaches: "nothing", people: "no", repairedBefore: "no", breather: "free" };

describe("the six questions", () => {
  test("six taps are six answers: nothing reached is an answer, and an empty list", () => {
    expect(readAct(act, all, around())).toEqual({
      ok: true,
      card: null,
      facts: [
        {
          type: "QuestionsAnswered",
          port,
          crack: "no",
          pressure: "none",
          reaches: [],
          people: "no",
          repairedBefore: "no",
          breather: "free",
        },
      ],
    });
  });

  test("what nobody answered is left out, and never a no", () => {
    const read = readAct(act, { crack: "yes", reaches: "brake,exhaust" }, around());
    expect(read).toEqual({
      ok: true,
      card: null,
      facts: [{ type: "QuestionsAnswered", port, crack: "yes", reaches: ["brake", "exhaust"] }],
    });
  });

  test("without one answer nothing is written, and all six are wanted", () => {
    const read = readAct(act, {}, around());
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(Object.keys(all));
  });

  test("a yes leads on: how much pressure, and by what it was repaired", () => {
    const texts = { ...all, pressure: "yes", repairedBefore: "yes" };
    const fields = act.form(around()).fields;
    const asked = (field: string, given: Readonly<Record<string, string>>) =>
      isAsked(field, fields, (name) => given[name] ?? "", "jory");
    for (const field of ["pressureValue", "earlierMethod", "earlierCause"]) {
      expect(asked(field, texts), field).toBe(true);
      expect(asked(field, all), field).toBe(false);
    }
    const read = readAct(act, texts, around());
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(["pressureValue", "earlierMethod"]);
    expect(
      readAct(
        act,
        { ...texts, pressureValue: "1,1", earlierMethod: "sealant, no washer", earlierCause: "wet" },
        around(),
      ),
    ).toMatchObject({
      facts: [{ pressure: "1,1 bar", repairedBefore: { method: "sealant, no washer", cause: "wet" } }],
    });
  });

  test("what was answered before stands there; a breather that was freed is answered anew", () => {
    const before = around({ crack: "no", pressure: "0.9 bar" }, { breather: "blocked" });
    const { given } = formWith(act, {}, before);
    expect(given).toEqual({ crack: "no", pressure: "yes", pressureValue: "0.9", breather: "blocked" });
    expect(readAct(act, { ...given, breather: "free" }, before)).toMatchObject({
      facts: [{ crack: "no", pressure: "0.9 bar", breather: "free" }],
    });
  });

  test("an answer cannot be taken back by leaving it out, for it would still stand; the entry that gave it is put right", () => {
    const before = around({ crack: "no", people: "no" });
    const read = readAct(act, { people: "no" }, before);
    expect(read.ok ? [] : read.problems).toEqual([{ field: "crack", given: "nothing", accepted: "" }]);
    expect(readAct(act, { people: "no" }, { ...before, corrects: true })).toEqual({
      ok: true,
      card: null,
      facts: [{ type: "QuestionsAnswered", port, people: "no" }],
    });
  });
});
