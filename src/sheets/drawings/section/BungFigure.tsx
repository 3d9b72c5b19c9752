import type { RoundPiece } from "../../../mechanics/joint/section.ts";
import { hatching, path, type XY } from "../hatch.ts";

/** The pieces of a bung, cut open on one side of the axis and seen uncut on the other. */
export function BungFigure(props: {
  readonly pieces: readonly RoundPiece[];
  readonly side: 1 | -1;
  readonly cut: number;
  readonly letter: number;
}) {
  const { pieces, side, cut, letter } = props;
  return (
    <g>
      {pieces.map(({ material, radius_mm, from_mm, to_mm }) => {
        const box = (x1: number, x2: number): readonly XY[] => [
          [x1, from_mm],
          [x2, from_mm],
          [x2, to_mm],
          [x1, to_mm],
        ];
        const seen = Math.min(radius_mm, cut);
        return (
          <g>
            <path class={`${material} edge`} d={path(box(-side * seen, side * radius_mm), true)} />
            {material === "steel" && (
              <path class="hatch" d={hatching(box(0, side * radius_mm), 0.95 * letter, side === 1 ? -1 : 1)} />
            )}
          </g>
        );
      })}
    </g>
  );
}
