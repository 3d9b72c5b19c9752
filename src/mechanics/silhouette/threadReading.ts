import { type FoldedOutline, foldedOutline } from "./foldedOutline.ts";
import { type Point, pointAt } from "./frame.ts";
import { wrapped } from "./lockIn.ts";
import { obliqueness } from "./obliqueness.ts";
import { quantile } from "./robust.ts";
import { sidePeriod } from "./sidePeriod.ts";
import type { Strip } from "./strip.ts";
import { bareRim } from "./threadedRegion.ts";
import type { TracedThread } from "./tracedThread.ts";

/** What a traced thread reads, in pixels and turns, and everything that its quality is judged by. */
export type ThreadReading = {
  readonly period_px: number;
  readonly width_px: number;
  readonly turns: number;
  readonly similarity: number;
  /** Standard error of the period as a share of it, from how the phase scatters. */
  readonly periodError: number;
  /** The greatest rms of a side's phase, turns. */
  readonly phaseRms: number;
  /** What the periods of left and right differ by, as a share. */
  readonly sidesDiffer: number;
  /** What the crests of left and right miss half a turn by, turns; and how clearly they stand in the outline, periods. */
  readonly halfPhaseOff: number | null;
  readonly swing: number | null;
  /** Root mean square of the crest edges about their lines, pixels; and how many there are. */
  readonly edgeScatter_px: number;
  readonly edgeCount: number;
  /** The share of the thread's length along which the crests' edge is seen, on the side that shows less. */
  readonly edged: number;
  readonly edgeOverNoise: number;
  readonly soft: number;
  readonly gap: number;
  /** Seen depth of the thread in periods, the lesser of both sides; null where it cannot be seen. */
  readonly depth: number | null;
  /** How much of the lines on the front follows a helix, and its turns: 1 of a right-hand thread, -1 of a left-hand one. */
  readonly helixFit: number;
  readonly lead: number;
  /** Sine of the angle between axis and picture. */
  readonly oblique: number;
  readonly taper: number;
  readonly drawn: DrawnThread;
};

/** Pixels of the photo: where each crest was seen, and the two lines along the crests. */
export type DrawnThread = {
  readonly ticks: readonly Point[];
  readonly lines: readonly (readonly [Point, Point])[];
};

/** The reading of a traced thread; null where a side's crests cannot be followed. */
export function threadReading({
  strip,
  signal,
  region,
  period,
  lines,
  edges,
  edged,
}: TracedThread): ThreadReading | null {
  const [from, to] = [region.from + 0.2 * period, region.to - 0.2 * period];
  const bare = ([-1, 1] as const).map((side) =>
    bareRim(strip, signal, side, side < 0 ? lines.left : lines.right, period, { from, to }),
  );
  const [left, right] = ([-1, 1] as const).map((side, i) =>
    sidePeriod(strip, signal, side, side < 0 ? lines.left : lines.right, period, bare[i] ?? [from, to]),
  );
  if (!left || !right) return null;
  // No side is so steady that the other says nothing.
  const weigh = ({ error }: { readonly error: number }): number => 1 / (error * error + (0.002 * period) ** 2);
  const weight = weigh(left) + weigh(right);
  const found = (left.period * weigh(left) + right.period * weigh(right)) / weight;
  if (!(Math.abs(found / period - 1) < 0.12)) return null;
  const width_px = (lines.left + lines.right) / Math.hypot(1, lines.slope);
  const helix = obliqueness(strip, signal, found, width_px / 2, [from, to]);
  const outlines = ([-1, 1] as const).map((side, i) =>
    foldedOutline(strip, found, side, side < 0 ? lines.left : lines.right, bare[i] ?? [from, to]),
  );
  const seen = outlines.filter((it) => it !== null);
  const [a, b] = outlines;
  const middle = (it: readonly number[]): number => quantile(it, 0.5);
  return {
    period_px: found,
    width_px,
    turns: (region.to - region.from) / found,
    similarity: region.similarity,
    periodError: Math.sqrt(1 / weight) / found,
    phaseRms: Math.max(left.rms, right.rms),
    sidesDiffer: Math.abs(left.period - right.period) / found,
    halfPhaseOff: a && b ? Math.abs(wrapped(a.phase - b.phase - 0.5)) : null,
    swing: seen.length > 0 ? Math.min(...seen.map(({ swing }) => swing)) : null,
    edgeScatter_px: lines.scatter,
    edgeCount: edges.length,
    edged,
    edgeOverNoise: middle(edges.map(({ overNoise }) => overNoise)),
    soft: middle(edges.map(({ soft }) => soft)),
    gap: middle(edges.map(({ gap }) => gap)),
    depth: seen.length > 0 ? Math.min(...seen.map(({ depth }) => depth)) : null,
    helixFit: helix.fit,
    lead: -helix.lead,
    oblique: helix.sine,
    taper: lines.taper,
    drawn: {
      ticks: ([-1, 1] as const).flatMap((side, i) =>
        crests(strip, side, found, outlines[i] ?? null, lines, [from, to]),
      ),
      lines: ([-1, 1] as const).map((side) => {
        const across = (s: number): number => crestAcross(lines, side, s - (region.from + region.to) / 2);
        return [
          pointAt(strip.frame, region.from, across(region.from)),
          pointAt(strip.frame, region.to, across(region.to)),
        ] as const;
      }),
    },
  };
}

type Lines = TracedThread["lines"];

const crestAcross = ({ left, right, slope, taper }: Lines, side: -1 | 1, s: number): number =>
  slope * s + side * ((side < 0 ? left : right) + (taper * s) / 2);

function crests(
  { frame }: Strip,
  side: -1 | 1,
  period: number,
  outline: FoldedOutline | null,
  lines: Lines,
  [from, to]: readonly [number, number],
): readonly Point[] {
  if (!outline) return [];
  const first = Math.ceil(from / period - outline.phase);
  const count = Math.max(0, Math.floor(to / period - outline.phase) - first + 1);
  const middle = (from + to) / 2;
  return Array.from({ length: count }, (_, i) => {
    const s = (first + i + outline.phase) * period;
    return pointAt(frame, s, crestAcross(lines, side, s - middle));
  });
}
