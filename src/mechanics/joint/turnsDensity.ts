import { cdf, type Distribution, quantile, support, survival } from "../quantity/distribution.ts";
import { nodesOf } from "../quantity/distributionNodes.ts";
import {
  emptyDensity,
  type LogDensity,
  logDensityBelow,
  nothing,
  spread,
  spreadAll,
  step,
} from "../quantity/logDensity.ts";
import { normalCdf, normalDensity } from "../quantity/normal.ts";
import { crowding, firstTurnShare } from "./stripping.ts";
import type { Count } from "./turnsCount.ts";

/** Fewer turns than this carry nothing worth the name; what lies below counts as none. */
const leastTurns = 0.004;

/** What is left out at each end of a lead-in. */
const negligible = 1e-13;

/**
 * The density of the turns that carry: the count less its lead-in, with what uneven sharing takes beyond three turns,
 * n * [n f(n) / (3 f(3))]^-a. `k` is the sharing constant of the case material.
 */
export function turnsDensity(count: Count, leadIn: Distribution, k: number, sharingExponent: Distribution): LogDensity {
  const below = belowLessLeadIn(count, leadIn);
  const [least, most] = reachOfCount(count, leadIn);
  if (most <= leastTurns) return nothing;
  const effective = logDensityBelow(below, Math.max(least, leastTurns), most, below(0));
  return most > 3 ? shared(effective, k, sharingExponent) : effective;
}

/** The probability that the count less its lead-in is at most n. */
function belowLessLeadIn(count: Count, leadIn: Distribution): (n: number) => number {
  if (leadIn.type === "uniform" && leadIn.high > leadIn.low) {
    const integral = integratedBelow(count);
    const { low, high } = leadIn;
    return (n) => (integral(n + high) - integral(n + low)) / (high - low);
  }
  if (count.type === "exact" && leadIn.type !== "exact") return (n) => survival(leadIn, count.value - n);
  const { at, weight } = nodesOf(leadIn, 24);
  return (n) => at.reduce((sum, lead, i) => sum + (weight[i] as number) * cdf(count, n + lead), 0);
}

/** The integral of a count's distribution function, which a lead-in spread evenly needs in closed form. */
function integratedBelow(count: Count): (n: number) => number {
  switch (count.type) {
    case "exact":
      return (n) => Math.max(0, n - count.value);
    case "normal":
      return (n) => {
        const z = (n - count.mean) / count.sd;
        return count.sd * (z * normalCdf(z) + normalDensity(z));
      };
    case "triangular": {
      const { low, likely, high } = count;
      const mean = (low + likely + high) / 3;
      return (n) => {
        if (n <= low) return 0;
        if (n < likely) return (n - low) ** 3 / (3 * (high - low) * (likely - low));
        if (n < high) return n - mean + (high - n) ** 3 / (3 * (high - low) * (high - likely));
        return n - mean;
      };
    }
    default:
      return count satisfies never;
  }
}

function reachOfCount(count: Count, leadIn: Distribution): readonly [number, number] {
  const [soonest, latest] = [quantile(leadIn, negligible), quantile(leadIn, 1 - negligible)];
  const [least, most] =
    count.type === "normal" ? [count.mean - 8 * count.sd, count.mean + 8 * count.sd] : support(count);
  return [least - latest, most - soonest + 1e-9];
}

/** Moves the mass beyond three turns to where uneven sharing leaves it. */
function shared({ first, mass, zero }: LogDensity, k: number, exponent: Distribution): LogDensity {
  const exponents = nodesOf(exponent, 8);
  const even = Math.max(0, Math.floor((Math.log(3) - first) / step) + 1);
  const n = mass.subarray(even).map((_, i) => Math.exp(first + (even + i) * step));
  const f = firstTurnShare.over({ k, n });
  const f_3 = firstTurnShare.over({ k, n: 3 })[0] as number;
  const loss = crowding.over({ n, f, f_3 }).map(Math.log);
  // Crowding grows with the turns: the most that is moved down is what the last cell loses, and it needs room below.
  const mostLost = (loss.at(-1) ?? 0) * Math.max(...exponents.at);
  const moved = emptyDensity(first - mostLost, first + mass.length * step);
  spreadAll(moved, { first, mass: mass.subarray(0, even) }, 0, 1);
  for (let i = even; i < mass.length; i++)
    for (let j = 0; j < exponents.at.length; j++)
      spread(
        moved,
        first + i * step - (loss[i - even] as number) * (exponents.at[j] as number),
        (mass[i] as number) * (exponents.weight[j] as number),
      );
  return { ...moved, zero };
}
