import type { Entry } from "./entry.ts";
import type { DeviceId, JobId } from "./facts/ids.ts";
import { jobSheet } from "./job/jobProjection.ts";
import type { JobSheet } from "./job/jobSheet.ts";
import { type Folded, followed } from "./projection.ts";
import { type Shop, shop } from "./shop/shop.ts";
import type { Heads, JournalStore } from "./store.ts";

/** The journal as read so far: the workshop, and every job's sheet. What it holds may be thrown away and read again. */
export type JournalReader = {
  /** Reads what was added to the store since the last time. */
  refresh(): Promise<void>;
  shop(): Shop;
  /** The sheet of a job; an empty one if nothing was written about it. */
  sheet(job: JobId): JobSheet;
  sheets(): Iterable<JobSheet>;
};

/**
 * Reads a store and follows it. Each job is folded by itself, so that what comes in late from a device that was away costs
 * one fold of the jobs it touches, however long the journal is.
 */
export function journalReader(store: JournalStore): JournalReader {
  const heads: Record<DeviceId, number> = {};
  const jobs = new Map<JobId, Folded<JobSheet>>();
  let workshop: Folded<Shop> = { entries: [], state: shop.empty };

  return {
    async refresh() {
      const added = await store.since(heads as Heads);
      for (const { device, number } of added) heads[device] = number;
      for (const [job, entries] of byJob(added)) {
        if (job === null) workshop = followed(shop, workshop, entries);
        else jobs.set(job, followed(jobSheet, jobs.get(job) ?? { entries: [], state: jobSheet.empty }, entries));
      }
    },
    shop: () => workshop.state,
    sheet: (job) => jobs.get(job)?.state ?? jobSheet.empty,
    sheets: function* () {
      for (const { state } of jobs.values()) yield state;
    },
  };
}

function byJob(entries: readonly Entry[]): ReadonlyMap<JobId | null, readonly Entry[]> {
  const map = new Map<JobId | null, Entry[]>();
  for (const entry of entries) {
    const own = map.get(entry.job);
    if (own) own.push(entry);
    else map.set(entry.job, [entry]);
  }
  return map;
}
