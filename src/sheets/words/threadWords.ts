import type { SeparatingMeasurement } from "../../mechanics/threads/namingSeparate.ts";
import type { NamingWarning, ThreadCandidate, ThreadNaming } from "../../mechanics/threads/threadName.ts";

/** Which thread it is, its rivals, and the one measurement that tells them apart. */
export function threadLines(
  { candidates, showTwo, rivals, separateBy, warnings }: ThreadNaming,
  gaps: number,
): readonly string[] {
  const [first, second] = candidates;
  if (!first || !second) return [];
  const separate = separateBy && rivals.length > 0 ? separatingSentence(separateBy) : null;
  return [
    ...warnings.map((it) => warningSentences[it]),
    showTwo
      ? `${first.designation} or ${second.designation}: the odds do not say which yet (${percent(first)} and ${percent(second)} %).`
      : `${first.designation} (${percent(first)} %).`,
    "",
    "Why",
    ...[first, ...candidates.filter(({ designation }) => rivals.includes(designation))]
      .slice(0, 4)
      .map((it) => `  ${it.designation}: ${crestText(it, gaps)}${readingsText(it)}`),
    ...(separate ? ["", "Next", `  ${separate}`] : []),
    "",
    "Mind",
    "  Spin a known plug in by hand before any force: it must run easily all the way. Tight after a turn or two is the wrong pitch: stop.",
  ];
}

/** What would separate the two that are likeliest, in one sentence. */
export function separatingSentence(by: SeparatingMeasurement): string {
  const [a, b] = by.between;
  const firm = by.wrong > 0.1 ? " It may still leave doubt." : "";
  return `${measurementText(by)} It tells ${a} from ${b}.${firm}`;
}

function measurementText(by: SeparatingMeasurement): string {
  switch (by.type) {
    case "gaps":
      return `Lay it along a rule with light behind: 0 on a crest, the next crest is "one"; at least ${by.atLeast} gaps.`;
    case "outside diameter":
      return "Caliper over the middle threads of the good plug.";
    case "two diameters":
      return `Caliper at two places ${Math.round(by.apart_mm)} mm apart: the same, or one in sixteen more?`;
    case "spin a known plug":
      return `Spin a known ${by.known} in by hand: ${Math.floor(by.freeTurns)} easy turns and more speak for it.`;
    case "pitch gauge":
      return `Pitch gauge, leaves ${by.leaves_mm.map((it) => Number(it.toFixed(3))).join(" and ")} mm: light under the teeth of which?`;
    case "bore":
      return "Inside jaws at the mouth of the hole, widest and narrowest.";
    default:
      return by satisfies never;
  }
}

/** Where the last crest of the gaps would lie on the rule. */
const crestText = ({ thread }: ThreadCandidate, gaps: number): string =>
  `${gaps} gaps reach ${(gaps * thread.P_mm).toFixed(1)} mm, outside ${thread.outside_mm[0].toFixed(2)} to ${thread.outside_mm[1].toFixed(2)} mm`;

function readingsText({ pieces }: ThreadCandidate): string {
  const odd = pieces
    .filter(({ explainedBy }) => explainedBy !== "thread")
    .map(({ type, explainedBy }) => `${type}${oddWords[explainedBy]}`);
  return odd.length > 0 ? `; does not fit: ${odd.join(", ")}` : "";
}

const oddWords: Readonly<Record<string, string>> = {
  crestsCounted: " (crests counted for gaps?)",
  blunder: "",
  thread: "",
};

export const warningSentences: Readonly<Record<NamingWarning, string>> = {
  "counted crests": "Did you count crests instead of gaps? Then it is one fewer, and the names below hold.",
  "foreign plug": "This plug's hexagon is not its sister's: it may not belong here. Measure the hole.",
  "binds: stop turning": "Tight after a few turns is the wrong pitch, not dirt: stop turning.",
  "nothing fits": "Nothing fits these readings well: measure again on the middle threads of the good plug.",
};

const percent = ({ probability }: ThreadCandidate): string =>
  probability > 0.995 ? "over 99" : String(Math.max(1, Math.round(100 * probability)));
