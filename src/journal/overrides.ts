import type { Entry } from "./entry.ts";
import type { Fact } from "./facts/fact.ts";
import type { PersonId } from "./facts/ids.ts";
import { PinNeeded } from "./refusals.ts";
import { type Heads, type JournalStore, lastOf, replicate } from "./store.ts";

/** Whether somebody takes a refusal or a gate on himself by this; a correction may put that in the place of another fact. */
const isOverride = (fact: Fact | undefined): boolean =>
  fact?.type === "RuleOverridden" || (fact?.type === "EntryCorrected" && fact.is?.type === "RuleOverridden");

/**
 * Who takes something on himself in the entries that a holder of `heads` lacks, each once. The entries need not have been checked:
 * what is none overrides nothing, for it will not be kept.
 */
export function overriders(entries: readonly (Partial<Entry> | null)[], heads: Heads): readonly PersonId[] {
  const persons = entries.flatMap((it) => {
    if (!it || !isOverride(it.fact) || it.by === undefined || it.device === undefined) return [];
    return (it.number ?? 0) > lastOf(heads, it.device) ? [it.by] : [];
  });
  return [...new Set(persons)];
}

/** Whether there is any override among these at all. */
export const hasOverrides = (entries: readonly (Partial<Entry> | null)[]): boolean =>
  entries.some((it) => isOverride(it?.fact));

/**
 * Brings two stores level, but for an override of `here` that waits for a PIN there, and what was written after it; gives whose PIN
 * it waits for, null where all went over. Its own device's later entries have to wait with it, for a journal has no gaps.
 */
export async function replicateToPin(here: JournalStore, there: JournalStore): Promise<PinNeeded | null> {
  try {
    await replicate(here, there);
    return null;
  } catch (fault) {
    if (!(fault instanceof PinNeeded)) throw fault;
    const waiting = await here.since(await there.heads());
    const persons = fault.persons.map(({ person }) => person);
    const first = waiting.findIndex(({ fact, by }) => isOverride(fact) && persons.includes(by));
    if (first > 0) await there.add(waiting.slice(0, first));
    return fault;
  }
}
