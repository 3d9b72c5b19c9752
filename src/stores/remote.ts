import { type Entry, inJournalOrder } from "../journal/entry.ts";
import type { OwnerCard, OwnerCards } from "../journal/ownerCards.ts";
import { type Heads, type JournalStore, lastOf } from "../journal/store.ts";
import { type Far, type RemoteAnswer, remoteAnswer } from "./remoteAnswer.ts";

/** What is pulled in one request, where many entries are wanted. Judgement. */
const PIECE = 2000;

/**
 * The journal of a workshop that a server elsewhere keeps. It needs `fetch` and nothing else, so that it runs in a browser.
 *
 * An override of somebody with a PIN is refused as PinNeeded, until it is sent with a proof. An add whose line broke may be
 * kept or not: it is sent again, which changes nothing if it was. Adds go out one after another, for two that are on their way
 * together may arrive in another order, and leave a gap.
 */
export function remoteStore(far: Far): JournalStore {
  const ask = (method: string, path: string, body?: object): Promise<RemoteAnswer> =>
    remoteAnswer(far, method, path, body);
  let before: Promise<unknown> = Promise.resolve();
  return {
    async add(entries) {
      if (entries.length === 0) return;
      const proofs = far.proofs?.() ?? [];
      const added = before.then(() => ask("POST", "/entries", { entries, ...(proofs.length > 0 ? { proofs } : {}) }));
      before = added.catch(() => {});
      await added;
    },

    ofJob: async (job) => (await ask("GET", `/jobs/${encodeURIComponent(job)}`)).entries,

    async since(heads, most = Number.POSITIVE_INFINITY) {
      const lacking: Entry[] = [];
      const reached: Record<string, number> = { ...heads };
      for (;;) {
        const { entries, more } = await ask("POST", "/pull", {
          heads: reached,
          most: Math.min(PIECE, most - lacking.length),
        });
        for (const entry of entries)
          reached[entry.device] = Math.max(entry.number, lastOf(reached as Heads, entry.device));
        lacking.push(...entries);
        if (!more || lacking.length >= most) return lacking.sort(inJournalOrder);
      }
    },

    heads: async () => (await ask("GET", "/heads")).heads,

    close: async () => {},
  };
}

/** The owners' cards beside that journal. */
export function remoteCards(far: Far): OwnerCards {
  return {
    async put(cards) {
      if (cards.length > 0) await remoteAnswer(far, "POST", "/ownerCards", { cards });
    },
    all: async (): Promise<readonly OwnerCard[]> => (await remoteAnswer(far, "GET", "/ownerCards")).cards,
  };
}
