import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { Range } from "../../mechanics/threads/namingCandidates.ts";
import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import { pitchRead } from "../../mechanics/threads/namingWorking.ts";
import type { NamingWarning, ThreadCandidate, ThreadNaming } from "../../mechanics/threads/threadName.ts";
import { turnsWord } from "./figures.ts";
import { separatingSentence } from "./separatingWords.ts";

/** Gaps along the rule that a drawing and its words speak of where nobody counted any. */
export const ORDINARY_GAPS = 10;

/** The name first, then what speaks against it, why, what would settle it, and what to mind. */
export function threadLines(naming: ThreadNaming, evidence: readonly ThreadEvidence[]): readonly string[] {
  const shown = candidatesBeside(naming);
  const width = Math.max(...shown.map(({ designation }) => designation.length));
  return [
    namingSentence(naming),
    ...naming.warnings.map((it) => warningSentence(it, evidence)),
    "",
    "Why",
    ...pitchSentences(evidence).map((line) => `  ${line}`),
    ...shown.map((it) => `  ${it.designation.padEnd(width)}  ${candidateReasons(it, evidence)}`),
    "",
    "Next",
    `  ${separatingSentence(naming)}`,
    "",
    "Mind",
    ...spinFirst.map((it) => `  ${it}`),
  ];
}

/** What to mind before any force. */
export const spinFirst: readonly string[] = [
  "A plug must run in easily by hand all the way.",
  "Tight after a turn or two is the wrong thread or a hurt one: stop turning.",
];

/** The first candidate, and the rivals that are shown beside it: three at most, two at least. */
export function candidatesBeside({ candidates, rivals }: ThreadNaming): readonly ThreadCandidate[] {
  const [first, second] = candidates;
  if (!first || !second) return candidates;
  const named = rivals.flatMap((rival) => candidates.find(({ designation }) => designation === rival) ?? []);
  return [first, ...(named.length > 0 ? named : [second])].slice(0, 3);
}

/** "M22x1.5 (over 99 %)", or two names while the odds do not say which. */
export function namingSentence({ candidates, showTwo }: ThreadNaming): string {
  const [first, second] = candidates;
  if (!first || !second) return "";
  return showTwo
    ? `${first.designation} or ${second.designation}: the odds do not say which yet (${percent(first)} and ${percent(second)} %).`
    : `${first.designation} (${percent(first)} %).`;
}

/** Whence a name comes that nobody gave. */
export const namedByMeasurements = (it: ThreadCandidate): string =>
  `named by its measurements (${percent(it)} %); a known plug of that name must spin in by hand before any force`;

/** What stands against the readings, or must be done before anything else. */
export function warningSentence(warning: NamingWarning, evidence: readonly ThreadEvidence[]): string {
  switch (warning) {
    case "counted crests": {
      const counted = evidence.find((it) => it.type === "gaps");
      if (!counted) return "Did you count crests instead of gaps?";
      const { count, length } = counted;
      const pitch = valueIn(mm, length) / (count - 1);
      return `Did you count crests instead of gaps? Then it is ${count - 1} in ${tenths(length)} mm, a pitch of ${pitch.toFixed(2)}.`;
    }
    case "foreign plug": {
      const flats = evidence.find((it) => it.type === "hexagon");
      const figures = flats ? ` (${tenths(flats.plug)} and ${tenths(flats.sister)} mm)` : "";
      return `This plug's hexagon is not its sister's${figures}: it may not belong here. Measure the hole.`;
    }
    case "binds: stop turning": {
      const felt = evidence.find((it) => it.type === "mesh" && it.felt === "tight");
      const after = felt?.type === "mesh" && felt.turns > 0 ? `after ${turnsWord(felt.turns)}` : "at once";
      return `Tight ${after}: stop turning. More force finishes the thread.`;
    }
    case "nothing fits":
      return "No thread fits all of these readings: measure again on the middle threads of the good plug.";
    default:
      return warning satisfies never;
  }
}

/** "pitch read: 1.51 ± 0.08 mm", for each count. */
export function pitchSentences(evidence: readonly ThreadEvidence[]): readonly string[] {
  const pitches = evidence.flatMap((it) => pitchRead(it) ?? []);
  return pitches.map(
    (it) => `pitch read: ${valueIn(mm, it).toFixed(2)} ± ${(2000 * standardUncertainty(it)).toFixed(2)} mm`,
  );
}

/** Where its crest would lie on the rule, what it measures outside, and what of the readings does not fit it. */
export function candidateReasons({ thread, pieces }: ThreadCandidate, evidence: readonly ThreadEvidence[]): string {
  const { P_mm, outside_mm, bore_mm, family } = thread;
  const counted = evidence.find((it) => it.type === "gaps");
  const gaps = counted?.count ?? ORDINARY_GAPS;
  const odd = pieces.flatMap(({ type, explainedBy }) =>
    explainedBy === "thread"
      ? []
      : [explainedBy === "blunder" ? readingNames[type] : "gaps, unless crests were counted"],
  );
  return [
    `${gaps === 1 ? "1 gap reaches" : `${gaps} gaps reach`} ${(gaps * P_mm).toFixed(1)} mm`,
    `outside ${span(outside_mm)} mm`,
    ...(evidence.some(({ type }) => type === "bore") ? [`hole ${span(bore_mm)} mm`] : []),
    ...(family === "Rp" ? ["a parallel hole, closed by an R plug"] : []),
    ...(odd.length > 0 ? [`does not fit: ${odd.join("; ")}`] : []),
  ].join(", ");
}

const span = ([low, high]: Range): string => `${low.toFixed(2)} to ${high.toFixed(2)}`;

const readingNames: Readonly<Record<ThreadEvidence["type"], string>> = {
  "outside diameter": "outside",
  gaps: "gaps",
  "pitch gauge": "gauge",
  pitch: "pitch",
  bore: "bore",
  travel: "travel",
  taper: "taper",
  "hole taper": "taper of the hole",
  mesh: "how it turned",
  hexagon: "hexagon",
};

const tenths = (length: Quantity): string => valueIn(mm, length).toFixed(1);

const percent = ({ probability }: ThreadCandidate): string => {
  if (probability > 0.995) return "over 99";
  return probability < 0.005 ? "under 1" : String(Math.round(100 * probability));
};
