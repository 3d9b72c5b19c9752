import type { HeldCurve, HeldFall, HeldLevel } from "../../../mechanics/service/heldCurve.ts";
import { hatching, path, type XY } from "../hatch.ts";
import { Lettering, LetteringBlock } from "../LetteringBlock.tsx";
import { inWhole, labelBox, rounded } from "../lettering.ts";
import { placed, viewBox } from "../section/PortSection.tsx";
import { type HoldingCurveLayout, holdingCurveLayout } from "./holdingCurveLayout.ts";

/** What still holds over the days: a step curve with its band, and how many are watched under the axis. */
export function HoldingCurve({ curve, caption }: { readonly curve: HeldCurve; readonly caption: string }) {
  const layout = holdingCurveLayout(curve, caption);
  const { view, letter, strip } = layout;
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={rounded(letter)} role="img">
      <title>{caption}</title>
      <desc>{curveInWords(curve)}</desc>
      <rect class="paper" {...placed(view)} />
      <Lettering labels={layout.caption} />
      {curve.levels.map((level) => (
        <Band level={level} layout={layout} />
      ))}
      <Axes curve={curve} layout={layout} />
      {curve.falls.map((fall) => (
        <Fall fall={fall} layout={layout} />
      ))}
      {curve.levels.map((level) => (
        <Level level={level} layout={layout} />
      ))}
      <LastSeen curve={curve} layout={layout} />
      {layout.falls.map(({ ground, label }) => (
        <LetteringBlock
          block={{ id: label.text, labels: [label], box: labelBox(label) }}
          ground={ground}
          letter={letter}
        />
      ))}
      <Lettering labels={layout.notes} />
      {layout.legend.map((entry) => (
        <LegendSign entry={entry} />
      ))}
      <path
        class="edge line"
        d={path([
          [0, strip.box.y],
          [strip.box.width, strip.box.y],
        ])}
      />
      <path
        class="thin line"
        d={path([
          [strip.divider, strip.box.y],
          [strip.divider, strip.box.y + strip.box.height],
        ])}
      />
      <Lettering labels={strip.labels} />
    </svg>
  );
}

type InLayout = { readonly layout: HoldingCurveLayout };

/** The band of a level; only hatched where too few are watched. */
function Band({ level, layout: { x, y, letter } }: InLayout & { readonly level: HeldLevel }) {
  if (!level.band) return null;
  const [low, high] = level.band;
  const outline = rectangle(x(level.from_days), x(level.to_days), y(high), y(low));
  return level.few ? (
    <path class="hatch" d={hatching(outline, letter, 1)} />
  ) : (
    <path class="steel bare" d={path(outline, true)} />
  );
}

/** A fall on a known day is a stroke; one between two checks a hatched box, in which the curve may run anywhere. */
function Fall({ fall, layout: { x, y, letter } }: InLayout & { readonly fall: HeldFall }) {
  const { from_days, to_days, before, after, few } = fall;
  if (from_days === to_days) {
    const ends: readonly XY[] = [
      [x(to_days), y(before)],
      [x(to_days), y(after)],
    ];
    return <path class={few ? "ghost" : "heavy line"} d={path(ends)} />;
  }
  const outline = rectangle(x(from_days), x(to_days), y(before), y(after));
  return (
    <g>
      <path class={`${few ? "paper" : "casting"} bare`} d={path(outline, true)} />
      <path class="hatch" d={hatching(outline, 0.5 * letter, 1)} />
      <path class={few ? "ghost" : "edge line"} d={path(outline, true)} />
    </g>
  );
}

function Level({ level, layout: { x, y } }: InLayout & { readonly level: HeldLevel }) {
  const at = y(level.survival);
  return (
    <path
      class={level.few ? "ghost" : "heavy line"}
      d={path([
        [x(level.from_days), at],
        [x(level.to_days), at],
      ])}
    />
  );
}

/** A tick across the curve where a repair that still holds was last seen. */
function LastSeen({ curve, layout: { x, y, letter } }: InLayout & { readonly curve: HeldCurve }) {
  const marks = curve.lastSeen.map(({ at_days, survival }) =>
    path([
      [x(at_days), y(survival) - 0.45 * letter],
      [x(at_days), y(survival) + 0.45 * letter],
    ]),
  );
  return marks.length > 0 && <path class="edge line" d={marks.join("")} />;
}

function LegendSign({ entry: { sign, box, label } }: { readonly entry: HoldingCurveLayout["legend"][number] }) {
  return (
    <g>
      {sign === "band" ? (
        <rect class="steel thin" {...placed(box)} />
      ) : (
        <path
          class="edge line"
          d={path([
            [box.x + box.width / 2, box.y],
            [box.x + box.width / 2, box.y + box.height],
          ])}
        />
      )}
      <Lettering labels={[label]} />
    </g>
  );
}

function Axes({ curve, layout }: InLayout & { readonly curve: HeldCurve }) {
  const { plot, x, y, letter, shares, axis } = layout;
  const foot = plot.y + plot.height;
  const ticks = curve.ticks.map(({ at_days }) =>
    path([
      [x(at_days), foot],
      [x(at_days), foot + 0.4 * letter],
    ]),
  );
  const marks = shares.map(({ share }) =>
    path([
      [plot.x - 0.4 * letter, y(share)],
      [plot.x + (share === 0.5 ? plot.width : 0), y(share)],
    ]),
  );
  return (
    <g>
      <path class="thin line" d={[...ticks, ...marks].join("")} />
      <path
        class="edge line"
        d={path([
          [plot.x, plot.y],
          [plot.x, foot],
          [plot.x + plot.width, foot],
        ])}
      />
      <Lettering labels={[...shares.map(({ label }) => label), ...axis]} />
    </g>
  );
}

const rectangle = (x1: number, x2: number, y1: number, y2: number): readonly XY[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];

/** The curve in words, for those who hear it. */
function curveInWords({ cases, cameBack, falls, ticks }: HeldCurve): string {
  const steps = falls.map(({ from_days, to_days, after }) => {
    const when =
      from_days === to_days
        ? `after ${inWhole(to_days)} days`
        : `between ${inWhole(from_days)} and ${inWhole(to_days)} days`;
    return `${when} down to ${inWhole(100 * after)} of 100`;
  });
  const watched = ticks.map(({ at_days, watched: count }) => `${count} at ${inWhole(at_days)} days`);
  const fell = steps.length > 0 ? `What holds falls ${steps.join(", ")}.` : "Nothing fell.";
  return `${cameBack} of ${cases} came back. ${fell} Still watched: ${watched.join(", ")}.`;
}
