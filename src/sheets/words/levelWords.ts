import type { Calibration } from "../../mechanics/fluid/levelCalibration.ts";
import type { LevelAtReference } from "../../mechanics/fluid/levelHotCold.ts";
import {
  doneBelow_drops_per_min,
  type FillTarget,
  type LevelVerdict,
  type Overflow,
} from "../../mechanics/fluid/levelLip.ts";
import type { Strokes } from "../../mechanics/fluid/levelVolumes.ts";
import type { LevelOnTheLevel } from "../../mechanics/fluid/tilt.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml_mm, mm } from "../../mechanics/quantity/unit.ts";
import { giveOrTake, placeText, sizeText, volumeFigure, volumeText } from "./levelFigures.ts";

/** What was found of a level, as far as it is known: what a millimetre holds, and what that means for the level. */
export type LevelInWords = {
  readonly perHeight: Quantity;
  readonly calibration: Extract<Calibration, { type: "known" }> | null;
  /** The volume in a shape up to its level, where the shape was given, and whether gears were taken off. */
  readonly shape: { readonly volume: Quantity; readonly gears: boolean } | null;
  readonly read: Quantity | null;
  readonly tilt: LevelOnTheLevel | null;
  /** Standing level, as warm as it is; null where the tilt leaves it open. */
  readonly level: Quantity | null;
  /** Standing level, at the temperature asked for. */
  readonly cold: ({ readonly at: string; readonly oil: string; readonly rise: Quantity } & LevelAtReference) | null;
  readonly lowest: Quantity;
  readonly verdict: LevelVerdict | null;
  readonly toLip: Quantity | null;
  readonly fillTarget: FillTarget | null;
  readonly toTarget: { readonly target: Quantity; readonly volume: Quantity; readonly strokes: Strokes } | null;
  readonly overflow: (Overflow & { readonly poured: Quantity }) | null;
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
};

/** What a fall of the level has to be before it tells what a millimetre holds. */
export const acceptedFall = (it: Exclude<Calibration, { type: "known" }>): string =>
  it.type === "fall too small"
    ? `at least ${(Math.ceil(10 * it.least_mm) / 10).toFixed(1)} mm: draw more`
    : "a level that fell";

/** The level in a few lines: how far down, how much that is, what a millimetre holds and how firmly that is known. */
export function levelLines(it: LevelInWords): readonly string[] {
  return [
    ...levelAnswer(it),
    "",
    "Why",
    ...levelReasons(it).map((line) => `  ${line}`),
    ...it.assumed.map(({ reading, value, source }) => `  Assumed: ${reading} ${value}; ${source}.`),
    "",
    "Mind",
    ...levelMinds.map((line) => `  ${line}`),
  ];
}

/** Where the level stands and what is to be done about it; what a millimetre holds where no level was read. */
export function levelAnswer(it: LevelInWords): readonly string[] {
  const { level, cold, verdict, toLip, tilt, perHeight, lowest } = it;
  const standing = cold?.level ?? level;
  const fill = it.fillTarget ? [fillLine(it.fillTarget)] : [];
  if (!standing || !toLip || !verdict)
    return [...(tilt ? [`Stand it level first. ${tiltLine(tilt)}`] : []), ...holds(perHeight), ...fill];
  const where = `${placeText(standing)}${cold ? ` at ${cold.at}` : ""}`;
  const short =
    volumeFigure(toLip) === 0 ? "at the lip" : `${volumeText(toLip)} ${toLip.value < 0 ? "short of" : "over"} the lip`;
  return [
    `${where}: ${short}. ${verdictWords[verdict]} (lowest allowed ${placeText(lowest)}).`,
    ...fill,
    ...(it.toTarget ? [strokesLine(it.toTarget)] : []),
    ...(it.overflow ? [overflowLine(it.overflow)] : []),
  ];
}

/** What the answer rests on. */
export function levelReasons({
  perHeight,
  calibration,
  shape,
  tilt,
  level,
  read,
  cold,
}: LevelInWords): readonly string[] {
  return [
    ...(level ? holds(perHeight) : []),
    ...(calibration?.strength === "weak"
      ? [`That is weak: draw ${Math.ceil(calibration.betterDraw_ml / 10) * 10} ml or more to know it better.`]
      : []),
    ...(calibration?.plausibility === "ask again"
      ? ["That is an odd figure for a case of this size: measure again."]
      : []),
    ...(shape ? [shapeLine(shape)] : []),
    ...(tilt && level && read ? [`Read ${placeText(read)}. ${tiltLine(tilt)}`] : []),
    ...(cold ? coldLines(cold) : []),
  ];
}

