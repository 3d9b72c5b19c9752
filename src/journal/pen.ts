import { type Entry, entryId } from "./entry.ts";
import type { Fact } from "./facts/fact.ts";
import type { DeviceId, EntryId, JobId, PersonId, WorkshopId } from "./facts/ids.ts";
import { type Heads, type JournalStore, lastOf } from "./store.ts";

/** Who writes, about which job, and when. */
export type Signed = { readonly by: PersonId; readonly job: JobId | null; readonly at: string };

/** What one device writes with: it numbers the device's entries and keeps its clock. */
export type Pen = {
  /** Writes facts as entries, all of them or none, and gives their places once they are kept for good. */
  write(signed: Signed, ...facts: readonly Fact[]): Promise<readonly EntryId[]>;
};

/**
 * The pen of `device`. There is one for each device: a second one would claim the same places, and the store would refuse
 * its entries as a fork.
 */
export function pen(store: JournalStore, workshop: WorkshopId, device: DeviceId): Pen {
  let queue: Promise<unknown> = Promise.resolve();
  return {
    write(signed, ...facts) {
      const written = queue.then(() => writeAll(signed, facts));
      queue = written.catch(() => {});
      return written;
    },
  };

  async function writeAll({ by, job, at }: Signed, facts: readonly Fact[]): Promise<readonly EntryId[]> {
    const heads = await store.heads();
    const clock = await latestClock(store, heads);
    const entries = entriesAfter({ workshop, device, last: lastOf(heads, device), clock }, { by, job, at }, facts);
    await store.add(entries);
    return entries.map(entryId);
  }
}

/** Where a device stands as it begins to write: its last number, and the latest clock of all that it holds. */
export type PenPlace = {
  readonly workshop: WorkshopId;
  readonly device: DeviceId;
  readonly last: number;
  readonly clock: number;
};

/** Facts as the next entries of a device. */
export const entriesAfter = (
  { workshop, device, last, clock }: PenPlace,
  { by, job, at }: Signed,
  facts: readonly Fact[],
): readonly Entry[] =>
  facts.map((fact, i) => ({ workshop, device, number: last + 1 + i, clock: clock + 1 + i, at, by, job, fact }));

/** The latest clock held. A device's clock rises, so it is that of the last entry of one of them. */
async function latestClock(store: JournalStore, heads: Heads): Promise<number> {
  const beforeLast = Object.fromEntries(Object.entries(heads).map(([device, number]) => [device, number - 1]));
  return Math.max(0, ...(await store.since(beforeLast as Heads)).map(({ clock }) => clock));
}
