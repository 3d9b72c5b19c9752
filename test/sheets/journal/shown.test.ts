import { describe, expect, test } from "vitest";
import { demoJournal } from "../../../src/demo/demoJournal.ts";
import type { Entry } from "../../../src/journal/entry.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import type { JobSheet } from "../../../src/journal/job/jobSheet.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { dueShown } from "../../../src/sheets/journal/dueShown.ts";
import { heldShown } from "../../../src/sheets/journal/heldShown.tsx";
import { type JobShown, jobShown } from "../../../src/sheets/journal/jobShown.ts";
import { passportShown } from "../../../src/sheets/journal/passportShown.tsx";
import { standingShown } from "../../../src/sheets/journal/standingShown.ts";
import { gearCase, type Line, loose, opened, written } from "../../journal/written.ts";

const now = "2026-11-25T10:40:00Z";
const { entries } = demoJournal(now, "test");
const workshop = project(
  shop,
  entries.filter(({ job }) => job === null),
);
const jobs = [...new Set(entries.map(({ job }) => job).filter((it) => it !== null))];
const ofJob = (job: string): readonly Entry[] => entries.filter((it) => it.job === job);
const sheets: readonly JobSheet[] = jobs.map((job) => project(jobSheet, ofJob(job)));
const shown = (job: string, more: readonly Entry[] = []): JobShown => {
  const all = [...ofJob(job), ...more];
  return jobShown(project(jobSheet, all), all, workshop, now);
};
const told = (...lines: readonly Line[]): JobShown => {
  const all = written(lines);
  return jobShown(project(jobSheet, all), all, shop.empty, now);
};

describe("the wall", () => {
  test("shows what must not be started, in states of ports and fluid, with whose hand and for how long", () => {
    const wall = standingShown(sheets, workshop, now);
    const car = wall.find(({ job }) => job === "0413");
    expect(wall.map(({ mayStart }) => mayStart)).toEqual([false, false, false]);
    expect(car).toMatchObject({
      machine: "Family car",
      where: "bay 2",
      mayLeave: false,
      ports: [{ called: "Sump drain", state: "BY HAND", alarm: true, since: "12 min", hand: "Sefa Oyelund" }],
      units: [{ called: "Engine", state: "EMPTY", stop: null }],
      next: "Sump drain stands by hand: tighten it.",
    });
    expect(car?.forbids).toContain("Sump drain: not tightened");
    expect(new Set(car?.forbids).size).toBe(car?.forbids.length);
  });
});

