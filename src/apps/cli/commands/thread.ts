import type { Command } from "commander";
import { type ThreadCandidate, type ThreadNaming, threadCandidates } from "../../../mechanics/threads/threadName.ts";
import { threadRuleSvg } from "../../../sheets/answer/threadRuleSvg.tsx";
import { threadWorking } from "../../../sheets/sums/threadWorking.ts";
import { separatingSentence } from "../../../sheets/words/separatingWords.ts";
import { threadLines, warningSentence } from "../../../sheets/words/threadWords.ts";
import { writeSvg } from "../files.ts";
import { decimals, digits, print, workingLines } from "../print.ts";
import { type ThreadOptions, threadEvidence } from "../threadEvidence.ts";

type Options = ThreadOptions & { readonly svg?: string; readonly working?: boolean; readonly json?: boolean };

export function threadCommand(program: Command): void {
  program
    .command("thread")
    .description("which thread it is, its rivals, and the one measurement that tells them apart")
    .option("--outside <diameter>", 'over the middle threads of the plug, as "19.9 mm"')
    .option("--worn [most]", 'the plug is worn or dirty there; by how much at most, as "0.1 mm"')
    .option("--gaps <gaps>", 'along a rule, as "8 in 12.1 mm"')
    .option("--gauge <leaf...>", 'a leaf that seats, as "1.5 mm" or "18/in"; "not 1.25 mm" for one that does not')
    .option("--bore <diameter>", 'the mouth of the hole, as "18.4 mm"')
    .option("--travel <travel>", 'as "5 turns in 7.6 mm"')
    .option("--taper <taper>", 'growth of the diameter over a length, as "0.0 mm in 10 mm"')
    .option("--narrows <narrows>", 'how much the hole narrows over a depth, as "0.0 mm in 10 mm"')
    .option(
      "--meshes <felt>",
      'as "two turns, then tight", "4 turns, free in M22x1.5" (a known hole) or "with M22x1.5" (a known plug)',
    )
    .option("--hexagon <flats>", 'across the flats of this plug, as "27 mm", with --sister')
    .option("--sister <flats>", 'across the flats of the plug in the sound port, as "24 mm"')
    .option("--svg <file>", "write the candidates on a rule")
    .option("--working", "how the pitch, the places on the rule and the odds were got")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft thread --outside "19.9 mm" --gaps "8 in 12.1 mm"')
    .action(answer);
}

/** Candidates less likely than this are not told. */
const worthTelling = 0.001;

function answer(options: Options): void {
  const evidence = threadEvidence(options);
  const naming = threadCandidates(evidence);
  if (options.svg !== undefined) writeSvg(options.svg, threadRuleSvg(naming, evidence));
  const steps = threadWorking(naming, evidence);
  const document = {
    candidates: told(naming).map(candidateDocument),
    separateBy: separatingSentence(naming),
    rivals: naming.rivals,
    showTwo: naming.showTwo,
    warnings: naming.warnings.map((it) => warningSentence(it, evidence)),
    working: steps,
  };
  const lines = threadLines(naming, evidence);
  print(options.json ?? false, document, [
    ...lines,
    ...(options.working ? ["", "Working", ...workingLines(steps)] : []),
  ]);
}

/** Those worth telling, two at least, and every rival that is named. */
const told = ({ candidates, rivals }: ThreadNaming): readonly ThreadCandidate[] =>
  candidates.filter((it, i) => i < 2 || it.probability >= worthTelling || rivals.includes(it.designation));

const candidateDocument = ({ designation, probability, thread, pieces }: ThreadCandidate) => ({
  designation,
  probability: digits(probability, 4),
  pitch_mm: digits(thread.P_mm, 6),
  readings: pieces.map(({ type, reading, logLikelihood, explainedBy }) => ({
    type,
    read_mm: reading && decimals(reading.read_mm, 3),
    expected_mm: reading?.expected_mm.map((it) => decimals(it, 3)) ?? null,
    logLikelihood: digits(logLikelihood, 4),
    explainedBy,
  })),
});
