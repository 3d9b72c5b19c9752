import { type Bodied, handedOver, newOf } from "../../journal/admission.ts";
import { bodyOf, type Entry, entryId, inJournalOrder } from "../../journal/entry.ts";
import type { DeviceId, EntryId, WorkshopId } from "../../journal/facts/ids.ts";
import { isLater, type Journal } from "../../journal/ownerCards.ts";
import { entriesAfter, type Pen } from "../../journal/pen.ts";
import { photosNamed } from "../../journal/photosNamed.ts";
import { type Heads, type JournalStore, lastOf as lastIn } from "../../journal/store.ts";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { type BrowserPhotos, browserPhotos, photosNamedBy, withRoomMade } from "./photos.ts";
import { openedTables, type Reading, type Writing } from "./tables.ts";

/** The journal of a workshop in the database of a browser, with what this device needs to write in it. */
export type BrowserJournal = Journal & {
  /**
   * What `device` writes with. It reads the device's last number and writes the next ones in one transaction of the browser, so
   * that several tabs may write as one device and none takes another's place.
   */
  pen(device: DeviceId): Pen;
  readonly photos: BrowserPhotos;
};

/**
 * Opens the journal of `workshop` in the browser's database `name`, or begins it. What was added is on the disk before `add`
 * answers: its transactions are of strict durability.
 * @throws StoreTrouble
 */
export async function idbJournal(name: string, workshop: WorkshopId): Promise<BrowserJournal> {
  const open = await openedTables(name);
  const { database, read, written } = open;
  const known = await read(() => database.get("about", "workshop"));
  if (known !== undefined && known !== workshop) {
    database.close();
    throw new StoreTrouble("of another workshop", name);
  }
  if (known === undefined) await written(["about"], (tables) => tables.objectStore("about").put(workshop, "workshop"));

  /** An entry is worth more than a photo that the workshop has. */
  const writtenSafely = <T>(work: (tables: Writing) => Promise<T>): Promise<T> =>
    withRoomMade(open, () => written(ofEntries, work));

  const store: JournalStore = {
    async add(entries) {
      const handed = handedOver(workshop, entries);
      if (handed.size > 0) await writtenSafely((tables) => admitted(tables, handed));
    },

    async ofJob(job) {
      const own = await read(() => database.getAllFromIndex("entry", "job", job));
      return own.sort(inJournalOrder);
    },

    async since(heads, most = Number.POSITIVE_INFINITY) {
      const lacking = await read(async () => {
        const tables = database.transaction("entry");
        const pieces: Promise<Entry[]>[] = [];
        for (const device of await devicesIn(tables)) {
          const newer = IDBKeyRange.bound([device, lastIn(heads, device)], [device, Number.POSITIVE_INFINITY], true);
          // A count of nothing would mean all of them.
          if (most > 0) pieces.push(tables.store.getAll(newer, Math.min(most, MOST)));
        }
        return (await Promise.all(pieces)).flat();
      });
      return lacking.sort(inJournalOrder).slice(0, most);
    },

    heads: () =>
      read(async () => {
        const tables = database.transaction("entry");
        const heads: Record<DeviceId, number> = {};
        for (const device of await devicesIn(tables)) heads[device] = (await lastOf(tables, device))?.number ?? 0;
        return heads as Heads;
      }),

    close: async () => database.close(),
  };

  return {
    store,
    cards: {
      put: (cards) =>
        written(["card", "erased"], async (tables) => {
          for (const card of cards) {
            const known = await tables.objectStore("card").get(card.owner);
            if (await tables.objectStore("erased").get(card.owner)) continue;
            if (!known || isLater(card, known)) await tables.objectStore("card").put(card);
          }
        }),
      // The database sorts keys by their characters, as the other stores do.
      all: () => read(() => database.getAll("card")),
    },
    pen: (device) => ({
      write: (signed, ...facts) =>
        writtenSafely(async (tables) => {
          const lasts = await Promise.all((await devicesIn(tables)).map((it) => lastOf(tables, it)));
          const clock = Math.max(0, ...lasts.map((it) => it?.clock ?? 0));
          const last = lasts.find((it) => it?.device === device)?.number ?? 0;
          const entries = entriesAfter({ workshop, device, last, clock }, signed, facts);
          await admitted(tables, handedOver(workshop, entries));
          return entries.map(entryId) as readonly EntryId[];
        }),
    }),
    photos: browserPhotos(open),
  };
}

/** The tables that an entry may change. */
const ofEntries = ["entry", "card", "erased", "photoState"] as const;

/** As many as one call of the database may be asked for. */
const MOST = 2 ** 32 - 1;

/** The devices that entries are held of: from one to the next by the key, so that it costs one look for each. */
async function devicesIn(tables: Reading): Promise<readonly DeviceId[]> {
  const devices: DeviceId[] = [];
  let key = await tables.objectStore("entry").getKey(IDBKeyRange.lowerBound([]));
  while (key) {
    devices.push(key[0]);
    key = await tables.objectStore("entry").getKey(IDBKeyRange.lowerBound([key[0], Number.POSITIVE_INFINITY]));
  }
  return devices;
}

async function lastOf(tables: Reading, device: DeviceId): Promise<Entry | null> {
  const own = IDBKeyRange.bound([device, 0], [device, Number.POSITIVE_INFINITY]);
  return (await tables.objectStore("entry").openCursor(own, "prev"))?.value ?? null;
}

/** Keeps what was handed over, as far as it is new. @throws JournalFork, JournalGap, JournalDisorder */
async function admitted(tables: Writing, handed: ReadonlyMap<DeviceId, readonly Bodied[]>): Promise<void> {
  for (const [device, own] of handed) {
    const last = await lastOf(tables, device);
    const head = { last: last?.number ?? 0, clock: last?.clock ?? 0 };
    const again = own.filter(({ entry }) => entry.number <= head.last);
    const held = await Promise.all(
      again.map(({ entry }) => tables.objectStore("entry").get([device, entry.number]) as Promise<Entry>),
    );
    const bodies = new Map(held.map((entry) => [entry.number, bodyOf(entry)]));
    await Promise.all(newOf(own, { ...head, bodies }).map(({ entry }) => kept(tables, entry)));
  }
}

async function kept(tables: Writing, entry: Entry): Promise<void> {
  await tables.objectStore("entry").add(entry);
  await photosNamedBy(tables, photosNamed(entry.fact));
  if (entry.fact.type !== "OwnerErased") return;
  await tables.objectStore("card").delete(entry.fact.owner);
  await tables.objectStore("erased").put(true, entry.fact.owner);
}
