import { statSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { DatabaseSync } from "@photostructure/sqlite";
import type { OpenFile } from "./sqliteTables.ts";

/**
 * A database file for reading, beside whoever writes it.
 *
 * Readers and writers agree by a file beside it. On a disk that is full it cannot be made; where the log holds nothing, nobody
 * writes, and the file is read as one that does not change: just then a backup to another disk must be had.
 * @throws what SQLite says
 */
export function openedToRead(path: string): OpenFile {
  const file = new DatabaseSync(path, { readOnly: true, timeout: 5000 });
  try {
    file.prepare("select count(*) from sqlite_schema").get();
    return file;
  } catch (cause) {
    file.close();
    if (!nothingBeside(cause) || logHoldsAnything(path)) throw cause;
    return new DatabaseSync(new URL("?immutable=1", pathToFileURL(path)), { readOnly: true });
  }
}

/** SQLITE_IOERR and SQLITE_CANTOPEN (sqlite.org/rescode.html). */
const nothingBeside = (cause: unknown): boolean => {
  const { errcode, message } = cause as { errcode?: number; message?: string };
  return errcode === undefined
    ? /^(disk I\/O error|unable to open)/.test(message ?? "")
    : [10, 14].includes(errcode & 0xff);
};

function logHoldsAnything(path: string): boolean {
  try {
    return statSync(`${path}-wal`).size > 0;
  } catch {
    return false;
  }
}
