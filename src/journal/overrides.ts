import type { Entry } from "./entry.ts";
import type { Fact } from "./facts/fact.ts";
import type { PersonId } from "./facts/ids.ts";
import { type Heads, lastOf } from "./store.ts";

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
