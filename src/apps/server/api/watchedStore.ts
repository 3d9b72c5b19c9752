import type { Heads, JournalStore } from "../../../journal/store.ts";

/** A store that tells when something was added to it. */
export type WatchedStore = JournalStore & {
  /** Calls `listener` after every add, until the answer is called. */
  watch(listener: () => void): () => void;
  /** Calls them all without an add: who may listen has changed. */
  wake(): void;
  /** The heads as they are from now on; those who ask in one turn share one reading. */
  headsNow(): Promise<Heads>;
};

/** Watches what is added through it. It is the only way in while this process holds the writer's lock. */
export function watchedStore(store: JournalStore): WatchedStore {
  const listeners = new Set<() => void>();
  let reading: Promise<Heads> | null = null;
  const wake = (): void => {
    for (const listener of listeners) listener();
  };
  return {
    ...store,
    async add(entries) {
      await store.add(entries);
      wake();
    },
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    wake,
    headsNow() {
      reading ??= new Promise<void>((resume) => setImmediate(resume)).then(() => {
        reading = null;
        return store.heads();
      });
      return reading;
    },
  };
}