function holds(perHeight: Quantity): readonly string[] {
  const { figure, doubt } = perMillimetre(perHeight);
  return [`A millimetre holds ${figure} ml${doubt > 0 ? ` (give or take ${doubt})` : ""}.`];
}

function shapeLine({ volume, gears }: { readonly volume: Quantity; readonly gears: boolean }): string {
  const cut = gears
    ? "What gears and shafts cut of its surface is taken off that millimetre."
    : "Gears and shafts, which cut 10 to 30 % of a surface, are not taken off (--gears).";
  return `The bare shape holds ${volumeText(volume)} up to there. ${cut}`;
}

function tiltLine(tilt: LevelOnTheLevel): string {
  switch (tilt.type) {
    case "corrected":
      return `The tilt puts ${sizeText(tilt.shift)} on the reading; it is taken out.`;
    case "bounded":
      return `The tilt may move the reading by up to ${sizeText(tilt.bound)} either way, for nobody gave the offset of the hole.`;
    case "too steep":
      return `It is too steep to reckon with: level it to ${tilt.most_deg}° or less and read again.`;
    case "surface reaches a step":
      return "The oil reaches a step in the wall: level it and read again.";
    case "offset not known":
      return "Nobody gave the offset of the hole, so the reading tells nothing yet: level it, or give --offset.";
    default:
      return tilt satisfies never;
  }
}

function coldLines({ at, oil, rise, reading }: NonNullable<LevelInWords["cold"]>): readonly string[] {
  const way = rise.value < 0 ? "lower" : "higher";
  return [
    `At ${oil} the oil stands ${sizeText(rise)} ${way} than at ${at}${giveOrTake(rise)}.`,
    ...(reading === "widened"
      ? ["It was not said to have stood ten minutes: 2 mm either way are allowed for that."]
      : []),
  ];
}

function fillLine({ level, because }: FillTarget): string {
  return `Doubtful seal: fill to ${level.value < 0 ? placeText(level) : "the lip"}, cold. ${fillWords[because]}`;
}

function strokesLine({ target, volume, strokes: { full, last_ml } }: NonNullable<LevelInWords["toTarget"]>): string {
  const to = valueIn(mm, target) === 0 ? "to the lip" : `to ${placeText(target)}`;
  if (volumeFigure(volume) === 0) return `Nothing to draw or fill ${to}.`;
  const last = last_ml >= 1 ? `${Math.round(last_ml)} ml` : "";
  const strokes = full === 0 ? "" : `${full} full ${full === 1 ? "stroke" : "strokes"}`;
  const verb = volume.value > 0 ? "Draw out" : "Fill";
  return `${verb} ${volumeText(volume)} ${to}: ${[strokes, last].filter((it) => it !== "").join(" and ")}, then read again.`;
}

function overflowLine({ volume, verdict, poured }: NonNullable<LevelInWords["overflow"]>): string {
  const pour = volumeText(poured);
  if (verdict === "none") return `${pour} poured in stay under the lip.`;
  return verdict === "runs out"
    ? `Stop before you pour ${pour}: ${volumeText(volume)} of it will run out.`
    : `${pour} poured in may run out: stop short of it and read again.`;
}

/** What a millimetre holds in ml, by two digits, and two standard uncertainties of it, rounded up. */
export function perMillimetre(perHeight: Quantity): { readonly figure: number; readonly doubt: number } {
  const U = (2 * standardUncertainty(perHeight)) / ml_mm.inSI;
  // Never less than it is: 11.7 is 12, not 10.
  const doubt = U < 1 ? Math.ceil(10 * U) / 10 : Math.ceil(U);
  return { figure: Number(valueIn(ml_mm, perHeight).toPrecision(2)), doubt };
}

const verdictWords: Readonly<Record<LevelVerdict, string>> = {
  "above the lip": "Above the lip",
  within: "Within what is allowed",
  "at the edge": "At the edge of what is allowed",
  below: "Below what is allowed",
};

const fillWords: Readonly<Record<FillTarget["because"], string>> = {
  "sound seal, to the lip": "",
  "stays under the lip when hot": "It stays under the lip when hot.",
  "rise not known": "As low as is allowed: how far it rises hot is not known (--fill, --at, and the hot temperature).",
  "as low as allowed, reaches the lip when hot": "As low as is allowed; it still reaches the lip when hot.",
};

/** What to mind of every level. */
export const levelMinds = [
  `Filled until it runs out means: until it runs slower than ${doneBelow_drops_per_min} drops a minute; cold oil takes its time.`,
  "Level machine, oil settled: after a run wait ten minutes; foam reads high, oil on the walls reads low.",
  "Hot oil scalds (above 60 °C), and it stands higher: read the level cold.",
  "An estimate to help a competent person; the maker's level rule comes first.",
];
