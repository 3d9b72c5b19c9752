/** Hands over one piece of work at a time; of what comes meanwhile only the latest of each kind is kept. */
export type LatestWins<T> = {
  readonly offer: (work: T) => void;
  /** Called when the piece handed over is done. */
  readonly done: () => void;
};

/**
 * A held stepper offers work faster than it is done: what was overtaken is never begun. Work of another kind overtakes nothing;
 * of what waits, the kind of the lowest number goes first.
 */
export function latestWins<T>(begin: (work: T) => void, kindOf: (work: T) => number): LatestWins<T> {
  let busy = false;
  const waiting = new Map<number, T>();
  return {
    offer(work) {
      if (busy) {
        waiting.set(kindOf(work), work);
        return;
      }
      busy = true;
      begin(work);
    },
    done() {
      const next = Math.min(...waiting.keys());
      const work = waiting.get(next);
      waiting.delete(next);
      busy = work !== undefined;
      if (work !== undefined) begin(work);
    },
  };
}
