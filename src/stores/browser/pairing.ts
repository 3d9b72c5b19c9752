import type { DeviceId, WorkshopId } from "../../journal/facts/ids.ts";
import type { Heads } from "../../journal/store.ts";
import { openedTables } from "./tables.ts";

/** Which device of which workshop this browser is, and what it shows itself with. */
export type Pairing = {
  readonly workshop: WorkshopId;
  readonly device: DeviceId;
  readonly token: string;
  /** What the workshop calls it. */
  readonly name: string;
};

/**
 * What is kept beside a journal of a browser, in its own database: a browser that clears one clears both, and a device never
 * numbers on from nothing.
 */
export type Beside = {
  pairing(): Promise<Pairing | null>;
  pair(pairing: Pairing): Promise<void>;
  /** What stood at the workshop when it was last reached. */
  atWorkshop(): Promise<Heads>;
  noteAtWorkshop(heads: Heads): Promise<void>;
  close(): void;
};

/** Opens what is kept beside the journal `name`. @throws StoreTrouble */
export async function besideJournal(name: string): Promise<Beside> {
  const { database, read, written } = await openedTables(name);
  const noted = async <T>(key: string): Promise<T | null> =>
    ((await read(() => database.get("about", key))) as T | undefined) ?? null;
  const note = (key: string, value: unknown): Promise<void> =>
    written(["about"], async (tables) => {
      await tables.objectStore("about").put(value, key);
    });
  return {
    pairing: () => noted<Pairing>("pairing"),
    pair: (pairing) => note("pairing", pairing),
    atWorkshop: async () => (await noted<Heads>("at workshop")) ?? ({} as Heads),
    noteAtWorkshop: (heads) => note("at workshop", heads),
    close: () => database.close(),
  };
}
