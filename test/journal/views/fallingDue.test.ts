import { describe, expect, test } from "vitest";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { fallingDue } from "../../../src/journal/views/fallingDue.ts";
import { levelsWith } from "../../../src/mechanics/tables/levels.ts";
import { sheetOf } from "../job/sheetOf.ts";
import { at, type Line, opened, type PlainFact, written } from "../written.ts";

const today = "2026-11-25";
const utcDay = (instant: string) => instant.slice(0, 10);
const workshop = (...facts: PlainFact[]) => project(shop, written(facts.map((fact) => [fact, { job: null }] as const)));
const due = (facts: readonly Line[], ...shopFacts: PlainFact[]) =>
  fallingDue(workshop(...shopFacts), [sheetOf(...facts)], today, utcDay, levelsWith({})).map(({ type, on }) => [
    type,
    on,
  ]);

const wrench: PlainFact = {
  type: "InstrumentBought",
  instrument: "TW-2",
  is: { kind: "wrench", works: "click", least: "20 N·m", most: "120 N·m", step: "2 N·m" },
};

describe("what falls due", () => {
  test("a wrench a year after its last calibration, until it is retired", () => {
    const calibrated: PlainFact = { type: "InstrumentCalibrated", instrument: "TW-2", on: "2025-12-13" };
    expect(due([], wrench, calibrated)).toEqual([["calibration", "2026-12-13"]]);
    expect(due([], wrench, calibrated, { type: "InstrumentRetired", instrument: "TW-2", why: "dropped" })).toEqual([]);
  });

  test("a sealant's shelf date, until it is used up", () => {
    const stocked: PlainFact = { type: "SealantStocked", sealant: "S-A", called: "Silicone", shelfDate: "2027-01-04" };
    expect(due([], stocked)).toEqual([["shelf date", "2027-01-04"]]);
    expect(due([], stocked, { type: "StockUsedUp", stock: "S-A" })).toEqual([]);
  });

  test("a follow-up until it is done; one that was not reached on the day it is tried again", () => {
    const planned: PlainFact = { type: "FollowUpPlanned", followUp: "f1", on: "2026-12-29", way: "call" };
    expect(due([opened, planned])).toEqual([["follow-up", "2026-12-29"]]);
    const again: PlainFact = { type: "FollowUpNotReached", followUp: "f1", again: "2027-01-02" };
    expect(due([opened, planned, again])).toEqual([["follow-up", "2027-01-02"]]);
    expect(due([opened, planned, { type: "FollowUpDone", followUp: "f1", found: "dry" }])).toEqual([]);
  });

  test("a bung, a make-do's end, a part to come, what was noticed, a caller without an answer; overdue on top", () => {
    const facts: PlainFact[] = [
      opened,
      { type: "PortHeldForNow", port: "fill", by: "expanding bung", until: "2026-11-26" },
      { type: "RepairMade", port: "drain", method: "sealant, no washer", lasting: false, until: "2027-05-01" },
      { type: "PartsOrdered", words: "G 1/2 plug", arrives: "2026-11-26" },
      { type: "AlsoNoticed", notice: "n1", words: "a whine", look: "today" },
    ];
    expect(due(facts)).toEqual([
      ["also noticed", today],
      ["held for now", "2026-11-26"],
      ["part arrives", "2026-11-26"],
      ["make-do ends", "2027-05-01"],
    ]);
    const call: PlainFact = { type: "CallTaken", words: "it drips" };
    expect(due([call])).toEqual([["call to answer", today]]);
    expect(due([call, { type: "CallAnswered", advice: "top it up and bring it" }])).toEqual([]);
  });

  test("a promise until the machine has left, on the day that the clock of the place says", () => {
    const promise = {
      type: "JobBooked",
      machine: "chipper",
      readyFrom: at("22:00"),
      readyTo: at("00:30", "2026-11-26"),
    } as const;
    expect(due([promise])).toEqual([["promised", "2026-11-26"]]);
    // Eight hours west of Greenwich it is still the day before.
    const west = (instant: string) => new Date(Date.parse(instant) - 8 * 3_600_000).toISOString().slice(0, 10);
    const sheets = [sheetOf(promise, opened)];
    expect(fallingDue(workshop(), sheets, today, west, levelsWith({}))).toEqual([
      { type: "promised", on: "2026-11-25", job: "0412", here: true },
    ]);
    expect(due([promise, opened, { type: "MachineLeftNotRunning", carriedBy: "a trailer", signedFor: true }])).toEqual(
      [],
    );
  });

  /** 80 000 km at 80 km a day are 1000 days; two years come first. */
  test("the next service by distance or date, whichever comes first, with where the meter is by now", () => {
    const opening = (day: string, km: number) =>
      [{ ...opened, meter: { distance: `${km} km` } }, { at: at("09:00", day) }] as const;
    const laid = (every: object): PlainFact => ({ type: "ServiceLaidDown", unit: "gear-case", every, source: "book" });
    const onDay = (fact: PlainFact, day: string) => [fact, { at: at("09:00", day) }] as const;
    const used = [
      opening("2025-11-25", 100_000),
      onDay({ type: "MeterRead", meter: { distance: "129200 km" } }, today),
    ] as const;
    const by = (every: object) =>
      due([used[0], onDay(laid(every), "2025-11-25"), onDay({ type: "JobClosed" }, "2025-11-25"), used[1]]);
    expect(by({ months: 24 })).toEqual([["service", "2027-11-25"]]);
    expect(by({ distance: "30000 km", months: 24 })).toEqual([["service", "2026-12-05"]]);
    expect(by({ distance: "20000 km" })).toEqual([["service", today]]);
  });
});
