import { periodsAlong } from "./axisPeriods.ts";
import { type Standing, standingOut } from "./foreground.ts";
import { type Point, pointAt, type ThreadGuess } from "./frame.ts";
import { linesAround } from "./lockInMap.ts";
import type { Photo } from "./photo.ts";
import { readingReasons } from "./readingVerdict.ts";
import { halved } from "./shrinking.ts";
import { type ThreadReading, threadReading } from "./threadReading.ts";
import { linedPlaces } from "./tiles.ts";
import {
  finelyTraced,
  firstLook,
  firstTraced,
  plausiblePeriod,
  roughlyTraced,
  type TracedThread,
} from "./tracedThread.ts";

/** A line that somebody drew along the thread, in pixels of the photo. */
export type DrawnLine = readonly [Point, Point];

/** The clearest thread of a photo; null where none is found. Looks for it at `SEARCHED` pixels, reads it as it is. */
export function foundThread(photo: Photo): ThreadReading | null {
  const small = photo.shrunk(SEARCHED);
  const smaller = halved(small);
  const search = searching(photo);
  for (const planes of [small, smaller]) {
    let tried = 0;
    for (const place of linedPlaces(planes)) {
      const guess = linesAround(planes, place);
      if (!guess || guess.halfLength < LEAST_LINES * guess.period) continue;
      if (search.enough(guess)) return search.best();
      if (++tried === MOST_PLACES) break;
    }
  }
  if (search.fair()) return search.best();
  for (const it of unlikeEachOther(standingOut(smaller)))
    for (const { frame, halfLength, halfWidth } of [it, acrossIt(it)]) {
      const guesses = periodsAlong(photo, frame, halfLength, halfWidth, [0.6 * halfWidth, halfWidth]);
      for (const guess of guesses.slice(0, MOST_GUESSES)) if (search.enough(guess)) return search.best();
    }
  return search.best();
}

/** The clearest thread along a line that was drawn; null where none is found. */
export function threadAlong(photo: Photo, [a, b]: DrawnLine): ThreadReading | null {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < 20) return null;
  const frame = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, ux: (b.x - a.x) / length, uy: (b.y - a.y) / length };
  const halves = [0.22, 0.36, 0.6, 1].map((share) => share * length);
  const guesses = periodsAlong(photo, frame, length / 2, 0.6 * length, halves);
  const stubby = (it: ThreadGuess): boolean => it.halfWidth > 0.8 * length;
  const search = searching(photo);
  const likely = guesses.filter((it) => !stubby(it)).slice(0, 16);
  for (const [i, guess] of likely.entries())
    if (search.enough(guess) || (i >= CLEAREST && search.fair(i < FIRST_GUESSES))) return search.best();
  // Few turns of a wide thread: the line is shorter than the thread is wide.
  for (const guess of guesses.filter(stubby).slice(0, MOST_GUESSES)) if (search.enough(guess)) break;
  return search.best();
}

/** A short thread under a wide flange lies across what stands out. */
const acrossIt = ({ frame, halfLength, halfWidth }: Standing): Standing => ({
  frame: { ...frame, ux: -frame.uy, uy: frame.ux },
  halfLength: halfWidth,
  halfWidth: halfLength,
});

/** Without what stands out at the lower threshold as it does at the upper one. */
function unlikeEachOther(all: readonly Standing[]): readonly Standing[] {
  return all.filter((it, i) => !all.slice(0, i).some((other) => sameStanding(it, other)));
}

function sameStanding(a: Standing, b: Standing): boolean {
  const apart = Math.hypot(a.frame.x - b.frame.x, a.frame.y - b.frame.y);
  const turned = Math.abs(a.frame.ux * b.frame.uy - a.frame.uy * b.frame.ux);
  const like = (x: number, y: number): boolean => Math.abs(x / y - 1) < 0.12;
  const sized = like(a.halfLength, b.halfLength) && like(a.halfWidth, b.halfWidth);
  return sized && turned < 0.04 && apart < 0.15 * b.halfWidth;
}

/** Long side of the picture that a thread is looked for in, pixels. */
const SEARCHED = 800;
const MOST_PLACES = 5;
const MOST_GUESSES = 6;
/** Along a drawn line the clearest period comes first, then two more, each with three widths. */
const CLEAREST = 2;
const FIRST_GUESSES = 8;
/** A single edge answers as a wave over fewer than twice as many periods. */
const LEAST_LINES = 1.6;
/** A reading this clear needs no other beside it; one below the lesser figure may be half of the true period. */
const CLEAR = 2.6;
/** One that is answered and this clear is seldom bettered by a look at what merely stands out. */
const FAIR = 2;
const DOUBTFUL = 0.6;

/** A head or a finger beside the thread makes a guess too wide. */
const narrower = [1, 0.65, 0.43] as const;

