import type { Command } from "commander";
import { type ThreadCandidate, threadCandidates } from "../../../mechanics/threads/threadName.ts";
import { threadRuleSvg } from "../../../sheets/answer/threadRuleSvg.tsx";
import { separatingSentence, threadLines, warningSentences } from "../../../sheets/words/threadWords.ts";
import { writeSvg } from "../files.ts";
import { digits, print } from "../print.ts";
import { type ThreadOptions, threadEvidence } from "../threadEvidence.ts";

type Options = ThreadOptions & { readonly svg?: string; readonly json?: boolean };

export function threadCommand(program: Command): void {
  program
    .command("thread")
    .description("which thread it is, its rivals, and the one measurement that tells them apart")
    .option("--outside <diameter>", 'over the middle threads of the plug, as "19.9 mm"')
    .option("--worn", "the plug is worn or dirty where it was measured")
    .option("--gaps <gaps>", 'along a rule, as "8 in 12.1 mm"')
    .option("--gauge <leaf...>", 'a leaf that seats, as "1.5 mm" or "18/in"; "not 1.25 mm" for one that does not')
    .option("--bore <diameter>", 'the mouth of the hole, as "18.4 mm"')
    .option("--travel <travel>", 'as "5 turns in 7.6 mm"')
    .option("--taper <taper>", 'growth of the diameter over a length, as "0.0 mm in 10 mm"')
    .option("--meshes <felt>", 'as "two turns, then tight", or "4 turns, free in M22x1.5"')
    .option("--hexagon <flats>", "across the flats of this plug, with --sister")
    .option("--sister <flats>", "across the flats of the plug in the sound port")
    .option("--svg <file>", "write the candidates on a rule")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft thread --outside "19.9 mm" --gaps "8 in 12.1 mm"')
    .action(answer);
}

/** Candidates less likely than this are not told. */
const worthTelling = 0.001;

/** Gaps on the rule where nobody counted any. */
const ordinaryGaps = 10;

function answer(options: Options): void {
  const evidence = threadEvidence(options);
  const naming = threadCandidates(evidence);
  const told = naming.candidates.filter(({ probability }, i) => i < 2 || probability >= worthTelling);
  const counted = evidence.find((it) => it.type === "gaps");
  const gaps = counted?.count ?? ordinaryGaps;
  if (options.svg) writeSvg(options.svg, threadRuleSvg(told, gaps, counted ?? null));
  const document = {
    candidates: told.map(candidateDocument),
    separateBy: naming.separateBy && naming.rivals.length > 0 ? separatingSentence(naming.separateBy) : null,
    rivals: naming.rivals,
    showTwo: naming.showTwo,
    warnings: naming.warnings.map((it) => warningSentences[it]),
  };
  print(options.json ?? false, document, threadLines(naming, gaps));
}

const candidateDocument = ({ designation, probability, thread, pieces }: ThreadCandidate) => ({
  designation,
  probability: digits(probability, 4),
  pitch_mm: digits(thread.P_mm, 6),
  readings: pieces.map(({ type, logLikelihood, explainedBy }) => ({
    type,
    logLikelihood: digits(logLikelihood, 4),
    explainedBy,
  })),
});
