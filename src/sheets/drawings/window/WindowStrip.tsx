import { hatching, path, type XY } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { atLeast, atMost, type Label, rounded, textWidth } from "../lettering.ts";
import { torqueAxis } from "./torqueAxis.ts";
import type { WindowProps } from "./windowProps.ts";
import { windowInWords } from "./windowWords.ts";

/**
 * A torque window as one strip with its two figures, for a row of them: all that share `to_Nm` share an axis. Open, its room is
 * bracketed and the pull flagged; empty, the brackets stand back to back and the overlap of leaking and stripping is crossed.
 */
export function WindowStrip({ window, to_Nm }: { readonly window: WindowProps; readonly to_Nm: number }) {
  const { need_Nm, floor_Nm, limit_Nm, advice_Nm, bookFigures, caption } = window;
  const low_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  const empty = low_Nm > limit_Nm;
  const axis = torqueAxis([to_Nm], margin, width - margin, 10);
  const [low, limit] = [axis.at(low_Nm), axis.at(limit_Nm)];
  const zone = (from: number, to: number): readonly XY[] => [
    [from, bar.top],
    [to, bar.top],
    [to, bar.bottom],
    [from, bar.bottom],
  ];
  const end = width - margin;
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${height}`} font-size={letter} role="img">
      <title>{`${caption}. ${windowInWords(window)}`}</title>
      <rect class="paper" x={0} y={0} width={width} height={height} />
      <path class="steel bare" d={path(zone(margin, Math.min(low, limit)), true)} />
      <path class="hatch stop-edge" d={hatching(zone(limit, end), 0.34 * letter, 1)} />
      {empty && <path class="hatch stop-edge" d={hatching(zone(limit, low), 0.34 * letter, -1)} />}
      <path class="thin line" d={path(zone(margin, end), true)} />
      <path class="heavy line" d={bracket(low, 1) + bracket(limit, -1)} />
      {advice_Nm !== null && !empty && <path class="ink bare" d={flag(axis.at(advice_Nm))} />}
      {bookFigures.map(({ torque_Nm }) => (
        <path class="ink bare" d={tick(axis.at(torque_Nm))} />
      ))}
      <Lettering labels={figures(low, limit, atLeast(low_Nm), atMost(limit_Nm), empty)} />
    </svg>
  );
}

/** The torque to which the axis of some windows goes. */
export const commonTorque = (windows: readonly WindowProps[]): number =>
  Math.max(
    10,
    ...windows.flatMap(({ need_Nm, limit_Nm, bookFigures }) => [
      need_Nm,
      limit_Nm,
      ...bookFigures.map(({ torque_Nm }) => torque_Nm),
    ]),
  );

const width = 100;
const height = 23;
const letter = 6.5;
const margin = 3;
const bar = { top: 6.5, bottom: 13 } as const;

const bracket = (x: number, towards: 1 | -1): string =>
  path([
    [x + towards * 2, bar.top - 0.8],
    [x, bar.top - 0.8],
    [x, bar.bottom + 0.8],
    [x + towards * 2, bar.bottom + 0.8],
  ]);

const flag = (x: number): string =>
  path(
    [
      [x - 2.6, 0.6],
      [x + 2.6, 0.6],
      [x, bar.top - 0.6],
    ],
    true,
  );

const tick = (x: number): string =>
  path(
    [
      [x - 1.6, bar.bottom + 3.6],
      [x + 1.6, bar.bottom + 3.6],
      [x, bar.bottom + 0.6],
    ],
    true,
  );

/** Room between the two figures where their edges nearly meet. */
const apart = 5;

/** The two edges in figures under the strip, pushed apart where they would run together, and whole at its ends. */
function figures(low: number, limit: number, need: string, most: string, empty: boolean): readonly Label[] {
  const y = height - 1.6;
  const at = (text: string, x: number, anchor: Label["anchor"]): Label => ({
    text,
    x: rounded(Math.min(width - margin, Math.max(margin, x))),
    y,
    size: letter,
    anchor,
    bold: true,
  });
  const [first, second] = empty ? ([limit, low] as const) : ([low, limit] as const);
  const [firstText, secondText] = empty ? ([most, need] as const) : ([need, most] as const);
  const roomLeft = first > Math.max(12, textWidth(firstText, letter, true) - 1);
  const last = width - margin - textWidth(secondText, letter, true);
  const begins = Math.min(last, Math.max(second - 1, first + (roomLeft ? apart : 12)));
  const ends = Math.min(first + 1, begins - apart + 1);
  return [at(firstText, roomLeft ? ends : first, roomLeft ? "end" : "start"), at(secondText, begins, "start")];
}
