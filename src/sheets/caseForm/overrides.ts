import {
  cut,
  type Distribution,
  exactly,
  lognormal,
  lognormalByMean,
  normal,
  quantile,
  support,
  triangular,
  uniform,
} from "../../mechanics/quantity/distribution.ts";
import { type LevelName, type Levels, levelsWith } from "../../mechanics/tables/levels.ts";
import {
  type RangeName,
  type Ranges,
  type ReferenceRange,
  rangesWith,
  referenceRanges,
} from "../../mechanics/tables/referenceRanges.ts";
import { judgement } from "../../mechanics/tables/source.ts";
import type { InputProblem } from "../words/problemWords.ts";
import type { WrittenRange } from "./caseSchema.ts";
import { asGiven } from "./schemaProblems.ts";

/** The reference ranges with those that the case replaces, on the scale of the range's own unit. */
export function rangesGiven(
  written: { readonly [N in RangeName]?: WrittenRange | undefined },
  problems: InputProblem[],
): Ranges {
  const overrides: { [N in RangeName]?: ReferenceRange } = {};
  for (const [name, range] of Object.entries(written) as [RangeName, WrittenRange][]) {
    try {
      const { unit } = referenceRanges[name];
      const distribution = distributionOf(range);
      const accepted = outsideOf(name, distribution);
      if (accepted) problems.push({ field: `ranges.${name}`, given: asGiven(range), accepted });
      else overrides[name] = { distribution, unit, source: judgement("given with the case") };
    } catch (mistake) {
      if (!(mistake instanceof RangeError)) throw mistake;
      problems.push({
        field: `ranges.${name}`,
        given: asGiven(range),
        accepted: `figures in order: ${mistake.message}`,
      });
    }
  }
  return rangesWith(overrides);
}

/** The levels of the method with those that the case replaces. */
export function levelsGiven(
  written: { readonly [N in LevelName]?: number | undefined },
  problems: InputProblem[],
): Levels {
  const overrides: { [N in LevelName]?: number } = {};
  for (const [name, value] of Object.entries(written) as [LevelName, number][]) {
    const isShare = shares.includes(name);
    if (value > 0 && (value < 1 || !isShare)) overrides[name] = value;
    else
      problems.push({
        field: `levels.${name}`,
        given: asGiven(value),
        accepted: isShare ? "a share between 0 and 1" : "a number above 0",
      });
  }
  return levelsWith(overrides);
}

/** The levels that are shares of something. */
const shares: readonly LevelName[] = [
  "stripOdds",
  "shareOfMedian",
  "closeOdds",
  "healthyFrom",
  "leastHeight",
  "leastShareOfScale",
];

/** What a range must keep to, where a distribution does not; null where it does. One in a million may err beyond. */
function outsideOf(name: RangeName, distribution: Distribution): string | null {
  const [least, most] = [quantile(distribution, 1e-6), quantile(distribution, 1 - 1e-6)];
  const cutIt = 'cut it with "least" and "most"';
  if (name.startsWith("wrench"))
    return least > -0.5 && most < 0.5 ? null : "shares of the figure set, from -0.5 to 0.5";
  if (name.startsWith("count")) return least >= 0 ? null : "figures from 0 up";
  if (name === "lead-in" || name === "sharing exponent") {
    const [from, to] = support(distribution);
    return from >= 0 && to < 10 ? null : `figures from 0 to 10; ${cutIt}`;
  }
  if (/^(height|heat) /.test(name)) return least > 0 && most <= 1 ? null : `shares above 0, up to 1; ${cutIt}`;
  return least > 0 ? null : `figures above 0; ${cutIt}`;
}

function distributionOf(range: WrittenRange): Distribution {
  if ("value" in range) return exactly(range.value);
  if ("likely" in range) return triangular(range.low, range.likely, range.high);
  if ("low" in range) return uniform(range.low, range.high);
  const { least = null, most = null } = range;
  const whole =
    "sd" in range
      ? normal(range.mean, range.sd)
      : "cv" in range
        ? lognormalByMean(range.mean, range.cv)
        : lognormal(range.median, range.sigma);
  return least === null && most === null ? whole : cut(whole, least, most);
}

/** A range as a case may write it, for the echo in the answer. */
export function writtenRange(distribution: Distribution): WrittenRange {
  switch (distribution.type) {
    case "exact":
      return { value: distribution.value };
    case "uniform":
      return { low: distribution.low, high: distribution.high };
    case "triangular":
      return { low: distribution.low, likely: distribution.likely, high: distribution.high };
    case "normal":
      return { mean: distribution.mean, sd: distribution.sd };
    case "lognormal":
      return { median: distribution.median, sigma: distribution.sigma };
    case "cut": {
      const { least, most } = { least: distribution.low, most: distribution.high };
      return {
        ...(writtenRange(distribution.of) as { mean: number; sd: number }),
        ...(least === null ? {} : { least }),
        ...(most === null ? {} : { most }),
      };
    }
    default:
      return distribution satisfies never;
  }
}
