import { describe, expect, test } from "vitest";
import type { PortId } from "../../../src/journal/facts/ids.ts";
import { noticedOn } from "../../../src/journal/views/noticed.ts";
import { passport } from "../../../src/journal/views/passport.ts";
import { whatHeld } from "../../../src/journal/views/whatHeld.ts";
import { held } from "../../../src/mechanics/service/held.ts";
import { sheetOf } from "../job/sheetOf.ts";
import { at, loose, opened, out, type PlainFact, torqued } from "../written.ts";

const port = "fill" as PortId;
const counted = (value: string): PlainFact => ({
  type: "ReadingTaken",
  port,
  reading: "left.turns",
  value,
  how: "with a dot",
});
const visit = (job: string, day: string, turns: string, ...more: PlainFact[]) =>
  sheetOf(
    ...[opened, loose(port), out(port), counted(turns), ...more].map(
      (fact) => [fact, { job, at: at("09:00", day) }] as const,
    ),
  );
const repaired = (method: string): PlainFact => ({ type: "RepairMade", port, method, lasting: true });

describe("the passport of a port", () => {
  test("tells its visits in their order, how hard it came loose, and the turns over the years", () => {
    const it = passport(port, [
      visit("0310", "2026-05-02", "6"),
      visit("0101", "2024-04-20", "8"),
      visit("0203", "2025-05-11", "7 1/2"),
    ]);
    expect(it.visits.map(({ job, turns, brokenLoose }) => [job, turns, brokenLoose])).toEqual([
      ["0101", 8, "normal"],
      ["0203", 7.5, "normal"],
      ["0310", 6, "normal"],
    ]);
    expect(it.timesOpened).toBe(3);
    expect(it.turns.falling).toBe(true);
  });

  test("a quarter turn up and down is the count's own doubt", () => {
    expect(passport(port, [visit("0101", "2024-04-20", "8"), visit("0203", "2025-05-11", "7.75")]).turns.falling).toBe(
      false,
    );
  });

  test("a new thread begins a new series", () => {
    const it = passport(port, [
      visit("0101", "2024-04-20", "8"),
      visit("0203", "2025-05-11", "3", repaired("wire coil")),
      visit("0310", "2026-05-02", "8"),
    ]);
    expect(it.turns.counts).toEqual([{ at: at("09:00", "2026-05-02"), turns: 8 }]);
  });

  test("carries what the next hand must know", () => {
    const warned: PlainFact = { type: "NextHandWarned", port, words: "short plug strips" };
    expect(passport(port, [visit("0101", "2024-04-20", "8", torqued(port), warned)]).visits[0]).toMatchObject({
      torque: "28 N·m",
      pulledBy: "jory",
      warnings: ["short plug strips"],
    });
  });
});

describe("what held", () => {
  const made = (job: string, day: string, ...later: (readonly [PlainFact, string])[]) =>
    sheetOf(
      [repaired("solid bushing"), { job, at: at("09:00", day) }],
      ...later.map(([fact, on]) => [fact, { job, at: at("09:00", on) }] as const),
    );
  const look = (found: string): PlainFact => ({ type: "FollowUpDone", followUp: null, port, found });

  test("a dry look carries a repair on, a comeback ends it between the last dry look and its day", () => {
    const back: PlainFact = {
      type: "CameBack",
      port,
      foundAt: at("09:00", "2026-04-11"),
      how: "weep",
      cause: "released early",
    };
    expect(whatHeld([made("a", "2026-01-01", [look("dry"), "2026-02-01"], [look("dry"), "2026-03-02"])])).toMatchObject(
      [{ from_days: 60, to_days: null }],
    );
    expect(whatHeld([made("b", "2026-01-01", [look("dry"), "2026-02-01"], [back, "2026-04-12"])])).toMatchObject([
      { from_days: 31, to_days: 100, cause: "released early" },
    ]);
    expect(whatHeld([made("c", "2026-01-01", [{ ...back, heldUntil: back["foundAt"] }, "2026-04-12"])])).toMatchObject([
      { from_days: 100, to_days: 100 },
    ]);
  });

  test("a call that was not reached adds no day, and silence is in no figure", () => {
    const planned: PlainFact = { type: "FollowUpPlanned", followUp: "f1", port, on: "2026-02-01", way: "call" };
    const cases = whatHeld([
      made("a", "2026-01-01", [planned, "2026-01-01"], [{ type: "FollowUpNotReached", followUp: "f1" }, "2026-02-01"]),
    ]);
    expect(cases).toMatchObject([{ from_days: 0, to_days: null }]);
    expect(held(cases).methods).toMatchObject([{ cases: 0, neverLookedAt: 1 }]);
  });

  test("a second repair of the port is a case of its own", () => {
    const back: PlainFact = {
      type: "CameBack",
      port,
      foundAt: at("09:00", "2026-01-06"),
      heldUntil: at("09:00", "2026-01-06"),
      how: "weep",
      cause: "early",
    };
    const cases = whatHeld([
      made(
        "a",
        "2026-01-01",
        [back, "2026-01-06"],
        [repaired("solid bushing"), "2026-01-07"],
        [look("dry"), "2026-02-06"],
      ),
    ]);
    expect(cases.map(({ from_days, to_days }) => [from_days, to_days])).toEqual([
      [5, 5],
      [30, null],
    ]);
  });
});

test("what was also noticed stands until it is settled", () => {
  const whine: PlainFact = { type: "AlsoNoticed", notice: "n1", words: "a whine", look: "2026-12-01" };
  const settled: PlainFact = { type: "NoticeSettled", notice: "n1", words: "bearing changed" };
  expect(noticedOn("chipper" as never, [sheetOf(opened, whine)])).toMatchObject([{ words: "a whine", job: "0412" }]);
  expect(noticedOn("chipper" as never, [sheetOf(opened, whine, settled)])).toEqual([]);
});
