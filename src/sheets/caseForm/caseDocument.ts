import type { Override } from "../../mechanics/remedies/portCase.ts";
import { namesRule, refusalRules } from "../../mechanics/remedies/refusalRules.ts";
import { anyOf, type InputProblem } from "../words/problemWords.ts";
import { airGiven } from "./airGiven.ts";
import { caseSchema, type WrittenCase } from "./caseSchema.ts";
import { nearest } from "./nearest.ts";
import { levelsGiven, rangesGiven } from "./overrides.ts";
import { rangeGiven } from "./rangeGiven.ts";
import { type CaseRead, type DocumentReader, isSome, readWritten } from "./readCase.ts";
import { schemaProblems } from "./schemaProblems.ts";
import { shopFiguresGiven } from "./shopFiguresGiven.ts";
import { withoutBlanks } from "./template.ts";
import { threadGiven } from "./threadGiven.ts";

/** Reads a case document, whoever wrote it. `today` stands in where the document names no day. */
export function readCase(form: unknown, today: string | null): CaseRead {
  const document = withoutBlanks(form);
  const mistakes = schemaProblems(caseSchema, document);
  if (isSome(mistakes)) return { ok: false, problems: mistakes };
  const written = document as WrittenCase;
  const besides: DocumentReader["besides"] = (take, problems) => {
    overrideMistakes(written.asked?.overrides ?? [], problems);
    recordMistakes(written.record ?? [], problems);
    return {
      air: airGiven(written, take, problems),
      shop: shopFiguresGiven(written, problems),
      record: (written.record ?? []).map((it) => ({ ...it, to_days: it.to_days ?? null })),
      ranges: rangesGiven(written.ranges ?? {}, problems),
      levels: levelsGiven(written.levels ?? {}, problems),
    };
  };
  return readWritten(written, today, threadGiven, { range: rangeGiven, besides });
}

/** A repair comes back after it was known to hold, not before. */
function recordMistakes(record: NonNullable<WrittenCase["record"]>, problems: InputProblem[]): void {
  record.forEach(({ from_days, to_days }, i) => {
    if (to_days === undefined || to_days >= from_days) return;
    problems.push({ field: `record[${i}].to_days`, given: `${to_days}`, accepted: `from_days (${from_days}) or more` });
  });
}

/** An override that names no rule would be passed over in silence. */
function overrideMistakes(overrides: readonly Override[], problems: InputProblem[]): void {
  overrides.forEach(({ rule }, i) => {
    if (refusalRules.some((it) => namesRule(rule, it))) return;
    const close = nearest(rule, refusalRules);
    const accepted = close ? `"${close}"` : anyOf(refusalRules.map((it) => `"${it}"`));
    problems.push({ field: `asked.overrides[${i}].rule`, given: `"${rule}"`, accepted });
  });
}
