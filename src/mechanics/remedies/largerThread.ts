import { unifiedSizes } from "../tables/asmeB1Sizes.ts";
import { pipeSizes } from "../tables/iso228.ts";
import { metricSizes } from "../tables/iso261.ts";
import { plugDiameters_mm } from "../tables/plugRings.ts";
import { type MetricThread, metricThreadOf } from "../threads/metricThread.ts";
import { type ParallelPipeThread, parallelPipeThread } from "../threads/pipeThread.ts";
import { isTaper, type TaperThread, type Thread } from "../threads/thread.ts";
import { type UnifiedThread, unifiedThread } from "../threads/unifiedThread.ts";
import { leastClearance } from "./fitTapping.ts";

/**
 * The next threads up that a torn one may be cut to, the one to be thought of first before the other: the first of each series
 * whose drill takes the whole of the torn thread. Of its own standard, so that whoever opens it next finds what he expects; a
 * torn inch or pipe thread may go to a metric plug as well. Before G that comes first, as it takes less of the wall; unified
 * sizes lie close, and their own comes first. None for a taper thread.
 */
export function nextSizes(torn: Thread): readonly Thread[] {
  if (isTaper(torn)) return [];
  return seriesFor(torn).flatMap((larger) => larger.find((it) => leastClearance(torn, it) >= -1e-9) ?? []);
}

/** Series of threads larger than the torn one, each from small to large, in the order in which they are thought of. */
function seriesFor(torn: Exclude<Thread, TaperThread>): readonly (readonly Thread[])[] {
  switch (torn.type) {
    case "metric":
      return [largerMetric(torn)];
    case "unified":
      return [largerUnified(torn), metricPlugs(1e3 * torn.d.value)];
    case "G":
      return [metricPlugs(1e3 * torn.d.value), largerPipe(torn)];
    default:
      return torn satisfies never;
  }
}

/** Of the diameters that plugs and their rings are made in, of the same pitch or else 1.5 mm. */
function largerMetric(torn: MetricThread): readonly MetricThread[] {
  const [d_mm, P_mm] = [1e3 * torn.d.value, 1e3 * torn.P.value];
  return [P_mm, 1.5].flatMap((pitch_mm) => finePlugs(d_mm, pitch_mm));
}

const finePlugs = (over_mm: number, pitch_mm: number): readonly MetricThread[] =>
  metricSizes
    .filter((it) => Math.abs(it.P_mm - pitch_mm) < 1e-9 && it.d_mm > over_mm && isPlugSize(it))
    .map(metricThreadOf);

/** Plugs are sold with the pitch of 1 mm up to M10 and of 1.5 mm above. DIN 908 and DIN 910, from memory. */
const metricPlugs = (over_mm: number): readonly MetricThread[] =>
  [...finePlugs(over_mm, 1), ...finePlugs(over_mm, 1.5)].filter(({ d, P }) => d.value > 10.5e-3 === P.value > 1.2e-3);

const largestRing_mm = Math.max(...plugDiameters_mm);
/** Above the rings of our table, the diameters that taps are kept in: those of the first and second choice of ISO 261. */
const isPlugSize = ({ d_mm, choice }: (typeof metricSizes)[number]): boolean =>
  plugDiameters_mm.includes(d_mm) || (d_mm > largestRing_mm && (choice === 1 || choice === 2));

/** Of the series that taps and plugs are sold in: its own where it is coarse or fine, then the fine one (from memory). */
function largerUnified(torn: UnifiedThread): readonly UnifiedThread[] {
  const own = torn.series === "UNC" ? (["UNC", "UNF"] as const) : (["UNF"] as const);
  return own.flatMap((series) =>
    unifiedSizes.map(unifiedThread).filter((it) => it.series === series && it.d.value > torn.d.value),
  );
}

/** Of the sizes that plugs and taps are sold in: 5/8, 7/8, 1 1/8 and 1 3/4 are seldom met (from memory). */
function largerPipe(torn: ParallelPipeThread): readonly ParallelPipeThread[] {
  return pipeSizes
    .filter(({ size }) => !seldom.includes(size))
    .map(parallelPipeThread)
    .filter(({ d }) => d.value > torn.d.value);
}

const seldom: readonly string[] = ["5/8", "7/8", "1 1/8", "1 3/4"];
