import { type Distribution, triangular } from "../quantity/distribution.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { ml_mm, perK } from "../quantity/unit.ts";
import { fromMemory, type Source, sourceText } from "../tables/source.ts";
import { type ExpansionRead, type TemperatureChange, volumeRatio } from "./expansion.ts";
import { netGrowth, netRise, temperatureDifference, type Warming } from "./levelHotCold.ts";
import { type Limits, type OutsideLimits, outside } from "./viscosityLimits.ts";

export const caseMetals = ["aluminium", "magnesium", "iron"] as const;
export type CaseMetal = (typeof caseMetals)[number];

/** Coefficients of linear expansion, 1/K: the usual value, and the spread between alloys. */
export const caseMetalRows: Readonly<Record<CaseMetal, CaseMetalRow>> = caseExpansions();

/** The volume that an oil of volume `V` gains over what its case gains; negative where it cools. */
export function growthInCase(V: Quantity, change: TemperatureChange, metal: CaseMetal): ExpansionRead {
  const warming = warmingOf(V, change, metal);
  return warming.ok ? { ok: true, result: netGrowth(warming.warming) } : warming;
}

/**
 * The rise of the level of an oil of volume `V`, where the surface takes the volume `k` per height at `from`; negative
 * where it cools. The walls at the surface move apart with the case.
 */
export function levelRise(V: Quantity, change: TemperatureChange, metal: CaseMetal, k: Quantity): ExpansionRead {
  const problem = outside(k, surfaces);
  if (problem) return { ok: false, problem };
  const warming = warmingOf(V, change, metal);
  return warming.ok ? { ok: true, result: netRise(warming.warming, k) } : warming;
}

type CaseMetalRow = { readonly distribution: Distribution; readonly source: Source };

function caseExpansions(): Readonly<Record<CaseMetal, CaseMetalRow>> {
  const source = fromMemory("linear expansion of casting alloys, handbooks");
  return {
    aluminium: { distribution: triangular(21e-6, 23e-6, 25e-6), source },
    magnesium: { distribution: triangular(25e-6, 26e-6, 27e-6), source },
    iron: { distribution: triangular(10e-6, 11e-6, 12e-6), source },
  };
}

const surfaces: Limits = { symbol: "k", unit: ml_mm, least: 1e-3, most: null, source: "a free surface" };

type WarmingRead =
  | { readonly ok: true; readonly warming: Warming }
  | { readonly ok: false; readonly problem: OutsideLimits };

function warmingOf(V: Quantity, change: TemperatureChange, metal: CaseMetal): WarmingRead {
  const r = volumeRatio(change);
  if (!r.ok) return r;
  const { distribution, source } = caseMetalRows[metal];
  const alpha = taken("alpha", distribution, perK, `${sourceText(source)}, ${metal}`);
  return { ok: true, warming: { V, r: r.result, alpha, DT: temperatureDifference(change.to, change.from) } };
}
