import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Entry } from "../../../src/journal/entry.ts";
import type { DeviceId, PersonId } from "../../../src/journal/facts/ids.ts";
import { ownerCardsContract } from "../../stores/ownerCardsContract.ts";
import { none, note, storeContract, workshop } from "../../stores/storeContract.ts";
import { address, browser } from "../openedPage.ts";
import { type JournalInPage, journalInPage, withStore } from "./journalInPage.ts";

const context = await browser.newContext({ serviceWorkers: "block" });
let page: Page;
let databases = 0;
const fresh = (): Promise<JournalInPage> => journalInPage(page, `fresh-${databases++}`, workshop);

beforeAll(async () => {
  page = await tab();
});
afterAll(() => context.close());

storeContract("IndexedDB in Chromium", async () => (await fresh()).store);
ownerCardsContract("IndexedDB in Chromium", fresh);

describe("IndexedDB", () => {
  test("keeps entries from one opening to the next, and in another tab", async () => {
    const first = await journalInPage(page, "kept", workshop);
    await first.store.add([note("phone", 1, 1), note("phone", 2, 2)]);
    await first.store.close();
    const again = await journalInPage(await tab(), "kept", workshop);
    expect(await again.store.since(none)).toEqual([note("phone", 1, 1), note("phone", 2, 2)]);
  });

  test("is of one workshop", async () => {
    await journalInPage(page, "theirs", "elsewhere");
    await expect(journalInPage(page, "theirs", workshop)).rejects.toMatchObject({ trouble: "of another workshop" });
  });

  test("two tabs that write as one device at the same time take no place twice and lose nothing", async () => {
    const tabs = await Promise.all([1, 2].map(async () => journalInPage(await tab(), "two-tabs", workshop)));
    const written = await Promise.all(
      Array.from({ length: 40 }, (_, i) =>
        (tabs[i % 2] as JournalInPage).pen(phone).write(signed, ...words(`${i} first`, `${i} second`)),
      ),
    );
    const places = written.flat();
    expect(new Set(places).size).toBe(80);
    const held = await (tabs[0] as JournalInPage).store.since(none);
    expect(held.map(({ number }) => number)).toEqual(Array.from({ length: 80 }, (_, i) => i + 1));
    expect(held.map(({ clock }) => clock)).toEqual(Array.from({ length: 80 }, (_, i) => i + 1));
    // What went in together stands together.
    for (let i = 0; i < 80; i += 2) expect(said(held[i])?.replace("first", "second")).toBe(said(held[i + 1]));
  });

  test("the pen writes after all that it has seen, and nothing of what is malformed", async () => {
    const { store, pen } = await fresh();
    await store.add([note("bench", 1, 7)]);
    expect(await pen(phone).write(signed, ...words("seen"))).toEqual(["phone/1"]);
    expect((await store.since(none)).at(-1)).toMatchObject({ device: "phone", number: 1, clock: 8 });
    await expect(pen(phone).write(signed, ...words("good", ""))).rejects.toThrow(
      "phone/3: fact.words: accepted: a text",
    );
    expect(await store.heads()).toEqual({ bench: 1, phone: 1 });
  });

  test("every transaction that writes asks for the disk before it answers", async () => {
    const asked = await tab();
    await asked.evaluate(() => {
      const { transaction } = IDBDatabase.prototype;
      Object.assign(globalThis, { writes: [] as unknown[] });
      IDBDatabase.prototype.transaction = function (names, mode, options) {
        // biome-ignore lint/suspicious/noExplicitAny: the page's own list.
        if (mode === "readwrite") (globalThis as any).writes.push(options?.durability);
        return transaction.call(this, names, mode, options);
      };
    });
    const { store, cards, pen } = await journalInPage(asked, "strict", workshop);
    await store.add([note("bench", 1, 1)]);
    await pen(phone).write(signed, ...words("strict"));
    await cards.put([{ owner: "o-1", name: "A. Brook", plates: [], clock: 1, device: "bench" } as never]);
    // biome-ignore lint/suspicious/noExplicitAny: the page's own list.
    expect(await asked.evaluate(() => (globalThis as any).writes)).toEqual(["strict", "strict", "strict", "strict"]);
  });

  test("no room left is a trouble by its name, nothing of what came is kept, and everything before it stays", async () => {
    const small = await tab();
    const { store } = await journalInPage(small, "full", workshop);
    await store.add([note("bench", 1, 1)]);
    // A browser of its own cannot be brought to refuse: its database is told to, at the second of three.
    await small.evaluate(() => {
      const { add } = IDBObjectStore.prototype;
      let asked = 0;
      Object.assign(globalThis, {
        roomAgain: () => {
          IDBObjectStore.prototype.add = add;
        },
      });
      IDBObjectStore.prototype.add = function (...given) {
        if (++asked === 2) throw new DOMException("no room", "QuotaExceededError");
        return add.apply(this, given);
      };
    });
    const more = [2, 3, 4].map((it) => note("bench", it, it));
    await expect(store.add(more)).rejects.toMatchObject({ name: "StoreTrouble", trouble: "full" });
    expect(await store.heads()).toEqual({ bench: 1 });
    // biome-ignore lint/suspicious/noExplicitAny: the page's own function.
    await small.evaluate(() => (globalThis as any).roomAgain());
    await store.add(more);
    expect(await store.heads()).toEqual({ bench: 4 });
  });
});

