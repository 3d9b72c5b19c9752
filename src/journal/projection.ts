import { type Entry, entryId, inJournalOrder } from "./entry.ts";
import type { Fact } from "./facts/fact.ts";

/** A reading of the journal: what is true after no entries, and after one more. Pure: no clock, nothing looked up. */
export type Projection<State> = {
  readonly empty: State;
  readonly apply: (state: State, entry: Entry) => State;
};

/** What a projection reads out of entries, in whatever order they are handed over. */
export const project = <State>({ empty, apply }: Projection<State>, entries: readonly Entry[]): State =>
  asItStands(entries.toSorted(inJournalOrder)).reduce(apply, empty);

/**
 * The entries as they stand: withdrawn ones left out, corrected ones with the fact that should have been written, in the
 * place and by the hand of the entry that they correct. `entries` are in journal order.
 *
 * The last correction of an entry counts, and what was withdrawn by an entry that was itself withdrawn stands again. Notes
 * on the record stay in, so that a sheet can say what was changed.
 */
function asItStands(entries: readonly Entry[]): readonly Entry[] {
  if (!entries.some(amends)) return entries;
  const withdrawn = new Set<string>();
  const corrected = new Map<string, Fact>();
  const standing: Entry[] = [];
  for (const entry of entries.toReversed()) {
    const place = entryId(entry);
    if (withdrawn.has(place)) continue;
    const { fact } = entry;
    const put = corrected.get(place);
    if (fact.type === "EntryWithdrawn") withdrawn.add(fact.entry);
    else if (fact.type === "EntryCorrected" && !corrected.has(fact.entry)) corrected.set(fact.entry, put ?? fact.is);
    standing.push(put && fact.type !== "EntryCorrected" ? { ...entry, fact: put } : entry);
  }
  return standing.reverse();
}

/** Whether an entry changes how earlier ones are read. */
const amends = ({ fact: { type } }: Entry): boolean => type === "EntryWithdrawn" || type === "EntryCorrected";

/** Entries in journal order and what a projection reads out of them; more of them are read by `followed`. */
export type Folded<State> = { readonly entries: readonly Entry[]; readonly state: State };

/**
 * The same with more entries, which are in journal order: on from where it stood if they all come later and change nothing
 * earlier, else from the beginning. A late entry of another device so costs one fold of its job and no more.
 */
export function followed<State>(
  projection: Projection<State>,
  { entries, state }: Folded<State>,
  added: readonly Entry[],
): Folded<State> {
  const [first] = added;
  const last = entries.at(-1);
  const later = !first || !last || inJournalOrder(last, first) < 0;
  if (later && !added.some(amends))
    return { entries: [...entries, ...added], state: added.reduce(projection.apply, state) };
  const all = [...entries, ...added].sort(inJournalOrder);
  return { entries: all, state: project(projection, all) };
}
