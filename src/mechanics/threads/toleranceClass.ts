import {
  type HoleDeviation,
  type HolePitchGrade,
  holeDeviations,
  type MajorGrade,
  type MinorGrade,
  type PlugDeviation,
  type PlugPitchGrade,
  plugDeviations,
} from "../tables/iso965.ts";

/** A tolerance class of an external metric thread, 6g or 5g6g. ISO 965-1:2013. */
export type PlugClass = {
  readonly designation: string;
  readonly pitch: { readonly grade: PlugPitchGrade; readonly deviation: PlugDeviation };
  readonly major: { readonly grade: MajorGrade; readonly deviation: PlugDeviation };
};

/** A tolerance class of an internal metric thread, 6H or 4H5H. ISO 965-1:2013. */
export type HoleClass = {
  readonly designation: string;
  readonly pitch: { readonly grade: HolePitchGrade; readonly deviation: HoleDeviation };
  readonly minor: { readonly grade: MinorGrade; readonly deviation: HoleDeviation };
};

export type ToleranceClassRead<Class> =
  | { readonly ok: true; readonly toleranceClass: Class }
  | { readonly ok: false; readonly problem: ToleranceClassProblem };

/** Why a text is not a tolerance class, with all that would be one. */
export type ToleranceClassProblem = { readonly given: string; readonly accepted: AcceptedClasses } & (
  | { readonly type: "not a tolerance class" }
  | { readonly type: "no such grade"; readonly of: "pitch diameter" | "crest diameter"; readonly grade: string }
  | { readonly type: "no such deviation"; readonly deviation: string }
);

/** The crest diameter is the major diameter of a plug and the minor diameter of a hole. */
export type AcceptedClasses = {
  readonly pitchGrades: readonly number[];
  readonly crestGrades: readonly number[];
  readonly deviations: readonly string[];
};

export const plugClasses: Accepted<PlugPitchGrade, MajorGrade, PlugDeviation> = {
  pitchGrades: [3, 4, 5, 6, 7, 8, 9],
  crestGrades: [4, 6, 8],
  deviations: plugDeviations,
};

export const holeClasses: Accepted<HolePitchGrade, MinorGrade, HoleDeviation> = {
  pitchGrades: [4, 5, 6, 7, 8],
  crestGrades: [4, 5, 6, 7, 8],
  deviations: holeDeviations,
};

/**
 * The class of a plug that `text` names: pitch diameter first, then major diameter; one of both where they are alike.
 * "5g" is none, because a major diameter has no grade 5.
 */
export function plugClassFromText(text: string): ToleranceClassRead<PlugClass> {
  const read = twoZones(text, plugClasses);
  if (!read.ok) return read;
  const { designation, pitch, crest } = read;
  return { ok: true, toleranceClass: { designation, pitch, major: crest } };
}

/** The class of a hole that `text` names: pitch diameter first, then minor diameter; one of both where alike. */
export function holeClassFromText(text: string): ToleranceClassRead<HoleClass> {
  const read = twoZones(text, holeClasses);
  if (!read.ok) return read;
  const { designation, pitch, crest } = read;
  return { ok: true, toleranceClass: { designation, pitch, minor: crest } };
}

type Accepted<PitchGrade extends number, CrestGrade extends number, Deviation extends string> = {
  readonly pitchGrades: readonly PitchGrade[];
  readonly crestGrades: readonly CrestGrade[];
  readonly deviations: readonly Deviation[];
};

/** Case tells a plug from a hole, so it is kept: "6h" is no class of a hole. */
function twoZones<P extends number, C extends number, D extends string>(given: string, accepted: Accepted<P, C, D>) {
  const written = /^(\d+)([A-Za-z]+)(?:(\d+)([A-Za-z]+))?$/.exec(given.replace(/\s/g, ""));
  if (!written) return refused({ type: "not a tolerance class", given, accepted });
  const [designation, pitchText = "", pitchLetter = "", crestText = pitchText, crestLetter = pitchLetter] = written;

  const pitchGrade = accepted.pitchGrades.find((grade) => `${grade}` === pitchText);
  if (pitchGrade === undefined)
    return refused({ type: "no such grade", of: "pitch diameter", grade: pitchText, given, accepted });
  const crestGrade = accepted.crestGrades.find((grade) => `${grade}` === crestText);
  if (crestGrade === undefined)
    return refused({ type: "no such grade", of: "crest diameter", grade: crestText, given, accepted });
  const pitchDeviation = accepted.deviations.find((letter) => letter === pitchLetter);
  if (pitchDeviation === undefined)
    return refused({ type: "no such deviation", deviation: pitchLetter, given, accepted });
  const crestDeviation = accepted.deviations.find((letter) => letter === crestLetter);
  if (crestDeviation === undefined)
    return refused({ type: "no such deviation", deviation: crestLetter, given, accepted });

  const pitch = { grade: pitchGrade, deviation: pitchDeviation };
  const crest = { grade: crestGrade, deviation: crestDeviation };
  return { ok: true, designation, pitch, crest } as const;
}

const refused = (problem: ToleranceClassProblem) => ({ ok: false, problem }) as const;
