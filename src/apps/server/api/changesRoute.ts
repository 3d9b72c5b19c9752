import { streamSSE } from "hono/streaming";
import { refusedFor } from "./refusals.ts";
import { type Route, route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

/** Streams that are open at a time: two pages on each of fifty devices. Judgement. */
const MOST_STREAMS = 100;
/** Shorter than the half minute after which some give up on a line that says nothing. Judgement. */
const QUIET_ms = 15_000;

/** Tells the heads whenever something was added, as long as the line holds. */
export function changesRoute({ store, devices }: ServedWorkshop): Route {
  let open = 0;
  return route({
    method: "get",
    path: "/changes",
    title: "Server-sent events: `heads`, with the heads as JSON, at once and after every add; a comment every 15 s",
    who: "device",
    body: null,
    status: 200,
    answer: "text/event-stream",
    refusals: ["too many"],
    run: ({ c, caller }) => {
      if (open >= MOST_STREAMS) return refusedFor("too many", QUIET_ms / 1000);
      open++;
      const letIn = (): boolean =>
        caller.type === "workshop" || (caller.type === "device" && devices.isIn(caller.device));
      return streamSSE(c, async (stream) => {
        const bell = doorbell();
        const unwatch = store.watch(bell.ring);
        stream.onAbort(bell.ring);
        try {
          let told = "";
          while (!stream.aborted && letIn()) {
            const heads = JSON.stringify(await store.headsNow());
            // What was added while the last one went out is told in one.
            if (heads !== told) await stream.writeSSE({ event: "heads", data: heads });
            else await stream.write(":\n\n");
            told = heads;
            await bell.rung(QUIET_ms);
          }
        } finally {
          unwatch();
          open--;
        }
      });
    },
  });
}

/** Something that is waited for, and missed by nobody who was not waiting at the moment. */
function doorbell() {
  let wasRung = false;
  let wake: () => void = () => {};
  return {
    ring: () => {
      wasRung = true;
      wake();
    },
    async rung(most_ms: number): Promise<void> {
      if (!wasRung)
        await new Promise<void>((resume) => {
          const timer = setTimeout(resume, most_ms);
          wake = () => {
            clearTimeout(timer);
            resume();
          };
        });
      wasRung = false;
    },
  };
}
