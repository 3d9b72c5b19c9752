import { type Command, Option } from "commander";
import { type ExpansionRead, expandedVolume, growth, volumeRatio } from "../../../mechanics/fluid/expansion.ts";
import {
  type CaseMetal,
  caseMetalRows,
  caseMetals,
  growthInCase,
  levelRise,
} from "../../../mechanics/fluid/expansionInCase.ts";
import { netRise, temperatureDifference } from "../../../mechanics/fluid/levelHotCold.ts";
import { asEntered, type OutsideLimits } from "../../../mechanics/fluid/viscosityLimits.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { degC, kg_m3, ml, mm, perK } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { fromMemory, judgement, sourceText } from "../../../mechanics/tables/source.ts";
import { expansionLines } from "../../../sheets/words/expandWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly volume: string;
  readonly from: string;
  readonly to: string;
  readonly density?: string;
  readonly case?: CaseMetal;
  readonly perMm?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

type Change = { readonly rho_60: Quantity; readonly from: Quantity; readonly to: Quantity };
type Assumed = { readonly reading: string; readonly value: string; readonly source: string };

/** What gear oils weigh where nobody says, kg/m³. */
const ordinaryDensity = { least: 860, likely: 880, most: 910, source: fromMemory("density of gear oils") };

export function expandCommand(program: Command): void {
  program
    .command("expand")
    .description("how oil grows with heat, in its case, and what the level does (API MPMS 11.1, ASTM D1250)")
    .requiredOption("--volume <volume>", 'the fill at the first temperature, as "1.2 L"')
    .requiredOption("--from <temperature>", 'the temperature it is known at, as "20 °C"')
    .requiredOption("--to <temperature>", 'the temperature asked for, as "90 °C"')
    .option("--density <density>", 'of the oil at 60 °F, as "880 kg/m³"')
    .addOption(new Option("--case <metal>", "what the case is cast of: it grows too").choices([...caseMetals]))
    .option("--per-mm <volume>", 'what a millimetre of level holds, for the rise of the level, as "18 ml/mm"')
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft expand --volume "1.2 L" --from "20 °C" --to "90 °C" --case aluminium --per-mm "18 ml/mm"',
    )
    .action(answer);
}

function answer(options: Options): void {
  const V = positiveOption("--volume", "V", "volume", "1.2 L", options.volume);
  const change = changeOf(options);
  const sure = (read: ExpansionRead): Quantity => {
    if (read.ok) return read.result;
    throw outsideStandard(read.problem, options, change);
  };
  const k = options.perMm ? positiveOption("--per-mm", "k", "volume per length", "18 ml/mm", options.perMm) : null;
  const metal = options.case ?? null;
  const [ratio, expanded, grown] = [
    sure(volumeRatio(change)),
    sure(expandedVolume(V, change)),
    sure(growth(V, change)),
  ] as const;
  const net = metal && sure(growthInCase(V, change, metal));
  const rise = k && (metal ? sure(levelRise(V, change, metal, k)) : riseInStiffCase(V, ratio, change, k));
  const assumed = assumptions(options, metal, k !== null);
  const steps = working(expanded, grown, ...[net, rise].filter((it) => it !== null));
  const grownAt = (rho: number): number =>
    digits(valueIn(ml, sure(growth(V, { ...change, rho_60: exact("rho_60", rho, kg_m3) }))), 3);
  const grownRange_ml =
    options.density === undefined ? ([grownAt(ordinaryDensity.most), grownAt(ordinaryDensity.least)] as const) : null;
  const document = {
    ratio: digits(ratio.value, 7),
    expanded_ml: digits(valueIn(ml, expanded), 5),
    grown_ml: digits(valueIn(ml, grown), 3),
    grownRange_ml,
    net_ml: net && digits(valueIn(ml, net), 3),
    levelRise_mm: rise && digits(valueIn(mm, rise), 3),
    assumed,
    working: steps,
  };
  const lines = expansionLines({
    volume: options.volume,
    from: options.from,
    to: options.to,
    grown_ml: valueIn(ml, grown),
    grownRange_ml,
    metal,
    net_ml: net && valueIn(ml, net),
    rise_mm: rise && valueIn(mm, rise),
    assumed,
  });
  print(options.json ?? false, document, [...lines, ...(options.working ? workingLines(steps) : [])]);
}

function changeOf({ density, from, to }: Options): Change {
  const example = `${ordinaryDensity.likely} kg/m³`;
  return {
    rho_60:
      density === undefined
        ? exact("rho_60", ordinaryDensity.likely, kg_m3, sourceText(ordinaryDensity.source))
        : positiveOption("--density", "rho_60", "density", example, density),
    from: quantityOption("--from", "t", "temperature", "20 °C", from),
    to: quantityOption("--to", "t", "temperature", "90 °C", to),
  };
}

/** The rise where nobody says what the case is made of: as if it did not grow. */
function riseInStiffCase(V: Quantity, r: Quantity, { from, to }: Change, k: Quantity): Quantity {
  const alpha = exact("alpha", 0, perK, "the case taken not to grow");
  return netRise({ V, r, alpha, DT: temperatureDifference(to, from) }, k);
}

function assumptions({ density }: Options, metal: CaseMetal | null, wantsRise: boolean): readonly Assumed[] {
  const { least, likely, most, source } = ordinaryDensity;
  const stiff = judgement("nobody said what it is cast of: the rise is up to a ninth too much");
  return [
    ...(density === undefined
      ? [{ reading: "density", value: `${likely} kg/m³, of ${least} to ${most}`, source: sourceText(source) }]
      : []),
    ...(metal ? [caseExpansion(metal)] : []),
    ...(wantsRise && !metal ? [{ reading: "case", value: "does not grow", source: sourceText(stiff) }] : []),
  ];
}

function caseExpansion(metal: CaseMetal): Assumed {
  const { distribution, source } = caseMetalRows[metal];
  if (distribution.type !== "triangular") throw new TypeError(`the expansion of ${metal} is no triangle`);
  const [likely, low, high] = [distribution.likely, distribution.low, distribution.high].map((it) =>
    digits(it * 1e6, 3),
  );
  return {
    reading: `expansion of ${metal}`,
    value: `${likely}e-6 1/K, of ${low} to ${high}`,
    source: sourceText(source),
  };
}

function outsideStandard(problem: OutsideLimits, options: Options, { rho_60, from }: Change): Error {
  const { symbol, least, most, unit, source } = problem;
  const accepted = `${least ?? "any"} to ${most ?? "any"} ${unit} (${source})`;
  if (symbol === "k") return mistaken("--per-mm", options.perMm ?? null, `${least} ${unit} or more`);
  if (symbol === "rho_60") return mistaken("--density", options.density ?? `${rho_60.value}`, accepted);
  return asEntered(degC, from) === problem.given
    ? mistaken("--from", options.from, accepted)
    : mistaken("--to", options.to, accepted);
}