describe("photos beside it", () => {
  const [first, second] = ["a".repeat(64), "b".repeat(64)];
  const naming = (...photos: readonly string[]) => [{ type: "NoteWritten" as const, words: "seen", photos }] as never[];

  test("wait for an entry that names them, are sent then and no other, and stay; one that nobody names may be dropped", async () => {
    const { photos, pen } = await fresh();
    await photos.keep(first, "first");
    await photos.keep(second, "second");
    expect(await photos.toSend()).toEqual([]);
    await pen(phone).write(signed, ...naming(first, "c".repeat(64)));
    expect(await photos.toSend()).toEqual([first]);
    // What an entry names is not dropped, and what was sent is not sent again.
    await photos.drop(first);
    await photos.drop(second);
    expect([await photos.text(first), await photos.text(second)]).toEqual(["first", null]);
    await photos.sent(first);
    await pen(phone).write(signed, ...naming(first));
    expect([await photos.toSend(), await photos.text(first)]).toEqual([[], "first"]);
  });

  test("an entry that is not kept sends no photo", async () => {
    const { photos, pen } = await fresh();
    await photos.keep(first, "first");
    const empty = { type: "NoteWritten" as const, words: "" };
    await expect(pen(phone).write(signed, ...naming(first), empty)).rejects.toThrow("accepted: a text");
    expect(await photos.toSend()).toEqual([]);
  });

  test("where there is no room those at the workshop make way, and those that are here alone never do", async () => {
    const small = await tab();
    const { photos, pen } = await journalInPage(small, "full of photos", workshop);
    for (const name of [first, second]) await photos.keep(name, name);
    await pen(phone).write(signed, ...naming(first, second));
    await photos.sent(first);
    // A browser of its own cannot be brought to refuse: there is room for two here.
    await small.evaluate(() => {
      const { add } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.add = function (...given) {
        const adding = add.apply(this, given);
        const { transaction } = this;
        if (this.name === "photo")
          this.count().onsuccess = ({ target }) => {
            if ((target as IDBRequest<number>).result > 2) transaction.abort();
          };
        return adding;
      };
      const { error } = Object.getOwnPropertyDescriptors(IDBTransaction.prototype);
      Object.defineProperty(IDBTransaction.prototype, "error", {
        get(this: IDBTransaction) {
          return error.get?.call(this) ?? new DOMException("no room", "QuotaExceededError");
        },
      });
    });
    const third = "c".repeat(64);
    await photos.keep(third, "third");
    expect(await photos.text(first)).toBe(null);
    expect([await photos.text(second), await photos.text(third)]).toEqual([second, "third"]);
    await expect(photos.keep("d".repeat(64), "fourth")).rejects.toMatchObject({ trouble: "full" });
    expect([await photos.text(second), await photos.text(third)]).toEqual([second, "third"]);
    expect(await photos.toSend()).toEqual([second]);
  });

  test("an entry for which there is no room has photos make way that the workshop has", async () => {
    const small = await tab();
    const { photos, pen, store } = await journalInPage(small, "full for entries", workshop);
    for (const name of [first, second]) await photos.keep(name, name);
    await pen(phone).write(signed, ...naming(first, second));
    await photos.sent(first);
    // There is room again once a photo is gone.
    await small.evaluate(() => {
      const { add, delete: deleted } = IDBObjectStore.prototype;
      let full = true;
      IDBObjectStore.prototype.delete = function (...given) {
        full = full && this.name !== "photo";
        return deleted.apply(this, given);
      };
      IDBObjectStore.prototype.add = function (...given) {
        if (full && this.name === "entry") throw new DOMException("no room", "QuotaExceededError");
        return add.apply(this, given);
      };
    });
    expect(await pen(phone).write(signed, ...words("written all the same"))).toEqual(["phone/2"]);
    expect([await photos.text(first), await photos.text(second)]).toEqual([null, second]);
    expect([await store.heads(), await photos.toSend()]).toEqual([{ phone: 2 }, [second]]);
  });

  test("a journal that an earlier Turnsleft began without photos is opened, and keeps what it held", async () => {
    const old = await tab();
    await old.evaluate(
      () =>
        new Promise((done) => {
          const opening = indexedDB.open("began before", 1);
          opening.onupgradeneeded = () => {
            const { result } = opening;
            result.createObjectStore("entry", { keyPath: ["device", "number"] }).createIndex("job", "job");
            for (const name of ["erased", "about"]) result.createObjectStore(name);
            result.createObjectStore("card", { keyPath: "owner" });
          };
          opening.onsuccess = () => {
            opening.result.close();
            done(null);
          };
        }),
    );
    const { store, photos } = await journalInPage(old, "began before", workshop);
    await store.add([note("phone", 1, 1)]);
    await photos.keep(first, "first");
    expect([await store.heads(), await photos.text(first)]).toEqual([{ phone: 1 }, "first"]);
  });
});

const phone = "phone" as DeviceId;
const signed = { by: "sefa" as PersonId, job: "0412", at: "2026-11-25T08:00:00Z" } as never;
const words = (...all: readonly string[]) => all.map((words) => ({ type: "NoteWritten" as const, words }));
const said = (entry: Entry | undefined): string | undefined =>
  entry?.fact.type === "NoteWritten" ? entry.fact.words : undefined;

async function tab(): Promise<Page> {
  const opened = await context.newPage();
  await opened.goto(address);
  await withStore(opened);
  return opened;
}
