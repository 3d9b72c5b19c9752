import type { UnifiedSize } from "../tables/asmeB1Sizes.ts";
import type { MetricSize } from "../tables/iso261.ts";

/*
 * How much likelier one thread is than another before anything is measured. Relative weights, all judgement: how often
 * plugs with such threads come to a bench that works on ports of vehicles and machines.
 */

/** Weight of a metric size. */
export function metricPrior({ designation, selected, choice }: MetricSize): number {
  if (metricPorts.has(designation)) return 10;
  if (selected) return 4;
  return choice === 3 ? 0.3 : 0.5;
}

/** Weight of a unified size. */
export function unifiedPrior({ designation, series }: UnifiedSize): number {
  if (unifiedPorts.has(designation)) return 4;
  switch (series) {
    case "UNC":
    case "UNF":
      return 2;
    case "UNS":
      return 1;
    case "UNEF":
      return 0.1;
    case "UN":
      return 0.05;
    default:
      return series satisfies never;
  }
}

/** Weight of a pipe size. Sizes over 1 and the odd ones between are rare on plugs. */
export function pipePrior(type: "G" | "R" | "Rp" | "NPT", size: string): number {
  const common = commonPipeSizes.includes(size);
  switch (type) {
    case "G":
      return common ? 8 : 1;
    case "R":
    case "Rp":
      return common ? 1 : 0.2;
    case "NPT":
      return common ? 2 : 0.4;
    default:
      return type satisfies never;
  }
}

/** Fill, drain and level ports, pressure ports and spark plugs. */
const metricPorts: ReadonlySet<string> = new Set([
  ...["M8x1", "M10x1", "M12x1.25", "M12x1.5", "M14x1.25", "M14x1.5", "M16x1.5", "M18x1.5", "M20x1.5", "M22x1.5"],
  ...["M24x1.5", "M24x2", "M26x1.5", "M27x2", "M30x1.5", "M30x2", "M33x2", "M38x1.5", "M42x2", "M48x2"],
]);

/** Straight ports with an O-ring, and drain plugs. */
const unifiedPorts: ReadonlySet<string> = new Set([
  ...["7/16-20 UNF", "1/2-20 UNF", "9/16-18 UNF", "5/8-18 UNF", "3/4-16 UNF", "7/8-14 UNF"],
  ...["1 1/16-12 UN", "1 3/16-12 UN", "1 5/16-12 UN", "1 5/8-12 UN", "1 7/8-12 UN"],
]);

const commonPipeSizes: readonly string[] = ["1/8", "1/4", "3/8", "1/2", "3/4", "1"];
