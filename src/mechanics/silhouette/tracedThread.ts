import { amplitudes } from "./amplitudes.ts";
import { coarsePeriod } from "./coarsePeriod.ts";
import { type CrestEdge, crestEdges } from "./crestEdge.ts";
import { type CrestLines, crestLines } from "./crestLines.ts";
import { type Frame, movedFrame, type ThreadGuess } from "./frame.ts";
import type { Photo } from "./photo.ts";
import { type Laying, narrowed, repeating, rowsBetween, type Strip, straightened } from "./strip.ts";
import { bareRim, type ThreadedRegion, threadedRegion } from "./threadedRegion.ts";

/** A thread followed along its own axis: the strip it lies in, and in its frame its crest lines and its period. */
export type TracedThread = {
  readonly strip: Strip;
  /** The three colours of the strip, what repeats in them. */
  readonly signal: readonly Float32Array[];
  readonly region: ThreadedRegion;
  readonly period: number;
  readonly edges: readonly CrestEdge[];
  /** The share of the segments along that show the crests' edge, on the side that shows fewer. */
  readonly edged: number;
  /** Fitted about the middle of the region. */
  readonly lines: CrestLines;
};

/** A guess with the part of the photo around it laid straight, coarsely: only to see whether there is anything. */
export type FirstLook = {
  readonly guess: ThreadGuess;
  readonly laid: Laid;
  /** As what shares of its width the guess may repeat; none where nothing of it does. */
  readonly shares: readonly number[];
  /** How many samples were taken of the photo for it. */
  readonly samples: number;
};

type Laid = { readonly strip: Strip; readonly signal: readonly Float32Array[] };

/**
 * A guess looked at as it is and as what `narrower` shares of its width; null where no thread can look like it. A few lines are
 * looked along first: most guesses do not even repeat.
 */
export function firstLook(photo: Photo, guess: ThreadGuess, narrower: readonly number[]): FirstLook | null {
  const { frame, period, halfWidth, halfLength } = guess;
  if (!possible(guess)) return null;
  const span = spanOf(photo, halfLength + Math.max(3 * period, 0.5 * halfLength));
  const step = coarse(period);
  const reach = wide.turns * halfWidth;
  const few = laidOut(photo, frame, { span, reach, step, across: Math.max(step, (2 * reach) / FEW) }, period);
  const shares = narrower.filter((share) => repeats(few, period, share * halfWidth));
  const hardly = samplesOf(few);
  if (shares.length === 0) return { guess, laid: few, shares, samples: hardly };
  const laid = laidOut(photo, frame, { span, reach: 1.6 * halfWidth + 0.9 * period, step }, period);
  return { guess, laid, shares, samples: hardly + samplesOf(laid) };
}

const samplesOf = ({ strip: { rows, columns } }: Laid): number => rows * columns;

/** So many lines tell what does not repeat, at a likeness a little below the one that is asked for. */
const FEW = 32;
const HARDLY = 0.05;

function repeats({ strip, signal }: Laid, period: number, halfWidth: number): boolean {
  const rows = rowsBetween(strip, -wide.turns * halfWidth, wide.turns * halfWidth);
  const region = threadedRegion(strip, signal, period, rows);
  return region !== null && longEnough(region, period) && region.similarity >= wide.leastSimilar - HARDLY;
}

const longEnough = ({ from, to }: ThreadedRegion, period: number): boolean => to - from >= 1.8 * period;

/** The thread that a guess points at if it is only `share` as wide. Null where nothing repeats, or no crest line ends it on a side. */
export function firstTraced({ guess, laid }: FirstLook, share: number): TracedThread | null {
  const at = { ...guess, halfWidth: share * guess.halfWidth };
  if (!possible(at)) return null;
  return tracedOnce(narrowed(laid.strip, laid.signal, 1.6 * at.halfWidth + 0.9 * at.period), at, wide);
}

/**
 * The same traced roughly, in up to two rounds more, each of which lays the strip along the axis the last one found, looks
 * where it repeats, and refines period, width and axis.
 */
export const roughlyTraced = (photo: Photo, first: TracedThread): TracedThread | null =>
  followed(photo, first, 2, 8, coarse);

/** A thread traced roughly, traced at full size. */
export const finelyTraced = (photo: Photo, rough: TracedThread): TracedThread | null =>
  followed(photo, rough, 3, 1, (period) => Math.max(1, period / 26));

/** Up to so many rounds more, until what the last one moved is at most `rest` times what counts as rest. */
function followed(
  photo: Photo,
  from: TracedThread,
  rounds: number,
  rest: number,
  stepOf: (period: number) => number,
): TracedThread | null {
  let traced: TracedThread | null = from;
  let last: ThreadGuess | null = null;
  for (let round = 0; traced && round < rounds; round++) {
    if (last && moved(traced, last) < rest) return traced;
    const { lines, region, period, strip } = traced;
    const middle = (region.from + region.to) / 2;
    const at: ThreadGuess = {
      frame: movedFrame(strip.frame, middle, (lines.right - lines.left) / 2, lines.slope),
      period,
      halfWidth: (lines.left + lines.right) / 2,
      halfLength: (region.to - region.from) / 2,
    };
    if (!possible(at)) return null;
    const span = spanOf(photo, at.halfLength + 2.2 * period);
    traced = tracedOnce(
      laidOut(photo, at.frame, { span, reach: 1.3 * at.halfWidth + 0.9 * period, step: stepOf(period) }, period),
      at,
      narrow,
    );
    last = at;
  }
  return traced;
}

