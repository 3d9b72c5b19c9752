import type { FactOf } from "../../../journal/facts/fact.ts";
import type { PortId } from "../../../journal/facts/ids.ts";
import { weighedWays } from "../../../mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../sheets/answer/answerDocument.ts";
import { portOnBench } from "../../../sheets/answer/portOnBench.ts";
import { weighedFact } from "../../../sheets/answer/weighedFact.ts";
import type { InputProblem } from "../../../sheets/words/problemWords.ts";
import type { Texts } from "./benchTexts.ts";
import { writtenCase } from "./writtenCase.ts";

/**
 * What stands on the bench, weighed on a day by an engine, as the journal keeps it of a port: every figure and the working of
 * that day. Where it does not read, every problem.
 */
export function weighedBench(
  texts: Texts,
  port: PortId,
  today: string,
  engine: string,
):
  | { readonly ok: true; readonly fact: FactOf<"OptionsWeighed"> }
  | { readonly ok: false; readonly problems: readonly InputProblem[] } {
  const written = writtenCase(texts);
  if (!written.ok) return written;
  const read = portOnBench(written.document, today);
  if (!read.ok) return read;
  const answer = answerDocument(
    weighedWays(read.found, read.given),
    read.ordinary,
    { ...read.counted, today },
    [],
    engine,
  );
  return { ok: true, fact: weighedFact(port, answer) };
}
