import { normal } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { deg, mm, one } from "../quantity/unit.ts";
import type { ThreadEvidence } from "../threads/namingEvidence.ts";
import { outsideRead } from "../threads/namingReadings.ts";
import { type ThreadNaming, threadCandidates } from "../threads/threadName.ts";
import { LEAST_TAPER } from "./crestLines.ts";
import { type DrawnLine, foundThread, threadAlong } from "./foundThread.ts";
import type { Photo } from "./photo.ts";
import { obliquity, ratioUncertainty } from "./readingUncertainty.ts";
import { type PhotoGrade, type PhotoReason, readingGrade, readingReasons } from "./readingVerdict.ts";
import type { ThreadReading } from "./threadReading.ts";

/** What a photo of a plug says of its thread. */
export type PhotoAnswer = PhotoTold | PhotoAgain;

export type PhotoTold = {
  readonly verdict: "certain" | "likely";
  readonly grade: Exclude<PhotoGrade, "again">;
  /** P, with its standard uncertainty. */
  readonly pitch: Quantity;
  readonly evidence: readonly [ThreadEvidence, ThreadEvidence];
  readonly naming: ThreadNaming;
  /** What speaks against the reading all the same. */
  readonly reasons: readonly PhotoReason[];
  /** Null where the lines on the front do not say. */
  readonly hand: "right" | "left" | null;
  /** The crest lines are not parallel: a taper thread, or a part seen from its end. */
  readonly tapers: boolean;
  readonly reading: ThreadReading;
};

export type PhotoAgain = {
  readonly verdict: "again";
  readonly reasons: readonly (PhotoReason | "no thread seen" | "fits no thread")[];
  /** What was found but not believed; null where nothing was. */
  readonly reading: ThreadReading | null;
};

/** Where a person's reading of the diameter comes from, and what it was. */
export type CaliperReading = { readonly length: Quantity; readonly id: string };

/**
 * The thread of a part from one photo of it seen from the side and its outside diameter by caliper: the photo gives the
 * pitch as a share of the diameter, both at the rim of the part, so no scale is needed in the picture. `line` is one that
 * somebody drew along the thread, for a photo in which it is not found.
 */
export function threadFromPhoto(photo: Photo, outside: CaliperReading, line: DrawnLine | null = null): PhotoAnswer {
  const reading = line ? threadAlong(photo, line) : foundThread(photo);
  return reading ? photoAnswer(reading, outside) : { verdict: "again", reasons: ["no thread seen"], reading: null };
}

/** What a reading says of a thread of that diameter. */
function photoAnswer(reading: ThreadReading, outside: CaliperReading): PhotoAnswer {
  const reasons = readingReasons(reading);
  const spread = ratioUncertainty(reading);
  const grade = readingGrade(reading, reasons, spread);
  if (grade === "again")
    return { verdict: "again", reasons: reasons.length > 0 ? reasons : ["edge doubtful"], reading };
  const u = CALIBRATION * Math.hypot(grade === "fair" ? FAIR * spread : spread, LEAST_SPREAD);
  const diameter = outsideRead(outside, false, noWear);
  const pitch = pitchOf(reading, outside.length, u);
  const evidence = [diameter, { type: "pitch", pitch }] as const;
  const naming = threadCandidates(evidence);
  const sound = naming.candidates[0]?.pieces.every(({ explainedBy }) => explainedBy === "thread");
  if (!sound) return { verdict: "again", reasons: [...reasons, "fits no thread"], reading };
  const trusted = reading.helixFit > 0.88 && Math.abs(reading.lead) > 0.6 && Math.abs(reading.lead) < 1.6;
  const tapers = Math.abs(reading.taper) > LEAST_TAPER;
  return {
    verdict: grade === "good" && !tapers && leads(naming, valueIn(mm, pitch), u) ? "certain" : "likely",
    grade,
    pitch,
    evidence,
    naming,
    reasons,
    hand: trusted ? (reading.lead > 0 ? "right" : "left") : null,
    tapers,
    reading,
  };
}

/** On rendered photos the errors spread a little wider than their parts say, and never less than this. */
const CALIBRATION = 1.3;
const LEAST_SPREAD = 0.006;
/** A reading with something against it is trusted less. */
const FAIR = 1.5;
/** A lead in the logarithm of the likelihood below which a thread is not claimed, and how far off it may lie. */
const LEAST_LEAD = 2.5;
const MOST_OFF = 2.5;

const noWear = exact("w", 0.05, mm, "crests of a part whose diameter was taken over sound threads (judgement)");

const pitchFromPhoto = formula(
  "P = d * r / cos(beta)",
  { d: mm, r: one, beta: deg, P: mm },
  "similar triangles: crest spacing over width at the rim of the part, which stands at the angle beta (derived)",
);

function pitchOf(reading: ThreadReading, length: Quantity, u: number): Quantity {
  const ratio = reading.period_px / reading.width_px;
  const d = exact("d", valueIn(mm, length), mm, "outside diameter by caliper");
  const r = taken("r", normal(ratio, u * ratio), one, "crest spacing over width in the photo");
  const beta = exact(
    "beta",
    (Math.acos(obliquity(reading).cosine) * 180) / Math.PI,
    deg,
    "obliqueness seen in the photo",
  );
  return pitchFromPhoto({ d, r, beta });
}

/** Whether the first thread may be claimed: by its readings alone, however common or rare it and its rivals are. */
function leads({ candidates: [first, ...others] }: ThreadNaming, pitch_mm: number, u: number): boolean {
  if (!first) return false;
  const of = (it: typeof first): number => it.pieces.reduce((sum, { logLikelihood }) => sum + logLikelihood, 0);
  const next = Math.max(...others.map(of));
  const off = Math.abs(Math.log(pitch_mm / first.thread.P_mm));
  return of(first) - next > LEAST_LEAD && off < MOST_OFF * u;
}
