import type { Weighed } from "../../../mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../sheets/answer/answerDocument.ts";
import { benchAnswer, weighBench } from "../../../sheets/answer/benchAnswer.tsx";
import { benchPapers } from "../../../sheets/answer/benchPapers.ts";
import { benchWays, wayDetails } from "../../../sheets/answer/benchWays.tsx";
import type { EngineReply, EngineRequest, EngineRest } from "./messages.ts";

/** The engine beside the page: it reckons here, so that no tap waits for a sum. It is handed a case and hands back text. */
type Weighing = { readonly weighed: Weighed; readonly document: ReturnType<typeof answerDocument> };
let last: (() => Weighing) | null = null;

const page = self as unknown as { postMessage(reply: EngineReply): void };

addEventListener("message", ({ data }: MessageEvent<EngineRequest>) => {
  try {
    page.postMessage(replyTo(data));
  } catch (cause) {
    last = null;
    page.postMessage({ part: "fault", message: cause instanceof Error ? cause.message : String(cause) });
  }
});

function replyTo(request: EngineRequest): EngineReply {
  if (request.part === "rest") return { part: "rest", rest: last && restOf(last(), request.open) };
  const { written, today, tried } = request;
  const found = weighBench(written, today);
  if (!found.ok) {
    last = null;
    return { part: "unread", problems: found.problems };
  }
  const { weighed, ordinary } = found;
  last = () => ({ weighed, document: answerDocument(weighed, ordinary, written, [], "") });
  return { part: "answer", answer: benchAnswer(weighed, tried) };
}

const restOf = ({ weighed, document }: Weighing, open: (EngineRequest & { part: "rest" })["open"]): EngineRest => ({
  ways: benchWays(weighed, document),
  details: open && wayDetails(open, weighed, document),
  papers: benchPapers(weighed, document),
});
