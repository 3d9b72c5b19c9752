import { beside } from "../kit/beside.ts";
import type { SumReply, SumRequest } from "./messages.ts";

/** The worker of the sums as the benches see it. */
export const startedSums = (hear: (reply: SumReply) => void): ((request: SumRequest) => void) =>
  beside<SumRequest, SumReply>({
    start: () => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }),
    hear,
    isLast: () => true,
    kindOf: () => 0,
    failed: ({ name }, message) => hear({ name, part: "fault", message: message || "its script did not load" }),
  });
