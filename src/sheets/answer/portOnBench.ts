import type { WrittenCase } from "../caseForm/caseSchema.ts";
import { withoutRingOfTaper } from "../caseForm/ringOfTaper.ts";
import { threadGiven } from "../caseForm/threadGiven.ts";
import type { InputProblem } from "../words/problemWords.ts";
import { ringOfTaperSentence } from "../words/taperWords.ts";
import { type BenchRead, foundOnBench } from "./benchFound.ts";

/** A port as it was read for the bench, with what stands there and was not counted. */
export type PortOnBench = BenchRead & {
  /** The case that was read. */
  readonly counted: WrittenCase;
  /** What was passed over, and why; null where nothing was. */
  readonly notCounted: string | null;
};

/**
 * Reads what the bench wrote down, whatever standard its thread is of, and weighs the port as found. A ring under a taper plug is
 * passed over and said: it stays there for a port that it can close, and a hand that names a thread need not clear another part first.
 */
export function portOnBench(
  written: WrittenCase,
  today: string,
): ({ readonly ok: true } & PortOnBench) | { readonly ok: false; readonly problems: readonly InputProblem[] } {
  const { counted, ring } = withoutRingOfTaper(written);
  const read = foundOnBench(counted, today, threadGiven);
  return read.ok ? { ...read, counted, notCounted: ring && ringOfTaperSentence(ring) } : read;
}
