import * as z from "zod/mini";
import { type Fact, factSchema, isJobFact, isShopFact } from "./facts/fact.ts";
import { instant, type Read } from "./facts/fields.ts";
import { deviceId, type EntryId, jobId, personId, workshopId } from "./facts/ids.ts";

/** A fact with its place in the journal. Each device numbers its own entries from 1. */
export const entrySchema = z
  .strictObject(
    {
      /** No entry ever crosses from one workshop to another. */
      workshop: workshopId,
      device: deviceId,
      number: z.int({ error: "a whole number from 1" }).check(z.minimum(1, { error: "a whole number from 1" })),
      /** Lamport clock: greater than that of every entry its writer had seen. */
      clock: z.int({ error: "a whole number from 1" }).check(z.minimum(1, { error: "a whole number from 1" })),
      /** When it was written, for people to read; `clock` gives the order. */
      at: instant,
      by: personId,
      /** Null for what is about the workshop itself. */
      job: z.nullable(jobId),
      fact: factSchema,
    },
    { error: "an entry: one JSON object" },
  )
  .check(
    z.refine(({ job, fact }) => (job === null ? !isJobFact(subject(fact)) : !isShopFact(subject(fact))), {
      error: "a job for what happened on one, null for what is about the workshop",
      path: ["job"],
    }),
  );

/** A correction is about whatever it puts right. */
const subject = (fact: z.infer<typeof factSchema>): Fact => (fact.type === "EntryCorrected" ? fact.is : fact) as Fact;

export type Entry = Read<z.infer<typeof entrySchema>>;

export const entryId = ({ device, number }: Pick<Entry, "device" | "number">): EntryId =>
  `${device}/${number}` as EntryId;

/** The one order in which every device reads the same entries. */
export const inJournalOrder = (a: Entry, b: Entry): number =>
  a.clock - b.clock || (a.device < b.device ? -1 : a.device > b.device ? 1 : a.number - b.number);

/**
 * The entry as the one text that stands for it, keys in the order of their names.
 *
 * Two entries are the same if and only if these texts are: a store compares them to tell a repetition from a fork.
 */
export const bodyOf = (entry: Entry): string => JSON.stringify(isSorted(entry) ? entry : sorted(entry));

function isSorted(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  if (Array.isArray(value)) return value.every(isSorted);
  let before = "";
  for (const key of Object.keys(value)) {
    if (key < before || !isSorted((value as Record<string, unknown>)[key])) return false;
    before = key;
  }
  return true;
}

function sorted(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(sorted);
  const from = value as Record<string, unknown>;
  // An object without a prototype takes several times as long, and only one that has this key needs it.
  const to: Record<string, unknown> = Object.hasOwn(from, "__proto__") ? Object.create(null) : {};
  for (const key of Object.keys(from).sort()) to[key] = sorted(from[key]);
  return to;
}
