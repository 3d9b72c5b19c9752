import * as z from "zod/mini";
import { label, type Read } from "./facts/fields.ts";
import { deviceId, machineId, ownerId } from "./facts/ids.ts";
import type { JournalStore } from "./store.ts";

/**
 * What is known of an owner as a person. It lies beside the journal, not in it, so that it can be erased while the history
 * of his machine's ports stays whole: entries name an owner by his identity alone.
 */
export const ownerCard = z.strictObject(
  {
    owner: ownerId,
    name: label,
    telephone: z.optional(label),
    /** Plates are his, not the machine's. */
    plates: z.array(z.strictObject({ machine: machineId, plate: label })),
    /** Who wrote it last: the later card stands, by clock and then by device. */
    clock: z.int().check(z.minimum(1)),
    device: deviceId,
  },
  { error: "an owner's card: one JSON object" },
);

export type OwnerCard = Read<z.infer<typeof ownerCard>>;

/**
 * Where owners' cards are kept. Adding the entry `OwnerErased` to the journal beside it erases a card for good: one that
 * comes later does not bring it back.
 */
export interface OwnerCards {
  /** Keeps cards; of two for one owner the later one. Those of an owner who was erased are not kept. */
  put(cards: readonly OwnerCard[]): Promise<void>;
  all(): Promise<readonly OwnerCard[]>;
}

/** Whether a card takes the place of another one of the same owner. */
export const isLater = (card: OwnerCard, than: OwnerCard): boolean =>
  card.clock > than.clock || (card.clock === than.clock && card.device > than.device);

/** A workshop's journal and the cards beside it. */
export type Journal = { readonly store: JournalStore; readonly cards: OwnerCards };
