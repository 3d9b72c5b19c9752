import { StoreTrouble } from "../../journal/storeTrouble.ts";
import type { OpenTables, PhotoState, Writing } from "./tables.ts";

/**
 * Photos in a browser by the SHA-256 of their bytes. One is kept as soon as it is taken; it is to be sent once an entry of this
 * browser names it, and stays until it is at the workshop and room is wanted.
 */
export type BrowserPhotos = {
  /** Keeps a photo; one that is there already changes nothing. Where there is no room, those at the workshop make way. @throws StoreTrouble */
  keep(name: string, bytes: ArrayBuffer): Promise<void>;
  /** Null where this browser does not have it. */
  bytes(name: string): Promise<ArrayBuffer | null>;
  /** Those that an entry names and that are not at the workshop. */
  toSend(): Promise<readonly string[]>;
  /** Notes that the workshop has it. */
  sent(name: string): Promise<void>;
  /** Drops one that was taken and that no entry names. */
  drop(name: string): Promise<void>;
};

export function browserPhotos(open: OpenTables): BrowserPhotos {
  const { database, read, written } = open;
  const keep = (name: string, bytes: ArrayBuffer): Promise<void> =>
    written(["photo", "photoState"], async (tables) => {
      if (await tables.objectStore("photoState").get(name)) return;
      await tables.objectStore("photo").add(bytes, name);
      await tables.objectStore("photoState").add("taken", name);
    });

  return {
    keep: (name, bytes) => withRoomMade(open, () => keep(name, bytes)),
    bytes: (name) => read(async () => (await database.get("photo", name)) ?? null),
    toSend: () => inState(open, "to send"),
    sent: (name) =>
      written(["photoState"], async (tables) => {
        if (await tables.objectStore("photoState").get(name))
          await tables.objectStore("photoState").put("at workshop", name);
      }),
    drop: (name) => dropped(open, name, "taken"),
  };
}

/** Does `work`, and where there is no room for it once more after the photos that the workshop has made way. @throws StoreTrouble */
export async function withRoomMade<T>(open: OpenTables, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (trouble) {
    const safe = isFull(trouble) ? await inState(open, "at workshop") : [];
    if (safe.length === 0) throw trouble;
    for (const name of safe) await dropped(open, name, "at workshop");
    return work();
  }
}

const isFull = (trouble: unknown): boolean => trouble instanceof StoreTrouble && trouble.trouble === "full";

const inState = ({ database, read }: OpenTables, state: PhotoState): Promise<readonly string[]> =>
  read(async () => {
    const tables = database.transaction("photoState");
    const [names, states] = await Promise.all([tables.store.getAllKeys(), tables.store.getAll()]);
    return names.filter((_, i) => states[i] === state);
  });

/** Drops a photo that still stands so. */
const dropped = ({ written }: OpenTables, name: string, state: PhotoState): Promise<void> =>
  written(["photo", "photoState"], async (tables) => {
    if ((await tables.objectStore("photoState").get(name)) !== state) return;
    await tables.objectStore("photo").delete(name);
    await tables.objectStore("photoState").delete(name);
  });

/** An entry names these: those that were taken here are to be sent from now on, in the same transaction as the entry. */
export async function photosNamedBy(tables: Writing, names: readonly string[]): Promise<void> {
  const states = tables.objectStore("photoState");
  for (const name of names) if ((await states.get(name)) === "taken") await states.put("to send", name);
}
