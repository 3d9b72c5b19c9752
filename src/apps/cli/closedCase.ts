import { saturationPressure } from "../../mechanics/cure/air.ts";
import {
  closedCasePressure,
  type PressureVerdict,
  pressureVerdict,
  withFreeWater,
} from "../../mechanics/fluid/breather.ts";
import { volumeRatio } from "../../mechanics/fluid/expansion.ts";
import { type CaseMetal, caseMetalRows } from "../../mechanics/fluid/expansionInCase.ts";
import { exact, type Quantity, taken, valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, kPa, perK } from "../../mechanics/quantity/unit.ts";
import { judgement, sourceText } from "../../mechanics/tables/source.ts";
import { mistaken } from "./mistake.ts";
import { type Assumed, densityOf, type OilOptions, oilTemperature } from "./oilAt.ts";
import { positiveOption, quantityOption } from "./options.ts";

export type ClosedOptions = OilOptions & {
  readonly closedAt?: string;
  readonly air?: string;
  readonly fill?: string;
  readonly case?: CaseMetal;
  readonly water?: boolean;
};

/** What builds up behind a blocked breather. */
export type ClosedCaseFound = {
  readonly from: Quantity;
  readonly to: Quantity;
  /** Over the outside pressure, and with the vapour of free water where there is any. */
  readonly dry: Quantity;
  readonly pressure: Quantity;
  readonly water: boolean;
  readonly verdict: PressureVerdict;
  readonly assumed: readonly Assumed[];
};

/** The pressure in a case closed at `closedAt` and brought to the temperature of `--oil`. @throws InputMistake */
export function closedCase(closedAt: string, options: ClosedOptions): ClosedCaseFound {
  const from = quantityOption("--closed-at", "t", "temperature", "20 °C", closedAt);
  const to = oilTemperature(options);
  const { rho_60, assumed } = densityOf(options);
  const fill = needed("--fill", options.fill, 'the whole fill, as "1.2 L", with --closed-at');
  const air = needed("--air", options.air, 'the room for air over the oil, as "1 L", with --closed-at');
  const V_oil = positiveOption("--fill", "V_oil", "volume", "1.2 L", fill);
  const V_air = positiveOption("--air", "V_air", "volume", "1 L", air);
  const r = volumeRatio({ rho_60, from, to });
  if (!r.ok) throw mistaken("--closed-at", closedAt, `with --oil: -50 to 150 °C (${r.problem.source})`);
  const alpha = expansionOf(options.case);
  const dry = pressureOf(air, { p_1: outside, T_1: from, T_2: to, V_air, V_oil, r: r.result, alpha: alpha.alpha });
  const pressure = options.water ? withFreeWater(dry, vapour(to, options)) : dry;
  return {
    from,
    to,
    dry,
    pressure,
    water: options.water ?? false,
    verdict: pressureVerdict(pressure),
    assumed: [...assumed, ...alpha.assumed],
  };
}

const outside = exact("p_1", 101.325, kPa, "standard atmosphere, ISO 2533");

function needed(name: string, text: string | undefined, accepted: string): string {
  if (text === undefined) throw mistaken(name, null, accepted);
  return text;
}

function pressureOf(air: string, closed: Parameters<typeof closedCasePressure>[0]): Quantity {
  try {
    return closedCasePressure(closed);
  } catch (fault) {
    if (fault instanceof RangeError) throw mistaken("--air", air, "more room than the oil grows by, or it would burst");
    throw fault;
  }
}

function vapour(T: Quantity, { oil }: ClosedOptions): Quantity {
  if (valueIn(degC, T) > 100) throw mistaken("--water", oil ?? null, "oil up to 100 °C: above it free water boils");
  return saturationPressure(T);
}

function expansionOf(metal: CaseMetal | undefined) {
  if (metal === undefined) {
    const source = sourceText(judgement("nobody said what it is cast of: --case takes its growth off"));
    return { alpha: exact("alpha", 0, perK, source), assumed: [{ reading: "case", value: "does not grow", source }] };
  }
  const { distribution, source } = caseMetalRows[metal];
  return { alpha: taken("alpha", distribution, perK, `${sourceText(source)}, ${metal}`), assumed: [] };
}
