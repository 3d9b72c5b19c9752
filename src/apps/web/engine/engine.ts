import { beside } from "../kit/beside.ts";
import type { EngineReply, EngineRequest } from "./messages.ts";

/** The engine's worker as the page sees it. What stands behind an answer waits for the answer. */
export const startedEngine = (hear: (reply: EngineReply) => void): ((request: EngineRequest) => void) =>
  beside<EngineRequest, EngineReply>({
    start: () => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }),
    hear,
    isLast: (reply) => !(reply.part === "answer" && reply.more === "coming"),
    isLame: (reply) => reply.part === "answer" && reply.more === "not fetched",
    kindOf: ({ part }) => (part === "answer" ? 0 : 1),
    failed: (_, message) => hear({ part: "fault", message: message || "its script did not load" }),
  });
