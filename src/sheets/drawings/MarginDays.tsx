import { hatching, path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { type Label, rounded } from "./lettering.ts";
import { viewBox } from "./section/PortSection.tsx";
import { torqueAxis } from "./window/torqueAxis.ts";

/** From the soonest to the latest day; an end that never comes is null. */
export type DaysRange = { readonly low_d: number | null; readonly high_d: number | null };

export type MarginDaysProps = {
  /** As if the count were the truth; and with its shortness, parked and driven. */
  readonly counted: DaysRange;
  readonly parked: DaysRange;
  readonly driven: DaysRange;
};

const width = 360;
const letter = 15;
const left = 16;
const right = width - 16;
const row = 3.6 * letter;
const top = 2.6 * letter;
const bar = 1.05 * letter;

/** How many days a margin lasts, parked and driven: from today to the soonest day nothing is drawn, for that long it holds. */
export function MarginDays({ counted, parked, driven }: MarginDaysProps) {
  const rows = [
    { name: "driven, half or worse", range: driven, within: null },
    { name: "parked", range: parked, within: counted },
  ];
  const known = [driven, parked, counted].flatMap(({ low_d, high_d }) => [low_d, high_d]).filter((it) => it !== null);
  // A late end far away says little and would squeeze what matters: it is cut, with an arrow.
  const soon = Math.max(4, 1.5 * (counted.high_d ?? parked.low_d ?? 0), 2 * (driven.low_d ?? 0));
  const axis = torqueAxis(
    known.filter((it) => it <= soon),
    left,
    right,
    2.6 * letter,
  );
  const foot = top + rows.length * row;
  const height = foot + 3.6 * letter;
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>Days to the limit</title>
      <desc>{rows.map(({ name, range }) => `${name}: ${said(range)}`).join("; ")}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      {rows.map(({ range, within }, i) => {
        const y = top + i * row + 1.75 * letter;
        return (
          <>
            <Bar range={range} y={y} at={axis.at} cut_d={axis.to_Nm} kind="hatched" />
            {within && <Bar range={within} y={y} at={axis.at} cut_d={axis.to_Nm} kind="amber" />}
          </>
        );
      })}
      <path class="edge line" d={path([...line(left, foot), ...line(right, foot)])} />
      {axis.ticks_Nm.map((day) => (
        <path class="thin line" d={path([...line(axis.at(day), foot), ...line(axis.at(day), foot + 8)])} />
      ))}
      <Lettering
        labels={[
          label("Days to the low limit", left, 1.4 * letter, "start", true, 1.1 * letter),
          ...rows.map(({ name, range }, i) => label(`${name}: ${said(range)}`, left, top + i * row + letter, "start")),
          ...axis.ticks_Nm.map((day) => label(String(day), axis.at(day), foot + 1.7 * letter, "middle")),
          label("days", right, foot + 3 * letter, "end"),
        ]}
      />
    </svg>
  );
}

const line = (x: number, y: number): readonly XY[] => [[x, y]];

function Bar(props: {
  readonly range: DaysRange;
  readonly y: number;
  readonly at: (day: number) => number;
  readonly cut_d: number;
  readonly kind: "hatched" | "amber";
}) {
  const { range, y, at, cut_d, kind } = props;
  if (range.low_d === null) return null;
  const goesOn = range.high_d === null || range.high_d > cut_d;
  const [from, to] = [Math.min(at(range.low_d), right - bar), goesOn ? right - bar / 2 : at(range.high_d ?? cut_d)];
  const outline: readonly XY[] = [
    [from, y],
    [to, y],
    ...(goesOn ? ([[to + bar / 2, y + bar / 2]] as const) : []),
    [to, y + bar],
    [from, y + bar],
  ];
  return (
    <>
      <path class={`${kind === "amber" ? "amber" : "paper"} edge`} d={path(outline, true)} />
      {kind === "hatched" && <path class="hatch" d={hatching(outline, 0.5 * letter, 1)} />}
      <path class="heavy line" d={path([...line(from, y - 3), ...line(from, y + bar + 3)])} />
    </>
  );
}

/** Days are rounded down to the half, whole from 10: a promise of time errs on the short side. */
function said({ low_d, high_d }: DaysRange): string {
  if (low_d === null) return "endless";
  const least = low_d < 0.5 ? "less than half a day" : figure(low_d);
  if (high_d === null) return low_d < 0.5 ? least : `${least} days or more`;
  return `${least} to ${figure(high_d)} days`;
}

const figure = (days: number): string => String(days < 10 ? Math.floor(2 * days) / 2 : Math.floor(days));

const label = (text: string, x: number, y: number, anchor: Label["anchor"], bold = false, size = letter): Label => ({
  text,
  x,
  y,
  size,
  anchor,
  bold,
});
