import { as } from "../quantity/quantity.ts";
import { type HoleLimits, limits, type PlugLimits } from "./metricLimits.ts";
import { type GPlugClass, gLimits, gPlugClasses } from "./pipeLimits.ts";
import { standardHole, standardPlug } from "./standardClasses.ts";
import { isTaper, type TaperThread, type Thread } from "./thread.ts";
import { holeClassFromText, plugClassFromText, type ToleranceClassProblem } from "./toleranceClass.ts";
import { unifiedHoleClassFromText, unifiedPlugClassFromText } from "./unifiedClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "./unifiedLimits.ts";
import type { UnifiedThread } from "./unifiedThread.ts";

/** Limits of size of a plug and a hole. */
export type ThreadLimits = PlugLimits & HoleLimits;

/** Tolerance classes as they are written, "6g" and "6H", "2A" and "2B", "A"; what nobody names is the standard's ordinary one. */
export type WrittenClasses = { readonly plug?: string | undefined; readonly hole?: string | undefined };

export type LimitsRead =
  | { readonly ok: true; readonly limits: ThreadLimits }
  | { readonly ok: false; readonly problems: readonly ClassProblem[] };

/** Why a text is no class of the plug or the hole of a thread, with what would be one; nothing where it has but one. */
export type ClassProblem = {
  readonly of: keyof WrittenClasses;
  readonly accepted: ToleranceClassProblem | readonly string[];
};

/** The limits of a thread by the classes that its standard has. `named` is the class in the name of a G thread. */
export function limitsOf(thread: Thread, classes: WrittenClasses, named: GPlugClass | null): LimitsRead {
  if (isTaper(thread)) return withoutClasses(classes, atTheGaugePlane(thread));
  switch (thread.type) {
    case "metric": {
      const plug = plugClassFromText(classes.plug ?? standardPlug.designation);
      const hole = holeClassFromText(classes.hole ?? standardHole.designation);
      if (plug.ok && hole.ok) return { ok: true, limits: limits(thread, plug.toleranceClass, hole.toleranceClass) };
      return refused(plug.ok ? null : plug.problem, hole.ok ? null : hole.problem);
    }
    case "unified": {
      const plug = unifiedPlugClassFromText(thread, classes.plug ?? "2A");
      const hole = unifiedHoleClassFromText(thread, classes.hole ?? "2B");
      if (plug.ok && hole.ok)
        return { ok: true, limits: unifiedLimits(thread, plug.toleranceClass, hole.toleranceClass) };
      return refused(plug.ok ? null : plug.problem.accepted, hole.ok ? null : hole.problem.accepted);
    }
    case "G": {
      const accepted = named === null ? gPlugClasses : [named];
      const given = classes.plug?.trim().toUpperCase();
      const plugClass = given === undefined ? (named ?? "A") : accepted.find((it) => it === given);
      if (plugClass === undefined) return refused(accepted, classes.hole === undefined ? null : []);
      return withoutClasses({ hole: classes.hole }, gLimits(thread, plugClass));
    }
    default:
      return thread satisfies never;
  }
}

/** The limits of ordinary plugs and holes: 6g in 6H, 2A in 2B, class A of G. */
export function standardLimits(thread: Thread): ThreadLimits {
  const read = limitsOf(thread, {}, null);
  if (!read.ok) throw new Error(`${thread.designation} has no ordinary limits`);
  return read.limits;
}

const unifiedLimits = (
  thread: UnifiedThread,
  plug: Parameters<typeof unifiedPlugLimits>[1],
  hole: Parameters<typeof unifiedHoleLimits>[1],
): ThreadLimits => ({ ...unifiedPlugLimits(thread, plug), ...unifiedHoleLimits(thread, hole) });

/** A taper thread's standard tolerates the place of its gauge plane, not diameters: there they are the basic ones. */
const atTheGaugePlane = ({ d, d_2, D_1 }: TaperThread): ThreadLimits => ({
  d_max: as("d_max", d),
  d_min: as("d_min", d),
  d2_max: as("d_2max", d_2),
  d2_min: as("d_2min", d_2),
  D1_min: as("D_1min", D_1),
  D1_max: as("D_1max", D_1),
  D2_min: as("D_2min", d_2),
  D2_max: as("D_2max", d_2),
});

const withoutClasses = ({ plug, hole }: WrittenClasses, found: ThreadLimits): LimitsRead =>
  plug === undefined && hole === undefined
    ? { ok: true, limits: found }
    : refused(plug === undefined ? null : [], hole === undefined ? null : []);

function refused(plug: ClassProblem["accepted"] | null, hole: ClassProblem["accepted"] | null): LimitsRead {
  const problems: readonly (ClassProblem | null)[] = [
    plug && { of: "plug", accepted: plug },
    hole && { of: "hole", accepted: hole },
  ];
  return { ok: false, problems: problems.filter((it) => it !== null) };
}
