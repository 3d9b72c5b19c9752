import { StoreTrouble } from "../../journal/storeTrouble.ts";
import type { OpenTables, Writing } from "./tables.ts";

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

export type PhotoState = "taken" | "to send" | "at workshop";

export function browserPhotos({ database, read, written }: OpenTables): BrowserPhotos {
  const inState = (state: PhotoState): Promise<readonly string[]> =>
    read(async () => {
      const tables = database.transaction("photoState");
      const [names, states] = await Promise.all([tables.store.getAllKeys(), tables.store.getAll()]);
      return names.filter((_, i) => states[i] === state);
    });

  const keep = (name: string, bytes: ArrayBuffer): Promise<void> =>
    written(["photo", "photoState"], async (tables) => {
      if (await tables.objectStore("photoState").get(name)) return;
      await tables.objectStore("photo").add(bytes, name);
      await tables.objectStore("photoState").add("taken", name);
    });

  const without = (name: string, state: PhotoState): Promise<void> =>
    written(["photo", "photoState"], async (tables) => {
      if ((await tables.objectStore("photoState").get(name)) !== state) return;
      await tables.objectStore("photo").delete(name);
      await tables.objectStore("photoState").delete(name);
    });

  return {
    async keep(name, bytes) {
      try {
        await keep(name, bytes);
      } catch (trouble) {
        if (!(trouble instanceof StoreTrouble) || trouble.trouble !== "full") throw trouble;
        for (const safe of await inState("at workshop")) await without(safe, "at workshop");
        await keep(name, bytes);
      }
    },
    bytes: (name) => read(async () => (await database.get("photo", name)) ?? null),
    toSend: () => inState("to send"),
    sent: (name) =>
      written(["photoState"], async (tables) => {
        if (await tables.objectStore("photoState").get(name))
          await tables.objectStore("photoState").put("at workshop", name);
      }),
    drop: (name) => without(name, "taken"),
  };
}

/** An entry names these: those that were taken here are to be sent from now on, in the same transaction as the entry. */
export async function photosNamedBy(tables: Writing, names: readonly string[]): Promise<void> {
  const states = tables.objectStore("photoState");
  for (const name of names) if ((await states.get(name)) === "taken") await states.put("to send", name);
}
