import { taperPipeSizes } from "../tables/iso7.ts";
import { pipeSizes } from "../tables/iso228.ts";
import { nptSizes } from "../tables/nptSizes.ts";
import { nptThread } from "./nptThread.ts";
import { type GPlugClass, gPlugClasses } from "./pipeLimits.ts";
import { type PipeThread, parallelPipeThread, taperPipeThread } from "./pipeThread.ts";

export type PipeThreadRead =
  /** `plugClass` is the class that the text names, "G 1/2 A", or null. */
  | { readonly ok: true; readonly thread: PipeThread; readonly plugClass: GPlugClass | null }
  | { readonly ok: false; readonly problem: PipeThreadProblem };

/** Why a text names no pipe thread of ours, with what would. */
export type PipeThreadProblem =
  | { readonly type: "not a pipe thread" }
  /** `accepted` are the sizes of that kind of thread. */
  | { readonly type: "not a standard size"; readonly kind: PipeThread["type"]; readonly accepted: readonly string[] }
  | { readonly type: "not its pitch"; readonly designation: string; readonly threadsPerInch: number };

/** The pipe thread that `text` names: "G 1/2", "G1/2A", "R 1/2", "Rc 1/2", "Rp 1/2", "1/2-14 NPT", "1/2 NPT", "NPT 1/2". */
export function pipeThreadFromText(text: string): PipeThreadRead {
  const plain = text.trim().replace(/\s+/g, " ").replace(/[‐‑–]/g, "-").replace(/["″”]/g, "");
  const whitworth = /^(R[cp]?|G) ?(\d+[ -]\d+\/\d+|\d+\/\d+|\d+) ?([AB])?$/i.exec(plain);
  if (whitworth) return whitworthThread(whitworth[1] ?? "", sizeAs(whitworth[2] ?? ""), whitworth[3]);
  const npt =
    /^(?:NPT ?)(\d+[ -]\d+\/\d+|\d+\/\d+|\d+)(?: ?- ?(\d+(?:\.5| 1\/2)?))?$/i.exec(plain) ??
    /^(\d+[ -]\d+\/\d+|\d+\/\d+|\d+)(?: ?- ?(\d+(?:\.5| 1\/2)?))? ?NPT$/i.exec(plain);
  return npt ? american(sizeAs(npt[1] ?? ""), npt[2]) : refused({ type: "not a pipe thread" });
}

function whitworthThread(letters: string, size: string, classText: string | undefined): PipeThreadRead {
  const kind = (["G", "R", "Rc", "Rp"] as const).find((it) => it.toLowerCase() === letters.toLowerCase()) ?? "G";
  const plugClass = gPlugClasses.find((it) => it === classText?.toUpperCase()) ?? null;
  if (kind === "G") {
    const row = pipeSizes.find((it) => it.size === size);
    return row ? { ok: true, thread: parallelPipeThread(row), plugClass } : noSuchSize(kind, pipeSizes);
  }
  if (plugClass !== null) return refused({ type: "not a pipe thread" });
  const row = taperPipeSizes.find((it) => it.size === size);
  return row ? { ok: true, thread: taperPipeThread(kind, row), plugClass } : noSuchSize(kind, taperPipeSizes);
}

function american(size: string, perInch: string | undefined): PipeThreadRead {
  const row = nptSizes.find((it) => it.size === size);
  if (!row) return noSuchSize("NPT", nptSizes);
  const thread = nptThread(row);
  if (perInch !== undefined && Number(perInch.replace(" 1/2", ".5")) !== row.n)
    return refused({ type: "not its pitch", designation: thread.designation, threadsPerInch: row.n });
  return { ok: true, thread, plugClass: null };
}

/** "1-1/4" is written "1 1/4". */
const sizeAs = (written: string): string => written.replace("-", " ");

const noSuchSize = (kind: PipeThread["type"], rows: readonly { readonly size: string }[]): PipeThreadRead =>
  refused({ type: "not a standard size", kind, accepted: rows.map(({ size }) => size) });

const refused = (problem: PipeThreadProblem): PipeThreadRead => ({ ok: false, problem });
