import type { Texts } from "../bench/benchTexts.ts";
import { beside } from "../kit/beside.ts";
import type { EngineReply, EngineRequest } from "./messages.ts";

/** The engine's worker as the page sees it. What stands behind an answer waits for the answer. */
export const startedEngine = (hear: (reply: EngineReply) => void): ((request: EngineRequest) => void) =>
  beside<EngineRequest, EngineReply>({
    start: () => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }),
    packed,
    hear,
    isLast: (reply) => !(reply.part === "answer" && reply.more === "coming"),
    isLame: (reply) => reply.part === "answer" && reply.more === "not fetched",
    kindOf: ({ part }) => (part === "answer" ? 0 : 1),
    failed: (_, message) => hear({ part: "fault", message: message || "its script did not load" }),
  });

/** The texts as the worker knows them. */
let posted: Texts = {};

/** A step of a stepper changes one text of many: only what changed is handed over, and what was emptied as an empty one. */
function packed(request: EngineRequest, first: boolean): EngineRequest {
  if (request.part !== "answer") return request;
  const [before, now] = [first ? {} : posted, request.texts];
  posted = now;
  const texts: Record<string, string> = {};
  for (const name in now) if (now[name] !== before[name]) texts[name] = now[name] ?? "";
  for (const name in before) if (!(name in now)) texts[name] = "";
  return { ...request, texts };
}
