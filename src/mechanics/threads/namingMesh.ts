import { formula } from "../quantity/formula.ts";
import { deg, mm, one, turn } from "../quantity/unit.ts";
import {
  type CandidateThread,
  candidateNamed,
  candidatesOfHole,
  namingCandidates,
  type Range,
} from "./namingCandidates.ts";
import { aboveInRange, readingOfRange } from "./namingDensity.ts";
import { type MeshEvidence, namingJudgement } from "./namingEvidence.ts";

/**
 * After how many turns a plug binds in a hole, from the tightest to the loosest pair within limits; null where it slides
 * over without catching. A parallel pair of one pitch that goes in at all stays free, which is FREE_TURNS.
 */
export function bindTurns(plug: CandidateThread, hole: CandidateThread): Range | null {
  if (plug.outside_mm[1] <= hole.bore_mm[0]) return null;
  const turns = (c_mm: number): number => Math.min(FREE_TURNS, byPitch(c_mm, plug, hole), byTaper(c_mm, plug, hole));
  return [turns(hole.holePitch_mm[0] - plug.plugPitch_mm[1]), turns(hole.holePitch_mm[1] - plug.plugPitch_mm[0])];
}

/** More turns than anybody tries. */
export const FREE_TURNS = 1000;

/** The likelihood of what was felt if the unknown thread is `thread`: with the thread as it should be, and by dirt. */
export function meshLikelihood(evidence: MeshEvidence, thread: CandidateThread): { thread: number; blunder: number } {
  const { dirtyThread } = namingJudgement;
  const clean = evidence.known === null ? inFoundHole(evidence, thread) : inKnown(evidence, thread, evidence.known);
  return {
    thread: (1 - dirtyThread) * clean,
    blunder: dirtyThread * (evidence.felt === "tight" ? 1 / ANY_TURNS : 0.5),
  };
}

/** Dirt or a burr binds anywhere up to here. */
const ANY_TURNS = 10;

const SOURCE = "gap of the hole less ridge of the plug at one diameter (derived from ISO 68-1)";
const alike = { c: mm, alpha: deg, P_h: mm, P_p: mm };

/** Axial play of a ridge of the plug in a gap of the hole; c is D_2 less d_2, alpha the flank angle. */
const axialPlay = formula("a = (P_h - P_p) / 2 + c * tan(alpha)", { ...alike, a: mm }, SOURCE);
/** Two pitches use up the play at every turn; without any they would bind at the first. */
const bindSum = formula(
  "n = 1 + a / dP",
  { a: mm, dP: mm, n: turn },
  "the play used up turn by turn (derived), after one turn that goes in freely (common practice, no source)",
);
/** The diameters of a taper pair close by the taper times the pitch at every turn. */
const taperSum = formula("n = c / (t * P)", { c: mm, t: one, P: mm, n: turn }, "ASME B1.20.1-2013, 4 (derived)");

const FLANK = (30 * Math.PI) / 180;
/** Pitches closer than this run free together for any number of turns that is tried. */
const ONE_PITCH_mm = 1e-6;

function byPitch(c_mm: number, plug: CandidateThread, hole: CandidateThread): number {
  const [P_h, P_p] = [hole.P_mm / 1000, plug.P_mm / 1000];
  const a = axialPlay.over({ c: c_mm / 1000, alpha: FLANK, P_h, P_p })[0] as number;
  const dP = Math.abs(P_h - P_p);
  if (dP * 1000 < ONE_PITCH_mm) return c_mm > -ONE_PITCH_mm ? FREE_TURNS : 0;
  return Math.max(0, bindSum.over({ a, dP })[0] as number);
}

function byTaper(c_mm: number, plug: CandidateThread, hole: CandidateThread): number {
  const t = Math.max(plug.taper, hole.holeTaper);
  if (t === 0) return FREE_TURNS;
  return Math.max(0, taperSum.over({ c: c_mm / 1000, t, P: plug.P_mm / 1000 })[0] as number);
}

function inKnown(evidence: MeshEvidence, thread: CandidateThread, known: string): number {
  const other = candidateNamed(known);
  return turned(evidence, evidence.unknown === "plug" ? bindTurns(thread, other) : bindTurns(other, thread));
}

/** The plug in the hole it was found in: its own, or any of about its size, by how likely such a hole is. */
function inFoundHole(evidence: MeshEvidence, thread: CandidateThread): number {
  const own = turned(evidence, bindTurns(thread, thread));
  let [sum, weights] = [0, 0];
  for (const other of evidence.unknown === "plug" ? candidatesOfHole() : namingCandidates()) {
    if (other === thread || !areOneSize(thread, other)) continue;
    const turns = pair(evidence, thread, other);
    if (!turns) continue;
    sum += other.weight * turned(evidence, turns);
    weights += other.weight;
  }
  return weights === 0 ? own : namingJudgement.ownHole * own + ((1 - namingJudgement.ownHole) * sum) / weights;
}

const areOneSize = (a: CandidateThread, b: CandidateThread): boolean =>
  Math.abs(a.outside_mm[1] - b.outside_mm[1]) < namingJudgement.oneSize_mm;

const pair = ({ unknown }: MeshEvidence, thread: CandidateThread, other: CandidateThread): Range | null =>
  unknown === "plug" ? bindTurns(thread, other) : bindTurns(other, thread);

/** A pair that does not start is felt to bind at once, if it is felt at all. */
function turned({ turns, felt }: MeshEvidence, range: Range | null): number {
  const bound: Range = range ?? [0, 0.5];
  return felt === "tight"
    ? readingOfRange(turns, bound, namingJudgement.bindTurns)
    : aboveInRange(turns, bound, namingJudgement.bindTurns);
}
