import { valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { type CandidateThread, candidatesOfHole, namingCandidates, type Range } from "./namingCandidates.ts";
import { isOfHole, namingJudgement, type ThreadEvidence } from "./namingEvidence.ts";
import { type Explained, expectedReading, explained } from "./namingLikelihood.ts";
import { type SeparatingMeasurement, separatingMeasurement } from "./namingSeparate.ts";

/** What an unknown thread may be. */
export type ThreadNaming = {
  /** Every thread that is looked for, likeliest first; the probabilities add to 1. */
  readonly candidates: readonly ThreadCandidate[];
  /** The odds of the first are below 20 to 1, so the second must be shown beside it. */
  readonly showTwo: boolean;
  /** The designations that come next after the first, without those for which a reading would have to be a blunder. */
  readonly rivals: readonly string[];
  /** What would separate the first from its nearest rival; null where no measurement at the lift would. */
  readonly separateBy: SeparatingMeasurement | null;
  readonly warnings: readonly NamingWarning[];
};

export type NamingWarning = "counted crests" | "foreign plug" | "binds: stop turning" | "nothing fits";

export type ThreadCandidate = {
  readonly thread: CandidateThread;
  readonly designation: string;
  readonly probability: number;
  /** In the order of the evidence. */
  readonly pieces: readonly EvidencePiece[];
};

/** What one piece of evidence says of one candidate. */
export type EvidencePiece = {
  readonly type: ThreadEvidence["type"];
  /** Natural logarithm of the likelihood; only differences between candidates mean anything. */
  readonly logLikelihood: number;
  /** What explains the reading best if the thread is this one. */
  readonly explainedBy: keyof Explained;
  readonly reading: { readonly read_mm: number; readonly expected_mm: Range } | null;
};

/**
 * The threads that the evidence may come from, ranked by probability: Bayes' rule over weights of how common a thread is
 * (judgement) and independent readings, each of which may be a blunder. The order of the evidence does not matter. An Rp hole is
 * looked for where something was read of the hole.
 */
export function threadCandidates(evidence: readonly [ThreadEvidence, ...ThreadEvidence[]]): ThreadNaming {
  const foreign = evidence.some(isForeign);
  const lookedFor = evidence.some(isOfHole) ? candidatesOfHole() : namingCandidates();
  const weighed = lookedFor.map((thread) => weigh(thread, evidence, foreign));
  const greatest = Math.max(...weighed.map(({ log }) => log));
  const total = weighed.reduce((sum, { log }) => sum + Math.exp(log - greatest), 0);
  const ranked = weighed
    .map(
      ({ thread, designation, log, pieces, crestsCounted, blundered }): Ranked => ({
        thread,
        designation,
        probability: Math.exp(log - greatest) / total,
        pieces,
        crestsCounted,
        blundered,
      }),
    )
    .sort((a, b) => b.probability - a.probability);

  const [first, second] = ranked;
  if (!first || !second) throw new RangeError("fewer than two threads are looked for");
  const showTwo = first.probability < namingJudgement.oddsToName * second.probability;
  const rivals = ranked.filter((it) => (it === second && showTwo) || (it !== first && it.blundered < 0.5));
  const crestsCounted = expected(ranked, (it) => it.crestsCounted) > 0.5;
  const warnings: readonly (NamingWarning | null)[] = [
    crestsCounted ? "counted crests" : null,
    foreign ? "foreign plug" : null,
    evidence.some((it) => it.type === "mesh" && it.felt === "tight") ? "binds: stop turning" : null,
    expected(ranked, (it) => it.blundered) > 0.5 ? "nothing fits" : null,
  ];
  return {
    candidates: ranked.map(({ thread, designation, probability, pieces }) => {
      return { thread, designation, probability, pieces };
    }),
    showTwo,
    rivals: rivals.slice(0, RIVALS).map(({ designation }) => designation),
    separateBy: separatingMeasurement(first.thread, (rivals[0] ?? second).thread, evidence, crestsCounted),
    warnings: warnings.filter((it) => it !== null),
  };
}

const RIVALS = 3;

/** A candidate with the probabilities, if it is the thread, that crests were counted and that a reading is a blunder. */
type Ranked = ThreadCandidate & { readonly crestsCounted: number; readonly blundered: number };

function weigh(thread: CandidateThread, evidence: readonly ThreadEvidence[], foreign: boolean) {
  // A foreign plug need not be of the threads that are usual here: its weights are drawn together.
  const logWeight = Math.log(thread.weight) * (foreign ? 0.5 : 1);
  const parts = evidence.map((it) => ({ it, by: explained(it, thread) }));
  const pieces = parts.map(({ it, by }): EvidencePiece => {
    return {
      type: it.type,
      logLikelihood: Math.log(sumOf(by)),
      explainedBy: bestOf(by),
      reading: expectedReading(it, thread),
    };
  });
  // Sorted before adding, so that the order of the evidence does not matter in the last digit either.
  const log = pieces
    .map(({ logLikelihood }) => logLikelihood)
    .sort((a, b) => a - b)
    .reduce((sum, it) => sum + it, logWeight);
  const none = (share: (by: Explained) => number): number =>
    parts.reduce((product, { by }) => product * (1 - share(by) / sumOf(by)), 1);
  const crestsCounted = 1 - none((by) => by.crestsCounted);
  const blundered = 1 - none((by) => by.blunder);
  return { thread, designation: thread.designation, log, pieces, crestsCounted, blundered };
}

const sumOf = ({ thread, crestsCounted, blunder }: Explained): number => thread + crestsCounted + blunder;

function bestOf({ thread, crestsCounted, blunder }: Explained): keyof Explained {
  if (blunder > thread && blunder > crestsCounted) return "blunder";
  return crestsCounted > thread ? "crestsCounted" : "thread";
}

const expected = (ranked: readonly Ranked[], of: (it: Ranked) => number): number =>
  ranked.reduce((sum, it) => sum + it.probability * of(it), 0);

const isForeign = (it: ThreadEvidence): boolean =>
  it.type === "hexagon" && Math.abs(valueIn(mm, it.plug) - valueIn(mm, it.sister)) > namingJudgement.sameHexagon_mm;
