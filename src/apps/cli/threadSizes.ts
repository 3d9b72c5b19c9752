import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { limits } from "../../mechanics/threads/metricLimits.ts";
import { metricThreadFromText } from "../../mechanics/threads/metricText.ts";
import { stressArea } from "../../mechanics/threads/metricThread.ts";
import {
  type GaugePlane,
  type GPlugClass,
  gaugePlane,
  gPlugClasses,
  type PipeLimits,
  pipeLimits,
} from "../../mechanics/threads/pipeLimits.ts";
import { type PipeThreadRead, pipeThreadFromText } from "../../mechanics/threads/pipeText.ts";
import { standardHole, standardPlug } from "../../mechanics/threads/standardClasses.ts";
import { holeClassFromText, plugClassFromText } from "../../mechanics/threads/toleranceClass.ts";
import { unifiedHoleClassFromText, unifiedPlugClassFromText } from "../../mechanics/threads/unifiedClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "../../mechanics/threads/unifiedLimits.ts";
import { type UnifiedThreadRead, unifiedThreadFromText } from "../../mechanics/threads/unifiedText.ts";
import { wireCoilHole } from "../../mechanics/threads/wireCoilHole.ts";
import { anyOf } from "../../sheets/words/problemWords.ts";
import {
  acceptedClass,
  acceptedPipeThread,
  acceptedThread,
  acceptedUnifiedThread,
} from "../../sheets/words/threadProblemWords.ts";
import { mistaken } from "./mistake.ts";
import { threadOption } from "./options.ts";

/** What is printed of a thread; null where it has none. */
export type ThreadSizes = {
  /** "M20x1.5, plug 6g, hole 6H". */
  readonly name: string;
  /** The unit its standard prints limits in. */
  readonly printedIn: "mm" | "in";
  readonly limits: PipeLimits;
  readonly A_s: Quantity | null;
  /** Where the limits of a taper thread stand. */
  readonly gaugePlane: GaugePlane | null;
};

/** Tolerance classes as they were asked for. */
export type Classes = { readonly plug?: string; readonly hole?: string };

/** The sizes of whatever thread `text` names. @throws InputMistake if it names none, or a class it does not have. */
export function threadSizes(text: string, classes: Classes): ThreadSizes {
  const coil = /^\s*STI\s*(M.*)$/i.exec(text)?.[1];
  if (coil !== undefined) return coilSizes(coil, classes);
  const pipe = pipeThreadFromText(text);
  if (pipe.ok || pipe.problem.type !== "not a pipe thread") return pipeSizes(text, pipe, classes);
  const unified = unifiedThreadFromText(text);
  if (unified.ok || unified.problem.type !== "not a unified thread") return unifiedSizes(text, unified, classes);
  return metricSizes(text, classes);
}

function metricSizes(text: string, { plug, hole }: Classes): ThreadSizes {
  const read = metricThreadFromText(text);
  if (!read.ok) {
    const others = read.problem.type === "not a metric thread" ? otherThreads : "";
    throw mistaken("thread", text, acceptedThread(read.problem) + others);
  }
  const plugClass = plugClassFromText(plug ?? standardPlug.designation);
  if (!plugClass.ok) throw mistaken("--plug", plug ?? "", acceptedClass(plugClass.problem));
  const holeClass = holeClassFromText(hole ?? standardHole.designation);
  if (!holeClass.ok) throw mistaken("--hole", hole ?? "", acceptedClass(holeClass.problem));
  const { thread } = read;
  return {
    name: named(thread, plugClass.toleranceClass.designation, holeClass.toleranceClass.designation),
    printedIn: "mm",
    limits: limits(thread, plugClass.toleranceClass, holeClass.toleranceClass),
    A_s: stressArea(thread),
    gaugePlane: null,
  };
}

const otherThreads = ', or "1/4-20 UNC", "G 1/2", "R 1/2", "Rc 1/2", "Rp 1/2", "1/2-14 NPT", "STI M20x1.5"';

/** The hole of a wire coil has no plug of its own: the thread inside the coil is the thread it is named for. */
function coilSizes(text: string, { plug, hole = "5H" }: Classes): ThreadSizes {
  if (plug !== undefined) throw mistaken("--plug", plug, "no class: the hole of a wire coil has no plug of its own");
  if (hole !== "5H" && hole !== "4H5H") throw mistaken("--hole", hole, "5H or 4H5H for the hole of a wire coil");
  const { designation, D1_min, D1_max, D2_min, D2_max } = wireCoilHole(threadOption("thread", text), hole);
  return {
    name: `${designation}, hole ${hole}`,
    printedIn: "mm",
    limits: { d_max: null, d_min: null, d2_max: null, d2_min: null, D1_min, D1_max, D2_min, D2_max },
    A_s: null,
    gaugePlane: null,
  };
}

function unifiedSizes(text: string, read: UnifiedThreadRead, classes: Classes): ThreadSizes {
  if (!read.ok) throw mistaken("thread", text, acceptedUnifiedThread(read.problem));
  const { thread } = read;
  const plug = unifiedPlugClassFromText(thread, classes.plug ?? "2A");
  if (!plug.ok) throw mistaken("--plug", classes.plug ?? "", anyOf(plug.problem.accepted));
  const hole = unifiedHoleClassFromText(thread, classes.hole ?? "2B");
  if (!hole.ok) throw mistaken("--hole", classes.hole ?? "", anyOf(hole.problem.accepted));
  return {
    name: named(thread, plug.toleranceClass, hole.toleranceClass),
    printedIn: "in",
    limits: { ...unifiedPlugLimits(thread, plug.toleranceClass), ...unifiedHoleLimits(thread, hole.toleranceClass) },
    A_s: thread.A_s,
    gaugePlane: null,
  };
}

function pipeSizes(text: string, read: PipeThreadRead, { plug, hole }: Classes): ThreadSizes {
  if (!read.ok) throw mistaken("thread", text, acceptedPipeThread(read.problem));
  const { thread } = read;
  if (hole !== undefined) throw mistaken("--hole", hole, "no class: holes of pipe threads have one class only");
  if (thread.type !== "G" && plug !== undefined)
    throw mistaken("--plug", plug, "no class: a taper thread has one class only");
  const plugClass = parallelClass(plug, read.plugClass);
  return {
    name: thread.type === "G" ? `${thread.designation}, plug ${plugClass}` : thread.designation,
    printedIn: thread.type === "NPT" ? "in" : "mm",
    limits: pipeLimits(thread, plugClass),
    A_s: null,
    gaugePlane: gaugePlane(thread),
  };
}

/** The class of a parallel plug: as asked for, as its name says, or the tighter one. */
function parallelClass(asked: string | undefined, inName: GPlugClass | null): GPlugClass {
  const accepted = inName === null ? gPlugClasses : [inName];
  const meant = asked === undefined ? (inName ?? "A") : accepted.find((it) => it === asked.trim().toUpperCase());
  if (meant === undefined) throw mistaken("--plug", asked ?? "", anyOf(accepted));
  return meant;
}

const named = ({ designation }: { readonly designation: string }, plug: string, hole: string): string =>
  `${designation}, plug ${plug}, hole ${hole}`;
