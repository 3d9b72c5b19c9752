import { closeSync, openSync } from "node:fs";
import { DatabaseSync } from "@photostructure/sqlite";
import { StoreTrouble, type Trouble } from "../journal/storeTrouble.ts";
import type { Database, Row, Run, RunEach } from "./database.ts";
import { troubleBeyond } from "./fileTrouble.ts";
import { openedToRead } from "./openedToRead.ts";
import { journalTables, type OpenFile, tablesOf } from "./sqliteTables.ts";

export type Access = "write" | "read";

/**
 * A database file of SQLite, or ":memory:".
 *
 * Write-ahead log with a full sync at every commit: what is acknowledged is on the disk, and readers in other processes are
 * not in the way. @throws StoreTrouble
 */
export function sqliteFile(path: string, access: Access): Database {
  const troubled = <Result>(work: () => Result): Result => {
    try {
      return work();
    } catch (cause) {
      throw troubleOf(path, cause);
    }
  };
  if (access === "write" && path !== ":memory:") madePrivate(path);
  const file = troubled(() => (access === "read" ? openedToRead(path) : new DatabaseSync(path, { timeout: 5000 })));
  try {
    troubled(() => prepared(path, file, access));
  } catch (fault) {
    file.close();
    throw fault;
  }

  const statements = new Map<string, Statement>();
  const preparedOf = (sql: string): Statement => {
    const known = statements.get(sql);
    if (known) return known;
    const fresh = file.prepare(sql.replace(/\$(\d+)/g, "?$1"));
    statements.set(sql, fresh);
    return fresh;
  };
  const run: Run = async (sql, parameters) => troubled(() => preparedOf(sql).all(...parameters) as Row[]);
  // Asked for a row, a statement does the same, and leaves out the count of what it did: that costs a tenth of an insert.
  const does = (sql: string, parameters: readonly unknown[]): void => void preparedOf(sql).get(...parameters);
  const each: RunEach = async (sql, rows) =>
    troubled(() => {
      for (const row of rows) does(sql, row);
    });

  // It changes with what other connections commit, and with nothing else (sqlite.org/pragma.html#pragma_data_version).
  const mark = (): unknown => (preparedOf("pragma data_version").get() as Row)["data_version"];

  // One connection: a reader that came in between would see what is not committed yet.
  let last: Promise<unknown> = Promise.resolve();
  const alone = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const result = last.then(work);
    last = result.catch(() => {});
    return result;
  };

  return {
    query: (sql, parameters) => alone(() => run(sql, parameters)),
    transaction: (work) =>
      alone(async () => {
        troubled(() => does("begin immediate", []));
        try {
          const result = await work(run, each, troubled(mark));
          troubled(() => does("commit", []));
          return result;
        } catch (fault) {
          // A full disk has SQLite roll back by itself.
          if (file.isTransaction) file.exec("rollback");
          throw fault;
        }
      }),
    close: () =>
      alone(async () => {
        // Statements that are not collected yet keep the log of a closed file alive.
        if (access === "write") troubled(() => file.exec("pragma wal_checkpoint(truncate)"));
        file.close();
      }),
  };
}

/** A new file for its owner alone, in whatever folder it lies; SQLite gives its logs the same mode. */
function madePrivate(path: string): void {
  try {
    closeSync(openSync(path, "a", 0o600));
  } catch {
    // What is wrong with it is told by the opening that follows.
  }
}

function prepared(path: string, file: OpenFile, access: Access): void {
  const { known, version } = tablesOf(file);
  if (known === "another") throw new StoreTrouble("damaged", path, new Error("no journal of Turnsleft"));
  if (version > journalTables.version) throw new StoreTrouble("of a newer Turnsleft", path);
  if (access === "read") {
    if (known === "empty") throw new StoreTrouble("not there", path);
    return;
  }
  file.exec("pragma journal_mode = wal");
  file.exec("pragma synchronous = full");
  if (known === "empty") file.exec(`begin immediate; ${journalTables.sql}; commit`);
}

type Statement = ReturnType<OpenFile["prepare"]>;

/**
 * What SQLite says in its result codes, as a trouble of the store; what is no trouble of the world is a fault of ours.
 * `reached_bytes` is how large a file was to become that SQLite has taken back by now.
 */
export function troubleOf(path: string, cause: unknown, reached_bytes = 0): unknown {
  const { code, errcode, message } = cause as { code?: string; errcode?: number; message?: string };
  if (code !== "ERR_SQLITE_ERROR") return cause;
  const told = troubles.find(([result, text]) =>
    errcode === undefined ? message?.startsWith(text) : result === (errcode & 0xff),
  );
  if (!told) return cause;
  const [, , trouble] = told;
  const plainer = trouble === "not reachable" && path !== ":memory:" ? troubleBeyond(path, reached_bytes) : null;
  return new StoreTrouble(plainer === "full" || plainer === "read-only" ? plainer : trouble, path, cause);
}

/** Primary result codes and their texts (sqlite.org/rescode.html); the binding gives rows that fail the text alone. */
const troubles: readonly (readonly [result: number, text: string, trouble: Trouble])[] = [
  [3, "access permission denied", "read-only"],
  [5, "database is locked", "in use"],
  [6, "database table is locked", "in use"],
  [8, "attempt to write a readonly database", "read-only"],
  [10, "disk I/O error", "not reachable"],
  [11, "database disk image is malformed", "damaged"],
  [13, "database or disk is full", "full"],
  [14, "unable to open database file", "not reachable"],
  [26, "file is not a database", "damaged"],
];
