import type { HeldCurve } from "../../../mechanics/service/heldCurve.ts";
import { ascent, type Box, inWhole, type Label, lineHeight, textWidth, wrapped } from "../lettering.ts";
import { type FallLabel, fallLabels } from "./holdingFallLabels.ts";

/** Where everything of a holding curve lies, in millimetres of the sheet. */
export type HoldingCurveLayout = {
  readonly letter: number;
  readonly view: Box;
  readonly plot: Box;
  /** A day and a share as the sheet has them. */
  readonly x: (days: number) => number;
  readonly y: (share: number) => number;
  /** Marks and lettering at the left edge, of 100 that hold. */
  readonly shares: readonly { readonly share: number; readonly label: Label }[];
  /** Under the axis: the days, and how many were still watched then. */
  readonly axis: readonly Label[];
  /** What the falls between two checks are called. */
  readonly falls: readonly FallLabel[];
  readonly notes: readonly Label[];
  /** What the signs mean: a swatch of the band, a tick. */
  readonly legend: readonly { readonly sign: "band" | "last seen"; readonly box: Box; readonly label: Label }[];
  readonly caption: readonly Label[];
  readonly strip: { readonly box: Box; readonly divider: number; readonly labels: readonly Label[] };
};

/** Plain lettering is 4 on a sheet 100 wide: 14 px on a telephone 360 px wide. */
const letter = 4;
const width = 100;
const plotHeight = 12.5 * letter;

/** The sheet of a holding curve: share that holds over days, who is still watched under it, the counts at its foot. */
export function holdingCurveLayout(curve: HeldCurve, caption: string): HoldingCurveLayout {
  const captionLines = wrapped(caption, width - letter, 1.15 * letter, true);
  const captionHeight = (0.35 + 1.15 * lineHeight * captionLines.length) * letter;
  const left = 0.9 * letter + textWidth("watched", small) + 1.1 * letter;
  const plot = { x: left, y: captionHeight + 2.4 * letter, width: width - left - 1.5 * letter, height: plotHeight };
  const x = (days: number): number => plot.x + (plot.width * days) / curve.horizon_days;
  const y = (share: number): number => plot.y + plot.height * (1 - share);
  const foot = plot.y + plot.height;
  const legend = legendOf(curve, foot + 4 * letter);
  const strip = { x: 0, y: foot + (legend.length > 0 ? 5.7 : 4.2) * letter, width, height: 2.6 * letter };
  return {
    letter,
    view: { x: 0, y: 0, width, height: strip.y + strip.height },
    plot,
    x,
    y,
    shares: [1, 0.5, 0].map((share) => ({ share, label: shareLabel(share, plot.x, y(share)) })),
    axis: axisLabels(curve, x, foot),
    falls: fallLabels(curve.falls, plot, x, y, letter),
    notes: noteLabels(curve, plot, x),
    legend,
    caption: captionLines.map((text, i) =>
      label(text, 0.5 * letter, (0.15 + ascent * 1.15 + 1.15 * lineHeight * i) * letter, 1.15 * letter, "start", true),
    ),
    strip: titleStrip(curve, strip),
  };
}

const small = 0.9 * letter;

const label = (text: string, x: number, y: number, size: number, anchor: Label["anchor"], bold = false): Label => ({
  text,
  x,
  y,
  size,
  anchor,
  bold,
});

const shareLabel = (share: number, left: number, at: number): Label =>
  label(inWhole(100 * share), left - 0.55 * letter, at + 0.36 * letter, letter, "end");

function axisLabels(curve: HeldCurve, x: (days: number) => number, foot: number): readonly Label[] {
  const [first, second] = [foot + 1.55 * letter, foot + 3.2 * letter];
  return [
    label("days", 0.4 * letter, first, small, "start"),
    label("watched", 0.4 * letter, second, small, "start"),
    ...curve.ticks.flatMap(({ at_days, watched }) => [
      label(inWhole(at_days), x(at_days), first, letter, "middle"),
      label(inWhole(watched), x(at_days), second, letter, "middle", true),
    ]),
  ];
}

/** What the height means, and where too few are watched for the curve to say anything. */
function noteLabels(curve: HeldCurve, plot: Box, x: (days: number) => number): readonly Label[] {
  const heading = label("of 100 hold", 0.4 * letter, plot.y - 1.2 * letter, small, "start");
  const thin = curve.levels.find(({ few }) => few);
  if (!thin) return [heading];
  const text = "fewer than 3 watched";
  const room = plot.x + plot.width - x(thin.from_days);
  const fits = textWidth(text, small) <= room;
  return [
    heading,
    label(
      text,
      fits ? x(thin.from_days) + room / 2 : plot.x + plot.width,
      plot.y - 1.2 * letter,
      small,
      fits ? "middle" : "end",
    ),
  ];
}

function legendOf(curve: HeldCurve, top: number): HoldingCurveLayout["legend"] {
  const entries = [
    ...(curve.levels.some(({ band }) => band) ? [{ sign: "band", text: "the truth may lie here" } as const] : []),
    ...(curve.lastSeen.length > 0 ? [{ sign: "last seen", text: "last seen holding" } as const] : []),
  ];
  let x = 0.5 * letter;
  return entries.map(({ sign, text }) => {
    const box = { x, y: top, width: sign === "band" ? 1.6 * letter : 0.5 * letter, height: letter };
    const at = box.x + box.width + 0.4 * letter;
    x = at + textWidth(text, small) + 1.2 * letter;
    return { sign, box, label: label(text, at, top + 0.82 * letter, small, "start") };
  });
}

/** The strip at the foot: how many came back, and where the true share may lie. */
function titleStrip(curve: HeldCurve, box: Box): HoldingCurveLayout["strip"] {
  const [low, high] = curve.cameBack95;
  const counts = `${curve.cameBack} of ${curve.cases}`;
  const size = 1.3 * letter;
  const divider = box.x + 1.2 * letter + textWidth(counts, size, true);
  const at = (line: number): number => box.y + (line + 0.36) * letter;
  return {
    box,
    divider,
    labels: [
      label(counts, box.x + 0.6 * letter, box.y + box.height / 2 + 0.36 * size, size, "start", true),
      label("came back; the true share may be", divider + 0.6 * letter, at(0.75), small, "start"),
      label(
        `${inWhole(100 * low)} to ${inWhole(100 * high)} of 100`,
        divider + 0.6 * letter,
        at(1.85),
        letter,
        "start",
        true,
      ),
    ],
  };
}
