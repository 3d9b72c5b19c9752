import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import type { DeviceId, WorkshopId } from "../journal/facts/ids.ts";
import type { Journal } from "../journal/ownerCards.ts";
import { type Pen, pen } from "../journal/pen.ts";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { type Identity, identityIn, newIdentity } from "./identity.ts";
import { workshopsIn } from "./journalFile.ts";
import { madeFolder } from "./madeFolder.ts";
import { sqliteJournal } from "./sqliteJournal.ts";
import { writerLock } from "./writerLock.ts";

/** Where the journal lies inside a data folder. */
export const journalIn = (folder: string): string => join(folder, "journal.db");

/** A workshop's data, open. */
export type Workshop = Journal & {
  readonly folder: string;
  readonly workshop: WorkshopId;
  close(): Promise<void>;
};

/** The same, open for writing by this device. */
export type WorkshopAtWork = Workshop & { readonly device: DeviceId; readonly pen: Pen };

/** The platform's usual place for a program's data. */
export function usualFolder(platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): string {
  const home = homedir();
  if (platform === "win32") return join(environment["LOCALAPPDATA"] ?? join(home, "AppData", "Local"), "Turnsleft");
  if (platform === "darwin") return join(home, "Library", "Application Support", "Turnsleft");
  return join(environment["XDG_DATA_HOME"] || join(home, ".local", "share"), "turnsleft");
}

/**
 * Opens a data folder for writing; an empty one becomes a new workshop, or a device of `wanted`. One process at a time may.
 * @throws StoreTrouble
 */
export function openToWrite(folder: string, wanted: WorkshopId | null = null): WorkshopAtWork {
  madeFolder(folder);
  const lock = writerLock(folder, join(folder, "writer.lock"));
  try {
    const known = existsSync(journalIn(folder)) ? workshopsIn(journalIn(folder)) : [];
    const identity: Identity = identityIn(folder) ?? newIdentity(folder, known[0] ?? wanted);
    const { workshop, device } = identity;
    if ([...known, wanted ?? workshop].some((it) => it !== workshop))
      throw new StoreTrouble("of another workshop", folder);
    const journal = sqliteJournal(journalIn(folder), workshop, "write");
    return {
      ...journal,
      folder,
      workshop,
      device,
      pen: pen(journal.store, workshop, device),
      async close() {
        await journal.store.close();
        lock.release();
      },
    };
  } catch (fault) {
    lock.release();
    throw fault;
  }
}

/** Opens a data folder for reading, whether or not a process writes into it. @throws StoreTrouble */
export function openToRead(folder: string): Workshop {
  const path = journalIn(folder);
  if (!existsSync(path)) throw new StoreTrouble("not there", folder);
  const [workshop = identityIn(folder)?.workshop] = workshopsIn(path);
  if (!workshop) throw new StoreTrouble("not there", folder);
  const journal = sqliteJournal(path, workshop, "read");
  return { ...journal, folder, workshop, close: () => journal.store.close() };
}
