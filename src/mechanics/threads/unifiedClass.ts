import type { UnifiedThread } from "./unifiedThread.ts";

/** Classes of fit of an external and of an internal unified thread. ASME B1.1-2003, 4. */
export const unifiedPlugClasses = ["1A", "2A", "3A"] as const;
export const unifiedHoleClasses = ["1B", "2B", "3B"] as const;
export type UnifiedPlugClass = (typeof unifiedPlugClasses)[number];
export type UnifiedHoleClass = (typeof unifiedHoleClasses)[number];

export type UnifiedClassRead<Class extends string> =
  | { readonly ok: true; readonly toleranceClass: Class }
  | { readonly ok: false; readonly problem: UnifiedClassProblem<Class> };

/** Why a text is no class of that thread, with all that would be one. */
export type UnifiedClassProblem<Class extends string> = {
  readonly type: "not a class of this thread";
  readonly given: string;
  readonly accepted: readonly Class[];
};

/** The class of a plug of `thread` that `text` names. */
export const unifiedPlugClassFromText = (thread: UnifiedThread, text: string): UnifiedClassRead<UnifiedPlugClass> =>
  classFrom(text, hasLooseClass(thread) ? unifiedPlugClasses : ["2A", "3A"]);

/** The class of a hole of `thread` that `text` names. */
export const unifiedHoleClassFromText = (thread: UnifiedThread, text: string): UnifiedClassRead<UnifiedHoleClass> =>
  classFrom(text, hasLooseClass(thread) ? unifiedHoleClasses : ["2B", "3B"]);

/** Classes 1A and 1B are given for coarse and fine threads from 1/4 inch on only (from memory of the same tables). */
const hasLooseClass = ({ series, d }: UnifiedThread): boolean =>
  (series === "UNC" || series === "UNF") && d.value > 0.249 * 0.0254;

function classFrom<Class extends string>(given: string, accepted: readonly Class[]): UnifiedClassRead<Class> {
  const toleranceClass = accepted.find((it) => it === given.trim().toUpperCase());
  return toleranceClass === undefined
    ? { ok: false, problem: { type: "not a class of this thread", given, accepted } }
    : { ok: true, toleranceClass };
}
