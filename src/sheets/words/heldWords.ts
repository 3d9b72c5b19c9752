import type { HeldByMethod } from "../../mechanics/service/held.ts";
import { casesToShow } from "../../mechanics/service/proportion.ts";
import type { WeibullNotFitted } from "../../mechanics/service/weibull.ts";

/** How one method has held, in a few lines: the count first, then what the true rate may be, then when they failed. */
export function heldLines(it: HeldByMethod): readonly string[] {
  return [it.method, ...heldPlainly(it).map((line) => `  ${line}`), ...(it.cases > 0 ? [weibullLine(it)] : []), ""];
}

/** The same for whoever has no use for the name of a distribution: counts, shares and days. */
export function heldPlainly(it: HeldByMethod): readonly string[] {
  if (it.cases === 0) return ["never looked at: silence is not success"];
  return [...shareLines(it), ...(it.neverLookedAt > 0 ? [`left out: ${times(it.neverLookedAt)} never looked at`] : [])];
}

/** Two methods held against one another; `test` is null where nothing tells. */
export type ComparedInWords = {
  readonly methods: readonly [string, string];
  readonly chiSquare: number | null;
  readonly p: number | null;
};

/** Whether two methods hold alike, as far as so few cases can say. */
export function comparedLines({ methods, p }: ComparedInWords): readonly string[] {
  const both = `${methods[0]} and ${methods[1]}`;
  if (p === null) return [`${both}: no failure sees both at risk, so nothing tells them apart.`, ""];
  const chance = p < 0.01 ? "less than 1 in 100" : `about ${Math.round(100 * p)} in 100`;
  const verdict = p < 0.05 ? "They do not hold alike" : "These cases cannot tell them apart";
  return [
    `${both}: ${verdict.charAt(0).toLowerCase()}${verdict.slice(1)}; luck alone would part them so far ${chance} times (log-rank).`,
    "",
  ];
}

function shareLines(it: HeldByMethod): readonly string[] {
  const [low, high] = it.jeffreys95.map(percent);
  const small = it.smallNumbers ? `; with ${numberWord(it.cases)} the true rate` : "; the true rate";
  return [
    `${it.cameBack} of ${it.cases} came back${small} may be anywhere from ${low} to ${high} % (Jeffreys, 95 %)`,
    `watched together ${Math.round(it.watched_days)} days`,
    ...fallLines(it),
    ...(it.cameBack === 0
      ? [`${casesToShow(0.9, 0.95)} in a row without one coming back would show that 9 in 10 hold (95 %)`]
      : []),
  ];
}

function fallLines({ kaplanMeier, turnbull }: HeldByMethod): readonly string[] {
  if (kaplanMeier)
    return kaplanMeier.map(({ t, survival, low, high, atRisk }) => {
      const band = low === null || high === null ? "" : ` (${percent(low)} to ${percent(high)})`;
      return `after ${t} days ${percent(survival)} of 100 hold${band}, ${atRisk} were watched`;
    });
  return turnbull
    .filter(({ to }) => to !== null)
    .map(({ from, to, mass }) => `${percent(mass)} of 100 came back between ${from} and ${to} days`);
}

function weibullLine({ weibull, weibullMissing }: HeldByMethod): string {
  if (!weibull) return `  no Weibull fit: ${weibullMissing ? missingWords[weibullMissing] : "nothing to fit"}`;
  const course =
    weibull.shape < 0.8 ? "early failures" : weibull.shape > 1.25 ? "wear" : "neither early failures nor wear";
  const few = weibull.fewFailures ? "; fewer than five failures, little more than a guess" : "";
  return `  Weibull shape ${weibull.shape.toPrecision(2)} (${course}), scale ${weibull.scale.toPrecision(2)} days${few}`;
}

const missingWords: Readonly<Record<WeibullNotFitted["reason"], string>> = {
  "too few failures": "fewer than two failures",
  "failure at 0": "a failure on the day itself has no place in it",
  "no greatest likelihood": "the failures do not tell when they come",
};

const percent = (share: number): string => String(Math.round(100 * share));
const times = (count: number): string => (count === 1 ? "one case" : `${count} cases`);
const numberWord = (count: number): string =>
  `${["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"][count] ?? count} ${count === 1 ? "case" : "cases"}`;
