import { closeSync, existsSync, mkdirSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { journalIn } from "./dataFolder.ts";
import { fileTroubleOf } from "./fileTrouble.ts";
import { newIdentity } from "./identity.ts";
import { type Inspection, inspected } from "./journalFile.ts";
import { troubleOf } from "./sqliteFile.ts";
import { synced } from "./synced.ts";
import { writerLock } from "./writerLock.ts";

/**
 * Writes the journal of a folder into one file, while another process may go on writing, and reads the file back.
 * @throws StoreTrouble, also if what was read back is not whole; the file is then not left behind
 */
export function backedUp(folder: string, file: string): Inspection {
  if (existsSync(file)) throw new StoreTrouble("already there", file);
  if (!existsSync(journalIn(folder))) throw new StoreTrouble("not there", folder);
  return copied(journalIn(folder), file);
}

/**
 * Makes a data folder out of a backup. The folder becomes a device of its own: the one that wrote the backup may write on.
 * @throws StoreTrouble if the folder holds a journal already, or if the backup is not whole
 */
export function restored(file: string, folder: string): Inspection {
  if (!existsSync(file)) throw new StoreTrouble("not there", file);
  const found = whole(file);
  if (existsSync(journalIn(folder))) throw new StoreTrouble("already there", folder);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (cause) {
    throw fileTroubleOf(folder, cause);
  }
  const lock = writerLock(folder, resolve(folder, "writer.lock"));
  try {
    const inspection = copied(file, journalIn(folder));
    newIdentity(folder, found.workshops[0] ?? null);
    return inspection;
  } finally {
    lock.release();
  }
}

function copied(from: string, to: string): Inspection {
  const part = `${to}.part`;
  try {
    // Opened first: the system says more plainly than SQLite why a file cannot be written.
    closeSync(openSync(part, "w", 0o600));
    const source = new DatabaseSync(from, { readOnly: true, timeout: 5000 });
    try {
      source.prepare("vacuum into ?1").run(part);
    } finally {
      source.close();
    }
    synced(part);
    const inspection = whole(part);
    renameSync(part, to);
    synced(dirname(resolve(to)));
    return inspection;
  } catch (cause) {
    rmSync(part, { force: true });
    const fault = fileTroubleOf(to, troubleOf(to, cause));
    throw fault;
  }
}

function whole(file: string): Inspection {
  const inspection = inspected(file);
  const [fault] = inspection.faults;
  if (fault) throw new StoreTrouble("damaged", file, new Error(`${fault.type} at ${fault.place}`));
  return inspection;
}
