import type { Calibration } from "../../mechanics/fluid/levelCalibration.ts";
import { doneBelow_drops_per_min, type LevelVerdict, type Overflow } from "../../mechanics/fluid/levelLip.ts";
import type { Strokes } from "../../mechanics/fluid/levelVolumes.ts";
import type { LevelOnTheLevel } from "../../mechanics/fluid/tilt.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml, ml_mm, mm } from "../../mechanics/quantity/unit.ts";
import { lengthText } from "./figures.ts";

/** What was found of a level, as far as it is known. */
export type LevelInWords = {
  readonly perHeight: Quantity;
  readonly calibration: Extract<Calibration, { type: "known" }> | null;
  readonly level: Quantity | null;
  readonly lowest: Quantity;
  readonly verdict: LevelVerdict | null;
  readonly toLip: Quantity | null;
  readonly toTarget: { readonly volume: Quantity; readonly strokes: Strokes } | null;
  readonly overflow: Overflow | null;
  readonly tilt: LevelOnTheLevel | null;
};

/** The level in a few lines: how far down, how much that is, what a millimetre holds and how firmly that is known. */
export function levelLines(found: LevelInWords): readonly string[] {
  return [...answerLines(found), "", "Why", ...reasonLines(found), "", "Mind", ...minds.map((it) => `  ${it}`)];
}

function answerLines({
  level,
  verdict,
  toLip,
  toTarget,
  overflow,
  perHeight,
  lowest,
}: LevelInWords): readonly string[] {
  if (!level || !toLip || !verdict) return [`A millimetre holds ${perMillimetre(perHeight)}.`];
  const down = -valueIn(mm, level);
  const where = down >= 0 ? `${lengthText(down)} below the lip` : `${lengthText(-down)} above the lip`;
  const short = `${volumeText(toLip)} ${toLip.value <= 0 ? "short of" : "over"} the lip`;
  return [
    `${where}: ${short}. ${verdictWords[verdict]} (lowest allowed ${lengthText(-valueIn(mm, lowest))} below).`,
    ...(toTarget ? [strokesLine(toTarget.volume, toTarget.strokes)] : []),
    ...(overflow ? [overflowLine(overflow)] : []),
  ];
}

function reasonLines({ perHeight, calibration, tilt }: LevelInWords): readonly string[] {
  return [
    `  A millimetre holds ${perMillimetre(perHeight)}.`,
    ...(calibration?.strength === "weak"
      ? [`  That is weak: draw ${Math.ceil(calibration.betterDraw_ml / 10) * 10} ml or more to know it better.`]
      : []),
    ...(calibration?.plausibility === "ask again"
      ? ["  That is an odd figure for a case of this size: measure again."]
      : []),
    ...(tilt ? [`  ${tiltLine(tilt)}`] : []),
  ];
}

function tiltLine(tilt: LevelOnTheLevel): string {
  switch (tilt.type) {
    case "corrected":
      return `The tilt moves the reading by ${lengthText(Math.abs(valueIn(mm, tilt.shift)))}; it is taken out.`;
    case "bounded":
      return `The tilt may move the reading by up to ${lengthText(valueIn(mm, tilt.bound))} either way.`;
    case "too steep":
      return `Too steep to reckon with: level the machine to ${tilt.most_deg}° or less.`;
    case "surface reaches a step":
      return "The oil reaches a step in the wall: level the machine.";
    case "offset not known":
      return "Nobody gave the offset of the hole: level the machine, or give --offset.";
    default:
      return tilt satisfies never;
  }
}

function strokesLine(volume: Quantity, { full, last_ml }: Strokes): string {
  const verb = volume.value > 0 ? "Draw out" : "Fill";
  const last = last_ml >= 1 ? ` and ${Math.round(last_ml)} ml` : "";
  return `${verb} ${volumeText(volume)}: ${full} full strokes${last}.`;
}

function overflowLine({ volume, verdict }: Overflow): string {
  if (verdict === "none") return "What you pour stays under the lip.";
  const over = `${Math.max(0, Math.round(valueIn(ml, volume)))} ml`;
  return verdict === "runs out" ? `Stop: ${over} of what you pour will run out.` : `It may run out, by about ${over}.`;
}

/** Whole millilitres with what they may be off, in the digits they have earned. */
function volumeText(volume: Quantity): string {
  const u = standardUncertainty(volume) / ml.inSI;
  const step = u > 20 ? 5 : 1;
  const figure = Math.round(Math.abs(valueIn(ml, volume)) / step) * step;
  return u >= 0.5 ? `${figure} ml (give or take ${Math.round((2 * u) / step) * step})` : `${figure} ml`;
}

function perMillimetre(perHeight: Quantity): string {
  const u = standardUncertainty(perHeight) / ml_mm.inSI;
  return `${valueIn(ml_mm, perHeight).toPrecision(2)} ml${u > 0 ? ` (give or take ${Number((2 * u).toPrecision(1))})` : ""}`;
}

const verdictWords: Readonly<Record<LevelVerdict, string>> = {
  "above the lip": "Above the lip",
  within: "Within what is allowed",
  "at the edge": "At the edge of what is allowed",
  below: "Below what is allowed",
};

const minds = [
  `Filled until it runs out means: until it runs slower than ${doneBelow_drops_per_min} drops a minute; cold oil takes its time.`,
  "Level machine, oil settled: after a run wait ten minutes; foam reads high, oil on the walls reads low.",
  "A few millimetres below the lip, cold, keeps a doubtful plug out of the oil; hot oil stands higher.",
  "An estimate to help a competent person; the maker's level rule comes first.",
];
