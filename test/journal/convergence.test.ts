import fc from "fast-check";
import { expect, test } from "vitest";
import type { Entry } from "../../src/journal/entry.ts";
import type { Fact } from "../../src/journal/facts/fact.ts";
import type { DeviceId, EntryId, JobId, PersonId } from "../../src/journal/facts/ids.ts";
import { pen } from "../../src/journal/pen.ts";
import { journalReader } from "../../src/journal/reader.ts";
import { JournalGap } from "../../src/journal/refusals.ts";
import type { JournalStore } from "../../src/journal/store.ts";
import { replicate } from "../../src/journal/store.ts";
import { memoryStore } from "../../src/stores/memory.ts";
import { sqliteJournal } from "../../src/stores/sqliteJournal.ts";
import { none, workshop } from "../stores/storeContract.ts";
import { byHand, drained, dry, gearCase, loose, opened, out, overridden, torqued, washers } from "./written.ts";

const devices = ["bench", "phone", "tablet", "van"] as const;
const facts = [
  opened,
  gearCase,
  loose("fill"),
  out("drain"),
  drained("2.3 L"),
  ...washers("drain", 1, 1),
  byHand("drain"),
  torqued("drain"),
  dry("drain"),
  overridden("fill first"),
] as const;

type Step =
  | { readonly type: "write"; readonly on: number; readonly job: number; readonly fact: number }
  | { readonly type: "withdraw"; readonly on: number; readonly which: number }
  | { readonly type: "meet"; readonly a: number; readonly b: number }
  /** A piece is carried over and the line drops. */
  | { readonly type: "piece"; readonly from: number; readonly to: number; readonly most: number }
  /** A piece that was carried before comes once more, after whatever came since. */
  | { readonly type: "again"; readonly which: number; readonly to: number }
  /** Entries arrive with some of them missing on the way: what has a gap is refused, and nothing of it is kept. */
  | { readonly type: "holes"; readonly from: number; readonly to: number; readonly without: number };

const on = fc.nat({ max: devices.length - 1 });
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      type: fc.constant("write" as const),
      on,
      job: fc.nat({ max: 2 }),
      fact: fc.nat({ max: facts.length - 1 }),
    }),
  },
  { weight: 1, arbitrary: fc.record({ type: fc.constant("withdraw" as const), on, which: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ type: fc.constant("meet" as const), a: on, b: on }) },
  {
    weight: 3,
    arbitrary: fc.record({
      type: fc.constant("piece" as const),
      from: on,
      to: on,
      most: fc.integer({ min: 1, max: 5 }),
    }),
  },
  { weight: 2, arbitrary: fc.record({ type: fc.constant("again" as const), which: fc.nat(), to: on }) },
  { weight: 1, arbitrary: fc.record({ type: fc.constant("holes" as const), from: on, to: on, without: fc.nat() }) },
);

test("devices that wrote apart and met in pieces, twice and out of order, come to one journal and one picture", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 60 }), async (steps) => {
      const bays = devices.map((device) => {
        // One of them keeps its entries in SQLite: the others must not be able to tell.
        const store = device === "van" ? sqliteJournal(":memory:", workshop, "write").store : memoryStore(workshop);
        return { store, pen: pen(store, workshop, device as DeviceId), reader: journalReader(store) };
      });
      const carried: (readonly Entry[])[] = [];
      const acknowledged: EntryId[] = [];
      for (const it of steps) acknowledged.push(...(await taken(it, bays, carried)));

      const [first, ...others] = bays as [(typeof bays)[number], ...typeof bays];
      for (const other of others) await replicate(first.store, other.store);
      for (const other of others) await replicate(first.store, other.store);

      const journal = await first.store.since(none);
      expect(new Set(journal.map(({ device, number }) => `${device}/${number}`))).toEqual(new Set(acknowledged));
      for (const bay of bays) await bay.reader.refresh();
      for (const { store, reader } of others) {
        expect(await store.since(none)).toEqual(journal);
        for (const job of ["0", "1", "2"] as JobId[]) expect(reader.sheet(job)).toEqual(first.reader.sheet(job));
      }
      const fresh = journalReader(first.store);
      await fresh.refresh();
      for (const job of ["0", "1", "2"] as JobId[]) expect(fresh.sheet(job)).toEqual(first.reader.sheet(job));
      for (const { store } of bays) await store.close();
    }),
    { numRuns: 150 },
  );
});

type Bay = {
  readonly store: JournalStore;
  readonly pen: ReturnType<typeof pen>;
  readonly reader: ReturnType<typeof journalReader>;
};

async function taken(it: Step, bays: readonly Bay[], carried: (readonly Entry[])[]): Promise<readonly EntryId[]> {
  const bay = (i: number): Bay => bays[i] as Bay;
  const signed = (job: string) => ({ by: "jory" as PersonId, job: job as JobId, at: "2026-11-25T08:00:00Z" });
  switch (it.type) {
    case "write":
      return bay(it.on).pen.write(signed(String(it.job)), facts[it.fact] as unknown as Fact);
    case "withdraw": {
      const held = await bay(it.on).store.since(none);
      const entry = held[it.which % Math.max(1, held.length)];
      if (!entry) return [];
      const place = `${entry.device}/${entry.number}` as EntryId;
      return bay(it.on).pen.write(signed(entry.job as string), { type: "EntryWithdrawn", entry: place, reason: "no" });
    }
    case "meet":
      await replicate(bay(it.a).store, bay(it.b).store);
      await bay(it.a).reader.refresh();
      return [];
    case "piece": {
      const piece = await bay(it.from).store.since(await bay(it.to).store.heads(), it.most);
      carried.push(piece);
      await bay(it.to).store.add(piece.toReversed());
      await bay(it.to).reader.refresh();
      return [];
    }
    case "again":
    case "holes": {
      const whole =
        it.type === "again" ? carried[it.which % Math.max(1, carried.length)] : await bay(it.from).store.since(none);
      const piece = (whole ?? []).filter((_, i) => it.type === "again" || i !== it.without % (whole ?? []).length);
      const before = await bay(it.to).store.since(none);
      try {
        await bay(it.to).store.add(piece);
      } catch (fault) {
        if (!(fault instanceof JournalGap)) throw fault;
        expect(await bay(it.to).store.since(none)).toEqual(before);
      }
      return [];
    }
    default:
      return it satisfies never;
  }
}