describe("a job", () => {
  test("has what nobody may walk away from under the thumb first, and the taps that its state asks for", () => {
    const [first, ...others] = shown("0413").subjects;
    expect(first).toMatchObject({ called: "Sump drain", wall: { alarm: true } });
    expect(first?.first.map(({ act }) => act)).toEqual(["torqued", "out", "letGo"]);
    expect(others.some(({ wall }) => wall?.alarm)).toBe(false);
  });

  test("has a port weighed beside the count of its turns, else behind its taps, and what has a cap not at all", () => {
    const tapped = (job: string) => Object.fromEntries(shown(job).subjects.map(({ called, weigh }) => [called, weigh]));
    expect(tapped("0412")).toEqual({
      Drain: "first",
      "Fill and level": "behind",
      "Angle-gear box": null,
      "Wood chipper": null,
    });
    expect(Object.entries(tapped("0413"))).toContainEqual(["Sump drain", "behind"]);
    const port = { port: "cap", called: "Filler cap", roles: ["fill"], closedBy: "cap", joint: "other" };
    const is = { unit: "engine", called: "Engine", holdsFluid: true, ports: [port] };
    const [cap] = told({ type: "UnitIdentified", is }).subjects.filter(({ about }) => about.type === "port");
    expect([cap?.called, cap?.weigh]).toEqual(["Filler cap", null]);
  });

  test("says on the tap itself why a gate forbids it now", () => {
    const drained = (job: JobShown) =>
      job.subjects.find(({ about }) => about.type === "unit")?.first.find(({ act }) => act === "drained");
    expect(drained(told(opened, gearCase))?.shut).toContain("Level: the fill plug is not broken loose");
    expect(drained(told(opened, gearCase, loose("fill")))?.shut).toBeNull();
  });

  test("its log has every entry with who and when, the latest first", () => {
    const { log } = shown("0413");
    expect(log).toHaveLength(ofJob("0413").length);
    expect(log[0]).toMatchObject({ who: "Sefa Oyelund", about: "Sump drain", sentence: "closed BY HAND" });
    expect(log.at(-1)?.sentence).toContain("job opened: Family car");
  });

  test("what was withdrawn or put right stays in the log, struck, with by whom and why", () => {
    const last = ofJob("0413").at(-1) as Entry;
    const place = `${last.device}/${last.number}`;
    const withdrawn = {
      ...last,
      device: "bench",
      number: 9000,
      clock: 9000,
      by: "jory",
      fact: { type: "EntryWithdrawn", entry: place, reason: "wrong port" },
    } as unknown as Entry;
    const { log, wall } = shown("0413", [withdrawn]);
    expect(log.find(({ entry }) => entry === place)?.struck).toBe("withdrawn by Jory Anselm: wrong port");
    expect(wall.ports[0]?.state).toBe("OUT");
  });

  test("a pull that may not be claimed says so in the log", () => {
    const { log } = jobShown(
      project(jobSheet, ofJob("0412")),
      ofJob("0412").map((it) =>
        it.fact.type === "PortTorqued" ? ({ ...it, fact: { ...it.fact, set: "15 N·m" } } as Entry) : it,
      ),
      workshop,
      now,
    );
    expect(log.find(({ sentence }) => sentence.startsWith("torqued"))?.sentence).toContain(
      "(out of its range, tightens and may not claim)",
    );
  });

  test("that has gone has its looks under the thumb first, and one that is due is its next step", () => {
    const gone = shown("0244");
    expect(gone.subjects[0]).toMatchObject({ about: { type: "machine" } });
    expect(gone.subjects[0]?.first.map(({ act }) => act)).toEqual(["looked", "notReached", "planned", "note"]);
    expect(gone.next).toBe(null);
    const all = ofJob("0244");
    const onTheDay = jobShown(project(jobSheet, all), all, workshop, "2026-12-29T09:00:00Z");
    expect(onTheDay.next).toEqual({
      sentence: "Call about Sump drain: is it dry?",
      act: "looked",
      about: { type: "machine" },
    });
  });

  test("that is a call alone waits for its answer, and is opened in one tap once the machine is here", () => {
    const call = shown("call-1");
    // Nobody has looked at it: nothing says that it may be started.
    expect([call.here, shown("0412").here, shown("0244").here]).toEqual([false, true, true]);
    expect(call.next).toMatchObject({ act: "answered", about: { type: "machine" } });
    expect(call.next?.sentence).toContain("Answer the caller: it drips");
    expect(call.subjects.map(({ first }) => first.map(({ act }) => act))).toEqual([
      ["answered", "booked", "open", "found", "note"],
    ]);
  });

  test("says beside the machine that something else is open on it", () => {
    const whole = shown("0412").subjects.find(({ about }) => about.type === "machine");
    expect(whole).toMatchObject({ called: "Wood chipper", also: "1 thing also noticed is open" });
    expect(shown("0413").subjects.find(({ about }) => about.type === "machine")?.also).toBe(null);
  });

  test("a hole that is held for now is ended before anything else", () => {
    const level = shown("0405").subjects.find(({ called }) => called === "Level");
    expect(level?.wall?.state).toBe("HELD FOR NOW");
    expect(level?.first.map(({ act }) => act)).toEqual(["holdEnded"]);
  });
});

describe("a port's passport", () => {
  test("tells its visits, the latest first, and what the turns do over the years", () => {
    const it = passportShown("family-sump", sheets, workshop);
    expect(it).toMatchObject({ called: "Sump drain", machine: "Family car", opened: 2, turns: { falling: false } });
    expect(it.turns?.sentence).toBe("7, 7: they hold, within a quarter turn of counting.");
    expect(it.visits.map(({ job }) => job)).toEqual(["0413", "0229"]);
    expect(it.visits[1]?.lines).toContain("torqued to 34 N·m, Jory Anselm");
  });

  test("of a port that nobody wrote about it says nothing", () => {
    expect(passportShown("nowhere", sheets, workshop)).toMatchObject({ visits: [], turns: null, opened: 0 });
  });
});

/** The to-do of the invented workshop's day, as it is told and not as it came out. */
test("what falls due is the to-do of the day: a wrench, a belt, a caller, a bung, another wrench in 18 days, a call in 34", () => {
  const due = dueShown(sheets, workshop, "2026-11-25", (at) => at.slice(0, 10));
  const line = (part: string) => due.find(({ sentence }) => sentence.includes(part));
  expect(due[0]).toMatchObject({ when: "overdue", sentence: expect.stringContaining("TW-3") });
  expect(line("drive belt")).toMatchObject({ when: "today", machine: "Wood chipper", job: "0412" });
  expect(line("Answer the caller")).toMatchObject({ when: "today" });
  expect(line("what holds it for now")).toMatchObject({ on: "2026-11-26", job: "0405" });
  expect(line("TW-2")).toMatchObject({ on: "2026-12-13" });
  expect(line("Call about Sump drain: is it dry?")).toMatchObject({ on: "2026-12-29", job: "0244" });
  for (const { sentence } of due) expect(sentence).not.toMatch(/undefined|null|NaN/);
});

/** "2 of 3 sealed ports came back; the true rate may be anywhere from 18 to 96 %", as it is told of the invented workshop. */
test("what held tells the count first and then how little it says, with the causes that were named", () => {
  const sealed = heldShown(sheets).find(({ method }) => method.startsWith("No washer"));
  expect(sealed?.sentences[0]).toContain("2 of 3 came back");
  expect(sealed?.sentences[0]).toContain("18 to 96 %");
  expect(sealed?.causes).toHaveLength(2);
  expect(sealed?.picture).toMatch(/^<svg/);
});
