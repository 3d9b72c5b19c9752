import { path, type XY } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { type Box, rounded } from "../lettering.ts";
import { signRadius } from "./markRows.ts";
import type { WindowLayout } from "./windowLayout.ts";
import type { MarkKind } from "./windowMarks.ts";

/** The sign of a mark, of a shape of its own. */
export function Sign({
  kind,
  x,
  y,
  letter,
}: {
  readonly kind: MarkKind;
  readonly x: number;
  readonly y: number;
  readonly letter: number;
}) {
  const r = signRadius * 0.85 * letter;
  switch (kind) {
    case "book":
      return (
        <path
          class="ink edge"
          d={path(
            [
              [x, y - r],
              [x + r, y + 0.8 * r],
              [x - r, y + 0.8 * r],
            ],
            true,
          )}
        />
      );
    case "third":
      return (
        <path
          class="paper edge"
          d={path(
            [
              [x, y - r],
              [x + r, y],
              [x, y + r],
              [x - r, y],
            ],
            true,
          )}
        />
      );
    case "median":
      return (
        <g>
          <circle class="paper edge" cx={rounded(x)} cy={rounded(y)} r={rounded(0.85 * r)} />
          <path
            class="ink bare"
            d={`M${rounded(x)} ${rounded(y - 0.85 * r)}A${rounded(0.85 * r)} ${rounded(0.85 * r)} 0 0 1 ${rounded(x)} ${rounded(y + 0.85 * r)}Z`}
          />
        </g>
      );
    case "floor":
      return (
        <path
          class="edge line"
          d={
            path([
              [x - r, y + 0.7 * r],
              [x + r, y + 0.7 * r],
            ]) +
            path([
              [x, y - r],
              [x, y + 0.7 * r],
            ])
          }
        />
      );
    case "need":
      return (
        <path
          class="heavy line"
          d={path([
            [x + r, y - r],
            [x, y - r],
            [x, y + r],
            [x + r, y + r],
          ])}
        />
      );
    case "limit":
      return (
        <path
          class="heavy line stop-edge"
          d={path([
            [x - r, y - r],
            [x, y - r],
            [x, y + r],
            [x - r, y + r],
          ])}
        />
      );
    default:
      return kind satisfies never;
  }
}

/** The advice as a flag on a pole that stands on the axis. */
export function Flag({
  flag: { box, x, side, number, unit },
  bar,
  letter,
}: {
  readonly flag: NonNullable<WindowLayout["flag"]>;
  readonly bar: Box;
  readonly letter: number;
}) {
  const far = side === 1 ? box.x + box.width : box.x;
  const notch = far - side * 0.9 * letter;
  const cloth: readonly XY[] = [
    [x, box.y],
    [far, box.y],
    [notch, box.y + box.height / 2],
    [far, box.y + box.height],
    [x, box.y + box.height],
  ];
  return (
    <g>
      <path
        class="halo line"
        d={path([
          [x, bar.y],
          [x, bar.y + bar.height],
        ])}
      />
      <path
        class="heavy line"
        d={path([
          [x, box.y],
          [x, bar.y + bar.height],
        ])}
      />
      <path class="ink edge" d={path(cloth, true)} />
      <text class="bold on-ink" x={rounded(number.x)} y={rounded(number.y)} font-size={number.size}>
        {number.text}
        <tspan font-size={unit} dx={0.25 * letter}>
          N·m
        </tspan>
      </text>
    </g>
  );
}

/** The range a wrench sets, as a bracket under the axis. */
export function WrenchBracket({
  bracket: { from, to, open, y, label },
  letter,
}: {
  readonly bracket: NonNullable<WindowLayout["bracket"]>;
  readonly letter: number;
}) {
  const up = y - 0.6 * letter;
  const end: readonly XY[] = open
    ? [[to, y]]
    : [
        [to, y],
        [to, up],
      ];
  return (
    <g>
      <path class="edge line" d={path([[from, up], [from, y], ...end])} />
      {open && (
        <path
          class="ink bare"
          d={path(
            [
              [to + 0.9 * letter, y],
              [to, y - 0.35 * letter],
              [to, y + 0.35 * letter],
            ],
            true,
          )}
        />
      )}
      <Lettering labels={[label]} />
    </g>
  );
}
