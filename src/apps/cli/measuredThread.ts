import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import { judgement } from "../../mechanics/tables/source.ts";
import { threadCandidates } from "../../mechanics/threads/threadName.ts";
import { threadFromText } from "../../mechanics/threads/threadText.ts";
import { type MeasuredThread, measuredThread } from "../../sheets/caseForm/measuredThread.ts";
import { asGiven, schemaProblems } from "../../sheets/caseForm/schemaProblems.ts";
import { withoutBlanks } from "../../sheets/caseForm/template.ts";
import { separatingSentence } from "../../sheets/words/separatingWords.ts";
import { namedByMeasurements, namingSentence } from "../../sheets/words/threadWords.ts";
import { InputMistake } from "./mistake.ts";
import { type ThreadOptions, threadEvidence } from "./threadEvidence.ts";

/** A case whose thread has a name, and what that name rests on: null where somebody gave it. */
export type NamedCase = { readonly written: unknown; readonly named: Assumption | null };

/**
 * The case with the name of its thread in the place of what was measured of it.
 * @throws InputMistake where the measurements leave more than one thread, or name one that is not weighed here
 */
export function withThreadNamed(document: unknown): NamedCase {
  const measured = (withoutBlanks(document) as { readonly thread?: unknown } | null)?.thread;
  if (typeof measured !== "object" || measured === null) return { written: document, named: null };
  const [mistake, ...more] = schemaProblems(measuredThread, measured).map((it) => ({
    ...it,
    field: it.field === "case" ? "thread" : `thread.${it.field}`,
  }));
  if (mistake) throw new InputMistake(mistake, ...more);

  const naming = threadCandidates(threadEvidence(asOptions(measured as MeasuredThread), (it) => `thread.${it}`));
  const unsure = naming.showTwo || naming.warnings.length > 0;
  const [first] = naming.candidates;
  if (!first || unsure || !threadFromText(first.designation).ok)
    throw new InputMistake({
      field: "thread",
      given: `${asGiven(measured)}: ${namingSentence(naming).replace(/\.$/, "")}`,
      accepted: unsure
        ? `one thread, by its name or by one more measurement. ${separatingSentence(naming)}`
        : 'a thread that is weighed here, as "M20x1.5" or "G 1/2"',
    });
  return {
    written: { ...(document as object), thread: first.designation },
    named: {
      reading: "thread",
      value: first.designation,
      source: judgement(namedByMeasurements(first)),
    },
  };
}

/** Crests that are not worn need not be said to be. */
function asOptions({ worn, ...measured }: MeasuredThread): ThreadOptions {
  const given = Object.fromEntries(Object.entries(measured).filter(([, value]) => value !== undefined));
  return worn === undefined || worn === false ? given : { ...given, worn };
}
