/** Hands over one piece of work at a time; of what comes meanwhile only the latest is kept. */
export type LatestWins<T> = {
  readonly offer: (work: T) => void;
  /** Called when the piece handed over is done. */
  readonly done: () => void;
};

/** A held stepper offers work faster than it is done: what was overtaken is never begun. */
export function latestWins<T>(begin: (work: T) => void): LatestWins<T> {
  let busy = false;
  let waiting: { readonly work: T } | null = null;
  return {
    offer(work) {
      if (busy) {
        waiting = { work };
        return;
      }
      busy = true;
      begin(work);
    },
    done() {
      const next = waiting;
      waiting = null;
      busy = next !== null;
      if (next) begin(next.work);
    },
  };
}
