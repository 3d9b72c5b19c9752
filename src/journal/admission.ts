import { bodyOf, type Entry } from "./entry.ts";
import type { DeviceId, WorkshopId } from "./facts/ids.ts";
import { entryFrom } from "./parse.ts";
import { ForeignEntry, JournalDisorder, JournalFork, JournalGap } from "./refusals.ts";

/** An entry with the text that stands for it. */
export type Bodied = { readonly entry: Entry; readonly body: string };

/** What a store holds of one device, as far as it decides what may be added. */
export type HeldOfDevice = {
  /** The number and clock of its last entry, 0 for none. */
  readonly last: number;
  readonly clock: number;
  /** The texts of the entries that were handed over again, by number. */
  readonly bodies: ReadonlyMap<number, string>;
};

/**
 * What was handed over, checked by `read` and sorted by device and number: the first of two steps of every store's `add`.
 * @throws MalformedEntry, ForeignEntry
 */
export function handedOver(
  workshop: WorkshopId,
  documents: readonly unknown[],
  read: (document: unknown) => Entry = entryFrom,
): ReadonlyMap<DeviceId, readonly Bodied[]> {
  const byDevice = new Map<DeviceId, Bodied[]>();
  for (const document of documents) {
    const entry = read(document);
    if (entry.workshop !== workshop) throw new ForeignEntry(entry, workshop);
    const bodied = { entry, body: bodyOf(entry) };
    const own = byDevice.get(entry.device);
    if (own) own.push(bodied);
    else byDevice.set(entry.device, [bodied]);
  }
  // Most come one by one.
  if (documents.length > 1) for (const own of byDevice.values()) own.sort((a, b) => a.entry.number - b.entry.number);
  return byDevice;
}

/**
 * Those of one device's entries that are new, in their order: the second step.
 * @throws JournalFork, JournalGap, JournalDisorder
 */
export function newOf(handed: readonly Bodied[], held: HeldOfDevice): readonly Bodied[] {
  let { last, clock } = held;
  let previous: Bodied | null = null;
  const added: Bodied[] = [];
  for (const it of handed) {
    const { entry, body } = it;
    const known = entry.number === previous?.entry.number ? previous.body : held.bodies.get(entry.number);
    if (entry.number <= last) {
      if (known !== body) throw new JournalFork(entry);
      continue;
    }
    if (entry.number !== last + 1) throw new JournalGap(entry, last + 1);
    if (entry.clock <= clock) throw new JournalDisorder(entry);
    added.push(it);
    previous = it;
    last = entry.number;
    clock = entry.clock;
  }
  return added;
}
