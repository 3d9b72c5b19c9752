import type { Assumption } from "../../../mechanics/remedies/givenCase.ts";
import type { Weighed } from "../../../mechanics/remedies/weigh.ts";
import { benchFound, foundOnBench } from "../../../sheets/answer/benchFound.ts";
import { ordinaryMetric } from "../../../sheets/caseForm/ordinaryMetric.ts";
import type { InputProblem } from "../../../sheets/words/problemWords.ts";
import type { Texts } from "../bench/benchTexts.ts";
import { benchName, writtenCase } from "../bench/writtenCase.ts";
import { changedParts } from "./changedParts.ts";
import type { AnswerRequest, DrawnAnswer, EngineReply, EngineRequest, RestRequest } from "./messages.ts";

/**
 * The engine beside the page: it reckons here, so that no tap waits for a sum. It is handed texts as they were typed and hands back
 * text. What weighs a port with a metric thread as found comes with it; threads of other standards, and what can be done about a port,
 * are fetched once the first answer is given.
 */
const page = self as unknown as { postMessage(reply: EngineReply): void };

/** The texts on the bench, as far as they were heard of. */
let texts: Texts = {};
/** The port on the bench, weighed with all that can be done about it; null where that is not known. */
let last: { readonly weighed: Weighed; readonly ordinary: readonly Assumption[] } | null = null;
/** The answer that the page shows; null where it shows none. */
let shown: DrawnAnswer | null = null;

addEventListener("message", async ({ data }: MessageEvent<EngineRequest>) => {
  try {
    page.postMessage(data.part === "answer" ? await answerTo(data) : await restFor(data));
  } catch (cause) {
    last = null;
    shown = null;
    page.postMessage({ part: "fault", message: cause instanceof Error ? cause.message : String(cause) });
  }
});

async function answerTo(request: AnswerRequest): Promise<EngineReply> {
  last = null;
  texts = { ...texts, ...request.texts };
  const written = writtenCase(texts);
  if (!written.ok) return unread(written.problems);
  const named = (problems: readonly InputProblem[]) =>
    unread(problems.map((it) => ({ ...it, field: benchName(it.field, written.places) })));
  const metric = whole ? null : ordinaryMetric(written.document);
  if (metric) {
    const early = foundOnBench(written.document, request.today, () => metric);
    if (!early.ok) return named(early.problems);
    page.postMessage(handedOver({ ...benchFound(early.found), ...nothingYet }, "coming"));
  }
  whole ??= await import("./wholeAnswer.ts").catch(() => null);
  if (!whole) return { part: "answer", changed: {}, more: "not fetched" };
  // From here on the page may lose its server: what is not here yet is fetched now.
  setTimeout(() => behind().catch(() => {}));
  const read = whole.readPort(written.document, request.today);
  if (!read.ok) return named(read.problems);
  const { weighed, answer } = whole.wholeAnswer(read, request);
  last = { weighed, ordinary: read.ordinary };
  return handedOver(answer, "all here");
}

const nothingYet = { because: "", next: null, reasons: [], cautions: [], strip: null, pictures: null } as const;

let whole: typeof import("./wholeAnswer.ts") | null = null;

const behind = () => import("./behindAnswer.ts");

async function restFor({ open, all }: RestRequest): Promise<EngineReply> {
  if (!last) return { part: "rest", rest: null };
  const { weighed, ordinary } = last;
  const { behindAnswer } = await behind();
  return { part: "rest", rest: behindAnswer(weighed, ordinary, open, all) };
}

function unread(problems: readonly InputProblem[]): EngineReply {
  shown = null;
  return { part: "unread", problems };
}

function handedOver(answer: DrawnAnswer, more: "coming" | "all here"): EngineReply {
  const changed = changedParts(shown, answer);
  shown = answer;
  return { part: "answer", changed, more };
}
