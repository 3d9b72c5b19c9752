import { Fragment } from "preact";
import { hatching, path, type XY } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { type Box, type Label, labelBox, rounded } from "../lettering.ts";
import { placed, viewBox } from "../section/PortSection.tsx";
import type { PlacedMark } from "./markRows.ts";
import { Flag, Sign, WrenchBracket } from "./WindowSigns.tsx";
import type { Edge } from "./windowEdges.ts";
import { type WindowLayout, windowLayout } from "./windowLayout.ts";
import type { MarkKind } from "./windowMarks.ts";
import type { WindowProps } from "./windowProps.ts";
import { windowInWords } from "./windowWords.ts";

/** The torque window on its axis: what the seal needs, what the thread will stand, and what to set between them. */
export function WindowBar(props: WindowProps) {
  const layout = windowLayout(props);
  return (
    <svg class="drawing" viewBox={viewBox(layout.view)} font-size={layout.letter} role="img">
      <title>{props.caption}</title>
      <desc>{windowInWords(props)}</desc>
      <rect class="paper" {...placed(layout.view)} />
      <WindowFigure props={props} layout={layout} />
    </svg>
  );
}

/** The figure of one window, for a sheet of its own or one of several. */
export function WindowFigure({ props, layout }: { readonly props: WindowProps; readonly layout: WindowLayout }) {
  const { bar, marks, ticks, bracket, letter } = layout;
  return (
    <>
      <Lettering labels={layout.caption} />
      <Zones layout={layout} limit_Nm={props.limit_Nm} need_Nm={props.need_Nm} />
      {marks.map((placedMark) => (
        <Leader placedMark={placedMark} bar={bar} letter={letter} />
      ))}
      <Edges layout={layout} />
      {layout.words.map((label) => (
        <Grounded label={label} letter={letter} />
      ))}
      <Scale layout={layout} />
      {ticks.map((label) => (
        <Grounded label={label} letter={letter} />
      ))}
      {marks.map(({ mark, labels, foot }) => (
        <Fragment>
          {labels.map((label) => (
            <Grounded label={label} letter={letter} />
          ))}
          <Sign kind={mark.id} x={mark.x} y={foot} letter={letter} />
        </Fragment>
      ))}
      {layout.flag && <Flag flag={layout.flag} bar={bar} letter={letter} />}
      {layout.emptySign && (
        <>
          <rect class="paper heavy stop-edge" {...placed(layout.emptySign.box)} />
          <Lettering labels={[layout.emptySign.label]} ink="stop" />
        </>
      )}
      {bracket && <WrenchBracket bracket={bracket} letter={letter} />}
    </>
  );
}

/** Dots where the seal may leak, strokes where the thread may strip; in an empty window the two lie over each other. */
function Zones({
  layout: { axis, bar, low_Nm, letter },
  limit_Nm,
  need_Nm,
}: {
  readonly layout: WindowLayout;
  readonly limit_Nm: number;
  readonly need_Nm: number;
}) {
  const zone = (from_Nm: number, to_Nm: number): readonly XY[] => {
    const [a, b] = [axis.at(from_Nm), axis.at(to_Nm)];
    return [
      [a, bar.y],
      [b, bar.y],
      [b, bar.y + bar.height],
      [a, bar.y + bar.height],
    ];
  };
  return (
    <g>
      <path class="paper bare" d={path(zone(0, axis.to_Nm), true)} />
      <path class="steel bare" d={path(zone(0, need_Nm), true)} />
      <path class="dots" d={dotted(zone(0, low_Nm), 0.55 * letter)} />
      <path class="hatch stop-edge" d={hatching(zone(limit_Nm, axis.to_Nm), 0.36 * letter, 1)} />
      <path class="thin line" d={path(zone(0, axis.to_Nm), true)} />
    </g>
  );
}

/** Dots on a lattice inside an upright rectangle, as strokes of no length. */
function dotted([from = [0, 0], , to = [0, 0]]: readonly XY[], spacing: number): string {
  const columns = Array.from(
    { length: Math.max(0, Math.floor((to[0] - from[0]) / spacing)) },
    (_, i) => from[0] + (i + 0.5) * spacing,
  );
  const rows = Array.from({ length: Math.floor((to[1] - from[1]) / spacing) }, (_, i) => i);
  return columns
    .flatMap((x, i) =>
      rows.filter((row) => (row + i) % 2 === 0).map((row) => [x, from[1] + (row + 0.6) * spacing] as const),
    )
    .map(([x, y]) => `M${rounded(x)} ${rounded(y)}h0.01`)
    .join("");
}

/** The edges as brackets: facing each other round an open window, back to back and crossing over where it is empty. */
function Edges({ layout: { low, limit, bar, edgesFrom, letter, empty } }: { readonly layout: WindowLayout }) {
  const [top, bottom] = [bar.y + 0.3 * letter, bar.y + bar.height - 0.35 * letter];
  const serif = empty ? 0.6 * letter : Math.min(0.6 * letter, 0.3 * (limit.foot - low.foot));
  const lines = ({ head, foot }: Edge, towards: 1 | -1): string =>
    path([
      [head, edgesFrom - 1.2 * letter],
      [head, edgesFrom],
      [foot, bar.y],
      [foot, bar.y + bar.height],
    ]) +
    [top, bottom]
      .map((y) =>
        path([
          [foot, y],
          [foot + towards * serif, y],
        ]),
      )
      .join("");
  return (
    <g>
      {!empty && (
        <path
          class="edge line"
          d={path([
            [low.foot, bar.y],
            [limit.foot, bar.y],
          ])}
        />
      )}
      <path class="heavy line" d={lines(low, 1)} />
      <path class="heavy line stop-edge" d={lines(limit, -1)} />
      <Lettering labels={[low.label, limit.label].filter((label) => label !== null)} />
    </g>
  );
}

function Scale({ layout: { axis, bar, letter } }: { readonly layout: WindowLayout }) {
  const y = bar.y + bar.height;
  return (
    <g>
      <path
        class="edge line"
        d={path([
          [bar.x, y],
          [bar.x + bar.width, y],
        ])}
      />
      <path
        class="edge line"
        d={axis.ticks_Nm
          .map((tick) =>
            path([
              [axis.at(tick), y],
              [axis.at(tick), y + 0.4 * letter],
            ]),
          )
          .join("")}
      />
    </g>
  );
}

function Leader({
  placedMark: { mark, foot },
  bar,
  letter,
}: {
  readonly placedMark: PlacedMark<MarkKind>;
  readonly bar: Box;
  readonly letter: number;
}) {
  const through = path([
    [mark.x, bar.y],
    [mark.x, bar.y + bar.height],
  ]);
  return (
    <g>
      {mark.id !== "need" && mark.id !== "limit" && <path class="halo line" d={through} />}
      {mark.id !== "need" && mark.id !== "limit" && (
        <path class={`${mark.id === "book" ? "edge" : "thin"} line`} d={through} />
      )}
      <path
        class="thin line"
        d={path([
          [mark.x, bar.y + bar.height + 0.4 * letter],
          [mark.x, foot],
        ])}
      />
    </g>
  );
}

/** A label on a plain ground, for where lines run behind it. */
function Grounded({ label, letter }: { readonly label: Label; readonly letter: number }) {
  const { x, y, width, height } = labelBox(label);
  return (
    <g>
      <rect class="paper bare" {...placed({ x: x - 0.12 * letter, y, width: width + 0.24 * letter, height })} />
      <Lettering labels={[label]} />
    </g>
  );
}
