import type { HeldFall } from "../../../mechanics/service/heldCurve.ts";
import { ascent, type Box, inWhole, type Label, lineHeight, textWidth } from "../lettering.ts";

/** The name of a fall between two checks; `ground` is what it is lettered on. */
export type FallLabel = { readonly ground: "paper" | "casting"; readonly label: Label };

/**
 * Names for the falls between two checks, where the curve cannot be: it only falls, so what lies to the right of a fall and
 * above it is free, and so is what lies to the left and below. A fall without room for its name has none.
 */
export function fallLabels(
  falls: readonly HeldFall[],
  plot: Box,
  x: (days: number) => number,
  y: (share: number) => number,
  letter: number,
): readonly FallLabel[] {
  const size = 0.9 * letter;
  const height = lineHeight * size;
  /** Clear of the curve and of the ticks across it. */
  const gap = 0.55 * letter;
  const named = falls.filter(({ from_days, to_days }) => to_days > from_days).flatMap(spotOf);
  const foot = plot.y + plot.height - gap;
  return [
    ...rising(named.filter(({ side }) => side === "right")),
    ...sinking(named.filter(({ side }) => side !== "right")),
  ];

  function spotOf(fall: HeldFall): readonly Spot[] {
    const { from_days: from, to_days: to } = fall;
    const box = { left: x(from), right: x(to), top: y(fall.before), bottom: y(fall.after) };
    const middle = (box.top + box.bottom - height) / 2;
    const spots = [`between ${inWhole(from)} and ${inWhole(to)} days`, `day ${inWhole(from)} to ${inWhole(to)}`]
      .map((text) => ({ text, width: textWidth(text, size) }))
      .flatMap(({ text, width }): readonly Spot[] => [
        ...(box.right + gap + width <= plot.x + plot.width
          ? [
              {
                text,
                side: "right",
                x: box.right + gap,
                top: Math.min(middle, box.bottom - gap - height),
                few: fall.few,
              } as const,
            ]
          : []),
        ...(width + gap <= box.right - box.left && height + gap <= box.bottom - box.top
          ? [{ text, side: "inside", x: (box.left + box.right) / 2, top: middle, few: fall.few } as const]
          : []),
        ...(box.left - gap - width >= plot.x
          ? [{ text, side: "left", x: box.left - gap, top: Math.max(middle, box.top + gap), few: fall.few } as const]
          : []),
      ]);
    return spots.slice(0, 1);
  }

  /** From the lowest up, each above the one below it. */
  function rising(spots: readonly Spot[]): readonly FallLabel[] {
    let ceiling = Number.POSITIVE_INFINITY;
    return spots.toReversed().flatMap((spot) => {
      const top = Math.min(spot.top, ceiling - height);
      if (top < plot.y - gap) return [];
      ceiling = top;
      return [lettered(spot, top)];
    });
  }

  /** From the highest down, each below the one above it; what is inside its own fall stays where it is. */
  function sinking(spots: readonly Spot[]): readonly FallLabel[] {
    let floor = Number.NEGATIVE_INFINITY;
    return spots.flatMap((spot) => {
      if (spot.side === "inside") return [lettered(spot, spot.top)];
      const top = Math.max(spot.top, floor);
      if (top + height > foot) return [];
      floor = top + height;
      return [lettered(spot, top)];
    });
  }

  function lettered({ text, side, x: at, few }: Spot, top: number): FallLabel {
    const anchor = side === "right" ? "start" : side === "left" ? "end" : "middle";
    return {
      ground: side === "inside" && !few ? "casting" : "paper",
      label: { text, x: at, y: top + ascent * size, size, anchor, bold: false },
    };
  }
}

type Spot = {
  readonly text: string;
  readonly side: "right" | "inside" | "left";
  readonly x: number;
  readonly top: number;
  readonly few: boolean;
};
