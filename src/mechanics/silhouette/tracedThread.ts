import { coarsePeriod } from "./coarsePeriod.ts";
import { amplitudes, type CrestEdge, crestEdge } from "./crestEdge.ts";
import { type CrestLines, crestLines } from "./crestLines.ts";
import { movedFrame, type ThreadGuess } from "./frame.ts";
import type { Photo } from "./photo.ts";
import { repeating, type Strip, straightened } from "./strip.ts";
import { type ThreadedRegion, threadedRegion } from "./threadedRegion.ts";

/** A thread followed along its own axis: the strip it lies in, and in its frame its crest lines and its period. */
export type TracedThread = {
  readonly strip: Strip;
  /** The three colours of the strip, what repeats in them. */
  readonly signal: readonly Float32Array[];
  readonly region: ThreadedRegion;
  readonly period: number;
  readonly edges: readonly CrestEdge[];
  /** Fitted about the middle of the region. */
  readonly lines: CrestLines;
};

/**
 * The thread that a guess points at, in up to five rounds: each lays the strip along the axis the last one found, looks
 * where it repeats, and refines period, width and axis. Null where nothing repeats, or no crest line ends it on a side.
 */
export function tracedThread(photo: Photo, guess: ThreadGuess): TracedThread | null {
  let at = guess;
  let traced: TracedThread | null = null;
  for (let round = 0; round < 5; round++) {
    traced = tracedOnce(photo, at, round);
    if (!traced) return null;
    const { lines, region, period, strip } = traced;
    const middle = (region.from + region.to) / 2;
    const halfWidth = (lines.left + lines.right) / 2;
    const still =
      Math.abs(halfWidth / at.halfWidth - 1) < 0.004 &&
      Math.abs(lines.slope) < 0.002 &&
      Math.abs(middle) < 0.3 * period &&
      Math.abs(lines.right - lines.left) < 0.02 * halfWidth;
    if (round >= 1 && still) return traced;
    at = {
      frame: movedFrame(strip.frame, middle, (lines.right - lines.left) / 2, lines.slope),
      period,
      halfWidth,
      halfLength: (region.to - region.from) / 2,
    };
  }
  return traced;
}

/** A thread whose pitch is a smaller or greater share of its diameter than this is none that is looked for. */
export const plausiblePeriod = (period: number, width: number): boolean =>
  period / width > 0.02 && period / width < 0.45;

function tracedOnce(photo: Photo, { frame, period, halfWidth, halfLength }: ThreadGuess, round: number) {
  if (!plausiblePeriod(period, 2 * halfWidth) || period < 3.5) return null;
  const longer = round === 0 ? Math.max(3 * period, 0.5 * halfLength) : 2.2 * period;
  const reach = (round === 0 ? 1.6 : 1.3) * halfWidth + 0.9 * period;
  const span = Math.min(halfLength + longer, Math.hypot(photo.width, photo.height));
  // The first round only has to say whether there is anything.
  const step = round === 0 ? Math.max(1.4, period / 11) : Math.max(1, period / 26);
  const strip = straightened(photo, frame, -span, span, reach, step);
  let signal = strip.raw.map((plane) => repeating(strip, plane, period));
  const region = threadedRegion(strip, signal, period, (round === 0 ? 1.25 : 1.08) * halfWidth);
  if (!region || region.to - region.from < 1.8 * period) return null;
  const refined = coarsePeriod(strip, signal, period, [region.from, region.to], 1.08 * halfWidth);
  if (Math.abs(refined / period - 1) > 0.02) signal = strip.raw.map((plane) => repeating(strip, plane, refined));
  const range = [
    (round === 0 ? 0.5 : 0.75) * halfWidth,
    Math.min(reach - 0.35 * period, (round === 0 ? 1.6 : 1.22) * halfWidth + 0.35 * period),
  ] as const;
  const found = straightRun(segmentsAlong(strip, signal, refined, region, range), region, refined);
  if (!found) return null;
  const { edges, lines } = found;
  if (lines.left + lines.right <= 0 || !plausiblePeriod(refined, lines.left + lines.right)) return null;
  return { strip, signal, region: { ...region, ...found.span }, period: refined, edges, lines };
}

type Segment = { readonly from: number; readonly to: number; readonly edges: readonly CrestEdge[] };

/** The crests' edges of both sides in up to six segments that overlap by half, without the ends of the region. */
function segmentsAlong(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  region: ThreadedRegion,
  range: readonly [number, number],
): readonly Segment[] {
  const [from, to] = [region.from + 0.45 * period, region.to - 0.45 * period];
  const count = Math.min(6, Math.max(1, Math.floor((to - from) / (1.1 * period)) - 1));
  const length = (2 * (to - from)) / (count + 1);
  return Array.from({ length: count }, (_, i) => {
    const start = from + (i * length) / 2;
    const rows = amplitudes(strip, signal, period, start, start + length);
    const edges = ([-1, 1] as const).flatMap((side) => crestEdge(strip, rows, period, side, range) ?? []);
    return { from: start, to: start + length, edges };
  });
}

/**
 * The crest lines of a region; where its edges do not lie on lines, those of the longest run of segments whose do: a
 * finger or a washer hides the crests of some turns, and the turns are seen all the same.
 */
function straightRun(segments: readonly Segment[], region: ThreadedRegion, period: number) {
  const tolerance = 0.04 * period + 0.3;
  let best: { span: Span; edges: readonly CrestEdge[]; lines: CrestLines; score: number } | null = null;
  for (let length = segments.length; length >= Math.min(2, segments.length); length--)
    for (let start = 0; start + length <= segments.length; start++) {
      const run = segments.slice(start, start + length);
      const edges = run.flatMap((it) => it.edges);
      if (![-1, 1].every((side) => edges.some((it) => it.side === side))) continue;
      const whole = length === segments.length;
      const from = whole || start === 0 ? region.from : (run[0] as Segment).from;
      const to = whole || start + length === segments.length ? region.to : (run[length - 1] as Segment).to;
      if (!whole && to - from < 2.8 * period) continue;
      const middle = (from + to) / 2;
      const lines = crestLines(
        edges.map((it) => ({ ...it, s: it.s - middle })),
        0.05 * period + 0.3,
      );
      const score = Math.log(Math.max(tolerance, lines.scatter) / tolerance) - 0.9 * Math.log((to - from) / period);
      if (!best || score < best.score) best = { span: { from, to }, edges, lines, score };
      if (whole && lines.scatter < tolerance) return best;
    }
  return best;
}

type Span = { readonly from: number; readonly to: number };
