import { describe, expect, test } from "vitest";
import { demoJournal } from "../../src/demo/demoJournal.ts";
import type { JobId, OwnerId, PortId, WorkshopId } from "../../src/journal/facts/ids.ts";
import type { JobSheet } from "../../src/journal/job/jobSheet.ts";
import { journalReader } from "../../src/journal/reader.ts";
import { torqueEvidence } from "../../src/journal/shop/instruments.ts";
import { fallingDue } from "../../src/journal/views/fallingDue.ts";
import { passport } from "../../src/journal/views/passport.ts";
import { standing } from "../../src/journal/views/standing.ts";
import { whatHeld } from "../../src/journal/views/whatHeld.ts";
import { held } from "../../src/mechanics/service/held.ts";
import { levelsWith } from "../../src/mechanics/tables/levels.ts";
import { memoryStore } from "../../src/stores/memory.ts";

const now = "2026-11-25T10:40:00Z";
const today = "2026-11-25";
const demo = demoJournal(now, "0.1.0");
const store = memoryStore("hollin-reach" as WorkshopId);
await store.add(demo.entries);
const reader = journalReader(store);
await reader.refresh();
const sheets = [...reader.sheets()];
const sheet = (job: string): JobSheet => reader.sheet(job as JobId);
const set = (job: string, port: string): string | undefined => sheet(job).ports[port as PortId]?.torqued?.set;

describe("the demo", () => {
  test("is what a store takes, on whatever day and at whatever hour it is opened", async () => {
    for (const at of ["2028-02-29T00:03:00Z", "2027-01-01T23:59:00Z"]) {
      const other = memoryStore("hollin-reach" as WorkshopId);
      const { entries } = demoJournal(at, "0.1.0");
      await other.add(entries);
      expect(entries.filter((it) => Date.parse(it.at) > Date.parse(at))).toEqual([]);
      expect(entries.filter((it, i) => i > 0 && it.at < (entries[i - 1]?.at ?? ""))).toEqual([]);
    }
  });

  test("has twelve machines, and every owner's name lies in his card alone", () => {
    expect(Object.keys(reader.shop().machines)).toHaveLength(12);
    expect(new Set(demo.cards.map(({ owner }) => owner))).toEqual(
      new Set(Object.values(reader.shop().machines).map(({ owner }) => owner as OwnerId)),
    );
    const text = JSON.stringify(demo.entries);
    for (const { name, plates } of demo.cards) {
      expect(text).not.toContain(name);
      for (const { plate } of plates) expect(text).not.toMatch(new RegExp(`${plate}\\b`));
    }
  });

  test("goes past no gate but those that somebody overrode by name", () => {
    expect(sheets.flatMap(({ breaches }) => breaches)).toEqual([]);
    const overrides = sheets.flatMap(({ job, overrides: own }) => own.map(({ rule, by }) => [job, rule, by]));
    expect(overrides).toEqual([
      ["0271", "7 too little", "maud"],
      ["0271", "curing", "maud"],
      ["0340", "curing", "maud"],
    ]);
  });

  test("stands today with a bung, a torn drain port to decide, and a plug by hand for twelve minutes", () => {
    expect(
      standing(sheets, now).map(({ job, bay, ports }) => [job, bay, ...ports.map((it) => `${it.port} ${it.state}`)]),
    ).toEqual([
      ["0405", "yard", "tractor-level held for now"],
      ["0412", "bay 1", "chipper-drain out", "chipper-level torqued"],
      ["0413", "bay 2", "family-sump by hand"],
    ]);
    expect(standing(sheets, now)[2]?.ports[0]).toMatchObject({ minutes: 12, by: "sefa" });
  });

  test("pulls what the engine said on the day, inside the window of the day", () => {
    for (const [job, port, option] of [
      ["0244", "hatchback-sump", "longer plug, bonded seal"],
      ["0340", "loader-level", "sealant, no washer"],
    ] as const) {
      const window = sheet(job).ports[port as PortId]?.weighed?.options.find(({ id }) => id === option)?.window;
      const pulled = Number.parseFloat(set(job, port) ?? "");
      expect(window).toMatchObject({ open: true, advice_Nm: pulled });
      expect(pulled).toBeGreaterThanOrEqual(window?.need_Nm ?? Number.POSITIVE_INFINITY);
      expect(pulled).toBeLessThanOrEqual(window?.limit_Nm ?? 0);
    }
    // 48 belongs to flat aluminium, 35 to fibre: the book figure of a healthy port is that of its seal.
    expect(set("0231", "van-fill")).toBe("48 N·m");
    expect(set("0299", "combine-left")).toBe("70 N·m");
  });

  test("refuses where it must: water side, too few turns, combustion, oil on a tyre", () => {
    const refusal = (job: string, port: string) =>
      sheet(job).ports[port as PortId]?.weighed?.options.find(({ id }) => id === "sealant, no washer")?.refused?.rule;
    expect(refusal("0260", "outboard-drain")).toBe("5 water side");
    expect(refusal("0271", "camper-fill")).toBe("7 too little");
    expect(refusal("0288", "estate-hole-3")).toBe("3 combustion");
    expect(refusal("0377", "motorcycle-sump")).toBe("4 reach");
  });

  test("claims every torque with a wrench in range and in date", () => {
    for (const { ports } of sheets)
      for (const { torqued } of Object.values(ports)) {
        if (!torqued) continue;
        const worth = torqueEvidence(torqued, torqued.at.slice(0, 10), reader.shop().instruments, levelsWith({}));
        expect([torqued.port, torqued.set, worth]).toEqual([torqued.port, torqued.set, "in range and in date"]);
      }
  });

  test("asks today for what falls due", () => {
    const due = fallingDue(reader.shop(), sheets, today, (at) => at.slice(0, 10), levelsWith({}));
    const days = due.map(({ type, on }) => [type, Math.round((Date.parse(on) - Date.parse(today)) / 86_400_000)]);
    expect(days).toEqual([
      ["calibration", -9],
      ["also noticed", 0],
      ["call to answer", 0],
      ["service", 0],
      ["held for now", 1],
      ["part arrives", 1],
      ["calibration", 18],
      ["follow-up", 34],
      ["make-do ends", 34],
      ["shelf date", 40],
      ["follow-up", 90],
      ["follow-up", 192],
      ["calibration", 245],
      ["make-do ends", 268],
      ["service", 1109],
    ]);
  });

  /** Jeffreys 95 % for 2 of 3: Brown, Cai and DasGupta (2001). */
  test("says of its sealants that two of three came back, anywhere from 18 to 96 %", () => {
    const sealants = held(whatHeld(sheets)).methods.find(({ method }) => method === "sealant, no washer");
    expect(sealants).toMatchObject({ cases: 3, cameBack: 2 });
    expect(sealants?.jeffreys95.map((it) => Math.round(100 * it))).toEqual([18, 96]);
    expect(whatHeld(sheets).reduce((sum, { cost }) => sum + (cost ?? 0), 0)).toBe(190 + 85);
  });

  test("knows the camper's port over both jobs", () => {
    const visits = passport("camper-fill" as PortId, sheets).visits.map(({ job, repairs, cameBack }) => [
      job,
      repairs[0]?.method,
      cameBack.length,
    ]);
    expect(visits).toEqual([
      ["0271", "sealant, no washer", 1],
      ["0301", "solid bushing", 0],
    ]);
  });
});
