import { metricDiameters_mm, sizesOfDiameter } from "../tables/iso261.ts";
import { type MetricThread, metricThread } from "./metricThread.ts";

export type MetricThreadRead =
  | { readonly ok: true; readonly thread: MetricThread }
  | { readonly ok: false; readonly problem: MetricThreadProblem };

/** Why a text names no metric thread of ours, with what would. */
export type MetricThreadProblem =
  | { readonly type: "not a metric thread" }
  | { readonly type: "outside the range"; readonly least: "M1.6"; readonly most: "M64" }
  /** `nearest` are the standard diameters on either side: "M18", "M20". */
  | { readonly type: "not a standard diameter"; readonly nearest: readonly string[] }
  | { readonly type: "not a standard pitch"; readonly d_mm: number; readonly pitches_mm: readonly number[] }
  /** The pitch was left out, and this diameter has no coarse one that could be meant. */
  | { readonly type: "no coarse pitch"; readonly d_mm: number; readonly pitches_mm: readonly number[] };

/** The metric thread that `text` names; without a pitch, "M20", the coarse pitch of ISO 261 is meant. */
export function metricThreadFromText(text: string): MetricThreadRead {
  const written = /^\s*M\s*(\d+(?:[.,]\d+)?)\s*(?:[x×*]\s*(\d+(?:[.,]\d+)?)\s*)?$/i.exec(text);
  if (!written) return refused({ type: "not a metric thread" });
  const [, diameterText = "", pitchText] = written;

  const d_mm = decimal(diameterText);
  if (!(d_mm >= LEAST_mm && d_mm <= MOST_mm)) return refused({ type: "outside the range", least: "M1.6", most: "M64" });
  const sizes = sizesOfDiameter(d_mm);
  if (sizes.length === 0) return refused({ type: "not a standard diameter", nearest: neighbours(d_mm) });

  const pitches_mm = sizes.map(({ P_mm }) => P_mm);
  if (pitchText === undefined) {
    const coarse = sizes.find(({ series }) => series === "coarse");
    return coarse
      ? { ok: true, thread: metricThread(d_mm, coarse.P_mm) }
      : refused({ type: "no coarse pitch", d_mm, pitches_mm });
  }
  const P_mm = decimal(pitchText);
  if (!pitches_mm.includes(P_mm)) return refused({ type: "not a standard pitch", d_mm, pitches_mm });
  return { ok: true, thread: metricThread(d_mm, P_mm) };
}

const LEAST_mm = 1.6;
const MOST_mm = 64;

const decimal = (text: string): number => Number(text.replace(",", "."));

function neighbours(d_mm: number): string[] {
  const below = metricDiameters_mm.findLast((it) => it < d_mm);
  const above = metricDiameters_mm.find((it) => it > d_mm);
  return [below, above].filter((it) => it !== undefined).map((it) => `M${it}`);
}

const refused = (problem: MetricThreadProblem): MetricThreadRead => ({ ok: false, problem });
