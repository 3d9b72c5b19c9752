import { type BenchWeighed, benchAnswer, weighBench } from "../../../sheets/answer/benchAnswer.ts";
import { benchName, writtenCase } from "../bench/writtenCase.ts";
import { changedParts } from "./changedParts.ts";
import type { DrawnAnswer, EngineReply, EngineRequest } from "./messages.ts";

/** The engine beside the page: it reckons here, so that no tap waits for a sum. It is handed texts as they were typed and hands back text. */
let last: BenchWeighed | null = null;
/** The answer that the page shows; null where it shows none. */
let shown: DrawnAnswer | null = null;

const page = self as unknown as { postMessage(reply: EngineReply): void };

addEventListener("message", async ({ data }: MessageEvent<EngineRequest>) => {
  try {
    page.postMessage(await replyTo(data));
  } catch (cause) {
    last = null;
    shown = null;
    page.postMessage({ part: "fault", message: cause instanceof Error ? cause.message : String(cause) });
  }
});

/** What stands behind the answer; loaded apart, so that the first answer need not wait for it. */
const behind = () => import("./behindAnswer.ts");

async function replyTo(request: EngineRequest): Promise<EngineReply> {
  if (request.part === "rest") {
    if (!last?.ok) return { part: "rest", rest: null };
    const { weighed, ordinary } = last;
    const { behindAnswer } = await behind();
    return { part: "rest", rest: behindAnswer(weighed, ordinary, request.open, request.all) };
  }
  const { document, places } = writtenCase(request.texts);
  last = weighBench(document, request.today);
  // From here on the page may lose its server: what is not here yet is fetched now.
  setTimeout(() => behind().catch(() => {}));
  if (!last.ok) {
    shown = null;
    return { part: "unread", problems: last.problems.map((it) => ({ ...it, field: benchName(it.field, places) })) };
  }
  const { weighed } = last;
  const answer = benchAnswer(weighed);
  // The figure does not wait for what draws it: that is loaded once there is a figure to draw.
  if (!drawings) page.postMessage(handedOver({ ...answer, strip: null, pictures: null }, true));
  drawings ??= await import("../../../sheets/answer/benchPictures.tsx");
  return handedOver({ ...answer, ...drawings.benchPictures(weighed, request.tried, request.pictures) }, false);
}

let drawings: typeof import("../../../sheets/answer/benchPictures.tsx") | null = null;

function handedOver(answer: DrawnAnswer, undrawn: boolean): EngineReply {
  const changed = changedParts(shown, answer);
  shown = answer;
  return { part: "answer", changed, undrawn };
}
