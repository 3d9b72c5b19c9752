import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { limits } from "../../mechanics/threads/metricLimits.ts";
import { metricThreadFromText } from "../../mechanics/threads/metricText.ts";
import { stressArea } from "../../mechanics/threads/metricThread.ts";
import { pipeLimits } from "../../mechanics/threads/pipeLimits.ts";
import { pipeThreadFromText } from "../../mechanics/threads/pipeText.ts";
import {
  holeClassFromText,
  plugClassFromText,
  standardHole,
  standardPlug,
} from "../../mechanics/threads/toleranceClass.ts";
import { unifiedHoleClassFromText, unifiedPlugClassFromText } from "../../mechanics/threads/unifiedClass.ts";
import { unifiedHoleLimits, unifiedPlugLimits } from "../../mechanics/threads/unifiedLimits.ts";
import { unifiedThreadFromText } from "../../mechanics/threads/unifiedText.ts";
import { unifiedStressArea } from "../../mechanics/threads/unifiedThread.ts";
import { wireCoilHole } from "../../mechanics/threads/wireCoilHole.ts";
import { acceptedClass, acceptedThread, anyOf } from "../../sheets/words/problemWords.ts";
import { acceptedPipeThread, acceptedUnifiedThread } from "../../sheets/words/threadProblemWords.ts";
import { mistaken } from "./mistake.ts";
import { threadOption } from "./options.ts";

/** Limits of size of a plug and a hole, and the stress area; null where a thread has none. */
export type ThreadSizes = {
  readonly [S in
    | "d_max"
    | "d_min"
    | "d2_max"
    | "d2_min"
    | "D1_min"
    | "D1_max"
    | "D2_min"
    | "D2_max"
    | "A_s"]: Quantity | null;
};

/** Tolerance classes as they were asked for. */
export type Classes = { readonly plug?: string; readonly hole?: string };

/** The sizes of whatever thread `text` names. @throws InputMistake if it names none, or a class it does not have. */
export function threadSizes(text: string, classes: Classes): ThreadSizes {
  const coil = /^\s*STI\s+(.+)$/i.exec(text)?.[1];
  if (coil) return coilSizes(coil, classes);
  const pipe = pipeThreadFromText(text);
  if (pipe.ok || pipe.problem.type !== "not a pipe thread") return pipeSizes(text, pipe, classes);
  const unified = unifiedThreadFromText(text);
  if (unified.ok || unified.problem.type !== "not a unified thread") return unifiedSizes(text, unified, classes);
  return metricSizes(text, classes);
}

function metricSizes(text: string, { plug, hole }: Classes): ThreadSizes {
  const read = metricThreadFromText(text);
  if (!read.ok) {
    const others =
      read.problem.type === "not a metric thread"
        ? ', "1/4-20 UNC", "G 1/2", "R 1/2", "1/2-14 NPT" or "STI M20x1.5"'
        : "";
    throw mistaken("thread", text, acceptedThread(read.problem) + others);
  }
  const plugClass = plugClassFromText(plug ?? standardPlug.designation);
  if (!plugClass.ok) throw mistaken("--plug", plug ?? "", acceptedClass(plugClass.problem));
  const holeClass = holeClassFromText(hole ?? standardHole.designation);
  if (!holeClass.ok) throw mistaken("--hole", hole ?? "", acceptedClass(holeClass.problem));
  const { thread } = read;
  return { ...limits(thread, plugClass.toleranceClass, holeClass.toleranceClass), A_s: stressArea(thread) };
}

/** The hole of a wire coil has no plug of its own: the thread inside the coil is the thread it is named for. */
function coilSizes(text: string, { plug, hole = "5H" }: Classes): ThreadSizes {
  if (plug !== undefined) throw mistaken("--plug", plug, "no class: the hole of a wire coil has no plug of its own");
  if (hole !== "5H" && hole !== "4H5H") throw mistaken("--hole", hole, "5H or 4H5H for the hole of a wire coil");
  const { D1_min, D1_max, D2_min, D2_max } = wireCoilHole(threadOption("thread", text), hole);
  return { d_max: null, d_min: null, d2_max: null, d2_min: null, D1_min, D1_max, D2_min, D2_max, A_s: null };
}

function unifiedSizes(text: string, read: ReturnType<typeof unifiedThreadFromText>, classes: Classes): ThreadSizes {
  if (!read.ok) throw mistaken("thread", text, acceptedUnifiedThread(read.problem));
  const { thread } = read;
  const plug = unifiedPlugClassFromText(thread, classes.plug ?? "2A");
  if (!plug.ok) throw mistaken("--plug", classes.plug ?? "", anyOf(plug.problem.accepted));
  const hole = unifiedHoleClassFromText(thread, classes.hole ?? "2B");
  if (!hole.ok) throw mistaken("--hole", classes.hole ?? "", anyOf(hole.problem.accepted));
  return {
    ...unifiedPlugLimits(thread, plug.toleranceClass),
    ...unifiedHoleLimits(thread, hole.toleranceClass),
    A_s: unifiedStressArea(thread),
  };
}

function pipeSizes(text: string, read: ReturnType<typeof pipeThreadFromText>, { plug, hole }: Classes): ThreadSizes {
  if (!read.ok) throw mistaken("thread", text, acceptedPipeThread(read.problem));
  const { thread, plugClass } = read;
  const parallel = thread.type === "G";
  if (hole !== undefined) throw mistaken("--hole", hole, "no class: holes of pipe threads have one class only");
  if (plug !== undefined && !(parallel && (plug === "A" || plug === "B")))
    throw mistaken("--plug", plug, parallel ? "A or B" : "no class: a taper thread has one only");
  return { ...pipeLimits(thread, (plug as "A" | "B" | undefined) ?? plugClass ?? "A"), A_s: null };
}
