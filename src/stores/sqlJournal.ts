import { type Bodied, handedOver, newOf } from "../journal/admission.ts";
import { type Entry, inJournalOrder } from "../journal/entry.ts";
import type { DeviceId, JobId, WorkshopId } from "../journal/facts/ids.ts";
import { type Heads, type JournalStore, lastOf } from "../journal/store.ts";
import { compiledEntryFrom } from "./compiledEntry.ts";
import type { Database, Row, Run } from "./database.ts";

/**
 * The journal of one workshop in a database that may hold several.
 *
 * Adds that arrive while the disk is busy are committed together: one wait for the disk serves them all, each is still kept
 * or refused by itself, and each answers only after the commit. A workshop has one such journal on a database: it remembers
 * where each device stands, for as long as nobody else writes.
 */
export function sqlJournal(database: Database, workshop: WorkshopId): JournalStore {
  let waiting: Waiting[] = [];
  let flushing: Promise<void> | null = null;
  const places = new Map<DeviceId, Place>();
  let placesAt: unknown = null;

  return {
    add: (entries) =>
      new Promise((kept, refused) => {
        const handed = handedOver(workshop, entries, compiledEntryFrom);
        if (handed.size === 0) return kept();
        waiting.push({ handed, kept, refused });
        flushing ??= nextTurn().then(flush);
      }),

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
      const refusals = await added(group);
      group.forEach(({ kept, refused }, i) => {
        if (refusals[i] === undefined) kept();
        else refused(refusals[i]);
      });
    } catch (trouble) {
      places.clear();
      for (const { refused } of group) refused(trouble);
    }
    flushing = waiting.length > 0 ? nextTurn().then(flush) : null;
  }

  /** Keeps what may be kept of a group; for each add undefined, or why none of it may be. */
  function added(group: readonly Waiting[]): Promise<readonly unknown[]> {
    return database.transaction(async (run, each, mark) => {
      if (mark !== placesAt) places.clear();
      placesAt = mark;
      const rows: EntryRow[] = [];
      const refusals: unknown[] = [];
      for (const { handed } of group) {
        const before = rows.length;
        try {
          for (const [device, own] of handed) {
            const { last, clock } = places.get(device) ?? (await placeOf(device, run));
            const again = (own[0]?.entry.number ?? 0) <= last;
            const bodies = again ? await textsOf(device, own, rows, run) : none;
            for (const { entry, body } of newOf(own, { last, clock, bodies }))
              rows.push([workshop, device, entry.number, entry.clock, entry.job, body]);
          }
          for (const [, device, last, clock] of rows.slice(before)) places.set(device, { last, clock });
          refusals.push(undefined);
        } catch (refusal) {
          if (!(refusal instanceof Error && refusal.name.startsWith("Journal"))) throw refusal;
          rows.length = before;
          refusals.push(refusal);
        }
      }
      await each(insert, rows);
      return refusals;
    });
  }

  /** Where a device stands by what the database holds, remembered from now on. */
  async function placeOf(device: DeviceId, run: Run): Promise<Place> {
    const [head] = await run(headOf, [workshop, device]);
    const place = { last: Number(head?.["number"] ?? 0), clock: Number(head?.["clock"] ?? 0) };
    places.set(device, place);
    return place;
  }

  /** The texts of what was handed over and is held already, on the disk or by an add of the same group. */
  async function textsOf(device: DeviceId, own: readonly Bodied[], rows: readonly EntryRow[], run: Run) {
    const [from, to] = [own[0]?.entry.number ?? 0, own.at(-1)?.entry.number ?? 0];
    const texts = new Map<number, string>();
    for (const { number, body } of await run(between, [workshop, device, from, to]))
      texts.set(Number(number), String(body));
    for (const [, of, number, , , body] of rows) if (of === device) texts.set(number, body);
    return texts;
  }

  async function headsOf(run: Run): Promise<Heads> {
    const rows = await run(allHeads, [workshop]);
    return Object.fromEntries(rows.map(({ device, number }) => [device, Number(number)])) as Heads;
  }
}

/** The number and clock of a device's last entry, 0 for none. */
type Place = { readonly last: number; readonly clock: number };

type EntryRow = readonly [
  workshop: WorkshopId,
  device: DeviceId,
  number: number,
  clock: number,
  job: JobId | null,
  body: string,
];

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
