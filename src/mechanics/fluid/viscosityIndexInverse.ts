import { numericalFormula } from "../quantity/formula.ts";
import { as, exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm2_s, one } from "../quantity/unit.ts";
import type { ViscosityProblem } from "./viscosity.ts";
import { indexLimits, indexReferences, viscosityIndex } from "./viscosityIndex.ts";
import { type Limits, outside } from "./viscosityLimits.ts";

export type InverseIndexRead =
  | { readonly ok: true; readonly nu: Quantity }
  | { readonly ok: false; readonly problem: InverseIndexProblem };

export type InverseIndexProblem =
  | ViscosityProblem
  /** No viscosity of 2 mm²/s or more at 100 °C gives this index. */
  | { readonly type: "NoSuchIndex" };

/** The viscosity at 40 °C of an oil with the viscosity `kv100` at 100 °C and the index `VI`. VI from 0. */
export function kv40FromIndex(kv100: Quantity, VI: Quantity): InverseIndexRead {
  const problem = outside(kv100, indexLimits) ?? outside(VI, notNegative);
  if (problem) return { ok: false, problem };
  const Y = as("Y", kv100);
  const index = as("VI", VI);
  const { L, H } = indexReferences(Y);
  const U = VI.value < 100 ? upTo100({ L, H, VI: index }) : from100({ H, Y, N: powerOf({ VI: index }) });
  return U.value > Y.value ? { ok: true, nu: U } : { ok: false, problem: { type: "NotFalling" } };
}

/**
 * The viscosity at 100 °C of an oil with the viscosity `kv40` at 40 °C and the index `VI`, for oils graded at 40 °C.
 * The standard has no equation solved for it, so its root is sought; the slopes are those of the index itself.
 */
export function kv100FromIndex(kv40: Quantity, VI: Quantity): InverseIndexRead {
  const negative = outside(VI, notNegative);
  if (negative) return { ok: false, problem: negative };
  const root_mm2_s = rootOf(kv40, VI.value);
  if (root_mm2_s === null) return { ok: false, problem: { type: "NoSuchIndex" } };
  const Y = exact("Y", root_mm2_s, mm2_s);
  const there = viscosityIndex({ ...kv40, contributions: { U: 1 } }, { ...Y, contributions: { Y: 1 } });
  if (!there.ok) return there;
  const { U: perU = 0, Y: perY = 1 } = there.VI.contributions;
  const contributions: Record<string, number> = {};
  for (const [key, u] of Object.entries(kv40.contributions)) contributions[key] = (-perU * u) / perY;
  for (const [key, u] of Object.entries(VI.contributions)) contributions[key] = (contributions[key] ?? 0) + u / perY;
  const inputs = { U: as("U", kv40), VI: as("VI", VI) };
  const origin = { type: "worked", formula: "Y = root of VI(U, Y) - VI", source: ROOT, inputs } as const;
  return { ok: true, nu: { ...Y, contributions, origin } };
}

const A = "ASTM D2270-10, procedure A, solved for U";
const B = "ASTM D2270-10, procedure B, solved for U";
const ROOT = "ASTM D2270-10, procedures A and B, root by halving";

const upTo100 = numericalFormula("U = L - VI * (L - H) / 100", { L: mm2_s, H: mm2_s, VI: one, U: mm2_s }, A);
const powerOf = numericalFormula("N = log10(0.00715 * (VI - 100) + 1)", { VI: one, N: one }, B);
const from100 = numericalFormula("U = H / Y^N", { H: mm2_s, Y: mm2_s, N: one, U: mm2_s }, B);

const notNegative: Limits = {
  symbol: "VI",
  unit: one,
  least: 0,
  most: null,
  source: "index of the lower reference oil",
};

/** The index rises with the viscosity at 100 °C while that at 40 °C stands, so halving closes in on the one root. */
function rootOf(kv40: Quantity, VI: number): number | null {
  const above = (Y_mm2_s: number): boolean | null => {
    const read = viscosityIndex(kv40, exact("Y", Y_mm2_s, mm2_s));
    return read.ok ? read.VI.value > VI : null;
  };
  let [low, high] = [indexLimits.least as number, valueIn(mm2_s, kv40) * (1 - 1e-9)];
  if (above(low) !== false || above(high) !== true) return null;
  while (high - low > 1e-13 * high) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (above(middle)) high = middle;
    else low = middle;
  }
  return high;
}
