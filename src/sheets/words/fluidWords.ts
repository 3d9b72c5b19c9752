import type { GearGradeFound, IsoGradeFound } from "../../mechanics/fluid/grades.ts";
import type { SupposedOilProblem } from "../../mechanics/fluid/gradesRange.ts";
import type { GradeLabelProblem, KV100Range } from "../../mechanics/fluid/gradesText.ts";
import type { Reach } from "../../mechanics/fluid/viscosity.ts";
import type { OutsideLimits } from "../../mechanics/fluid/viscosityLimits.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, mm2_s } from "../../mechanics/quantity/unit.ts";
import type { EngineHotGrade } from "../../mechanics/tables/saeJ300.ts";
import type { GearGradeEdition } from "../../mechanics/tables/saeJ306.ts";
import { anyOf } from "./problemWords.ts";

/** What is known of an oil by its two viscosities. */
export type OilInWords = {
  readonly index: number | null;
  readonly nu: Quantity | null;
  /** How many times as thick as at 90 °C. */
  readonly timesHot: Quantity | null;
  readonly t: Quantity | null;
  readonly reach: Reach | null;
  readonly grade: GearGradeFound;
  readonly engine: readonly EngineHotGrade[];
  readonly iso: IsoGradeFound;
  readonly label: LabelHeld | null;
};

/** A label held against the viscosity that was measured. */
export type LabelHeld = {
  readonly text: string;
  /** What the label asks for, and of what, on the scale of mm²/s; null where the edition does not have it. */
  readonly asks: KV100Range | null;
  readonly at_degC: 40 | 100;
  readonly measured_mm2_s: number;
  readonly fits: boolean;
  /** The other edition, where the label fits only there. */
  readonly fitsUnder: GearGradeEdition | null;
};

/** The oil in a few lines: its viscosity where it was asked for, its grades, its index. */
export function viscosityLines(oil: OilInWords): readonly string[] {
  const { index, nu, timesHot, t, reach, grade, engine, iso, label } = oil;
  return [
    ...(nu && t ? [`${viscosityAtText(nu, t, reach)}.`] : []),
    ...(timesHot && timesHot.value >= 3
      ? [
          `It finds its level ${Number(timesHot.value.toPrecision(2))} times as slowly as at 90 °C: wait before you call it full.`,
        ]
      : []),
    ...(label ? [labelLine(label)] : []),
    gradeLine(grade),
    indexLine(index),
    ...(engine.length > 0
      ? [`As an engine oil SAE ${engine.join(" or ")} hot: gear and engine numbers are two scales.`]
      : []),
    iso.type === "ISO VG" ? `ISO VG ${iso.VG_mm2_s}.` : betweenLine(iso),
    ...reachLines(reach),
  ];
}

/** What only a label tells of an oil: ranges, and what was supposed. */
export type SupposedInWords = {
  readonly text: string;
  readonly kv40_mm2_s: Range;
  readonly kv100_mm2_s: Range;
  readonly at: { readonly t: Quantity; readonly reach: Reach; readonly nu_mm2_s: Range } | null;
  readonly index: { readonly range: Range; readonly source: string };
};
type Range = readonly [number, number];

export function supposedLines({ text, kv40_mm2_s, kv100_mm2_s, at, index }: SupposedInWords): readonly string[] {
  return [
    ...(at ? [`${rangeOfViscosity(at.nu_mm2_s)} at ${celsius(at.t)}, by the label ${text} alone.`] : []),
    `${at ? "It allows" : `${text} allows`} ${rangeOfViscosity(kv40_mm2_s)} at 40 °C and ${rangeOfViscosity(kv100_mm2_s)} at 100 °C.`,
    `Assumed: viscosity index ${index.range.join(" to ")}, ${index.source}.`,
    ...reachLines(at?.reach ?? null),
  ];
}

/** Why a text is no grade, and what would be. */
export function acceptedLabel(problem: GradeLabelProblem): string {
  switch (problem.type) {
    case "NotAGrade":
      return "a grade, as 75W-90, SAE 90, 10W-40 or ISO VG 68";
    case "BareNumber":
      return problem.accepted.length > 0
        ? `${anyOf(problem.accepted)}; a bare number names no standard`
        : "a grade, as 75W-90, SAE 90, 10W-40 or ISO VG 68";
    case "NoSuchGrade":
      return `${anyOf(problem.accepted)}; there is no ${problem.given}`;
    case "TwoStandards":
      return `two numbers of one standard: ${problem.winter} and ${problem.hot} are a gear oil's and an engine oil's`;
    case "RowsExclude":
      return `two rows that one oil can meet: ${problem.winter} asks for more than ${problem.hot} allows at 100 °C`;
    default:
      return problem satisfies never;
  }
}

