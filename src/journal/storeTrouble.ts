export type Trouble =
  | "in use"
  | "read-only"
  | "full"
  | "damaged"
  | "of a newer Turnsleft"
  | "of another workshop"
  | "not there"
  | "already there"
  | "not reachable"
  | "not let in"
  | "too much at once"
  | "busy";

/** The world does not let a store do its work. Caught once, at the app's edge, where the words are. */
export class StoreTrouble extends Error {
  override readonly name = "StoreTrouble";
  readonly trouble: Trouble;
  /** The file, the folder or the server, as the user would name it. */
  readonly place: string;
  constructor(trouble: Trouble, place: string, cause?: unknown) {
    super(`${place}: ${trouble}${cause instanceof Error ? ` (${cause.message})` : ""}`, { cause });
    this.trouble = trouble;
    this.place = place;
  }
}
