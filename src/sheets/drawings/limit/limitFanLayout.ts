import { earlyFigure, lateFigure } from "../../words/distanceFigures.ts";
import type { XY } from "../hatch.ts";
import { inWhole, type Label, textWidth } from "../lettering.ts";
import { torqueAxis } from "../window/torqueAxis.ts";

/** Levels read on the way, and where the line through them reaches its limit; null where the readings do not tell. */
export type FannedLimit = {
  readonly sightings: readonly { readonly at_km: number; readonly below_mm: number }[];
  readonly limit_mm: number;
  readonly reached: { readonly likely_km: number; readonly earliest_km: number; readonly latest_km: number } | null;
};

export type LimitFanLayout = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly sentence: string;
  readonly frame: readonly XY[];
  readonly ticks: readonly (readonly XY[])[];
  readonly limit: readonly XY[];
  readonly points: readonly XY[];
  /** The line through the readings; empty where they do not tell. */
  readonly line: readonly XY[];
  readonly fan: readonly XY[];
  /** The near edge of the fan down to the axis: the distance to act on. */
  readonly act: readonly XY[];
  readonly labels: readonly Label[];
};

/** Where everything of the fan stands, in the units of its sheet. */
export function limitFanLayout({ sightings, limit_mm, reached }: FannedLimit): LimitFanLayout {
  const kilometres = sightings.map(({ at_km }) => at_km);
  const last_km = Math.max(...kilometres);
  // A far edge that lies nowhere near is cut at the end of the axis.
  const ends = reached ? [Math.min(reached.latest_km, 2.5 * reached.likely_km - 1.5 * Math.min(...kilometres))] : [];
  const axis = torqueAxis([...kilometres, ...ends], field.left, field.right, 3.6 * letter);
  const depths = [limit_mm, ...sightings.map(({ below_mm }) => below_mm)];
  const fan = reached ? fanned(reached, sightings, limit_mm, last_km, axis.to_Nm) : null;
  const [highest, deepest] = [
    Math.min(0, ...depths, ...(fan?.line ?? []).map(([, mm]) => mm)),
    Math.max(1, ...depths) * 1.14,
  ];
  const y = (below_mm: number): number =>
    field.top + ((field.bottom - field.top) * (below_mm - highest)) / (deepest - highest);
  const at = (km: number, below_mm: number): XY => [axis.at(km), y(below_mm)];
  const on = (points: readonly Point[]): readonly XY[] => points.map(([km, mm]) => at(km, mm));
  const sentence = reached
    ? `limit at ${earlyFigure(reached.earliest_km)} to ${lateFigure(reached.latest_km)} km`
    : hasRisen(sightings)
      ? "the level does not fall"
      : "not enough data";
  const limitY = y(limit_mm);
  return {
    width,
    height: field.bottom + 3.4 * letter,
    letter,
    sentence,
    frame: [
      [field.left, field.top],
      [field.left, field.bottom],
      [field.right, field.bottom],
    ],
    ticks: axis.ticks_Nm.map((km) => [
      [axis.at(km), field.bottom],
      [axis.at(km), field.bottom + 5],
    ]),
    limit: [
      [field.left, limitY],
      [field.right, limitY],
    ],
    points: sightings.map(({ at_km, below_mm }) => at(at_km, below_mm)),
    line: fan ? on(fan.line) : [],
    fan: fan ? on(fan.outline) : [],
    act: reached ? [at(Math.max(0, reached.earliest_km), limit_mm), [axis.at(reached.earliest_km), field.bottom]] : [],
    labels: [
      label(sentence, edge, 1.5 * letter, "start", 1.15, true),
      label(whatToDo(reached, last_km), edge, 2.9 * letter, "start", 1, true),
      label("mm below the lip", edge, 4.4 * letter, "start", 0.85),
      ...(limitY - y(0) > letter ? [label("0", field.left - 8, y(0) + 0.35 * letter, "end")] : []),
      label(inWhole(limit_mm), field.left - 8, limitY + 0.35 * letter, "end", 1, true),
      label("limit", field.right, limitY + letter, "end", 0.85),
      ...axis.ticks_Nm
        .filter((km) => axis.at(km) + textWidth(String(km), letter) / 2 <= width)
        .map((km) => label(String(km), axis.at(km), field.bottom + 1.5 * letter, "middle")),
      label("km", field.right, field.bottom + 2.9 * letter, "end"),
    ],
  };
}

/** Whether the last reading stands higher than the first. */
function hasRisen(sightings: FannedLimit["sightings"]): boolean {
  const [first, last] = [sightings.toSorted((a, b) => a.at_km - b.at_km)].flatMap((it) => [it.at(0), it.at(-1)]);
  return (last?.below_mm ?? 0) < (first?.below_mm ?? 0);
}

function whatToDo(reached: FannedLimit["reached"], last_km: number): string {
  if (!reached) return "read again farther on";
  return reached.earliest_km <= last_km ? "act now" : `act at ${earlyFigure(reached.earliest_km)} km`;
}

type Point = readonly [km: number, below_mm: number];

/** The line through the readings' middle to the limit, and from its place at the last reading the two edges. */
function fanned(
  reached: NonNullable<FannedLimit["reached"]>,
  sightings: FannedLimit["sightings"],
  limit_mm: number,
  last_km: number,
  to_km: number,
): { readonly line: readonly Point[]; readonly outline: readonly Point[] } {
  const mean = (values: readonly number[]): number => values.reduce((sum, it) => sum + it, 0) / values.length;
  const middle: Point = [mean(sightings.map((it) => it.at_km)), mean(sightings.map((it) => it.below_mm))];
  const slope = (limit_mm - middle[1]) / (reached.likely_km - middle[0] || 1);
  const on = (km: number): Point => [km, middle[1] + slope * (km - middle[0])];
  const from = Math.min(last_km, reached.earliest_km);
  const apex = on(Math.max(from, middle[0]));
  const far: readonly Point[] =
    reached.latest_km <= to_km
      ? [[reached.latest_km, limit_mm]]
      : [
          [to_km, limit_mm],
          [to_km, apex[1] + ((limit_mm - apex[1]) * (to_km - apex[0])) / (reached.latest_km - apex[0])],
        ];
  return {
    line: [on(Math.min(...sightings.map((it) => it.at_km))), [reached.likely_km, limit_mm]],
    outline: [apex, [reached.earliest_km, limit_mm], ...far],
  };
}

const width = 360;
const letter = 15;
const edge = 14;
const field = { left: 46, right: width - 18, top: 5.4 * letter, bottom: 16 * letter };

const label = (text: string, x: number, y: number, anchor: Label["anchor"], size = 1, bold = false): Label => ({
  text,
  x,
  y,
  size: size * letter,
  anchor,
  bold,
});
