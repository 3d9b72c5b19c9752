import { type ExpansionRead, volumeRatio } from "../../../mechanics/fluid/expansion.ts";
import { type CaseMetal, levelRise } from "../../../mechanics/fluid/expansionInCase.ts";
import { netRise, temperatureDifference } from "../../../mechanics/fluid/levelHotCold.ts";
import { asEntered } from "../../../mechanics/fluid/viscosityLimits.ts";
import { triangular, uniform } from "../../../mechanics/quantity/distribution.ts";
import { type Quantity, taken } from "../../../mechanics/quantity/quantity.ts";
import { degC, kg_m3, perK } from "../../../mechanics/quantity/unit.ts";
import { fromMemory, judgement, sourceText } from "../../../mechanics/tables/source.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";

export type WarmthOptions = {
  readonly oil?: string;
  readonly at?: string;
  readonly doubtful?: string | true;
  readonly settled?: boolean;
  readonly case?: CaseMetal;
  readonly fill?: string;
};

/** A temperature given as an option, with the text it was given in. */
export type Warm = { readonly name: string; readonly text: string };

/**
 * How far the level rises from the temperature of `--at` to that of `to`, for the volume per height `k`.
 * The density is nobody's reading, so it is taken with its range; so is the metal of the case where `--case` is not given.
 * @throws InputMistake
 */
export function riseTo(to: Warm, k: Quantity, options: WarmthOptions): Quantity {
  const { at, fill, case: metal } = options;
  if (at === undefined)
    throw mistaken("--at", null, `the temperature the level is counted at, as "20 °C", with ${to.name}`);
  if (fill === undefined) throw mistaken("--fill", null, `the whole fill, as "2.4 L", with ${to.name}`);
  const V = positiveOption("--fill", "V", "volume", "2.4 L", fill);
  const change = {
    rho_60: gearOilDensity,
    from: quantityOption("--at", "t", "temperature", "20 °C", at),
    to: quantityOption(to.name, "t", "temperature", "55 °C", to.text),
  };
  const sure = (read: ExpansionRead): Quantity => {
    if (read.ok) return read.result;
    const { symbol, least, most, unit, given, source } = read.problem;
    if (symbol === "k") throw mistaken("--per-mm", `${given} ${unit}`, `${least} ${unit} or more`);
    const wrong = asEntered(degC, change.from) === given ? { name: "--at", text: at } : to;
    throw mistaken(wrong.name, wrong.text, `${least} to ${most} ${unit} (${source})`);
  };
  if (metal) return sure(levelRise(V, change, metal, k));
  const DT = temperatureDifference(change.to, change.from);
  return netRise({ V, r: sure(volumeRatio(change)), alpha: anyCase, DT }, k);
}

/** What the rise rests on that nobody gave. */
export const warmthAssumed = ({ case: metal }: WarmthOptions) => [
  { reading: "density", value: "880 kg/m³, of 860 to 910", source: densitySource },
  ...(metal ? [] : [{ reading: "case", value: "of iron, aluminium or magnesium", source: caseSource }]),
];

const densitySource = sourceText(fromMemory("density of gear oils"));
const caseSource = sourceText(judgement("nobody said what it is cast of: --case narrows the rise"));
const gearOilDensity = taken("rho_60", triangular(860, 880, 910), kg_m3, densitySource);
const anyCase = taken("alpha", uniform(10e-6, 27e-6), perK, caseSource);
