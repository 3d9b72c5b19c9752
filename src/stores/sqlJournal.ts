import { type Bodied, handedOver, newOf } from "../journal/admission.ts";
import { type Entry, inJournalOrder } from "../journal/entry.ts";
import type { DeviceId, WorkshopId } from "../journal/facts/ids.ts";
import { type Heads, type JournalStore, lastOf } from "../journal/store.ts";
import { compiledEntryFrom } from "./compiledEntry.ts";
import type { Database, Row, Run } from "./database.ts";

/**
 * The journal of one workshop in a database that may hold several.
 *
 * Adds that arrive while the disk is busy are committed together: one wait for the disk serves them all, each is still kept
 * or refused by itself, and each answers only after the commit.
 */
export function sqlJournal(database: Database, workshop: WorkshopId): JournalStore {
  let waiting: Waiting[] = [];
  let flushing: Promise<void> | null = null;

  return {
    async add(entries) {
      const handed = handedOver(workshop, entries, compiledEntryFrom);
      if (handed.size === 0) return;
      await new Promise<void>((kept, refused) => {
        waiting.push({ handed, kept, refused });
        flushing ??= nextTurn().then(flush);
      });
    },

    ofJob: async (job) => entriesIn(await database.query(ofJob, [workshop, job])),

    async since(heads, most = Number.MAX_SAFE_INTEGER) {
      const lacking: Entry[] = [];
      for (const [device, last] of Object.entries(await headsOf(database.query))) {
        const from = lastOf(heads, device as DeviceId);
        if (from >= last) continue;
        const own = await database.query(ofDevice, [workshop, device, from, Math.min(most, last - from)]);
        lacking.push(...own.map(entryIn));
      }
      return lacking.sort(inJournalOrder).slice(0, most);
    },

    heads: () => headsOf(database.query),

    async close() {
      while (flushing) await flushing;
      await database.close();
    },
  };

  async function flush(): Promise<void> {
    const group = waiting;
    waiting = [];
    try {
      const refusals = await database.transaction(async (run, each) => {
        const kept: Kept = { devices: new Map(), rows: [] };
        const faults: unknown[] = [];
        for (const { handed } of group) faults.push(await refusalOf(handed, kept, run));
        await each(insert, kept.rows);
        return faults;
      });
      for (const [i, { kept, refused }] of group.entries()) {
        if (refusals[i] === undefined) kept();
        else refused(refusals[i]);
      }
    } catch (trouble) {
      for (const { refused } of group) refused(trouble);
    }
    flushing = waiting.length > 0 ? nextTurn().then(flush) : null;
  }

  /** Puts what one add brings to the rows that are to be kept, all of it or none; undefined, or why none of it may be. */
  async function refusalOf(handed: Waiting["handed"], kept: Kept, run: Run): Promise<unknown> {
    const added: Bodied[] = [];
    try {
      for (const [device, own] of handed) {
        let known = kept.devices.get(device);
        if (!known) {
          known = { ...(await headIn(device, run)), bodies: new Map() };
          kept.devices.set(device, known);
        }
        const { last, clock } = known;
        const again = (own[0]?.entry.number ?? 0) <= last;
        const bodies = again ? await bodiesAgain(device, own, known, run) : none;
        added.push(...newOf(own, { last, clock, bodies }));
      }
    } catch (refusal) {
      if (refusal instanceof Error && refusal.name.startsWith("Journal")) return refusal;
      throw refusal;
    }
    for (const { entry, body } of added) {
      const { device, number, clock, job } = entry;
      kept.rows.push([workshop, device, number, clock, job, body]);
      const known = kept.devices.get(device);
      if (!known) continue;
      known.bodies.set(number, body);
      known.last = number;
      known.clock = clock;
    }
    return undefined;
  }

  async function headIn(device: DeviceId, run: Run): Promise<Head> {
    const [head] = await run(headOf, [workshop, device]);
    return { last: Number(head?.["number"] ?? 0), clock: Number(head?.["clock"] ?? 0) };
  }

  /** The texts of what was handed over and is held already, on the disk or by an add of the same group. */
  async function bodiesAgain(device: DeviceId, own: readonly Bodied[], { bodies }: KeptOfDevice, run: Run) {
    const [from, to] = [own[0]?.entry.number ?? 0, own.at(-1)?.entry.number ?? 0];
    const again = new Map<number, string>();
    for (const row of await run(between, [workshop, device, from, to]))
      again.set(Number(row["number"]), String(row["body"]));
    for (const { entry } of own) {
      const body = bodies.get(entry.number);
      if (body !== undefined) again.set(entry.number, body);
    }
    return again;
  }

  async function headsOf(run: Run): Promise<Heads> {
    const rows = await run(allHeads, [workshop]);
    return Object.fromEntries(rows.map(({ device, number }) => [device, Number(number)])) as Heads;
  }
}

/** The number and clock of a device's last entry, 0 for none. */
type Head = { readonly last: number; readonly clock: number };

/** What a group of adds comes to before it is written. */
type Kept = {
  readonly devices: Map<DeviceId, KeptOfDevice>;
  readonly rows: (readonly unknown[])[];
};

/** Where a device stands within the group, and the texts that the group brings of it. */
type KeptOfDevice = { last: number; clock: number; readonly bodies: Map<number, string> };

const none: ReadonlyMap<number, string> = new Map();

type Waiting = {
  readonly handed: ReadonlyMap<DeviceId, readonly Bodied[]>;
  readonly kept: () => void;
  readonly refused: (why: unknown) => void;
};

const nextTurn = (): Promise<void> => new Promise((resume) => setImmediate(resume));

const entryIn = ({ body }: Row): Entry => JSON.parse(String(body)) as Entry;

// Sorted here, not in SQL: collations differ between databases, the journal's order must not.
const entriesIn = (rows: readonly Row[]): readonly Entry[] => rows.map(entryIn).sort(inJournalOrder);

const insert = "insert into entry (workshop, device, number, clock, job, body) values ($1, $2, $3, $4, $5, $6)";
const headOf = "select number, clock from entry where workshop = $1 and device = $2 order by number desc limit 1";
const between =
  "select number, body from entry where workshop = $1 and device = $2 and number between $3 and $4 order by number";
const ofJob = "select body from entry where workshop = $1 and job = $2";
const ofDevice = "select body from entry where workshop = $1 and device = $2 and number > $3 order by number limit $4";

/** Goes from device to device by the primary key, so that it costs as many look-ups as there are devices. */
const allHeads = `
with recursive known(device) as (
  select min(device) from entry where workshop = $1
  union all
  select (select min(device) from entry where workshop = $1 and device > known.device) from known
  where known.device is not null
)
select device, (select max(number) from entry where workshop = $1 and device = known.device) as number
from known where device is not null`;