/** How clear a reading is, for choosing between readings of one photo: likeness of its turns, less what speaks against it. */
function clarity(it: ThreadReading): number {
  const turns = Math.min(1, it.turns / 5);
  return (
    3.4 * it.similarity * turns * (1 - 0.6 * Math.max(0, (it.halfPhaseOff ?? 0) - 0.1)) -
    0.6 * readingReasons(it).length
  );
}

/**
 * Reads guess after guess roughly; what seems clear is read at full size at once, and of the rest the clearest few in the
 * end.
 */
function searching(photo: Photo) {
  const tried: ThreadGuess[] = [];
  const seen: TracedThread[] = [];
  const rough: Rough[] = [];
  let sampled = 0;
  let best: ThreadReading | null = null;
  const look = (guess: ThreadGuess): Rough | null => {
    if (tried.some((it) => alike(it, guess))) return null;
    tried.push(guess);
    const first = firstLook(photo, guess, narrower);
    if (!first) return null;
    sampled += first.samples;
    for (const share of first.shares) {
      const begun = firstTraced(first, share);
      if (!begun) continue;
      if (seen.some((it) => sameTrace(begun, it, 0.06))) return null;
      seen.push(begun);
      const traced = roughlyTraced(photo, begun);
      const reading = traced && threadReading(traced);
      if (reading) return { traced, reading, clearness: clarity(reading) };
    }
    return null;
  };
  const read = ({ traced }: Rough): void => {
    const fine = finelyTraced(photo, traced);
    const reading = fine && threadReading(fine);
    if (reading && (!best || clarity(reading) > clarity(best))) best = reading;
  };
  const clear = (least: number): boolean => best !== null && clarity(best) > least;
  return {
    /** The clearest reading of all. */
    best: (): ThreadReading | null => {
      rough.sort((a, b) => b.clearness - a.clearness);
      const waiting: Rough[] = [];
      for (const it of rough)
        if (waiting.length < MOST_READ && !waiting.some((other) => sameTrace(it.traced, other.traced, 0.02)))
          waiting.push(it);
      for (const it of waiting) if (!clear(CLEAR) && !clear(it.clearness + MOST_GAINED)) read(it);
      return best;
    },
    /** True once something is answered; with `outlined`, by an outline, which tells a period from half of it. */
    fair: (outlined = false): boolean =>
      rough.some(
        ({ reading, clearness }) =>
          readingReasons(reading).length <= 1 && clearness > FAIR && !(outlined && reading.halfPhaseOff === null),
      ),
    /** True once a reading is clear enough, or as much was looked at as may be. */
    enough: (guess: ThreadGuess | null): boolean => {
      if (!guess || !plausiblePeriod(guess.period, 2 * guess.halfWidth)) return false;
      const once = look(guess);
      // Clean silhouettes show the second harmonic more clearly than the first.
      const twice =
        !once || once.clearness < DOUBTFUL || (once.reading.halfPhaseOff ?? 0) > 0.25
          ? look({ ...guess, period: 2 * guess.period })
          : null;
      for (const it of [once, twice]) {
        if (!it) continue;
        if (it.clearness > CLEAR) read(it);
        else rough.push(it);
      }
      return clear(CLEAR) || sampled > MOST_SAMPLED;
    },
  };
}

type Rough = { readonly traced: TracedThread; readonly reading: ThreadReading; readonly clearness: number };

/** How many rough readings are read at full size where none is clear, and by how much one may come out clearer than it went in. */
const MOST_READ = 3;
const MOST_GAINED = 1.3;

/**
 * How many samples first looks may take, so that a photo without a thread takes no longer than one with: two fifths of a
 * photo of 1600 x 1200. What is found is found within far fewer.
 */
const MOST_SAMPLED = 750_000;

/** The same lines, found from two guesses; their widths and periods within a share of `unlike`. */
function sameTrace(a: TracedThread, b: TracedThread, unlike: number): boolean {
  const [here, there] = [a, b].map(({ strip, region, lines }) => {
    const s = (region.from + region.to) / 2;
    return pointAt(strip.frame, s, (lines.right - lines.left) / 2);
  }) as [Point, Point];
  const near = Math.hypot(here.x - there.x, here.y - there.y) < 25 * unlike * a.period;
  const like = (x: number, y: number): boolean => Math.abs(x / y - 1) < unlike;
  const across = like(a.lines.left + a.lines.right, b.lines.left + b.lines.right);
  return near && across && like(a.period, b.period);
}

function alike(a: ThreadGuess, b: ThreadGuess): boolean {
  const near = Math.hypot(a.frame.x - b.frame.x, a.frame.y - b.frame.y) < 2 * Math.min(a.period, b.period);
  const turned = Math.abs(a.frame.ux * b.frame.uy - a.frame.uy * b.frame.ux);
  const same = (x: number, y: number): boolean => Math.abs(x / y - 1) < 0.05;
  return near && turned < 0.05 && same(a.period, b.period) && Math.abs(a.halfWidth / b.halfWidth - 1) < 0.25;
}
