import type { TopUp } from "../../mechanics/fluid/blend.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm2_s } from "../../mechanics/quantity/unit.ts";
import type { GearHotGrade } from "../../mechanics/tables/saeJ306.ts";
import { gradeName, rangeOfViscosity } from "./fluidWords.ts";
import { anyOf } from "./problemWords.ts";

/** What a top-up makes of an oil, and how far its labels leave that open. */
export type BlendInWords = {
  readonly topUp: TopUp;
  /** By the ends of the labels; null where both viscosities are known. */
  readonly range_mm2_s: readonly [number, number] | null;
  readonly grades: readonly GearHotGrade[];
  /** The label of the oil in the case and of the oil added, where they are known by no more. */
  readonly labels: readonly [string | null, string | null];
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
};

/** The blend and its grade first, then what makes it, then what viscosity does not say. */
export function blendLines(blend: BlendInWords): readonly string[] {
  const { topUp, range_mm2_s, labels, assumed } = blend;
  return [
    range_mm2_s ? openLine(blend, range_mm2_s) : knownLine(topUp),
    `${Math.round(100 * topUp.share.value)} % of it is what was added${labelsText(labels)}.`,
    ...assumed.map(({ reading, value, source }) => `Assumed: ${reading} ${value}; ${source}.`),
    "Viscosity alone: whether the two may meet, their classes and a limited-slip additive say (turnsleft fluid).",
  ];
}

function knownLine({ kv100, before, after, gradesUp }: TopUp): string {
  const figure = `${Number(valueIn(mm2_s, kv100).toPrecision(3))} mm²/s at 100 °C`;
  const edition = `J306:${after.edition}`;
  if (gradesUp === 0) return `Still ${gradeName(after)}: ${figure} (${edition}).`;
  if (gradesUp === null) return `${figure}: ${gradeName(after)}, before ${gradeName(before)} (${edition}).`;
  const steps = Math.abs(gradesUp);
  const moved = `${numberWord(steps)} grade${steps === 1 ? "" : "s"} ${gradesUp < 0 ? "down" : "up"}`;
  return `${gradeName(after)}, ${moved} from ${gradeName(before)}: ${figure} (${edition}).`;
}

/** Where the labels leave it open no single grade is claimed. */
function openLine({ topUp, grades }: BlendInWords, range: readonly [number, number]): string {
  const found = `${rangeOfViscosity(range)} at 100 °C by the labels (J306:${topUp.after.edition})`;
  const names = grades.map((it) => `SAE ${it}`);
  if (names.length === 0) return `Thinner than every gear grade: ${found}.`;
  return `${names.length === 1 ? "" : "Somewhere in "}${anyOf(names)}: ${found}.`;
}

function labelsText([has, added]: BlendInWords["labels"]): string {
  const known = [...(added ? [`${added} was added`] : []), ...(has ? [`${has} was in the case`] : [])];
  return known.length > 0 ? `; ${known.join(", ")}, anywhere in its row` : "";
}

const numberWord = (count: number): string => ["no", "one", "two", "three", "four", "five"][count] ?? String(count);
