import { hatching, path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { inWhole, type Label, rounded } from "./lettering.ts";
import { viewBox } from "./PortSection.tsx";
import { torqueAxis } from "./torqueAxis.ts";

type Props = {
  readonly sightings: readonly { readonly at_km: number; readonly below_mm: number }[];
  readonly limit_mm: number;
  /** Null where the readings do not tell. */
  readonly reached: { readonly likely_km: number; readonly earliest_km: number; readonly latest_km: number } | null;
};

const width = 360;
const letter = 15;
const field = { left: 46, right: width - 18, top: 4.2 * letter, bottom: 15 * letter };

/** Levels read on the way, and the fan in which the level may reach its limit: act on its near edge. */
export function LimitFan({ sightings, limit_mm, reached }: Props) {
  const farthest = Math.max(
    ...sightings.map(({ at_km }) => at_km),
    reached ? Math.min(reached.latest_km, 2.5 * reached.likely_km) : 0,
  );
  const axis = torqueAxis([farthest], field.left, field.right, 3.6 * letter);
  const deepest = Math.max(limit_mm, ...sightings.map(({ below_mm }) => below_mm)) * 1.15;
  const y = (below_mm: number): number => field.top + ((field.bottom - field.top) * below_mm) / deepest;
  const last = sightings.reduce((a, b) => (b.at_km > a.at_km ? b : a));
  const from: XY = [axis.at(last.at_km), y(last.below_mm)];
  const fan: readonly XY[] = reached
    ? [
        from,
        [axis.at(reached.earliest_km), y(limit_mm)],
        [axis.at(Math.min(reached.latest_km, axis.to_Nm)), y(limit_mm)],
      ]
    : [];
  const answer = reached
    ? `limit at ${twoDigits(reached.earliest_km)} to ${twoDigits(reached.latest_km)} km`
    : "not enough data";
  return (
    <svg
      class="drawing"
      viewBox={viewBox({ x: 0, y: 0, width, height: field.bottom + 3.4 * letter })}
      font-size={letter}
      role="img"
    >
      <title>Distance to the limit</title>
      <desc>{answer}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(field.bottom + 3.4 * letter)} />
      {reached && <path class="hatch" d={hatching(fan, 0.7 * letter, 1)} />}
      {reached && <path class="thin line" d={path(fan, true)} />}
      {reached && <path class="edge line" d={path([from, [axis.at(reached.likely_km), y(limit_mm)]])} />}
      <path
        class="heavy stop-edge line"
        d={path([
          [field.left, y(limit_mm)],
          [field.right, y(limit_mm)],
        ])}
      />
      <path
        class="edge line"
        d={path([
          [field.left, field.top],
          [field.left, field.bottom],
          [field.right, field.bottom],
        ])}
      />
      {sightings.map(({ at_km, below_mm }) => (
        <circle class="ink" cx={rounded(axis.at(at_km))} cy={rounded(y(below_mm))} r={4} />
      ))}
      <Lettering labels={labels(answer, limit_mm, y(limit_mm), axis)} />
    </svg>
  );
}

function labels(
  answer: string,
  limit_mm: number,
  limitY: number,
  axis: ReturnType<typeof torqueAxis>,
): readonly Label[] {
  const label = (
    text: string,
    x: number,
    baseline: number,
    anchor: Label["anchor"],
    bold = false,
    size = letter,
  ): Label => ({
    text,
    x,
    y: baseline,
    size,
    anchor,
    bold,
  });
  return [
    label(answer, 14, 1.5 * letter, "start", true, 1.15 * letter),
    label("mm below the lip", 14, 3.3 * letter, "start"),
    label("0", field.left - 8, field.top + 0.35 * letter, "end"),
    label(inWhole(limit_mm), field.left - 8, limitY + 0.35 * letter, "end", true),
    ...axis.ticks_Nm.map((km) => label(String(km), axis.at(km), field.bottom + 1.4 * letter, "middle")),
    label("km", field.right, field.bottom + 2.8 * letter, "end"),
  ];
}

/** Two digits are what four readings by hand earn. */
const twoDigits = (x: number): string => inWhole(Number(x.toPrecision(2)));
