import type * as z from "zod/mini";
import { type Entry, entrySchema } from "./entry.ts";
import { type EntryProblem, MalformedEntry } from "./refusals.ts";

/**
 * The entry in `document`, made anew of what was checked, so that nothing else comes along (as a key `__proto__`, which the
 * schemas pass by). @throws MalformedEntry that names every field which is not as it has to be.
 */
export function entryFrom(document: unknown): Entry {
  const read = entrySchema.safeParse(document);
  if (read.success) return read.data as Entry;
  throw new MalformedEntry(placeOf(document), problemsOf(read.error));
}

/** What a schema found wrong, as fields and what is accepted there. */
export const problemsOf = ({ issues }: z.core.$ZodError): readonly EntryProblem[] =>
  issues.flatMap((issue) => problems(issue, []));

function placeOf(document: unknown): string {
  const { device, number } = (document ?? {}) as { device?: unknown; number?: unknown };
  return typeof device === "string" && typeof number === "number" ? `${device}/${number}` : "an entry";
}

type Issue = z.core.$ZodIssue;

function problems(issue: Issue, above: readonly PropertyKey[]): readonly EntryProblem[] {
  const path = [...above, ...issue.path];
  const field = path.map(String).join(".") || "the whole";
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => ({
        field: [...path, key].map(String).join("."),
        accepted: "no such field; an entry of a newer Turnsleft needs a newer one here",
      }));
    case "invalid_union": {
      const [best] = issue.errors.toSorted((a, b) => a.length - b.length);
      if (best && best.length > 0) return best.flatMap((it) => problems(it, path));
      return [{ field, accepted: "a fact that is known here; one of a newer Turnsleft needs a newer one here" }];
    }
    default:
      return [{ field, accepted: issue.message }];
  }
}
