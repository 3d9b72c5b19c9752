import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { bodyOf, type Entry } from "../src/journal/entry.ts";
import type { WorkshopId } from "../src/journal/facts/ids.ts";
import { sqliteJournal } from "../src/stores/sqliteJournal.ts";
import { journalTables } from "../src/stores/sqliteTables.ts";
import { drainedEntry } from "./longJournal.ts";

/** Entries a second, and as a ratio to plain inserts of the same bodies into SQLite at the same durability. */
export type AppendSpeed = {
  readonly name: string;
  readonly entriesPerSecond: number;
  readonly plainPerSecond: number;
  readonly ratio: number;
};

const workshop = "bench" as WorkshopId;

/** Entries that both write before they are timed: a served workshop runs for weeks, and by then its code is compiled. */
const WARMING = 1000;

/** Ours and plain SQLite burst by burst in turn, so that a disk that others use slows both; the middle of the rounds' ratios. */
export async function appendSpeed(rounds: number): Promise<readonly AppendSpeed[]> {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-bench-"));
  try {
    return [
      await compared("one entry after the other", folder, rounds, 60, 1),
      await compared("200 writers at once, one entry each", folder, rounds, 1000, 200),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function compared(
  name: string,
  folder: string,
  rounds: number,
  count: number,
  atOnce: number,
): Promise<AppendSpeed> {
  const { store } = sqliteJournal(join(folder, `ours-${atOnce}.db`), workshop, "write");
  const plain = plainTable(join(folder, `plain-${atOnce}.db`));
  const results: { ours: number; plain: number }[] = [];
  let number = 0;
  for (let round = -Math.ceil(WARMING / count); round < rounds; round++) {
    const entries = Array.from({ length: count }, () => drainedEntry(workshop, "bench", ++number));
    let ours = 0;
    let others = 0;
    for (let i = 0; i < count; i += atOnce) {
      const burst = entries.slice(i, i + atOnce);
      ours += await timed(async () => void (await Promise.all(burst.map((entry) => store.add([entry])))));
      others += await timed(async () => plain.insert(burst));
    }
    if (round >= 0) results.push({ ours: (1000 * count) / ours, plain: (1000 * count) / others });
  }
  await store.close();
  plain.close();
  return {
    name,
    entriesPerSecond: middle(results.map(({ ours }) => ours)),
    plainPerSecond: middle(results.map(({ plain: it }) => it)),
    ratio: middle(results.map((it) => it.ours / it.plain)),
  };
}

/** The same table without guards or index, the same write-ahead log and full sync, one commit for what comes at once. */
function plainTable(path: string) {
  const file = new DatabaseSync(path);
  file.exec("pragma journal_mode = wal; pragma synchronous = full");
  file.exec(/create table entry \([\s\S]*?\) strict, without rowid/.exec(journalTables.sql)?.[0] ?? "");
  const insert = file.prepare("insert into entry values (?1, ?2, ?3, ?4, ?5, ?6)");
  return {
    insert(entries: readonly Entry[]) {
      file.exec("begin");
      for (const it of entries) insert.run(it.workshop, it.device, it.number, it.clock, it.job, bodyOf(it));
      file.exec("commit");
    },
    close: () => file.close(),
  };
}

async function timed(work: () => Promise<void>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
