import { type Bodied, handedOver, newOf } from "../journal/admission.ts";
import { type Entry, inJournalOrder } from "../journal/entry.ts";
import type { DeviceId, JobId, OwnerId, WorkshopId } from "../journal/facts/ids.ts";
import { isLater, type Journal, type OwnerCard } from "../journal/ownerCards.ts";
import { type Heads, type JournalStore, lastOf } from "../journal/store.ts";

/** Keeps a journal for as long as the program runs: for tests, and for looking at one without keeping it. */
export function memoryStore(workshop: WorkshopId): JournalStore {
  const devices = new Map<DeviceId, Bodied[]>();
  const jobs = new Map<JobId, Entry[]>();

  const held = (device: DeviceId): readonly Bodied[] => devices.get(device) ?? [];

  return {
    async add(entries) {
      const added = [...handedOver(workshop, entries)].map(([device, handed]) => {
        const own = held(device);
        const bodies = new Map(handed.map(({ entry }) => [entry.number, own[entry.number - 1]?.body ?? ""]));
        return newOf(handed, { last: own.length, clock: own.at(-1)?.entry.clock ?? 0, bodies });
      });
      // Nothing is kept before every device's entries were found to fit.
      for (const it of added.flat()) {
        listOf(devices, it.entry.device).push(it);
        if (it.entry.job !== null) listOf(jobs, it.entry.job).push(it.entry);
      }
    },

    ofJob: async (job) => (jobs.get(job) ?? []).toSorted(inJournalOrder),

    async since(heads, most = Number.POSITIVE_INFINITY) {
      const lacking = [...devices].flatMap(([device, own]) => own.slice(lastOf(heads, device)));
      return lacking
        .map(({ entry }) => entry)
        .sort(inJournalOrder)
        .slice(0, most);
    },

    heads: async () => Object.fromEntries([...devices].map(([device, own]) => [device, own.length])) as Heads,

    close: async () => {},
  };
}

/** A journal with its owners' cards, for as long as the program runs. */
export function memoryJournal(workshop: WorkshopId): Journal {
  const store = memoryStore(workshop);
  const cards = new Map<OwnerId, OwnerCard>();
  const erased = new Set<OwnerId>();
  return {
    store: {
      ...store,
      async add(entries) {
        await store.add(entries);
        for (const { fact } of entries) {
          if (fact.type !== "OwnerErased") continue;
          erased.add(fact.owner);
          cards.delete(fact.owner);
        }
      },
    },
    cards: {
      async put(given) {
        for (const card of given) {
          const known = cards.get(card.owner);
          if (!erased.has(card.owner) && (!known || isLater(card, known))) cards.set(card.owner, card);
        }
      },
      all: async () => [...cards.values()].sort((a, b) => (a.owner < b.owner ? -1 : 1)),
    },
  };
}

function listOf<Key, Item>(lists: Map<Key, Item[]>, key: Key): Item[] {
  const known = lists.get(key);
  if (known) return known;
  const list: Item[] = [];
  lists.set(key, list);
  return list;
}
