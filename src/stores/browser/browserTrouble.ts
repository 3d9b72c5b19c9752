import { StoreTrouble, type Trouble } from "../../journal/storeTrouble.ts";

/** What a browser says of its database, by name, as the trouble it is for the one who keeps a journal in it. */
const troubles: Readonly<Record<string, Trouble>> = {
  QuotaExceededError: "full",
  VersionError: "of a newer Turnsleft",
  ReadOnlyError: "read-only",
  DataError: "damaged",
  NotFoundError: "damaged",
  // Private windows and shut-off storage refuse to open; a closed database is out of reach until the page is loaded anew.
  InvalidStateError: "not reachable",
  SecurityError: "not reachable",
  UnknownError: "not reachable",
  AbortError: "not reachable",
  TimeoutError: "not reachable",
};

/** A fault of the browser's database as a StoreTrouble; any other as it is. */
export function browserTroubleOf(name: string, cause: unknown): unknown {
  const trouble = cause instanceof DOMException ? troubles[cause.name] : undefined;
  return trouble ? new StoreTrouble(trouble, name, cause) : cause;
}
