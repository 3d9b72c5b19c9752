import { hannReference, lockedIn } from "./lockIn.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/** How the thread lines run over the front of the part. */
export type Obliqueness = {
  /** From 0 to 1: how much of the repeating signal follows the lines of a helix. */
  readonly fit: number;
  /** Turns of phase from the left rim to the right by half a turn of the part, doubled: -1 of a right-hand thread, 1 of a left-hand one. */
  readonly lead: number;
  /** The sine of the angle that the axis makes with the picture's plane. */
  readonly sine: number;
};

/**
 * The phase of every row across the part, x = R sin theta, held against lead * theta / 2 pi + bulge * cos theta: a helix seen
 * from the side, and the bulge of its lines where it is seen obliquely. `signal` are the three colours after `repeating`,
 * taken together as luminance.
 */
export function obliqueness(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  radius: number,
  [from, to]: readonly [number, number],
): Obliqueness {
  const reference = hannReference(strip, period, from, to);
  const [first, last] = rowsBetween(strip, -0.93 * radius, 0.93 * radius);
  const stride = Math.max(1, Math.floor((last - first) / 90));
  const seen: Seen[] = [];
  for (let row = first; row <= last; row += stride) {
    let [re, im] = [0, 0];
    signal.forEach((plane, c) => {
      const [a, b] = lockedIn(plane, row * strip.columns, reference);
      re += (LUMINANCE[c] as number) * a;
      im += (LUMINANCE[c] as number) * b;
    });
    const sine = (strip.x0 + row * strip.across) / radius;
    seen.push({ theta: Math.asin(sine), cosine: Math.sqrt(1 - sine * sine), re, im });
  }
  // An amplitude counts up to three times the middle one, so that one bright line does not decide.
  const sizes = seen.map(({ re, im }) => Math.hypot(re, im)).sort((a, b) => a - b);
  const most = 3 * (sizes[sizes.length >> 1] ?? 0);
  const total = sizes.reduce((sum, it) => sum + Math.min(it, most), 0);
  const even = seen.map((it) => {
    const size = Math.hypot(it.re, it.im);
    const share = size > most ? most / size : 1;
    return { ...it, re: it.re * share, im: it.im * share };
  });
  let best = { fit: 0, lead: 0, bulge: 0 };
  const reach = Math.min(3, (0.45 * radius) / period);
  const better = (leads: readonly number[], bulges: readonly number[]): void => {
    const bent = bulges.map((bulge) => turningBy(even, ({ cosine }) => 2 * Math.PI * bulge * cosine));
    for (const lead of leads) {
      const straight = turnedBack(
        even,
        turningBy(even, ({ theta }) => lead * theta),
      );
      bulges.forEach((bulge, i) => {
        const fit = agreed(straight, bent[i] as Turning) / Math.max(total, 1e-9);
        if (fit > best.fit) best = { fit, lead, bulge };
      });
    }
  };
  better(spaced(-1.8, 1.8, 25), spaced(-reach, reach, Math.max(9, 2 * Math.round(reach / 0.12) + 1)));
  for (const width of [0.15, 0.05])
    better(spaced(best.lead - width, best.lead + width, 7), spaced(best.bulge - width, best.bulge + width, 7));
  return { fit: best.fit, lead: best.lead, sine: (best.bulge * period) / radius };
}

/** The shares of red, green and blue in it. */
const LUMINANCE = [0.3, 0.59, 0.11] as const;

type Seen = { readonly theta: number; readonly cosine: number; readonly re: number; readonly im: number };

/** The cosine and sine of every row's angle: they are asked for many thousand times. */
type Turning = { readonly cosine: Float64Array; readonly sine: Float64Array };

function turningBy(seen: readonly Seen[], angle: (it: Seen) => number): Turning {
  const [cosine, sine] = [new Float64Array(seen.length), new Float64Array(seen.length)];
  seen.forEach((it, i) => {
    const turn = angle(it);
    cosine[i] = Math.cos(turn);
    sine[i] = Math.sin(turn);
  });
  return { cosine, sine };
}

type Amplitudes = { readonly re: Float64Array; readonly im: Float64Array };

function turnedBack(seen: readonly Seen[], { cosine, sine }: Turning): Amplitudes {
  const [re, im] = [new Float64Array(seen.length), new Float64Array(seen.length)];
  seen.forEach((it, i) => {
    const [c, s] = [cosine[i] as number, sine[i] as number];
    re[i] = it.re * c + it.im * s;
    im[i] = it.im * c - it.re * s;
  });
  return { re, im };
}

/** The size of the sum of all amplitudes once they are turned back: all of it where they follow just that line. */
function agreed({ re, im }: Amplitudes, { cosine, sine }: Turning): number {
  let [a, b] = [0, 0];
  for (let i = 0; i < re.length; i++) {
    const x = re[i] as number;
    const y = im[i] as number;
    const c = cosine[i] as number;
    const s = sine[i] as number;
    a += x * c + y * s;
    b += y * c - x * s;
  }
  return Math.hypot(a, b);
}

const spaced = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
