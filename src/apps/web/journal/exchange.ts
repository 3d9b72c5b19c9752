import { replicateToPin } from "../../../journal/overrides.ts";
import type { Journal } from "../../../journal/ownerCards.ts";
import type { Heads } from "../../../journal/store.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";

/** How the last exchange with the workshop went; `trouble` is more than a network that is away. */
export type Exchanged = { readonly reached: boolean; readonly trouble: unknown };

/** What tells of changes at the workshop: calls `changed` on each, and ends when the line does. @throws when there is no line */
export type Changes = (changed: () => void, until: AbortSignal) => Promise<void>;

export type Exchange = {
  /** Brings both sides level as soon as nothing else is under way. */
  readonly soon: () => void;
  readonly end: () => void;
};

/** After a failure the next try waits this long, twice as long each time. */
const [first_ms, most_ms] = [2_000, 60_000];

/**
 * Keeps this browser's journal and the workshop's level in the background: on every change there, and whenever it is asked to, as when
 * a network comes back. What is interrupted is taken up again; nothing is written but by the stores' own rules.
 */
export function exchange(of: {
  readonly here: Journal;
  readonly workshop: Journal;
  readonly changes: Changes;
  /** Brings over what lies beside the journal and gives what stands in the way of a part of it. @throws StoreTrouble */
  readonly beside: () => Promise<unknown>;
  readonly told: (exchanged: Exchanged, atWorkshop: Heads | null) => void;
}): Exchange {
  const { here, workshop, changes, beside, told } = of;
  const ended = new AbortController();
  let [running, again, wait_ms] = [false, false, first_ms];
  let timer: ReturnType<typeof setTimeout> | undefined;
  let listening: AbortController | null = null;

  const soon = (): void => {
    clearTimeout(timer);
    again = true;
    if (!running) void run();
  };
  soon();
  return {
    soon,
    end() {
      clearTimeout(timer);
      ended.abort();
      listening?.abort();
    },
  };

  async function run(): Promise<void> {
    running = true;
    try {
      while (again && !ended.signal.aborted) {
        again = false;
        const pin = await replicateToPin(here.store, workshop.store);
        await workshop.cards.put(await here.cards.all());
        await here.cards.put(await workshop.cards.all());
        const left = await beside();
        told({ reached: true, trouble: pin ?? left }, await workshop.store.heads());
        if (left === null) wait_ms = first_ms;
        else later();
        listen();
      }
    } catch (trouble) {
      const away = trouble instanceof StoreTrouble && trouble.trouble === "not reachable";
      told({ reached: false, trouble: away ? null : trouble }, null);
      later();
    } finally {
      running = false;
      // Asked for while it failed: what stood in its way may be gone by now.
      if (again && !ended.signal.aborted) void run();
    }
  }

  function later(): void {
    if (ended.signal.aborted) return;
    clearTimeout(timer);
    timer = setTimeout(soon, wait_ms);
    wait_ms = Math.min(most_ms, 2 * wait_ms);
  }

  /** Listens for changes at the workshop; a line that breaks is looked after by the next exchange. */
  function listen(): void {
    if (listening || ended.signal.aborted) return;
    const line = new AbortController();
    listening = line;
    changes(soon, line.signal)
      .catch(() => {})
      .finally(() => {
        listening = null;
        later();
      });
  }
}
