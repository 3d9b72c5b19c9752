import { densityAt } from "../../mechanics/fluid/expansion.ts";
import { supposedViscosity } from "../../mechanics/fluid/gradesRange.ts";
import { dynamicViscosity } from "../../mechanics/fluid/threadFlow.ts";
import { viscosityAt, viscosityLine } from "../../mechanics/fluid/viscosity.ts";
import { exact, type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, kg_m3, mPas } from "../../mechanics/quantity/unit.ts";
import { fromMemory, sourceText } from "../../mechanics/tables/source.ts";
import { mistaken } from "./mistake.ts";
import { baseOption, editionOption, supposedOption, viscosityOption } from "./oils.ts";
import { positiveOption, quantityOption } from "./options.ts";

export type OilOptions = {
  readonly oil?: string;
  readonly label?: string;
  readonly base?: string;
  readonly kv40?: string;
  readonly kv100?: string;
  readonly density?: string;
};

export type Assumed = { readonly reading: string; readonly value: string; readonly source: string };

/** An oil at one temperature, with its density at 60 °F and what was taken for it. */
export type OilAt = {
  readonly T: Quantity;
  readonly rho_60: Quantity;
  readonly rho: Quantity;
  readonly mu: Quantity;
  readonly assumed: readonly Assumed[];
};

/** The oil of the options at the temperature of `--oil`. @throws InputMistake */
export function oilAt(options: OilOptions): OilAt {
  const T = oilTemperature(options);
  const { rho_60, assumed } = densityOf(options);
  const rho = densityAt(rho_60, T);
  if (!rho.ok) throw mistaken("--oil", options.oil ?? null, `-50 to 150 °C (${rho.problem.source})`);
  const mu = dynamicViscosity(kinematic(options, T), rho.result);
  return { T, rho_60, rho: rho.result, mu, assumed: [...assumed, ...byLabel(mu, options)] };
}

/** The temperature of `--oil`. @throws InputMistake */
export function oilTemperature({ oil }: OilOptions): Quantity {
  if (oil === undefined) throw mistaken("--oil", null, 'the temperature of the oil, as "90 °C"');
  return quantityOption("--oil", "t", "temperature", "90 °C", oil);
}

/** The density at 60 °F, an ordinary one where nobody gave it. @throws InputMistake */
export function densityOf({ density }: OilOptions): Pick<OilAt, "rho_60" | "assumed"> {
  if (density !== undefined)
    return { rho_60: positiveOption("--density", "rho_60", "density", "880 kg/m³", density), assumed: [] };
  const source = sourceText(fromMemory("density of gear oils"));
  return {
    rho_60: exact("rho_60", 880, kg_m3, source),
    assumed: [{ reading: "density", value: "880 kg/m³, of 860 to 910", source }],
  };
}

/** What a label leaves open of the viscosity, two standard uncertainties. */
function byLabel(mu: Quantity, { label, oil }: OilOptions): readonly Assumed[] {
  if (label === undefined) return [];
  const [middle, U] = [valueIn(mPas, mu), (2 * standardUncertainty(mu)) / mPas.inSI];
  const value = `${Number(middle.toPrecision(2))} mPa·s at ${oil}, give or take ${Number(U.toPrecision(1))}`;
  return [{ reading: "viscosity", value, source: `all that the label ${label} says` }];
}

function kinematic({ label, base, kv40, kv100, oil }: OilOptions, T: Quantity): Quantity {
  const cold = (): Error => mistaken("--oil", oil ?? null, "a temperature at which the oil still flows");
  if (kv40 !== undefined && kv100 !== undefined) {
    if (label !== undefined) throw mistaken("--label", label, "nothing beside --kv40 and --kv100: one or the other");
    const line = viscosityLine(
      { nu: viscosityOption("--kv40", "nu", kv40), t: exact("t", 40, degC) },
      { nu: viscosityOption("--kv100", "nu", kv100), t: exact("t", 100, degC) },
    );
    if (!line.ok) throw mistaken("--kv40", kv40, `more than at 100 °C (${kv100}): oil grows thinner with heat`);
    const read = viscosityAt(line.line, T);
    if (!read.ok) throw cold();
    return read.nu;
  }
  if (label === undefined)
    throw mistaken(
      kv40 !== undefined ? "--kv100" : kv100 !== undefined ? "--kv40" : "--label",
      null,
      "the grade on the can, as 75W-90, or --kv40 and --kv100 together",
    );
  const read = supposedViscosity(supposedOption("--label", label, baseOption(base), editionOption(undefined)), T);
  if (!read.ok) throw cold();
  return read.nu;
}
