import { latestWins } from "../kit/latestWins.ts";
import type { EngineReply, EngineRequest } from "./messages.ts";

/** The engine's worker as the page sees it: of requests that come while it reckons only the latest is reckoned. */
export function startedEngine(hear: (reply: EngineReply) => void): (request: EngineRequest) => void {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  const queue = latestWins<EngineRequest>(
    (request) => worker.postMessage(request),
    // What stands behind an answer waits for the answer.
    ({ part }) => (part === "answer" ? 0 : 1),
  );
  worker.addEventListener("message", ({ data }: MessageEvent<EngineReply>) => {
    if (!(data.part === "answer" && data.undrawn)) queue.done();
    hear(data);
  });
  worker.addEventListener("error", ({ message }) =>
    hear({ part: "fault", message: message || "the engine did not load" }),
  );
  return queue.offer;
}
