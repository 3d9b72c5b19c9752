import type { WorkshopId } from "../journal/facts/ids.ts";
import type { Journal } from "../journal/ownerCards.ts";
import { sqlCards } from "./sqlCards.ts";
import { type Access, sqliteFile } from "./sqliteFile.ts";
import { sqlJournal } from "./sqlJournal.ts";

/** The journal of a workshop and its owners' cards in one file of SQLite. @throws StoreTrouble */
export function sqliteJournal(path: string, workshop: WorkshopId, access: Access): Journal {
  const database = sqliteFile(path, access);
  const store = sqlJournal(database, workshop);
  return {
    store: {
      ...store,
      async add(entries) {
        await store.add(entries);
        // The log still holds the pages of an erased card as they were.
        if (entries.some(({ fact }) => fact.type === "OwnerErased")) await database.query(emptyLog, []);
      },
    },
    cards: sqlCards(database, workshop),
  };
}

const emptyLog = "pragma wal_checkpoint(truncate)";
