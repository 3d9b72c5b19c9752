import type { HeldByMethod } from "../../mechanics/service/held.ts";
import type { WeibullNotFitted } from "../../mechanics/service/weibull.ts";

/** How one method has held, in a few lines: the count first, then what the true rate may be, then when they failed. */
export function heldLines(it: HeldByMethod): readonly string[] {
  return [
    it.method,
    ...(it.cases === 0 ? ["  never looked at: silence is not success"] : shareLines(it)),
    ...(it.neverLookedAt > 0 && it.cases > 0 ? [`  left out: ${times(it.neverLookedAt)} never looked at`] : []),
    "",
  ];
}

function shareLines(it: HeldByMethod): readonly string[] {
  const [low, high] = it.jeffreys95.map(percent);
  const small = it.smallNumbers ? `; with ${numberWord(it.cases)} the true rate` : "; the true rate";
  return [
    `  ${it.cameBack} of ${it.cases} came back${small} may be anywhere from ${low} to ${high} % (Jeffreys, 95 %)`,
    `  watched together ${Math.round(it.watched_days)} days`,
    ...fallLines(it),
    weibullLine(it),
  ];
}

function fallLines({ kaplanMeier, turnbull }: HeldByMethod): readonly string[] {
  if (kaplanMeier)
    return kaplanMeier.map(({ t, survival, low, high, atRisk }) => {
      const band = low === null || high === null ? "" : ` (${percent(low)} to ${percent(high)})`;
      return `  after ${t} days ${percent(survival)} of 100 hold${band}, ${atRisk} were watched`;
    });
  return turnbull
    .filter(({ to }) => to !== null)
    .map(({ from, to, mass }) => `  ${percent(mass)} of 100 came back between ${from} and ${to} days`);
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
