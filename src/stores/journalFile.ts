import { bodyOf, type Entry } from "../journal/entry.ts";
import type { WorkshopId } from "../journal/facts/ids.ts";
import { entryFrom } from "../journal/parse.ts";
import { photosNamed } from "../journal/photosNamed.ts";
import { MalformedEntry } from "../journal/refusals.ts";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { openedToRead } from "./openedToRead.ts";
import { troubleOf } from "./sqliteFile.ts";
import { journalTables, type OpenFile, tablesOf } from "./sqliteTables.ts";

/** What an inspection found: how much there is, and every fault with its place. */
export type Inspection = {
  readonly workshops: readonly WorkshopId[];
  readonly entries: number;
  readonly devices: number;
  readonly jobs: number;
  readonly cards: number;
  /** The photos that the entries name, in order. */
  readonly photos: readonly string[];
  /** Entries whose wall time lies before that of the entry before them on the same device: a clock was set back. */
  readonly clockSetBack: number;
  readonly faults: readonly InspectionFault[];
};

export type InspectionFault =
  | { readonly type: "file"; readonly place: string; readonly words: string }
  | { readonly type: "guard missing"; readonly place: string }
  | { readonly type: "malformed"; readonly place: string; readonly words: string }
  | { readonly type: "not what its columns say"; readonly place: string }
  | { readonly type: "gap"; readonly place: string }
  | { readonly type: "clock does not rise"; readonly place: string };

/** The workshops whose entries a file holds. @throws StoreTrouble if it is no journal */
export const workshopsIn = (path: string): readonly WorkshopId[] =>
  reading(path, (file) =>
    file
      .prepare("select distinct workshop from entry order by workshop")
      .all()
      .map((row) => (row as { workshop: WorkshopId }).workshop),
  );

/** Reads a journal through, every page and every entry. @throws StoreTrouble if it is no journal */
export const inspected = (path: string): Inspection => reading(path, inspect);

function reading<Result>(path: string, read: (file: OpenFile) => Result): Result {
  let file: OpenFile | null = null;
  try {
    file = openedToRead(path);
    const { known, version } = tablesOf(file);
    if (known !== "ours") throw new StoreTrouble("damaged", path, new Error("no journal of Turnsleft"));
    if (version > journalTables.version) throw new StoreTrouble("of a newer Turnsleft", path);
    return read(file);
  } catch (cause) {
    throw troubleOf(path, cause);
  } finally {
    file?.close();
  }
}

type Row = { workshop: string; device: string; number: number; clock: number; job: string | null; body: string };

function inspect(file: OpenFile): Inspection {
  const faults: InspectionFault[] = [];
  for (const row of file.prepare("pragma integrity_check").all() as { integrity_check: string }[])
    if (row.integrity_check !== "ok") faults.push({ type: "file", place: "pages", words: row.integrity_check });
  const triggers = new Set(
    (file.prepare("select name from sqlite_schema where type = 'trigger'").all() as { name: string }[]).map(
      ({ name }) => name,
    ),
  );
  for (const name of journalTables.triggers)
    if (!triggers.has(name)) faults.push({ type: "guard missing", place: name });

  const jobs = new Set<string>();
  const devices = new Set<string>();
  const workshops = new Set<WorkshopId>();
  const photos = new Set<string>();
  let entries = 0;
  let clockSetBack = 0;
  let before = null as { row: Row; at: string } | null;
  for (const row of file.prepare("select * from entry order by workshop, device, number").iterate() as Iterable<Row>) {
    entries++;
    const place = `${row.device}/${row.number}`;
    const same: Row | null =
      before && before.row.workshop === row.workshop && before.row.device === row.device ? before.row : null;
    if (row.number !== (same?.number ?? 0) + 1) faults.push({ type: "gap", place });
    if (same && row.clock <= same.clock) faults.push({ type: "clock does not rise", place });
    const entry = entryOf(row, faults, place);
    if (same && entry && before && Date.parse(entry.at) < Date.parse(before.at)) clockSetBack++;
    for (const photo of entry ? photosNamed(entry.fact) : []) photos.add(photo);
    devices.add(`${row.workshop} ${row.device}`);
    workshops.add(row.workshop as WorkshopId);
    if (row.job !== null) jobs.add(`${row.workshop} ${row.job}`);
    before = { row, at: entry?.at ?? before?.at ?? "" };
  }
  const [cards] = file.prepare("select count(*) as cards from owner_card").all() as { cards: number }[];
  return {
    workshops: [...workshops],
    entries,
    devices: devices.size,
    jobs: jobs.size,
    cards: Number(cards?.cards ?? 0),
    photos: [...photos].sort(),
    clockSetBack,
    faults,
  };
}

/** The entry of a row, or null with the fault that makes it none. */
function entryOf(row: Row, faults: InspectionFault[], place: string): Entry | null {
  try {
    const entry = entryFrom(JSON.parse(row.body));
    const says = [entry.workshop, entry.device, entry.number, entry.clock, entry.job];
    const columns = [row.workshop, row.device, row.number, row.clock, row.job];
    if (says.some((it, i) => it !== columns[i]) || bodyOf(entry) !== row.body)
      faults.push({ type: "not what its columns say", place });
    return entry;
  } catch (fault) {
    if (!(fault instanceof MalformedEntry || fault instanceof SyntaxError)) throw fault;
    faults.push({ type: "malformed", place, words: fault.message });
    return null;
  }
}
