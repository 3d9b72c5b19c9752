import { lognormalByMean, uniform } from "../quantity/distribution.ts";
import { formula, numericalFormula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { degC, kg_m3, ml, mm, N_m, one } from "../quantity/unit.ts";
import { fromMemory, judgement, sourceText } from "../tables/source.ts";
import { freeFall, m_s2 } from "./leakHead.ts";

/** The volume of one drop, and how small and how large it may be. */
export type DropSize = { readonly volume: Quantity; readonly least: Quantity; readonly most: Quantity };

/** A drop of oil where nobody knows the lip it falls from: mean and spread of a value log-uniform from 0.020 to 0.050 ml. */
export const ordinaryDrop: DropSize = (() => {
  const source = sourceText(judgement("0.002 in³ of lubricator practice, lips of 1.2 to 3.5 mm radius"));
  return {
    volume: taken("V_d", lognormalByMean(0.033, 0.26), ml, source),
    least: exact("V_d", 0.02, ml, source),
    most: exact("V_d", 0.05, ml, source),
  };
})();

export type DropVolume =
  | { readonly ok: true; readonly drop: DropSize; readonly x: number }
  | { readonly ok: false; readonly problem: { readonly type: "outside the correction"; readonly x: number } };

/**
 * The volume V_d of a drop that falls from a lip of radius `r`, for surface tension `gamma` and density `rho`.
 *
 * The volume stands on both sides of its equation and is found by repetition, uncertainty and all. Its range is 2 standard
 * uncertainties either way. Refused where x = r/V^(1/3) leaves 0.3 to 1.2. Viscous oil drops a little larger.
 */
export function dropVolume(r: Quantity, gamma: Quantity, rho: Quantity): DropVolume {
  const about = (V: Quantity): Quantity => {
    const x = slenderness({ r, V });
    return tate({ r, gamma, rho, g: freeFall, F: correction({ x }) });
  };
  let volume = about(solvedSoFar(Math.max(1e-12, (4 * r.value) ** 3), {}));
  for (let round = 0; round < ROUNDS && volume.value > 0; round++)
    volume = about(solvedSoFar(volume.value, volume.contributions));
  const x = volume.value > 0 ? r.value / Math.cbrt(volume.value) : Number.NaN;
  if (!(x > 0.3 && x < 1.2)) return { ok: false, problem: { type: "outside the correction", x } };
  const U = 2 * Math.hypot(...Object.values(volume.contributions));
  const end = (value: number): Quantity =>
    exact("V_d", Math.max(0, value) / ml.inSI, ml, "twice the standard uncertainty");
  return { ok: true, drop: { volume, least: end(volume.value - U), most: end(volume.value + U) }, x };
}

/** The surface tension gamma of oil at a temperature. */
export const oilSurfaceTension = (T: Quantity): Quantity => tension({ T, gamma_20: oilTensionAt20 });

/** How many drops make a millilitre. */
export const drops_per_ml = (drop: DropSize): number => 1 / valueIn(ml, drop.volume);

/** The rule 1/(2 pi F) of a fallen to a hanging drop, f(x). Heertjes' F against the table of Harkins and Brown: to 1.3 %. */
export const fallenShare = (x: number): number => 1 / (2 * Math.PI * correction({ x: exact("x", x, one) }).value);

const tension = numericalFormula(
  "gamma = gamma_20 - 0.00007 * (T - 20)",
  { gamma_20: N_m, T: degC, gamma: N_m },
  sourceText(fromMemory("mineral and synthetic oils, 0.07 mN/m less for each degree")),
);
const oilTensionAt20 = taken(
  "gamma_20",
  uniform(0.03, 0.034),
  N_m,
  sourceText(fromMemory("mineral and synthetic oils at 20 °C")),
);

const heertjes = "Heertjes et al., Chem. Eng. Sci. 26 (1971), for 0.3 < x < 1.2, as quoted in lecture notes";
const slenderness = formula("x = r / cbrt(V)", { r: mm, V: ml, x: one }, heertjes);
const correction = formula("F = 0.14782 + 0.27896 * x - 0.1662 * x^2", { x: one, F: one }, heertjes);
const tate = formula(
  "V_d = r * gamma / (rho * g * F)",
  { r: mm, gamma: N_m, rho: kg_m3, g: m_s2, F: one, V_d: ml },
  "Tate's law with the correction of Harkins and Brown, J. Am. Chem. Soc. 41 (1919), f = 1/(2 pi F)",
);

/** Each repetition leaves less than a third of the error, so these reach the last digit. */
const ROUNDS = 60;

/** The volume of the round before, with all that it owes to the inputs, so that its slopes are solved for as well. */
const solvedSoFar = (V: number, contributions: Quantity["contributions"]): Quantity => ({
  ...exact("V", V / ml.inSI, ml, "found by repetition"),
  contributions,
});
