import { latestWins } from "../kit/latestWins.ts";
import type { SumReply, SumRequest } from "./messages.ts";

/** The worker of the sums as the benches see it: of requests that come while it reckons only the latest is reckoned. */
export function startedSums(hear: (reply: SumReply) => void): (request: SumRequest) => void {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  let asked: SumRequest | null = null;
  const queue = latestWins<SumRequest>(
    (request) => {
      asked = request;
      worker.postMessage(request);
    },
    () => 0,
  );
  worker.addEventListener("message", ({ data }: MessageEvent<SumReply>) => {
    queue.done();
    hear(data);
  });
  worker.addEventListener("error", ({ message }) => {
    if (asked) hear({ name: asked.name, part: "fault", message: message || "the sums did not load" });
  });
  return queue.offer;
}
