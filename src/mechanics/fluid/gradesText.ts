import { isoGrades } from "../tables/iso3448.ts";
import {
  type EngineHotGrade,
  type EngineWinterGrade,
  engineHotGrades,
  engineHotRows,
  engineWinterGrades,
  engineWinterRows,
} from "../tables/saeJ300.ts";
import {
  type GearGradeEdition,
  type GearHotGrade,
  type GearWinterGrade,
  gearGradeEditions,
  gearHotGrades,
  gearWinterGrades,
  saeJ306,
} from "../tables/saeJ306.ts";

/** A grade as a can names it; a grade of one row leaves the other null. */
export type GradeLabel =
  | {
      readonly type: "gear";
      readonly winter: GearWinterGrade | null;
      readonly hot: GearHotGrade | null;
      /** The editions of SAE J306 that have this grade, the newest first. */
      readonly editions: readonly GearGradeEdition[];
    }
  | { readonly type: "engine"; readonly winter: EngineWinterGrade | null; readonly hot: EngineHotGrade | null }
  | { readonly type: "ISO VG"; readonly VG_mm2_s: number };

export type GradeLabelRead =
  | { readonly ok: true; readonly label: GradeLabel }
  | { readonly ok: false; readonly problem: GradeLabelProblem };

/** Why a text names no grade, with what would. */
export type GradeLabelProblem =
  | { readonly type: "NotAGrade"; readonly given: string }
  /** "90" could be anything that is numbered; `accepted` are the grades with that number. */
  | { readonly type: "BareNumber"; readonly given: string; readonly accepted: readonly string[] }
  | { readonly type: "NoSuchGrade"; readonly given: string; readonly accepted: readonly string[] }
  /** One row is a gear oil's and the other an engine oil's. */
  | { readonly type: "TwoStandards"; readonly winter: string; readonly hot: string }
  /** No viscosity satisfies both rows in any edition. */
  | { readonly type: "RowsExclude"; readonly winter: string; readonly hot: string };

/** Reads "75W-90", "SAE 90", "80W", "10W-40", "ISO VG 68". Gear and engine grades share no number. */
export function gradeFromText(text: string): GradeLabelRead {
  const given = text.trim();
  const iso = /^(?:ISO\s*-?\s*VG|VG|ISO)\s*-?\s*(\d+(?:[.,]\d+)?)$/i.exec(given);
  if (iso) return isoLabel(iso[1] ?? "");
  const sae = /^(?:SAE\s*-?\s*)?(\d{1,3})\s*W(?:\s*[-–/]?\s*(\d{1,3}))?$/i.exec(given);
  if (sae) return saeLabel(`${Number(sae[1])}W`, sae[2] === undefined ? null : `${Number(sae[2])}`);
  const single = /^SAE\s*-?\s*(\d{1,3})$/i.exec(given);
  if (single) return saeLabel(null, `${Number(single[1])}`);
  return refused(
    /^\d+(?:[.,]\d+)?$/.test(given)
      ? { type: "BareNumber", given, accepted: numbered(given.replace(",", ".")) }
      : { type: "NotAGrade", given },
  );
}

/** The viscosities at 100 °C that a gear label allows in an edition; null if that edition does not have it. */
export function gearLabelRange(
  { winter, hot }: { readonly winter: GearWinterGrade | null; readonly hot: GearHotGrade | null },
  edition: GearGradeEdition,
): KV100Range | null {
  const table = saeJ306[edition];
  return rangeOf(
    winter && table.winter.find(({ grade }) => grade === winter),
    hot && table.hot.find(({ grade }) => grade === hot),
  );
}

/** The viscosities at 100 °C that an engine label allows. */
export const engineLabelRange = ({
  winter,
  hot,
}: {
  readonly winter: EngineWinterGrade | null;
  readonly hot: EngineHotGrade | null;
}): KV100Range | null =>
  rangeOf(
    winter && engineWinterRows.find(({ grade }) => grade === winter),
    hot && engineHotRows.find(({ grade }) => grade === hot),
  );

/** Viscosities at 100 °C from, and below; null leaves the upper end open, as rows with W do. */
export type KV100Range = { readonly from_mm2_s: number; readonly below_mm2_s: number | null };

type WinterRow = { readonly from_mm2_s: number };
type HotRow = { readonly from_mm2_s: number; readonly below_mm2_s: number | null };

/** A label of two rows promises both; null rows promise nothing, and a row that is missing makes no range. */
function rangeOf(winter: WinterRow | null | undefined, hot: HotRow | null | undefined): KV100Range | null {
  if (winter === undefined || hot === undefined) return null;
  const from_mm2_s = Math.max(winter?.from_mm2_s ?? 0, hot?.from_mm2_s ?? 0);
  const below_mm2_s = hot?.below_mm2_s ?? null;
  return below_mm2_s !== null && from_mm2_s >= below_mm2_s ? null : { from_mm2_s, below_mm2_s };
}

function saeLabel(winterText: string | null, hotText: string | null): GradeLabelRead {
  const [gearWinter, gearHot] = [oneOf(gearWinterGrades, winterText), oneOf(gearHotGrades, hotText)];
  const [engineWinter, engineHot] = [oneOf(engineWinterGrades, winterText), oneOf(engineHotGrades, hotText)];
  if (winterText !== null && !gearWinter && !engineWinter)
    return refused({ type: "NoSuchGrade", given: winterText, accepted: [...engineWinterGrades, ...gearWinterGrades] });
  if (hotText !== null && !gearHot && !engineHot)
    return refused({ type: "NoSuchGrade", given: hotText, accepted: [...engineHotGrades, ...gearHotGrades] });
  if (winterText !== null && hotText !== null && !gearWinter !== !gearHot)
    return refused({ type: "TwoStandards", winter: winterText, hot: hotText });
  const excluded = (): GradeLabelRead => refused({ type: "RowsExclude", winter: winterText ?? "", hot: hotText ?? "" });
  if (gearWinter || gearHot) {
    const editions = gearGradeEditions.filter((it) => gearLabelRange({ winter: gearWinter, hot: gearHot }, it));
    if (editions.length === 0) return excluded();
    return { ok: true, label: { type: "gear", winter: gearWinter, hot: gearHot, editions } };
  }
  if (!engineLabelRange({ winter: engineWinter, hot: engineHot })) return excluded();
  return { ok: true, label: { type: "engine", winter: engineWinter, hot: engineHot } };
}

function isoLabel(text: string): GradeLabelRead {
  const VG_mm2_s = Number(text.replace(",", "."));
  if (isoGrades.some((it) => it.VG_mm2_s === VG_mm2_s)) return { ok: true, label: { type: "ISO VG", VG_mm2_s } };
  return refused({
    type: "NoSuchGrade",
    given: `ISO VG ${text}`,
    accepted: isoGrades.map((it) => `ISO VG ${it.VG_mm2_s}`),
  });
}

const oneOf = <Name extends string>(names: readonly Name[], text: string | null): Name | null =>
  names.find((name) => name === text) ?? null;

const numbered = (number: string): readonly string[] => [
  ...[...engineWinterGrades, ...gearWinterGrades].filter((it) => it === `${number}W`),
  ...[...engineHotGrades, ...gearHotGrades].filter((it) => it === number).map((it) => `SAE ${it}`),
  ...isoGrades.filter(({ VG_mm2_s }) => VG_mm2_s === Number(number)).map(({ VG_mm2_s }) => `ISO VG ${VG_mm2_s}`),
];

const refused = (problem: GradeLabelProblem): GradeLabelRead => ({ ok: false, problem });
