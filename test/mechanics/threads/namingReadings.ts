import { normal } from "../../../src/mechanics/quantity/distribution.ts";
import { normalQuantile } from "../../../src/mechanics/quantity/normal.ts";
import { exact, type Quantity, reading } from "../../../src/mechanics/quantity/quantity.ts";
import type { Random } from "../../../src/mechanics/quantity/random.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import type { CandidateThread } from "../../../src/mechanics/threads/namingCandidates.ts";
import {
  GREATEST_WEAR_mm,
  namingJudgement,
  readingUncertainty_mm,
  type ThreadEvidence,
} from "../../../src/mechanics/threads/namingEvidence.ts";

/** A reading of x mm with standard uncertainty u mm. */
export const read = (x_mm: number, u_mm: number): Quantity => reading("x", normal(x_mm, u_mm), mm, "test", "test");

export const outside = (x_mm: number, u_mm = 0.05, wear_mm = GREATEST_WEAR_mm): ThreadEvidence => ({
  type: "outside diameter",
  diameter: read(x_mm, u_mm),
  wearUpTo: exact("w", wear_mm, mm),
});

export const gaps = (count: number, length_mm: number): ThreadEvidence => ({
  type: "gaps",
  count,
  length: read(length_mm, readingUncertainty_mm["rule, any length"]),
});

export const taper = (change_mm: number, over_mm: number): ThreadEvidence => ({
  type: "taper",
  change: read(change_mm, 0.07),
  over: exact("l", over_mm, mm),
});

/** An outside diameter as a caliper would read it on some plug of that thread. */
export function simulatedOutside(thread: CandidateThread, random: Random): ThreadEvidence {
  const [low, high] = thread.outside_mm;
  const sound = low + random() * (high - low) - (1 - Math.sqrt(random())) * GREATEST_WEAR_mm;
  const u_mm = readingUncertainty_mm["caliper, clean"];
  return outside(sound + noise(random, Math.hypot(u_mm, namingJudgement.outOfLimits_mm)), u_mm);
}

/** So many gaps as a rule would read them on some plug of that thread. */
export function simulatedGaps(thread: CandidateThread, count: number, random: Random): ThreadEvidence {
  const u_mm = Math.hypot(readingUncertainty_mm["rule, any length"], namingJudgement.alongThread_mm);
  return gaps(count, count * thread.P_mm + noise(random, u_mm));
}

/** A change of diameter over 10 mm as a caliper would read it. */
export const simulatedTaper = (thread: CandidateThread, random: Random): ThreadEvidence =>
  taper(10 * thread.taper + noise(random, Math.hypot(0.07, namingJudgement.alongThread_mm)), 10);

/** One of the threads, as often as its weight says. */
export function drawn(threads: readonly CandidateThread[], random: Random): CandidateThread {
  let left = random() * threads.reduce((sum, { weight }) => sum + weight, 0);
  for (const thread of threads) {
    left -= thread.weight;
    if (left <= 0) return thread;
  }
  throw new Error("no threads");
}

const noise = (random: Random, u_mm: number): number => u_mm * normalQuantile(random());
