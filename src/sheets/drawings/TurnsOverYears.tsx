import { path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { type Label, rounded } from "./lettering.ts";
import { viewBox } from "./section/PortSection.tsx";

export type TurnsOverYearsProps = {
  /** Counts in the order of their days, ISO 8601. */
  readonly counts: readonly { readonly on: string; readonly turns: number }[];
  readonly falling: boolean;
};

const width = 360;
const letter = 15;
const [left, right, top] = [40, width - 40, 2.8 * letter];
const foot = top + 130;
const height = foot + 2.4 * letter;

/** The turns that a port had left at each count over the years, from none up: a fall is seen before it is read. */
export function TurnsOverYears({ counts, falling }: TurnsOverYearsProps) {
  const most = Math.max(4, 2 * Math.ceil((Math.max(...counts.map(({ turns }) => turns)) + 1) / 2));
  const days = counts.map(({ on }) => Date.parse(on));
  const [first = 0, last = 0] = [days[0], days.at(-1)];
  const x = (day: number): number =>
    last === first ? (left + right) / 2 : left + 28 + ((day - first) / (last - first)) * (right - left - 40);
  const y = (turns: number): number => foot - (turns / most) * (foot - top);
  const points = counts.map(({ turns }, i): XY => [x(days[i] ?? first), y(turns)]);
  const marks = Array.from({ length: most / 2 + 1 }, (_, i) => 2 * i);
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>Turns over the years{falling ? ": falling" : ""}</title>
      <desc>{counts.map(({ on, turns }) => `${on}: ${turns}`).join("; ")}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      {marks.map((turns) => (
        <path
          class="thin line"
          d={path([
            [left, y(turns)],
            [left + 7, y(turns)],
          ])}
        />
      ))}
      <path
        class="edge line"
        d={path([
          [left, top - 8],
          [left, foot],
          [right, foot],
        ])}
      />
      {points.length > 1 && <path class={`${falling ? "heavy stop-edge" : "edge"} line`} d={path(points)} />}
      {points.map(([px, py]) => (
        <circle class="ink" cx={rounded(px)} cy={rounded(py)} r={5} />
      ))}
      <Lettering
        labels={[
          label(`Turns, catch to seat${falling ? ": FALLING" : ""}`, 8, 1.3 * letter, "start", true),
          ...marks.map((turns) => label(String(turns), left - 8, y(turns) + 0.35 * letter, "end")),
          ...points.map(([px, py], i) => label(String(counts[i]?.turns), px, py - 10, "middle", true)),
          label(
            counts[0]?.on ?? "",
            counts.length > 1 ? left : (left + right) / 2,
            foot + 1.6 * letter,
            counts.length > 1 ? "start" : "middle",
          ),
          ...(counts.length > 1 ? [label(counts.at(-1)?.on ?? "", right, foot + 1.6 * letter, "end")] : []),
        ]}
      />
    </svg>
  );
}

const label = (text: string, x: number, y: number, anchor: Label["anchor"], bold = false): Label => ({
  text,
  x,
  y,
  size: letter,
  anchor,
  bold,
});
