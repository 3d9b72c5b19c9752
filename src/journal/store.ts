import type { Entry } from "./entry.ts";
import type { DeviceId, JobId } from "./facts/ids.ts";

/** The last number held from each device. */
export type Heads = Readonly<Record<DeviceId, number>>;

/** The last number that a holder of `heads` has of a device. A device may be called as what every object has: "constructor". */
export const lastOf = (heads: Heads, device: DeviceId): number =>
  Object.hasOwn(heads, device) ? (heads[device] ?? 0) : 0;

/**
 * Where the entries of one workshop are kept. Entries are added and read; none is ever changed or removed.
 *
 * Every store passes `test/stores/storeContract.ts`, which is the full statement of this interface. What was added is on
 * the disk, or wherever the store keeps it for good, before `add` answers.
 */
export interface JournalStore {
  /**
   * Adds entries written on any device, all of them or none. Adding an entry again changes nothing.
   * @throws MalformedEntry, ForeignEntry
   * @throws JournalFork if another entry is held under the same device and number
   * @throws JournalGap if an earlier entry of the same device is missing
   * @throws JournalDisorder if a device's clock does not rise
   * @throws StoreTrouble if the world does not let it
   */
  add(entries: readonly Entry[]): Promise<void>;
  /** The entries of one job, in journal order. */
  ofJob(job: JobId): Promise<readonly Entry[]>;
  /** The entries here that a holder of `heads` lacks, in journal order; of many the first `most`, never with a gap. */
  since(heads: Heads, most?: number): Promise<readonly Entry[]>;
  heads(): Promise<Heads>;
  close(): Promise<void>;
}

/** Entries that go over in one piece; what is interrupted loses at most one piece and is asked for again. */
const PIECE = 500;

/** Brings `to` up to `from`. It may stop anywhere and be run again. */
async function carry(from: JournalStore, to: JournalStore): Promise<void> {
  for (;;) {
    const piece = await from.since(await to.heads(), PIECE);
    if (piece.length === 0) return;
    await to.add(piece);
    if (piece.length < PIECE) return;
  }
}

/** Brings two stores level. It may stop anywhere and be run again. */
export async function replicate(a: JournalStore, b: JournalStore): Promise<void> {
  await carry(b, a);
  await carry(a, b);
}
