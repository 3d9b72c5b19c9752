import type { ThreadReading } from "./threadReading.ts";

/** What speaks against a reading. */
export type PhotoReason =
  | "thread small in the picture"
  | "few turns"
  | "sides differ"
  | "sides out of step"
  | "crests unsteady"
  | "edge unsteady"
  | "rim covered"
  | "edge faint"
  | "edge blurred"
  | "edge doubtful"
  | "outline not seen"
  | "thread seen shallow"
  | "not side-on"
  | "hardly repeats"
  | "finer than any thread";

/**
 * Good: nothing speaks against it and its pitch is uncertain by less than 2 %. Fair: one thing does, beside what covers it, or it is
 * uncertain by less than 5 %. Neither: take another photo.
 */
export type PhotoGrade = "good" | "fair" | "again";

/** Everything that speaks against a reading, in the order in which it would be put right. */
export function readingReasons(it: ThreadReading): readonly PhotoReason[] {
  const checks: readonly (readonly [PhotoReason, boolean])[] = [
    ["thread small in the picture", it.period_px < 9],
    ["few turns", it.turns < 2.6],
    ["not side-on", seenObliquely(it)],
    ["thread seen shallow", it.depth !== null && it.depth < 0.38],
    ["sides differ", it.sidesDiffer > 0.03],
    ["sides out of step", outOfStep(it, 0.2)],
    ["crests unsteady", it.phaseRms > 0.07],
    ["edge unsteady", it.edgeScatter_px > 0.12 * it.period_px + 0.5],
    ["rim covered", it.edged < LEAST_EDGED],
    ["edge faint", it.edgeOverNoise < 6],
    ["edge blurred", it.soft > 0.33],
    ["edge doubtful", it.gap > 0.3 && it.soft > 0.2],
    ["outline not seen", it.halfPhaseOff === null],
    ["hardly repeats", it.similarity < 0.58],
    ["finer than any thread", it.period_px / it.width_px < 0.045],
  ];
  return checks.flatMap(([reason, speaks]) => (speaks ? [reason] : []));
}

/** A crest line along which most crests are covered may be that of the finger. */
const LEAST_EDGED = 0.55;

/** The grade of a reading whose pitch has that relative standard uncertainty. */
export function readingGrade(it: ThreadReading, reasons: readonly PhotoReason[], uncertainty: number): PhotoGrade {
  const inStep = !outOfStep(it, 0.15);
  if (reasons.length === 0 && inStep && uncertainty < 0.02) return "good";
  const alike = it.sidesDiffer < MOST_DIFFERENT;
  // What covers a rim also puts it out of step: that counts once, as long as an outline is seen.
  const counted = reasons.filter((reason) => reason !== "rim covered" || reasons.includes("outline not seen"));
  return counted.length <= 1 && alike && uncertainty < 0.05 ? "fair" : "again";
}

/** Sides that differ by more are not both of the thread, whatever else is in order. */
const MOST_DIFFERENT = 0.08;

/** A side whose outline hardly swings has crests that say nothing. */
const outOfStep = ({ halfPhaseOff, swing }: ThreadReading, most: number): boolean =>
  halfPhaseOff !== null && halfPhaseOff > most && swing !== null && swing > 0.05;

/** Beyond 15 degrees the foreshortening cannot be made good. */
const MOST_OBLIQUE = Math.sin((15 * Math.PI) / 180);

const seenObliquely = (it: ThreadReading): boolean =>
  it.helixFit > 0.94 && Math.abs(it.lead) > 0.6 && Math.abs(it.lead) < 1.6 && Math.abs(it.oblique) > MOST_OBLIQUE;
