import { closeSync, existsSync, openSync, renameSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { journalIn } from "./dataFolder.ts";
import { fileTroubleOf } from "./fileTrouble.ts";
import { halfRemoved } from "./halfRemoved.ts";
import { identityIn, newIdentity } from "./identity.ts";
import { type Inspection, inspected, workshopsIn } from "./journalFile.ts";
import { madeFolder } from "./madeFolder.ts";
import { openedToRead } from "./openedToRead.ts";
import { copyPhotos, missingOf, type PhotosCopied, photosBeside, photosIn } from "./photoCopies.ts";
import type { PhotoFolder } from "./photoFolder.ts";
import { troubleOf } from "./sqliteFile.ts";
import { synced } from "./synced.ts";
import { writerLock } from "./writerLock.ts";

/** What a backup holds, or what came out of one, and the photos that its entries name and that did not come with it. */
export type BackedUp = Inspection & {
  readonly copied: PhotosCopied;
  readonly photosAt: string;
  readonly missing: readonly string[];
};

/**
 * Writes the journal of a folder into one file, and its photos beside it, while another process may go on writing; reads
 * everything back. @throws StoreTrouble, also if what was read back is not whole; the file is then not left behind
 */
export async function backedUp(folder: string, file: string): Promise<BackedUp> {
  if (existsSync(file)) throw new StoreTrouble("already there", file);
  if (!existsSync(journalIn(folder))) throw new StoreTrouble("not there", folder);
  const workshop = workshopsIn(journalIn(folder))[0] ?? identityIn(folder)?.workshop;
  if (!workshop) throw new StoreTrouble("not there", folder);
  return copied(journalIn(folder), file, photosIn(folder), photosBeside(file, workshop));
}

/**
 * Makes a data folder out of a backup and the photos beside it. The folder becomes a device of its own: the one that wrote the
 * backup may write on. Tried again after trouble of the disk, it goes on with the photos where it stopped.
 * @throws StoreTrouble if the folder holds a journal already, or if the backup is not whole
 */
export async function restored(file: string, folder: string): Promise<BackedUp> {
  if (!existsSync(file)) throw new StoreTrouble("not there", file);
  const [workshop = null] = whole(file, file).workshops;
  if (existsSync(journalIn(folder))) throw new StoreTrouble("already there", folder);
  madeFolder(folder);
  const lock = writerLock(folder, resolve(folder, "writer.lock"));
  try {
    const here = photosIn(folder);
    // A backup without an entry is of no workshop, and has no photos beside it.
    const held = await copied(file, journalIn(folder), workshop ? photosBeside(file, workshop) : here, here);
    newIdentity(folder, workshop);
    return held;
  } finally {
    lock.release();
  }
}

/** The journal gets its name last: one without its photos is not taken for a backup, nor for a workshop. */
async function copied(from: string, to: string, photos: PhotoFolder, there: PhotoFolder): Promise<BackedUp> {
  const part = `${to}.part`;
  try {
    // Opened first: the system says more plainly than SQLite why a file cannot be written.
    closeSync(openSync(part, "w", 0o600));
    const source = openedToRead(from);
    try {
      source.prepare("vacuum into ?1").run(part);
    } finally {
      source.close();
    }
    synced(part);
    const inspection = whole(part, from);
    const copies = await copyPhotos(photos, there);
    renameSync(part, to);
    synced(dirname(resolve(to)));
    return { ...inspection, copied: copies, photosAt: there.folder, missing: missingOf(inspection.photos, there) };
  } catch (cause) {
    halfRemoved(part);
    throw fileTroubleOf(to, troubleOf(to, cause, statSync(from, { throwIfNoEntry: false })?.size));
  }
}

/** Reads `file` through; what is wrong in it was so in `source`, which a person knows. */
function whole(file: string, source: string): Inspection {
  const { faults, ...inspection } = inspected(file);
  const [fault] = faults;
  if (fault) throw new StoreTrouble("damaged", source, new Error(`${fault.type} at ${fault.place}`));
  return { faults, ...inspection };
}
