import type { DatabaseSync } from "@photostructure/sqlite";

export type OpenFile = InstanceType<typeof DatabaseSync>;

/** "tlft": how SQLite's header marks a file as a journal of Turnsleft. */
const APPLICATION = 0x746c6674;

/**
 * The tables, with the journal's own guards: an entry is never changed or removed, not even by another program, and a
 * device's numbers have no gap. The clustered key is the order in which devices are caught up with. The index of jobs ends in
 * that key by itself, workshop first; written out, SQLite's planner would read the whole workshop instead.
 */
export const journalTables = {
  version: 1,
  sql: `
pragma application_id = ${APPLICATION};
pragma user_version = 1;

create table entry (
  workshop text not null,
  device text not null,
  number integer not null check (number >= 1),
  clock integer not null check (clock >= 1),
  job text,
  body text not null check (json_valid(body)),
  primary key (workshop, device, number)
) strict, without rowid;

create index entry_of_job on entry (job);

create trigger entry_stays before update on entry
begin select raise(abort, 'an entry is never changed'); end;

create trigger entry_is_kept before delete on entry
begin select raise(abort, 'an entry is never removed'); end;

create trigger entry_comes_next before insert on entry
when new.number <> 1 + coalesce((select max(number) from entry where workshop = new.workshop and device = new.device), 0)
begin select raise(abort, 'an entry comes after the one before it'); end;

create table owner_card (
  workshop text not null,
  owner text not null,
  body text not null check (json_valid(body)),
  primary key (workshop, owner)
) strict, without rowid;

create table owner_erased (
  workshop text not null,
  owner text not null,
  primary key (workshop, owner)
) strict, without rowid;

create trigger owner_is_erased after insert on entry
when new.job is null and json_extract(new.body, '$.fact.type') = 'OwnerErased'
begin
  delete from owner_card where workshop = new.workshop and owner = json_extract(new.body, '$.fact.owner');
  insert or ignore into owner_erased values (new.workshop, json_extract(new.body, '$.fact.owner'));
end`,
  triggers: ["entry_comes_next", "entry_is_kept", "entry_stays", "owner_is_erased"],
} as const;

/** Whether a file is a journal of ours, and by which version of its tables. */
export function tablesOf(file: OpenFile): {
  readonly known: "ours" | "empty" | "another";
  readonly version: number;
} {
  const one = (sql: string): number => Number(Object.values(file.prepare(sql).get() as object)[0]);
  const version = one("pragma user_version");
  if (one("pragma application_id") === APPLICATION) return { known: "ours", version };
  return { known: one("select count(*) from sqlite_schema") === 0 ? "empty" : "another", version };
}
