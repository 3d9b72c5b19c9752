import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import type { Entry } from "../../journal/entry.ts";
import type { DeviceId, JobId, OwnerId } from "../../journal/facts/ids.ts";
import type { OwnerCard } from "../../journal/ownerCards.ts";
import { browserTroubleOf } from "./browserTrouble.ts";

/** Where a photo stands: no entry names it yet, one does and the workshop lacks it, the workshop has it. */
export type PhotoState = "taken" | "to send" | "at workshop";

/** Entries are added to their store and never put there again: a browser refuses to add what is there. */
export interface Tables extends DBSchema {
  entry: { key: [DeviceId, number]; value: Entry; indexes: { job: JobId } };
  card: { key: OwnerId; value: OwnerCard };
  erased: { key: OwnerId; value: true };
  /** The bytes of photos by their SHA-256, and where each stands. */
  photo: { key: string; value: ArrayBuffer };
  photoState: { key: string; value: PhotoState };
  /** What is known of the journal as a whole, by name: its workshop, the pairing, what stood at the workshop last. */
  about: { key: string; value: unknown };
}

type Name = "entry" | "card" | "erased" | "photo" | "photoState" | "about";
export type Writing = IDBPTransaction<Tables, Name[], "readwrite">;
export type Reading = Pick<IDBPTransaction<Tables, Name[], IDBTransactionMode>, "objectStore">;

/** The tables of one journal in a browser, open. Troubles of the browser come out as StoreTrouble. */
export type OpenTables = {
  readonly database: IDBPDatabase<Tables>;
  readonly read: <T>(work: () => Promise<T>) => Promise<T>;
  /** Does `work` in one transaction of strict durability, and answers once that is on the disk; of what fails nothing was done. */
  readonly written: <T>(names: readonly Name[], work: (tables: Writing) => Promise<T>) => Promise<T>;
};

/** The first had no photos. */
const VERSION = 2;

/** Opens the tables of `name`, or makes them. @throws StoreTrouble */
export async function openedTables(name: string): Promise<OpenTables> {
  const read = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (cause) {
      throw browserTroubleOf(name, cause);
    }
  };
  const database = await read(() => opened(name));

  async function written<T>(names: readonly Name[], work: (tables: Writing) => Promise<T>): Promise<T> {
    const tables = await read(async () => database.transaction([...names], "readwrite", { durability: "strict" }));
    try {
      const done = await work(tables);
      await tables.done;
      return done;
    } catch (cause) {
      // That it was given up is said by `done` too, and known already.
      tables.done.catch(() => {});
      try {
        tables.abort();
      } catch {
        // It has ended by itself.
      }
      throw browserTroubleOf(name, tables.error ?? cause);
    }
  }

  return { database, read, written };
}

const opened = (name: string): Promise<IDBPDatabase<Tables>> =>
  openDB<Tables>(name, VERSION, {
    upgrade(database, before) {
      if (before < 1) {
        database.createObjectStore("entry", { keyPath: ["device", "number"] }).createIndex("job", "job");
        database.createObjectStore("card", { keyPath: "owner" });
        database.createObjectStore("erased");
        database.createObjectStore("about");
      }
      database.createObjectStore("photo");
      database.createObjectStore("photoState");
    },
    // Another tab brings a newer Turnsleft: this one must not stand in its way.
    blocking: (_, __, event) => (event.target as IDBDatabase).close(),
  });
