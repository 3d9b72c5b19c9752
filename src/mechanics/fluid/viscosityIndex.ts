import { numericalFormula } from "../quantity/formula.ts";
import { as, exact, type Quantity } from "../quantity/quantity.ts";
import { mm2_s, one } from "../quantity/unit.ts";
import { indexRows, leastForIndex_mm2_s } from "../tables/iso2909.ts";
import { sourceText } from "../tables/source.ts";
import type { ViscosityProblem } from "./viscosity.ts";
import { asEntered, type Limits, outside } from "./viscosityLimits.ts";

export type ViscosityIndexRead =
  | {
      readonly ok: true;
      /** As calculated, before it is rounded. */
      readonly VI: Quantity;
      /** To the whole number, a half to the even one. ASTM D2270-10. */
      readonly printed: number;
    }
  | { readonly ok: false; readonly problem: ViscosityProblem };

/**
 * Viscosity index VI of an oil, by its viscosities at 40 °C and 100 °C. From 2 mm²/s at 100 °C.
 * Source: ASTM D2270-10, procedures A and B; ISO 2909:2002.
 */
export function viscosityIndex(kv40: Quantity, kv100: Quantity): ViscosityIndexRead {
  const problem = outside(kv100, indexLimits) ?? (kv40.value > kv100.value ? null : ({ type: "NotFalling" } as const));
  if (problem) return { ok: false, problem };
  const [U, Y] = [as("U", kv40), as("Y", kv100)];
  const { L, H } = indexReferences(Y);
  const VI = U.value > H.value ? indexUpTo100({ L, U, H }) : indexFrom100({ N: power({ H, U, Y }) });
  return { ok: true, VI, printed: halfToEven(VI.value) };
}

/** Viscosities at 40 °C of the reference oils of index 0 (L) and 100 (H) that have the viscosity `Y` at 100 °C. */
export function indexReferences(Y: Quantity): { readonly L: Quantity; readonly H: Quantity } {
  const Y_mm2_s = asEntered(mm2_s, Y);
  const row = indexRows.find(({ upTo_mm2_s }) => upTo_mm2_s === null || Y_mm2_s <= upTo_mm2_s);
  if (!row) throw new RangeError(`no row of ISO 2909 holds ${Y_mm2_s} mm²/s`);
  const source = sourceText(row.source);
  const coefficients = ([a, b, c]: readonly [number, number, number]) => ({
    a: exact("a", a, one, source),
    b: exact("b", b, one, source),
    c: exact("c", c, one, source),
  });
  return { L: ofIndex0({ ...coefficients(row.L), Y }), H: ofIndex100({ ...coefficients(row.H), Y }) };
}

/** Viscosities at 100 °C for which an index is defined. */
export const indexLimits: Limits = {
  symbol: "Y",
  unit: mm2_s,
  least: leastForIndex_mm2_s,
  most: null,
  source: "ASTM D2270-10, scope",
};

const A = "ASTM D2270-10, procedure A; ISO 2909:2002";
const B = "ASTM D2270-10, procedure B; ISO 2909:2002";

const parabola = { a: one, b: one, c: one, Y: mm2_s };
const ofIndex0 = numericalFormula("L = a * Y^2 + b * Y + c", { ...parabola, L: mm2_s }, A);
const ofIndex100 = numericalFormula("H = a * Y^2 + b * Y + c", { ...parabola, H: mm2_s }, A);
const indexUpTo100 = numericalFormula("VI = 100 * (L - U) / (L - H)", { L: mm2_s, U: mm2_s, H: mm2_s, VI: one }, A);
const power = numericalFormula("N = (log10(H) - log10(U)) / log10(Y)", { H: mm2_s, U: mm2_s, Y: mm2_s, N: one }, B);
const indexFrom100 = numericalFormula("VI = (10^N - 1) / 0.00715 + 100", { N: one, VI: one }, B);

function halfToEven(x: number): number {
  const below = Math.floor(x);
  if (Math.abs(x - below - 0.5) > 1e-9) return Math.round(x);
  return below % 2 === 0 ? below : below + 1;
}
