import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Entry } from "../../src/journal/entry.ts";
import type { DeviceId, JobId, WorkshopId } from "../../src/journal/facts/ids.ts";
import { type Heads, type JournalStore, replicate } from "../../src/journal/store.ts";
import { memoryStore } from "../../src/stores/memory.ts";

export const workshop = "hollin-reach" as WorkshopId;

/** What every JournalStore does. Run it once for each store; `open` gives a new, empty one of `workshop`. */
export function storeContract(name: string, open: () => Promise<JournalStore>): void {
  describe(name, () => {
    let store: JournalStore;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(() => store.close());
    const all = () => store.since(none);

    test("a new store holds nothing", async () => {
      expect(await store.heads()).toEqual({});
      expect(await store.ofJob(job("0412"))).toEqual([]);
      expect(await all()).toEqual([]);
    });

    test("an entry is read as it was written, whatever stands in its words", async () => {
      const odd = {
        ...note("bench", 1, 1),
        fact: { type: "NoteWritten", words: "½ turn ⌀22 'x' \\ \u0000\ud800 🔧" },
      } as Entry;
      await store.add([odd]);
      expect(await store.ofJob(job("0412"))).toEqual([odd]);
    });

    test("adding an entry again changes nothing, alone, among new ones, and twice in one go", async () => {
      const [first, second] = [note("bench", 1, 1), note("bench", 2, 2)];
      await store.add([first, first]);
      await store.add([first]);
      await store.add([second, first]);
      expect(await all()).toEqual([first, second]);
    });

    test("the same entry with its keys in another order is the same entry", async () => {
      const first = note("bench", 1, 1);
      await store.add([first]);
      await store.add([Object.fromEntries(Object.entries(first).reverse()) as Entry]);
      expect(await store.heads()).toEqual({ bench: 1 });
    });

    test("entries come in the order of their clocks, then of their devices, however they were handed over", async () => {
      await store.add([note("tablet", 1, 2), note("Bench", 1, 2), note("bench", 2, 2), note("bench", 1, 1)]);
      const order = (await store.ofJob(job("0412"))).map((it) => `${it.device}/${it.number}`);
      expect(order).toEqual(["bench/1", "Bench/1", "bench/2", "tablet/1"]);
    });

    test("a job's entries are its own, and those of the workshop belong to none", async () => {
      const person = {
        ...note("bench", 1, 1),
        job: null,
        fact: { type: "PersonJoined", person: "sefa", called: "Sefa" },
      };
      await store.add([person as Entry, note("bench", 2, 2, "0413"), note("bench", 3, 3)]);
      expect((await store.ofJob(job("0412"))).map(({ number }) => number)).toEqual([3]);
      expect((await store.ofJob(job("0413"))).map(({ number }) => number)).toEqual([2]);
    });

    test("a different entry in a place already taken is a fork, and nothing that came with it is kept", async () => {
      await store.add([note("bench", 1, 1)]);
      const other = { ...note("bench", 1, 1), by: "sefa" } as Entry;
      await expect(store.add([note("phone", 1, 1), other])).rejects.toThrow(/different entry bench\/1/);
      await expect(store.add([note("phone", 1, 1), { ...note("phone", 1, 1), by: "sefa" } as Entry])).rejects.toThrow(
        /phone\/1/,
      );
      expect(await store.heads()).toEqual({ bench: 1 });
    });

    test("a gap is refused with the place that is missing, and nothing that came with it is kept", async () => {
      await expect(store.add([note("bench", 1, 1), note("phone", 2, 2)])).rejects.toThrow(
        "phone/2 came, but phone/1 is",
      );
      expect(await all()).toEqual([]);
    });

    test("a device's clock rises", async () => {
      await store.add([note("bench", 1, 5)]);
      await expect(store.add([note("bench", 2, 5)])).rejects.toThrow("the clock of bench/2");
      expect(await store.heads()).toEqual({ bench: 1 });
    });

    test("a malformed entry is refused by its field, and nothing that came with it is kept", async () => {
      const bad = {
        ...note("bench", 2, 2),
        fact: { type: "UnitDrained", unit: "gear-case", out: "2.25" },
      } as unknown as Entry;
      await expect(store.add([note("bench", 1, 1), bad])).rejects.toThrow("bench/2: fact.out: accepted: a volume");
      await expect(store.add([null as unknown as Entry])).rejects.toThrow("an entry");
      expect(await all()).toEqual([]);
    });

    test("no entry crosses from another workshop", async () => {
      const foreign = { ...note("bench", 1, 1), workshop: "elsewhere" } as unknown as Entry;
      await expect(store.add([foreign])).rejects.toThrow("of the workshop elsewhere");
    });

    test("since gives what a holder of heads lacks; of many the first, never with a gap", async () => {
      await store.add([
        note("bench", 1, 1),
        note("phone", 1, 2),
        note("bench", 2, 3),
        note("phone", 2, 3),
        note("bench", 3, 4),
      ]);
      const places = async (heads: Record<string, number>, most?: number) =>
        (await store.since(heads as Heads, most)).map((it) => `${it.device}/${it.number}`);
      expect(await places({ bench: 2 })).toEqual(["phone/1", "phone/2", "bench/3"]);
      expect(await places({ bench: 3, phone: 2, tablet: 9 })).toEqual([]);
      for (let most = 0; most <= 5; most++) {
        const piece = await places({}, most);
        expect(piece).toHaveLength(most);
        for (const device of ["bench", "phone"]) {
          const numbers = piece.filter((it) => it.startsWith(device)).map((it) => Number(it.split("/")[1]));
          expect(numbers).toEqual(numbers.map((_, i) => i + 1));
        }
      }
    });

    test("adds that run at the same time are each kept whole or refused whole", async () => {
      const pairs = Array.from({ length: 20 }, (_, i) => [
        note("bench", 2 * i + 1, 2 * i + 1),
        note("bench", 2 * i + 2, 2 * i + 2),
      ]);
      const bad = [note("phone", 1, 1), note("phone", 3, 3)];
      const results = await Promise.allSettled([...pairs, bad, [note("tablet", 1, 9)]].map((it) => store.add(it)));
      expect(results.map(({ status }) => status)).toEqual([...pairs.map(() => "fulfilled"), "rejected", "fulfilled"]);
      expect(await store.heads()).toEqual({ bench: 40, tablet: 1 });
    });

    test("the same entry by two adds at the same time is kept once, and another one in its place is a fork", async () => {
      const [first, second] = [note("bench", 1, 1), note("bench", 2, 2)];
      const other = { ...second, by: "sefa" } as Entry;
      const results = await Promise.allSettled(
        [[first], [first, second], [second], [other]].map((it) => store.add(it)),
      );
      expect(results.map(({ status }) => status)).toEqual(["fulfilled", "fulfilled", "fulfilled", "rejected"]);
      expect(await all()).toEqual([first, second]);
    });

    test("two stores that wrote apart hold the same after replicating", async () => {
      const other = memoryStore(workshop);
      await store.add([note("bench", 1, 1), note("bench", 2, 2)]);
      await other.add([note("tablet", 1, 1)]);
      await replicate(store, other);
      await replicate(store, other);
      expect(await all()).toEqual(await other.since(none));
      expect(await store.heads()).toEqual({ bench: 2, tablet: 1 });
    });

    test("more than one piece goes over", async () => {
      const other = memoryStore(workshop);
      await other.add(Array.from({ length: 1203 }, (_, i) => note("bench", i + 1, i + 1)));
      await replicate(store, other);
      expect(await store.heads()).toEqual({ bench: 1203 });
    });
  });
}

export const none = {} as Heads;

const job = (id: string) => id as JobId;

export const note = (device: string, number: number, clock: number, of = "0412"): Entry =>
  ({
    workshop,
    device: device as DeviceId,
    number,
    clock,
    at: "2026-11-25T08:00:00Z",
    by: "jory",
    job: job(of),
    fact: { type: "NoteWritten", words: `${device} ${number}` },
  }) as Entry;
