import * as z from "zod/mini";
import type { Entry } from "../journal/entry.ts";
import { type WorkshopId, workshopId } from "../journal/facts/ids.ts";
import { type Journal, type OwnerCard, ownerCard } from "../journal/ownerCards.ts";
import { entryFrom } from "../journal/parse.ts";
import { MalformedEntry } from "../journal/refusals.ts";
import type { Heads } from "../journal/store.ts";

/** A line of an export that cannot be read, and what would be. */
export class UnreadableLine extends Error {
  override readonly name = "UnreadableLine";
  readonly line: number;
  readonly accepted: string;
  constructor(line: number, accepted: string) {
    super(`line ${line}: ${accepted}`);
    this.line = line;
    this.accepted = accepted;
  }
}

/** A journal as a plain file has it. */
export type Exported = {
  readonly workshop: WorkshopId;
  readonly entries: readonly Entry[];
  readonly cards: readonly OwnerCard[];
};

const PIECE = 1000;

/**
 * The lines of a journal: a head, every entry in journal order, every owner's card, and an end that counts them, so that a
 * file that was cut off is known for one.
 */
export async function* jsonLines({ store, cards }: Journal, workshop: WorkshopId): AsyncGenerator<string> {
  yield JSON.stringify({ turnsleft: "journal", form: 1, workshop });
  const heads: Record<string, number> = {};
  let entries = 0;
  for (;;) {
    const piece = await store.since(heads as Heads, PIECE);
    for (const entry of piece) {
      yield JSON.stringify({ entry });
      heads[entry.device] = entry.number;
    }
    entries += piece.length;
    if (piece.length < PIECE) break;
  }
  const owners = await cards.all();
  for (const owner of owners) yield JSON.stringify({ owner });
  yield JSON.stringify({ end: { entries, owners: owners.length } });
}

const head = z.strictObject({ turnsleft: z.literal("journal"), form: z.literal(1), workshop: workshopId });
const end = z.strictObject({ end: z.strictObject({ entries: z.int(), owners: z.int() }) });

/** The journal that the lines of `text` hold. @throws UnreadableLine; nothing is added before all of it was read */
export function exportedIn(text: string): Exported {
  const lines = text.split("\n").map((line) => line.trim());
  while (lines.at(-1) === "") lines.pop();
  const documents = lines.map((line, i) => documentIn(line, i + 1));
  const first = head.safeParse(documents[0]);
  if (!first.success) throw new UnreadableLine(1, ofNewer(documents[0]) ?? "the head of an export of Turnsleft");
  const last = end.safeParse(documents.at(-1));
  if (!last.success) throw new UnreadableLine(lines.length, "the end of an export; this one was cut off");
  const entries: Entry[] = [];
  const cards: OwnerCard[] = [];
  for (const [i, document] of documents.slice(1, -1).entries()) read(document, i + 2);
  const counted = last.data.end;
  if (counted.entries !== entries.length || counted.owners !== cards.length)
    throw new UnreadableLine(lines.length, `${counted.entries} entries and ${counted.owners} owners before it`);
  return { workshop: first.data.workshop, entries, cards };

  function read(document: object, line: number): void {
    if ("entry" in document) entries.push(entryOn(document.entry, line));
    else if ("owner" in document) cards.push(cardOn(document.owner, line));
    else throw new UnreadableLine(line, 'an { "entry" } or an { "owner" }');
  }
}

function ofNewer(head: object | undefined): string | null {
  const { turnsleft, form } = (head ?? {}) as { turnsleft?: unknown; form?: unknown };
  const newer = turnsleft === "journal" && typeof form === "number" && form > 1;
  return newer ? `an export of form 1; a newer Turnsleft wrote this one, of form ${form}` : null;
}

function documentIn(line: string, number: number): object {
  try {
    const document: unknown = JSON.parse(line);
    if (typeof document === "object" && document !== null) return document;
  } catch {}
  throw new UnreadableLine(number, "one JSON object a line");
}

function entryOn(document: unknown, line: number): Entry {
  try {
    return entryFrom(document);
  } catch (fault) {
    if (fault instanceof MalformedEntry) throw new UnreadableLine(line, fault.message);
    throw fault;
  }
}

function cardOn(document: unknown, line: number): OwnerCard {
  const card = ownerCard.safeParse(document);
  if (card.success) return card.data as OwnerCard;
  const [issue] = card.error.issues;
  throw new UnreadableLine(
    line,
    `owner.${issue?.path.join(".") ?? ""}: accepted: ${issue?.message ?? "an owner's card"}`,
  );
}
