import * as z from "zod/mini";
import { type Entry, entrySchema } from "../../../journal/entry.ts";
import { deviceId, type JobId, jobId } from "../../../journal/facts/ids.ts";
import { hasOverrides, overriders } from "../../../journal/overrides.ts";
import { ownerCard } from "../../../journal/ownerCards.ts";
import { PinNeeded } from "../../../journal/refusals.ts";
import type { Heads } from "../../../journal/store.ts";
import type { Caller } from "./caller.ts";
import { refused } from "./refusals.ts";
import { type Route, route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

/** What goes over in one request; a device that has more to tell sends it in pieces. Judgement. */
const MOST_ENTRIES = 5000;
const MOST_bytes = 16 * 1024 * 1024;
const PIECE = 500;

const fromZero = z.int({ error: "a whole number from 0" }).check(z.minimum(0, { error: "a whole number from 0" }));
const headsOfDevices = z.record(deviceId, fromZero, { error: "the last number held from each device" });
const listOf = <Item extends z.ZodMiniType>(item: Item, most: number) =>
  z.array(item, { error: "a list" }).check(z.maxLength(most, { error: `at most ${most} at once` }));

const proofs = z.optional(listOf(z.string({ error: "a proof of a PIN" }), 100));
const entries = z.strictObject({ entries: listOf(entrySchema, MOST_ENTRIES), proofs });
const heads = z.strictObject({ heads: headsOfDevices });
const cards = z.strictObject({ cards: listOf(ownerCard, MOST_ENTRIES) });

/** The journal: what a `JournalStore` and the cards beside it do, asked from elsewhere. */
export function journalRoutes(served: ServedWorkshop): readonly Route[] {
  const { store, cards: owners } = served;
  return [
    route({
      method: "get",
      path: "/heads",
      title: "The last number held from each device",
      who: "device",
      body: null,
      status: 200,
      answer: heads,
      refusals: [],
      run: async ({ c }) => c.json({ heads: await store.headsNow() }),
    }),
    route({
      method: "post",
      path: "/entries",
      title: "Adds entries written on any device, all of them or none; answers once they are on the disk",
      who: "device",
      // The store checks every entry and names what is wrong with it; here it is only counted.
      body: z.strictObject({ entries: listOf(z.unknown(), MOST_ENTRIES), proofs }),
      described: entries,
      most_bytes: MOST_bytes,
      status: 200,
      answer: heads,
      refusals: ["foreign", "pin needed", "fork", "gap", "disorder", "full", "read-only", "not reachable"],
      run: async ({ c, caller, body }) => {
        const brought = body.entries as readonly Entry[];
        await takenOnBy(served, brought, body.proofs ?? [], caller);
        await store.add(brought);
        return c.json({ heads: await store.headsNow() });
      },
    }),
    route({
      method: "post",
      path: "/pull",
      title: "The entries that a holder of these heads lacks, in journal order; changes nothing",
      who: "device",
      body: z.strictObject({
        heads: headsOfDevices,
        most: z._default(fromZero.check(z.maximum(MOST_ENTRIES, { error: `at most ${MOST_ENTRIES}` })), PIECE),
      }),
      most_bytes: MOST_bytes,
      status: 200,
      answer: z.strictObject({ entries: z.array(entrySchema), more: z.boolean() }),
      refusals: [],
      run: async ({ c, body }) => {
        const lacking = await store.since(body.heads as Heads, body.most + 1);
        return c.json({ entries: lacking.slice(0, body.most), more: lacking.length > body.most });
      },
    }),
    route({
      method: "get",
      path: "/jobs/:job",
      title: "The entries of one job, in journal order",
      who: "device",
      body: null,
      status: 200,
      answer: z.strictObject({ entries: z.array(entrySchema) }),
      refusals: ["not there"],
      run: async ({ c, named }) => {
        const job = jobId.safeParse(named("job"));
        return job.success ? c.json({ entries: await store.ofJob(job.data as JobId) }) : refused("not there");
      },
    }),
    route({
      method: "get",
      path: "/ownerCards",
      title: "What is known of owners as persons",
      who: "device",
      body: null,
      status: 200,
      answer: cards,
      refusals: [],
      run: async ({ c }) => c.json({ cards: await owners.all() }),
    }),
    route({
      method: "post",
      path: "/ownerCards",
      title: "Keeps owners' cards; of two for one owner the later one stands, and none of an owner who was erased",
      who: "device",
      body: cards,
      most_bytes: MOST_bytes,
      status: 204,
      answer: null,
      refusals: ["full", "read-only", "not reachable"],
      run: async ({ c, body }) => {
        await owners.put(body.cards);
        return c.body(null, 204);
      },
    }),
  ];
}

/**
 * Lets new overrides through with the PIN of who takes them on himself, once anybody of the workshop has one. What is held already
 * needs none: it is only brought again. @throws PinNeeded
 */
async function takenOnBy(
  { store, pins, proofs }: ServedWorkshop,
  entries: readonly Entry[],
  shown: readonly string[],
  caller: Caller,
): Promise<void> {
  const withPin = pins.persons();
  if (withPin.length === 0 || !hasOverrides(entries)) return;
  const proven = proofs.persons(shown, caller);
  const lacking = overriders(entries, await store.heads()).filter((it) => !proven.has(it));
  if (lacking.length > 0) throw new PinNeeded(lacking.map((person) => ({ person, set: withPin.includes(person) })));
}
