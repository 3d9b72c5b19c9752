import { describe, expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import { project } from "../../../src/journal/projection.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { jobShown } from "../../../src/sheets/journal/jobShown.ts";
import { gearCase, opened, written as writtenLines } from "../../journal/written.ts";
import { aroundJob, written } from "./aroundJob.ts";

const chipper = { type: "MachineMet", machine: "chipper", called: "Wood chipper", units: [] };
const promise = { readyOn: "2026-11-27", readyFrom: "16:00", readyTo: "18.30" };
const booked = {
  type: "JobBooked",
  machine: "chipper",
  bay: "bay 2",
  readyFrom: "2026-11-27T16:00:00Z",
  readyTo: "2026-11-27T18:30:00Z",
};
const at = (...facts: readonly object[]) => aroundJob({ type: "machine" }, facts, [chipper]);

function facts(act: "booked" | "promised", texts: Readonly<Record<string, string>>, around = at()) {
  const read = readAct(actNamed(act), texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
}

describe("a machine is booked in", () => {
  test("with a promise that is a range of hours by the clock of the place", () => {
    expect(facts("booked", { machine: "chipper", bay: "bay 2", ...promise })).toEqual([booked]);
  });

  test("that was never here is met first", () => {
    const texts = { machine: "another", called: "Grain dryer", unit: "hub reduction: one plug", ...promise };
    expect(facts("booked", texts)).toMatchObject([
      { type: "MachineMet", machine: "grain-dryer-k3f7", called: "Grain dryer" },
      { type: "JobBooked", machine: "grain-dryer-k3f7" },
    ]);
  });

  test.each([
    [{ machine: "chipper", ...promise, readyTo: "15:59" }, ["readyTo"]],
    [{ machine: "chipper", ...promise, readyFrom: "4 pm", readyTo: "25:00" }, ["readyFrom", "readyTo"]],
    [{ machine: "chipper", ...promise, readyOn: "Friday" }, ["readyOn"]],
    [{}, ["machine", "readyOn", "readyFrom", "readyTo"]],
    [{ machine: "another", ...promise }, ["called", "unit"]],
  ])("%j says what is wanted or cannot be read: %j", (texts, fields) => {
    const read = readAct(actNamed("booked"), texts as Readonly<Record<string, string>>, at());
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(fields);
  });

  test("has its job opened in the bay that waits for it; a promise given anew opens nothing and shuts nothing", () => {
    expect(actNamed("open").form(at(booked)).given).toEqual({ machine: "chipper", bay: "bay 2" });
    const later = facts("promised", { ...promise, readyOn: "2026-11-30" }, at(booked, opened));
    expect(later).toMatchObject([{ machine: "chipper", readyTo: "2026-11-30T18:30:00Z" }]);
    const sheet = project(jobSheet, written([booked, opened, ...later], "0412"));
    expect(sheet).toMatchObject({ stage: "open", bay: "bay 2", promise: { to: "2026-11-30T18:30:00Z" } });
  });
});

describe("a job that is promised", () => {
  const shown = (lines: readonly object[], now: string) => {
    const entries = writtenLines(lines as never);
    return jobShown(project(jobSheet, entries), entries, aroundJob({ type: "workshop" }, [], [chipper]).shop, now);
  };
  const cure = {
    type: "CureBegan",
    port: "drain",
    sealant: "S-A",
    bead: "3 mm",
    temperature: "9 °C",
    humidity: "70 %",
    closedAt: "2026-11-27T10:00:00Z",
    earliest: "2026-11-28T08:00:00Z",
    curedThrough_h: 22,
  };
  const torqued = {
    type: "PortTorqued",
    port: "drain",
    set: "15 N·m",
    wrench: null,
    clicked: true,
    checkedAgain: false,
    pulledBy: "jory",
  };

  test("says when, and that it cannot be kept where a bead cures for longer or the time is over", () => {
    const lines = [booked, opened, gearCase];
    expect(shown(lines, "2026-11-27T12:00:00Z").wall.promise).toEqual({
      from: booked.readyFrom,
      to: booked.readyTo,
      broken: null,
    });
    expect(shown([...lines, torqued, cure], "2026-11-27T12:00:00Z").wall.promise?.broken).toMatch(/^A bead cures/);
    expect(shown(lines, "2026-11-27T18:31:00Z").wall.promise?.broken).toMatch(/^The time is over/);
    expect(shown([booked], "2026-11-26T08:00:00Z").log[0]?.promise).toEqual({
      from: booked.readyFrom,
      to: booked.readyTo,
    });
  });

  test("offers first what comes first: the opening of a job that is booked, the answer or the booking of a call", () => {
    const first = (fact: object) => shown([fact], "2026-11-26T08:00:00Z").subjects[0]?.first.map(({ act }) => act);
    expect(first(booked)).toEqual(["open", "promised", "ordered", "note"]);
    expect(first({ type: "CallTaken", words: "it drips" })).toEqual(["answered", "booked", "open", "found", "note"]);
  });

  test("is promised anew neither before its machine is named nor once that has gone", () => {
    const offered = (...lines: readonly object[]) =>
      shown(lines, "2026-11-26T08:00:00Z").subjects.flatMap(({ first, more }) =>
        [...first, ...more.flatMap(({ taps }) => taps)].map(({ act }) => act),
      );
    expect(offered(booked, opened)).toEqual(expect.arrayContaining(["promised", "unitNoted"]));
    expect(offered({ type: "CallTaken", words: "it drips" })).not.toContain("promised");
    expect(offered({ type: "CallTaken", words: "it drips" })).not.toContain("unitNoted");
    const left = { type: "MachineLeftNotRunning", carriedBy: "a trailer", signedFor: true };
    expect(offered(booked, opened, left)).not.toContain("promised");
  });
});
