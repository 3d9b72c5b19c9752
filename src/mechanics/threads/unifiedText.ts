import {
  type UnifiedSeries,
  type UnifiedSize,
  unifiedDiameters,
  unifiedSeries,
  unifiedSizesWritten,
} from "../tables/asmeB1Sizes.ts";
import { type UnifiedThread, unifiedThread } from "./unifiedThread.ts";

export type UnifiedThreadRead =
  | { readonly ok: true; readonly thread: UnifiedThread }
  | { readonly ok: false; readonly problem: UnifiedThreadProblem };

/** Why a text names no unified thread of ours, with what would. */
export type UnifiedThreadProblem =
  | { readonly type: "not a unified thread" }
  | { readonly type: "outside the range"; readonly least: "#0"; readonly most: "2 1/2" }
  /** `nearest` are the standard sizes on either side: "7/8", "15/16". */
  | { readonly type: "not a standard size"; readonly nearest: readonly string[] }
  /** `accepted` are the threads of that size: "1/4-20 UNC", "1/4-28 UNF". */
  | { readonly type: "not a standard pitch"; readonly size: string; readonly accepted: readonly string[] }
  | { readonly type: "another series"; readonly given: UnifiedSeries; readonly accepted: readonly string[] }
  | { readonly type: "no such series"; readonly given: UnifiedSeries; readonly accepted: readonly string[] };

/**
 * The unified thread that `text` names: "1/4-20 UNC", "1/4-20", "1/4 UNC", "#10-32", "1 1/2-6", "0.25-20".
 * A whole number without its # is a number size where the pitch belongs to that one only: "10-32", but "1-8" is 1 inch.
 */
export function unifiedThreadFromText(text: string): UnifiedThreadRead {
  const written = /^(#|No\.? *)?(\d+[ -]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+)(?: *- *(\d+(?:\.\d+)?))? *([A-Z]+)?$/i.exec(
    text.trim().replace(/\s+/g, " ").replace(/[‐‑–]/g, "-"),
  );
  if (!written) return refused({ type: "not a unified thread" });
  const [, number, sizeText = "", perInch, seriesText] = written;
  const series = seriesText === undefined ? null : unifiedSeries.find((it) => it === seriesText.toUpperCase());
  if (series === undefined || (perInch === undefined && series === null))
    return refused({ type: "not a unified thread" });

  const n = perInch === undefined ? null : Number(perInch);
  const chosen = sizesMeant(sizeText, number !== undefined, n);
  if (!chosen) return refused(noSuchSize(sizeText, number !== undefined));
  return oneOf(chosen, n, series);
}

function oneOf(sizes: readonly UnifiedSize[], n: number | null, series: UnifiedSeries | null): UnifiedThreadRead {
  const accepted = sizes.map(({ designation }) => designation);
  const size = sizes[0]?.size ?? "";
  const ofPitch = n === null ? sizes : sizes.filter((it) => it.n === n);
  if (ofPitch.length === 0) return refused({ type: "not a standard pitch", size, accepted });
  const ofSeries = series === null ? ofPitch : ofPitch.filter((it) => it.series === series);
  const [found, another] = ofSeries;
  if (!found && series !== null)
    return n === null
      ? refused({ type: "no such series", given: series, accepted })
      : refused({ type: "another series", given: series, accepted: ofPitch.map(({ designation }) => designation) });
  // "5/8 UN" would be any of its constant pitches.
  if (!found || another) return refused({ type: "not a standard pitch", size, accepted });
  return { ok: true, thread: unifiedThread(found) };
}

/** The sizes of the diameter meant, or null if no standard diameter is. */
function sizesMeant(sizeText: string, isNumber: boolean, n: number | null): readonly UnifiedSize[] | null {
  const numbered = /^\d+$/.test(sizeText) ? unifiedSizesWritten(`#${Number(sizeText)}`) : [];
  if (isNumber) return numbered.length > 0 ? numbered : null;
  const D_in = inchesOf(sizeText);
  const size = unifiedDiameters.find((it) => Math.abs(it.D_in - D_in) < 0.0005)?.size;
  const inch = size === undefined ? [] : unifiedSizesWritten(size);
  const both = [inch, numbered].filter((it) => it.length > 0);
  return both.find((sizes) => sizes.some((it) => it.n === n)) ?? both[0] ?? null;
}

function noSuchSize(sizeText: string, isNumber: boolean): UnifiedThreadProblem {
  const D_in = isNumber ? 0.06 + 0.013 * Number(sizeText) : inchesOf(sizeText);
  const sizes = isNumber ? unifiedDiameters.filter(({ size }) => size.startsWith("#")) : unifiedDiameters;
  if (!isNumber && !(D_in >= LEAST_in && D_in <= MOST_in))
    return { type: "outside the range", least: "#0", most: "2 1/2" };
  const below = sizes.findLast((it) => it.D_in < D_in);
  const above = sizes.find((it) => it.D_in > D_in);
  return { type: "not a standard size", nearest: [below, above].flatMap((it) => (it ? [it.size] : [])) };
}

const LEAST_in = 0.06;
const MOST_in = 2.5;

/** "1 1/2", "1-1/2", "7/8", "0.25" or "1" in inches; NaN for a fraction over 0. */
function inchesOf(sizeText: string): number {
  const [, whole = "0", above, below] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(sizeText) ?? [];
  if (above === undefined) return Number(sizeText);
  return Number(below) === 0 ? Number.NaN : Number(whole) + Number(above) / Number(below);
}

const refused = (problem: UnifiedThreadProblem): UnifiedThreadRead => ({ ok: false, problem });
