import type { Entry } from "../journal/entry.ts";
import type { WorkshopId } from "../journal/facts/ids.ts";
import type { Journal } from "../journal/ownerCards.ts";
import { sqlCards } from "./sqlCards.ts";
import { type Access, sqliteFile } from "./sqliteFile.ts";
import { sqlJournal } from "./sqlJournal.ts";

/** The journal of a workshop and its owners' cards in one file of SQLite. @throws StoreTrouble */
export function sqliteJournal(path: string, workshop: WorkshopId, access: Access): Journal {
  const database = sqliteFile(path, access);
  const store = sqlJournal(database, workshop);
  const cards = sqlCards(database, workshop);
  return {
    store: {
      ...store,
      add: (entries) => (entries.some(erases) ? leavingNoTrace(() => store.add(entries)) : store.add(entries)),
    },
    cards: { ...cards, put: (given) => leavingNoTrace(() => cards.put(given)) },
  };

  /**
   * What is removed is overwritten, not only unlinked, and the log that still holds the pages as they were is emptied. It
   * makes every insert several times dearer, so it is on for cards alone.
   */
  async function leavingNoTrace(work: () => Promise<void>): Promise<void> {
    await database.query("pragma secure_delete = on", []);
    try {
      await work();
      await database.query("pragma wal_checkpoint(truncate)", []);
    } finally {
      await database.query("pragma secure_delete = off", []);
    }
  }
}

/** What was handed over is not checked yet: it may be anything. */
const erases = (entry: Partial<Entry> | null): boolean => entry?.fact?.type === "OwnerErased";
