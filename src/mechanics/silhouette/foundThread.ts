import { periodsAlong } from "./axisPeriods.ts";
import { type Standing, standingOut } from "./foreground.ts";
import type { Point, ThreadGuess } from "./frame.ts";
import { linesAround } from "./lockInMap.ts";
import type { Photo } from "./photo.ts";
import { readingReasons } from "./readingVerdict.ts";
import { halved } from "./shrinking.ts";
import { type ThreadReading, threadReading } from "./threadReading.ts";
import { linedPlaces } from "./tiles.ts";
import { plausiblePeriod, tracedThread } from "./tracedThread.ts";

/** A line that somebody drew along the thread, in pixels of the photo. */
export type DrawnLine = readonly [Point, Point];

/** The clearest thread of a photo; null where none is found. Looks for it at `SEARCHED` pixels, reads it as it is. */
export function foundThread(photo: Photo): ThreadReading | null {
  const small = photo.shrunk(SEARCHED);
  const search = searching(photo);
  for (const planes of [small, halved(small)])
    for (const place of linedPlaces(planes)) if (search.enough(linesAround(planes, place))) return search.best();
  for (const it of standingOut(halved(small)))
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
  const halves = [0.22, 0.36, 0.6].map((share) => share * length);
  const search = searching(photo);
  for (const guess of periodsAlong(photo, frame, length / 2, 0.6 * length, halves).slice(0, 16))
    if (search.enough(guess)) break;
  return search.best();
}

/** A short thread under a wide flange lies across what stands out. */
const acrossIt = ({ frame, halfLength, halfWidth }: Standing): Standing => ({
  frame: { ...frame, ux: -frame.uy, uy: frame.ux },
  halfLength: halfWidth,
  halfWidth: halfLength,
});

/** Long side of the picture that a thread is looked for in, pixels. */
const SEARCHED = 800;
const MOST_GUESSES = 8;
/** A reading this clear needs no other beside it; one below the lesser figure may be half of the true period. */
const CLEAR = 2.6;
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

/** Reads guess after guess and keeps the clearest. */
function searching(photo: Photo) {
  let best: ThreadReading | null = null;
  const tried: ThreadGuess[] = [];
  const read = (guess: ThreadGuess): ThreadReading | null => {
    if (tried.some((it) => alike(it, guess))) return null;
    tried.push(guess);
    const reading = narrower.reduce<ThreadReading | null>((found, share) => {
      if (found) return found;
      const traced = tracedThread(photo, { ...guess, halfWidth: share * guess.halfWidth });
      return traced && threadReading(traced);
    }, null);
    if (reading && (!best || clarity(reading) > clarity(best))) best = reading;
    return reading;
  };
  return {
    best: (): ThreadReading | null => best,
    /** True once a reading is clear enough. */
    enough: (guess: ThreadGuess | null): boolean => {
      if (!guess || !plausiblePeriod(guess.period, 2 * guess.halfWidth)) return false;
      const reading = read(guess);
      // Clean silhouettes show the second harmonic more clearly than the first.
      if (!reading || clarity(reading) < DOUBTFUL || (reading.halfPhaseOff ?? 0) > 0.25)
        read({ ...guess, period: 2 * guess.period });
      return best !== null && clarity(best) > CLEAR;
    },
  };
}

function alike(a: ThreadGuess, b: ThreadGuess): boolean {
  const near = Math.hypot(a.frame.x - b.frame.x, a.frame.y - b.frame.y) < 2 * Math.min(a.period, b.period);
  const turned = Math.abs(a.frame.ux * b.frame.uy - a.frame.uy * b.frame.ux);
  const same = (x: number, y: number): boolean => Math.abs(x / y - 1) < 0.05;
  return near && turned < 0.05 && same(a.period, b.period) && Math.abs(a.halfWidth / b.halfWidth - 1) < 0.25;
}