/** Why a label alone does not tell what its oil is like, and which would. */
export function acceptedOil(problem: SupposedOilProblem): string {
  switch (problem.type) {
    case "NoUpperEnd":
      return `a grade with an upper end, as 75W-90: this one says only "${problem.from_mm2_s} mm²/s or more at 100 °C"; or the two viscosities`;
    case "NotInEdition":
      return `a grade that J306:${problem.edition} has; try the other --edition`;
    case "OutsideLimits":
      return limitsText(problem);
    case "NoSuchIndex":
    case "NotFalling":
    case "SameTemperature":
      return "a thicker grade: for so thin an oil no viscosity index is defined";
    default:
      return problem satisfies never;
  }
}

/** "nu from 0.21 up to 20000000 mm²/s (ASTM D341-20, ...)". */
export const limitsText = ({ symbol, least, most, unit, source }: OutsideLimits): string =>
  `${symbol}${least === null ? "" : ` from ${least}`}${most === null ? "" : ` up to ${most}`} ${unit} (${source})`;

/** "SAE 90", or that there is none so thin. */
export const gradeName = (grade: GearGradeFound): string =>
  grade.type === "gear grade" ? `SAE ${grade.grade}` : "thinner than every gear grade";

/** A range rounded outward to two digits, so that it never claims less than it holds. */
export const rangeOfViscosity = ([least, most]: Range): string => {
  const [low, high] = [outward(least, Math.floor), outward(most, Math.ceil)];
  return low === high ? `${low} mm²/s` : `${low} to ${high} mm²/s`;
};

function outward(x: number, round: (x: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(x)) - 1);
  // A row's own edge, 13.5, stays 13.5: rows are printed to a tenth.
  if (x < 100 && Math.abs(x * 10 - Math.round(x * 10)) < 1e-6) return Number(x.toFixed(1));
  return Number((round(x / step - (round === Math.ceil ? 1e-9 : -1e-9)) * step).toPrecision(6));
}

/** Three digits where it was measured either side; two where the line is drawn on beyond its points. */
function viscosityAtText(nu: Quantity, t: Quantity, reach: Reach | null): string {
  const digits = reach === "between the points" ? 3 : 2;
  const about = reach === "below 0 °C" ? "About " : "";
  return `${about}${Number(valueIn(mm2_s, nu).toPrecision(digits))} mm²/s at ${celsius(t)}`;
}

const celsius = (t: Quantity): string => `${Number(valueIn(degC, t).toFixed(1))} °C`;

function reachLines(reach: Reach | null): readonly string[] {
  if (reach === "below 0 °C")
    return ["Below 0 °C wax and polymer make it thicker than reckoned: no W grade can be told from this."];
  if (reach === "beyond the points") return ["Reckoned beyond 40 and 100 °C, where nobody measured it."];
  return [];
}

function indexLine(index: number | null): string {
  if (index === null) return "Viscosity index: not defined below 2 mm²/s at 100 °C.";
  return index < 0
    ? `Viscosity index ${index}: lower than oils have it, so doubt one of the two figures.`
    : `Viscosity index ${index}.`;
}

function gradeLine(grade: GearGradeFound): string {
  if (grade.type !== "gear grade")
    return `Thinner than every gear grade: J306:${grade.edition} begins at ${grade.from_mm2_s} mm²/s at 100 °C.`;
  return `Gear grade SAE ${grade.grade} hot (J306:${grade.edition}, ${rowText(grade)} at 100 °C).`;
}

function labelLine({ text, asks, at_degC, measured_mm2_s, fits, fitsUnder }: LabelHeld): string {
  if (!asks) return `The edition asked for has no ${text}${fitsUnder ? `; J306:${fitsUnder} has` : ""}.`;
  const wanted = `${text} asks for ${rowText(asks)} at ${at_degC} °C`;
  if (fits) return `${wanted}; ${measured_mm2_s} fits.`;
  const how = measured_mm2_s < asks.from_mm2_s ? "too thin" : "too thick";
  return `Not ${text}: ${measured_mm2_s} mm²/s is ${how}. ${wanted}${fitsUnder ? `; it fits under J306:${fitsUnder}` : ""}.`;
}

const rowText = ({ from_mm2_s, below_mm2_s }: KV100Range): string =>
  below_mm2_s === null ? `${from_mm2_s} mm²/s or more` : `${from_mm2_s} to below ${below_mm2_s} mm²/s`;

function betweenLine({ below_mm2_s, above_mm2_s }: Extract<IsoGradeFound, { type: "between grades" }>): string {
  if (below_mm2_s === null) return `Thinner than ISO VG ${above_mm2_s}, the thinnest of ISO 3448.`;
  if (above_mm2_s === null) return `Thicker than ISO VG ${below_mm2_s}, the thickest of ISO 3448.`;
  return `Between ISO VG ${below_mm2_s} and ${above_mm2_s}: ISO 3448 has gaps.`;
}
