import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, describe, expect, test } from "vitest";
import { bodyOf, type Entry } from "../../src/journal/entry.ts";
import type { Trouble } from "../../src/journal/storeTrouble.ts";
import { sqliteFile } from "../../src/stores/sqliteFile.ts";
import { sqliteJournal } from "../../src/stores/sqliteJournal.ts";
import { sqlJournal } from "../../src/stores/sqlJournal.ts";
import { ownerCardsContract } from "./ownerCardsContract.ts";
import { none, note, storeContract, workshop } from "./storeContract.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
let files = 0;
const fresh = (): string => join(scratch, `journal-${files++}.db`);

storeContract("SQLite in a file", async () => sqliteJournal(fresh(), workshop, "write").store);
storeContract("SQLite in memory", async () => sqliteJournal(":memory:", workshop, "write").store);
ownerCardsContract("SQLite", async () => sqliteJournal(fresh(), workshop, "write"));

const trouble = async (work: () => unknown): Promise<Trouble | "none"> => {
  try {
    await work();
  } catch (fault) {
    return (fault as { trouble: Trouble }).trouble ?? String(fault);
  }
  return "none";
};

describe("SQLite", () => {
  test("keeps entries from one opening to the next", async () => {
    const path = fresh();
    const first = sqliteJournal(path, workshop, "write").store;
    await first.add([note("bench", 1, 1), note("bench", 2, 2)]);
    await first.close();
    const again = sqliteJournal(path, workshop, "write").store;
    expect(await again.since(none)).toEqual([note("bench", 1, 1), note("bench", 2, 2)]);
    await again.close();
  });

  test("finds a job by its index: the whole workshop was read instead, found by the bench, 2026-11", () => {
    const path = fresh();
    sqliteFile(path, "write").close();
    const file = new DatabaseSync(path);
    const plan = file.prepare("explain query plan select body from entry where workshop = 'a' and job = 'b'").all();
    expect(plan).toMatchObject([{ detail: "SEARCH entry USING INDEX entry_of_job (job=? AND workshop=?)" }]);
    file.close();
  });

  test("two workshops in one file do not see each other", async () => {
    const database = sqliteFile(fresh(), "write");
    const [here, there] = [sqlJournal(database, workshop), sqlJournal(database, "elsewhere" as never)];
    await here.add([note("bench", 1, 1)]);
    await there.add([{ ...note("bench", 1, 1), workshop: "elsewhere" } as unknown as Entry]);
    expect(await here.heads()).toEqual({ bench: 1 });
    expect((await there.since(none)).map((it) => it.workshop)).toEqual(["elsewhere"]);
    await database.close();
  });

  test.each([
    "update entry set body = '{}'",
    "update entry set clock = 9",
    "delete from entry",
    "insert or replace into entry values ('hollin-reach', 'bench', 1, 1, null, '{}')",
    "insert into entry values ('hollin-reach', 'bench', 3, 3, null, '{}')",
    "insert into entry values ('hollin-reach', 'phone', 2, 3, null, '{}')",
    "insert into entry values ('hollin-reach', 'bench', 2, 2, null, 'no JSON')",
  ])("refuses from any program: %s", async (sql) => {
    const path = fresh();
    const { store } = sqliteJournal(path, workshop, "write");
    await store.add([note("bench", 1, 1)]);
    const other = new DatabaseSync(path);
    expect(() => other.exec(sql)).toThrow();
    other.close();
    expect(await store.since(none)).toEqual([note("bench", 1, 1)]);
    await store.close();
  });

  test("goes by what another program wrote in the meantime, not by what it remembers", async () => {
    const path = fresh();
    const { store, cards } = sqliteJournal(path, workshop, "write");
    await store.add([note("bench", 1, 1)]);
    const other = new DatabaseSync(path);
    const insert = other.prepare("insert into entry values (?1, ?2, ?3, ?4, ?5, ?6)");
    for (const it of [note("bench", 2, 5), note("phone", 1, 6)])
      insert.run(it.workshop, it.device, it.number, it.clock, it.job, bodyOf(it));
    other.close();
    await cards.put([{ owner: "o-1", name: "Sefa", plates: [], clock: 1, device: "bench" } as never]);
    await expect(store.add([note("bench", 2, 2)])).rejects.toThrow("a different entry bench/2");
    await expect(store.add([note("bench", 3, 5)])).rejects.toThrow("the clock of bench/3");
    await store.add([note("bench", 2, 5), note("bench", 3, 7), note("phone", 2, 7)]);
    expect(await store.heads()).toEqual({ bench: 3, phone: 2 });
    await store.close();
  });

  test("an owner's name is gone from every file once he is erased", async () => {
    const path = fresh();
    const { store, cards } = sqliteJournal(path, workshop, "write");
    await cards.put([
      { owner: "o-1", name: "Unmistakable Brook-Hale", plates: [], clock: 1, device: "bench" } as never,
    ]);
    const erased = { ...note("bench", 1, 1), job: null, fact: { type: "OwnerErased", owner: "o-1", why: "he asked" } };
    await store.add([erased as Entry]);
    for (const file of readdirSync(scratch))
      expect(readFileSync(join(scratch, file), "latin1")).not.toContain("Unmistakable");
    await store.close();
    for (const file of readdirSync(scratch))
      expect(readFileSync(join(scratch, file), "latin1")).not.toContain("Unmistakable");
  });

  test("a commit that has no room on the disk is refused, and everything before it stays", async () => {
    const database = sqliteFile(fresh(), "write");
    const store = sqlJournal(database, workshop);
    await store.add([note("bench", 1, 1)]);
    await database.query("pragma max_page_count = 20", []);
    const big = (number: number): Entry =>
      ({ ...note("bench", number, number), fact: { type: "NoteWritten", words: "x".repeat(2000) } }) as Entry;
    let number = 2;
    let met: Trouble | "none" = "none";
    while (met === "none" && number < 100) met = await trouble(() => store.add([big(number++)]));
    expect(met).toBe("full");
    const kept = number - 2;
    expect(await store.heads()).toEqual({ bench: kept });
    await database.query("pragma max_page_count = 10000", []);
    await store.add([big(kept + 1)]);
    expect(await store.heads()).toEqual({ bench: kept + 1 });
    await store.close();
  });

  test("a disk that may only be read is a trouble by its name", async () => {
    const database = sqliteFile(fresh(), "write");
    await database.query("pragma query_only = on", []);
    expect(await trouble(() => sqlJournal(database, workshop).add([note("bench", 1, 1)]))).toBe("read-only");
    await database.close();
  });

  test("what is no journal of ours is not opened, and not changed", async () => {
    const [text, other, newer] = [fresh(), fresh(), fresh()];
    writeFileSync(text, "a letter to the owner, long enough to be taken for something else ".repeat(20));
    const foreign = new DatabaseSync(other);
    foreign.exec("create table stamps (country text)");
    foreign.close();
    sqliteFile(newer, "write").close();
    const raised = new DatabaseSync(newer);
    raised.exec("pragma user_version = 2");
    raised.close();
    for (const access of ["write", "read"] as const) {
      expect(await trouble(() => sqliteFile(text, access))).toBe("damaged");
      expect(await trouble(() => sqliteFile(other, access))).toBe("damaged");
      expect(await trouble(() => sqliteFile(newer, access))).toBe("of a newer Turnsleft");
      expect(await trouble(() => sqliteFile(join(scratch, "nowhere", "x.db"), access))).toBe("not reachable");
    }
    expect(readFileSync(text, "utf8")).toMatch(/^a letter/);
  });
});