/** How far a round took width, axis and middle from where it began, as a multiple of what counts as rest. */
function moved({ lines, region, period }: TracedThread, from: ThreadGuess): number {
  const halfWidth = (lines.left + lines.right) / 2;
  return Math.max(
    Math.abs(halfWidth / from.halfWidth - 1) / 0.004,
    Math.abs(lines.slope) / 0.002,
    Math.abs(region.from + region.to) / (0.6 * period),
    Math.abs(lines.right - lines.left) / (0.02 * halfWidth),
  );
}

const coarse = (period: number): number => Math.max(1.4, period / 11);
const spanOf = ({ width, height }: Photo, span: number): number => Math.min(span, Math.hypot(width, height));

function laidOut(photo: Photo, frame: Frame, laying: Laying, period: number): Laid {
  const strip = straightened(photo, frame, laying);
  return { strip, signal: strip.raw.map((plane) => repeating(strip, plane, period)) };
}

/** A thread whose pitch is a smaller or greater share of its diameter than this is none that is looked for. */
export const plausiblePeriod = (period: number, width: number): boolean =>
  period / width > 0.02 && period / width < 0.45;

const possible = ({ period, halfWidth }: ThreadGuess): boolean =>
  plausiblePeriod(period, 2 * halfWidth) && period >= 3.5;

/** Where the rim is looked for, as shares of the half width that was guessed, how like each other turns must be, and how far the axis may be off. */
type Searched = {
  readonly turns: number;
  readonly nearest: number;
  readonly farthest: number;
  readonly leastSimilar: number;
  readonly slope: number;
};

/** At a first look the width is hardly known; and turns less like each other than that never came to a reading. */
const wide: Searched = { turns: 1.25, nearest: 0.5, farthest: 1.6, leastSimilar: 0.55, slope: 0.08 };
const narrow: Searched = { turns: 1.08, nearest: 0.75, farthest: 1.22, leastSimilar: 0, slope: 0.03 };

function tracedOnce({ strip, signal }: Laid, guess: ThreadGuess, searched: Searched): TracedThread | null {
  const { period, halfWidth } = guess;
  const region = threadedRegion(
    strip,
    signal,
    period,
    rowsBetween(strip, -searched.turns * halfWidth, searched.turns * halfWidth),
  );
  if (!region || !longEnough(region, period) || region.similarity < searched.leastSimilar) return null;
  const refined = coarsePeriod(strip, signal, period, [region.from, region.to], 1.08 * halfWidth);
  const again = Math.abs(refined / period - 1) > 0.02;
  const repeats = again ? strip.raw.map((plane) => repeating(strip, plane, refined)) : signal;
  const farthest = Math.min(-strip.x0 - 0.35 * period, searched.farthest * halfWidth + 0.35 * period);
  const bare = ([-1, 1] as const).map((side) =>
    searched === narrow
      ? bareRim(strip, repeats, side, halfWidth, refined, region)
      : ([region.from, region.to] as const),
  );
  const segments = segmentsAlong(strip, repeats, refined, region, [searched.nearest * halfWidth, farthest]).map(
    (it) => ({
      ...it,
      edges: it.edges.filter(({ side, s }) => within(bare[side < 0 ? 0 : 1], s)),
    }),
  );
  const found = straightRun(segments, region, refined, searched.slope);
  if (!found) return null;
  const { edges, lines } = found;
  if (lines.left + lines.right <= 0 || !plausiblePeriod(refined, lines.left + lines.right)) return null;
  const edged = Math.min(...[-1, 1].map((it) => edges.filter(({ side }) => side === it).length)) / found.segments;
  return { strip, signal: repeats, region: { ...region, ...found.span }, period: refined, edges, edged, lines };
}

const within = (span: readonly [number, number] | undefined, s: number): boolean =>
  span !== undefined && s >= span[0] && s <= span[1];

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
  const segments = Array.from({ length: count }, (_, i) => {
    const start = from + (i * length) / 2;
    return { from: start, to: start + length };
  });
  return amplitudes(strip, signal, period, segments).map((rows, i) => ({
    ...(segments[i] as (typeof segments)[number]),
    edges: crestEdges(strip, rows, period, range),
  }));
}

/**
 * The crest lines of a region; where its edges do not lie on lines, those of the longest run of segments whose do: a
 * finger or a washer hides the crests of some turns, and the turns are seen all the same.
 */
function straightRun(segments: readonly Segment[], region: ThreadedRegion, period: number, slopePrior: number) {
  const tolerance = 0.04 * period + 0.3;
  let best: (Run & { readonly score: number }) | null = null;
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
        slopePrior,
      );
      const score = Math.log(Math.max(tolerance, lines.scatter) / tolerance) - 0.9 * Math.log((to - from) / period);
      if (!best || score < best.score) best = { span: { from, to }, segments: length, edges, lines, score };
      if (whole && lines.scatter < tolerance) return best;
    }
  return best;
}

type Run = {
  readonly span: { readonly from: number; readonly to: number };
  readonly segments: number;
  readonly edges: readonly CrestEdge[];
  readonly lines: CrestLines;
};
