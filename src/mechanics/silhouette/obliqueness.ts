import { type Complex, hannReference, lockedIn, type Reference } from "./lockIn.ts";
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
  const rows = Array.from(
    { length: Math.max(0, Math.floor((last - first) / stride) + 1) },
    (_, i) => first + i * stride,
  );
  const amplitudes = rows.map((row) => luminanceAt(strip, signal, row, reference));
  const sines = rows.map((row) => (strip.x0 + row * strip.across) / radius);
  // An amplitude counts up to three times the middle one, so that one bright line does not decide.
  const sizes = amplitudes.map(([re, im]) => Math.hypot(re, im));
  const most = 3 * (sizes.toSorted((a, b) => a - b)[sizes.length >> 1] ?? 0);
  const share = sizes.map((size) => (size > most ? most / size : 1));
  const seen: Seen = {
    theta: Float64Array.from(sines, Math.asin),
    cosine: Float64Array.from(sines, (sine) => Math.sqrt(1 - sine * sine)),
    re: Float64Array.from(amplitudes, ([re], i) => re * (share[i] as number)),
    im: Float64Array.from(amplitudes, ([, im], i) => im * (share[i] as number)),
  };
  const reach = Math.min(3, (0.45 * radius) / period);
  let best: Followed = { agreed: 0, lead: 0, bulge: 0 };
  best = bestFollowed(
    seen,
    best,
    spaced(-1.8, 1.8, 25),
    spaced(-reach, reach, Math.max(9, 2 * Math.round(reach / 0.12) + 1)),
  );
  for (const width of [0.15, 0.05])
    best = bestFollowed(
      seen,
      best,
      spaced(best.lead - width, best.lead + width, 7),
      spaced(best.bulge - width, best.bulge + width, 7),
    );
  const total = sizes.reduce((sum, it) => sum + Math.min(it, most), 0);
  return { fit: best.agreed / Math.max(total, 1e-9), lead: best.lead, sine: (best.bulge * period) / radius };
}

function luminanceAt({ columns }: Strip, signal: readonly Float32Array[], row: number, reference: Reference): Complex {
  let [re, im] = [0, 0];
  for (let c = 0; c < signal.length; c++) {
    const [a, b] = lockedIn(signal[c] as Float32Array, row * columns, reference);
    re += (LUMINANCE[c] as number) * a;
    im += (LUMINANCE[c] as number) * b;
  }
  return [re, im];
}

/** The shares of red, green and blue in it. */
const LUMINANCE = [0.3, 0.59, 0.11] as const;

/** Of every row, its angle round the part and the cosine of it, and its amplitude. */
type Seen = {
  readonly theta: Float64Array;
  readonly cosine: Float64Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
};

/** A line over the front, and how much of all amplitudes follows it. */
type Followed = { readonly agreed: number; readonly lead: number; readonly bulge: number };

/** The best followed of the lines with these leads and bulges, or `best` where none is followed better. */
function bestFollowed(seen: Seen, best: Followed, leads: readonly number[], bulges: readonly number[]): Followed {
  let found = best;
  const bent = bulges.map((bulge) => turningBy(2 * Math.PI * bulge, seen.cosine));
  for (const lead of leads) {
    const straight = turnedBack(seen, turningBy(lead, seen.theta));
    for (let i = 0; i < bulges.length; i++) {
      const all = agreed(straight, bent[i] as Turning);
      if (all > found.agreed) found = { agreed: all, lead, bulge: bulges[i] as number };
    }
  }
  return found;
}

/** The cosine and sine of every row's angle: they are asked for many thousand times. */
type Turning = { readonly cosine: Float64Array; readonly sine: Float64Array };

function turningBy(factor: number, values: Float64Array): Turning {
  const [cosine, sine] = [new Float64Array(values.length), new Float64Array(values.length)];
  for (let i = 0; i < values.length; i++) {
    const turn = factor * (values[i] as number);
    cosine[i] = Math.cos(turn);
    sine[i] = Math.sin(turn);
  }
  return { cosine, sine };
}

type Amplitudes = { readonly re: Float64Array; readonly im: Float64Array };

function turnedBack({ re, im }: Amplitudes, { cosine, sine }: Turning): Amplitudes {
  const back = { re: new Float64Array(re.length), im: new Float64Array(re.length) };
  for (let i = 0; i < re.length; i++) {
    const x = re[i] as number;
    const y = im[i] as number;
    const c = cosine[i] as number;
    const s = sine[i] as number;
    back.re[i] = x * c + y * s;
    back.im[i] = y * c - x * s;
  }
  return back;
}

/** The size of the sum of all amplitudes once they are turned back: all of it where they follow just that line. */
function agreed({ re, im }: Amplitudes, { cosine, sine }: Turning): number {
  let a = 0;
  let b = 0;
  for (let i = 0; i < re.length; i++) {
    const x = re[i] as number;
    const y = im[i] as number;
    const c = cosine[i] as number;
    const s = sine[i] as number;
    a += x * c + y * s;
    b += y * c - x * s;
  }
  return Math.sqrt(a * a + b * b);
}

const spaced = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
