import { uniform } from "../quantity/distribution.ts";
import { as, exact, type Quantity, reading, taken, valueIn } from "../quantity/quantity.ts";
import { degC, mm2_s, one } from "../quantity/unit.ts";
import { isoGradeReach } from "../tables/iso3448.ts";
import { saeJ300 } from "../tables/saeJ300.ts";
import { type GearGradeEdition, saeJ306 } from "../tables/saeJ306.ts";
import { fromMemory, judgement, type Source, sourceText } from "../tables/source.ts";
import { engineLabelRange, type GradeLabel, gearLabelRange } from "./gradesText.ts";
import { type ViscosityProblem, viscosityAt, viscosityLine } from "./viscosity.ts";
import { type InverseIndexProblem, kv40FromIndex, kv100FromIndex } from "./viscosityIndexInverse.ts";

export const oilBases = ["mineral", "synthetic", "unknown"] as const;
export type OilBase = (typeof oilBases)[number];

/** What a label lets one suppose of an oil: its likely middle, and the corners of all that it may be. */
export type SupposedOil = {
  readonly kv40: Quantity;
  readonly kv100: Quantity;
  readonly VI: Quantity;
  readonly corners: readonly { readonly kv40_mm2_s: number; readonly kv100_mm2_s: number }[];
};

export type SupposedOilRead =
  | { readonly ok: true; readonly oil: SupposedOil }
  | { readonly ok: false; readonly problem: SupposedOilProblem };

export type SupposedOilProblem =
  | InverseIndexProblem
  /** The label has a least viscosity and no greatest: a W row alone, or the thickest grade. */
  | { readonly type: "NoUpperEnd"; readonly from_mm2_s: number }
  | { readonly type: "NotInEdition"; readonly edition: GearGradeEdition };

/**
 * Viscosities of an oil of which only the label is known, entered under `id`: anywhere in its row, with the index
 * that is usual for its base. Two oils need two ids, or their doubts would cancel.
 */
export function supposedOil(label: GradeLabel, base: OilBase, edition: GearGradeEdition, id: string): SupposedOilRead {
  const { low, high, source } = indexOfBase[base];
  const VI = taken("VI", uniform(low, high), one, `${sourceText(source)}, ${id}`);
  const graded = gradedViscosity(label, edition, id);
  if (!graded.ok) return graded;
  const { nu, ends_mm2_s } = graded;
  const middle = bothEnds(label, nu, VI);
  if (!middle.ok) return middle;
  const corners = [];
  for (const nu_mm2_s of ends_mm2_s)
    for (const index of [low, high]) {
      const corner = bothEnds(label, exact(nu.symbol, nu_mm2_s, mm2_s), exact("VI", index, one));
      if (!corner.ok) return corner;
      const [kv40_mm2_s, kv100_mm2_s] = [valueIn(mm2_s, corner.kv40), valueIn(mm2_s, corner.kv100)];
      corners.push({ kv40_mm2_s, kv100_mm2_s });
    }
  return { ok: true, oil: { kv40: middle.kv40, kv100: middle.kv100, VI, corners } };
}

export type SupposedViscosityRead =
  | { readonly ok: true; readonly nu: Quantity; readonly least_mm2_s: number; readonly most_mm2_s: number }
  | { readonly ok: false; readonly problem: ViscosityProblem };

/** The viscosity of a supposed oil at the temperature `t`, with the least and the greatest that its label allows. */
export function supposedViscosity({ kv40, kv100, corners }: SupposedOil, t: Quantity): SupposedViscosityRead {
  const middle = through(kv40, kv100, t);
  if (!middle.ok) return middle;
  const ends_mm2_s: number[] = [];
  for (const { kv40_mm2_s, kv100_mm2_s } of corners) {
    const corner = through(exact("nu", kv40_mm2_s, mm2_s), exact("nu", kv100_mm2_s, mm2_s), t);
    if (!corner.ok) return corner;
    ends_mm2_s.push(valueIn(mm2_s, corner.nu));
  }
  return { ok: true, nu: middle.nu, least_mm2_s: Math.min(...ends_mm2_s), most_mm2_s: Math.max(...ends_mm2_s) };
}

/** Usual viscosity indices by base. A mineral multigrade with much polymer stands higher: call it unknown. */
const indexOfBase: Readonly<Record<OilBase, { readonly low: number; readonly high: number; readonly source: Source }>> =
  {
    mineral: { low: 95, high: 105, source: fromMemory("usual viscosity index of mineral oils") },
    synthetic: { low: 140, high: 170, source: fromMemory("usual viscosity index of synthetic oils") },
    unknown: { low: 95, high: 170, source: judgement("viscosity index of mineral to synthetic oils") },
  };

type Graded =
  | { readonly ok: true; readonly nu: Quantity; readonly ends_mm2_s: readonly [number, number] }
  | { readonly ok: false; readonly problem: SupposedOilProblem };

/** The viscosity that a label is about: at 40 °C for an industrial grade, else at 100 °C. */
function gradedViscosity(label: GradeLabel, edition: GearGradeEdition, id: string): Graded {
  if (label.type === "ISO VG") {
    const [low, high] = [label.VG_mm2_s * (1 - isoGradeReach), label.VG_mm2_s * (1 + isoGradeReach)];
    return { ok: true, nu: labelled("U", low, high, id, "ISO 3448:1992"), ends_mm2_s: [low, high] };
  }
  const range = label.type === "gear" ? gearLabelRange(label, edition) : engineLabelRange(label);
  if (!range) return { ok: false, problem: { type: "NotInEdition", edition } };
  const { from_mm2_s: low, below_mm2_s: high } = range;
  if (high === null) return { ok: false, problem: { type: "NoUpperEnd", from_mm2_s: low } };
  const evidence = sourceText(label.type === "gear" ? saeJ306[edition].source : saeJ300);
  return { ok: true, nu: labelled("Y", low, high, id, evidence), ends_mm2_s: [low, high] };
}

const labelled = (symbol: string, low: number, high: number, id: string, evidence: string): Quantity =>
  reading(symbol, uniform(low, high), mm2_s, id, `label, ${evidence}`);

type BothEnds =
  | { readonly ok: true; readonly kv40: Quantity; readonly kv100: Quantity }
  | { readonly ok: false; readonly problem: InverseIndexProblem };

function bothEnds(label: GradeLabel, nu: Quantity, VI: Quantity): BothEnds {
  const other = label.type === "ISO VG" ? kv100FromIndex(nu, VI) : kv40FromIndex(nu, VI);
  if (!other.ok) return other;
  const [kv40, kv100] = label.type === "ISO VG" ? [nu, other.nu] : [other.nu, nu];
  return { ok: true, kv40: as("nu_40", kv40), kv100: as("nu_100", kv100) };
}

const [t40, t100] = [exact("t", 40, degC, "ASTM D2270-10"), exact("t", 100, degC, "ASTM D2270-10")];

function through(kv40: Quantity, kv100: Quantity, t: Quantity) {
  const drawn = viscosityLine({ nu: kv40, t: t40 }, { nu: kv100, t: t100 });
  return drawn.ok ? viscosityAt(drawn.line, t) : drawn;
}
