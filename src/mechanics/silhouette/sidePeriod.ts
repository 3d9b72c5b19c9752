import { type Complex, hannReference, lockedInEach, type Reference, wrapped } from "./lockIn.ts";
import { robustLine } from "./robust.ts";
import { rowsBetween, type Strip } from "./strip.ts";

/** How the crests follow each other along one side: their period, and how sure. */
export type SidePeriod = {
  readonly period: number;
  /** Standard error of the period, pixels, from how the phase scatters. */
  readonly error: number;
  /** Root mean square of the phase about its line, turns. */
  readonly rms: number;
};

/**
 * The period of the outer band of a side from all its rows and colours at once: how the phase of each moves against that
 * of the whole region. It does not matter what makes the band repeat, outline, light or shade; where a crest lies it does
 * not say. `signal` are the three colours after `repeating`.
 */
export function sidePeriod(
  strip: Strip,
  signal: readonly Float32Array[],
  side: -1 | 1,
  edge: number,
  period: number,
  [from, to]: readonly [number, number],
): SidePeriod | null {
  const windows = windowsAlong(strip, period, [from, to]);
  const [first, last] = sideRows(strip, side, edge - 0.42 * period, edge + 0.05 * period);
  const references = windows.map(({ reference }) => reference);
  const [re, im] = [new Float64Array(windows.length), new Float64Array(windows.length)];
  const sums: Sums = { re: new Float64Array(windows.length), im: new Float64Array(windows.length) };
  for (const plane of signal)
    for (let row = first; row <= last; row++) {
      lockedInEach(plane, row * strip.columns, references, re, im);
      addAgainstAll(sums, re, im);
    }
  const seen = windows.map(({ s }, i): PhaseAt => ({ s, value: [sums.re[i] as number, sums.im[i] as number] }));
  return followed(seen, period, to - from);
}

type Sums = { readonly re: Float64Array; readonly im: Float64Array };

/** Adds the phases of a row's windows, each against that of all of them. */
function addAgainstAll(sums: Sums, re: Float64Array, im: Float64Array): void {
  let a = 0;
  let b = 0;
  for (let i = 0; i < re.length; i++) {
    a += re[i] as number;
    b += im[i] as number;
  }
  for (let i = 0; i < re.length; i++) {
    const c = re[i] as number;
    const d = im[i] as number;
    sums.re[i] = (sums.re[i] as number) + c * a + d * b;
    sums.im[i] = (sums.im[i] as number) + d * a - c * b;
  }
}

type PhaseAt = { readonly s: number; readonly value: Complex };

/** Windows of two periods, a quarter of a period apart. */
function windowsAlong(strip: Strip, period: number, [from, to]: readonly [number, number]) {
  const length = windowLength(period, to - from);
  const windows: { readonly s: number; readonly reference: Reference }[] = [];
  for (let s = from; s + length <= to; s += period / 4)
    windows.push({ s: s + length / 2, reference: hannReference(strip, period, s, s + length) });
  return windows;
}

const windowLength = (period: number, room: number): number => Math.min(2 * period, room * 0.6);

function followed(seen: readonly PhaseAt[], period: number, room: number): SidePeriod | null {
  if (seen.length < 3) return null;
  const phases: number[] = [];
  for (const {
    value: [re, im],
  } of seen) {
    const turns = Math.atan2(im, re) / (2 * Math.PI);
    const before = phases.at(-1);
    phases.push(before === undefined ? turns : before + wrapped(turns - before));
  }
  const { slope, rms, slopeError } = robustLine(
    seen.map(({ s }) => s),
    phases,
    seen.map(({ value: [re, im] }) => Math.hypot(re, im)),
  );
  const found = 1 / (1 / period + slope);
  // Windows overlap: as many of them are independent as fit side by side.
  const independent = Math.max(1, room / windowLength(period, room));
  const error = slopeError * found * found * Math.sqrt(1 / independent);
  return { period: found, error, rms };
}

function sideRows(strip: Strip, side: -1 | 1, near: number, far: number): readonly [number, number] {
  return side > 0 ? rowsBetween(strip, near, far) : rowsBetween(strip, -far, -near);
}
