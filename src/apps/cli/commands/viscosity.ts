import type { Command } from "commander";
import { engineGrades, gearGrade, gearGradesBetween, isoGrade } from "../../../mechanics/fluid/grades.ts";
import { supposedViscosity } from "../../../mechanics/fluid/gradesRange.ts";
import { engineLabelRange, gearLabelRange, type KV100Range } from "../../../mechanics/fluid/gradesText.ts";
import { levellingFactor } from "../../../mechanics/fluid/levelLip.ts";
import {
  reachOf,
  temperatureFor,
  type ViscosityLine,
  viscosityAt,
  viscosityLine,
} from "../../../mechanics/fluid/viscosity.ts";
import { viscosityIndex } from "../../../mechanics/fluid/viscosityIndex.ts";
import { asEntered, d341Limits } from "../../../mechanics/fluid/viscosityLimits.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { degC, mm2_s } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { isoGradeReach } from "../../../mechanics/tables/iso3448.ts";
import { type GearGradeEdition, gearGradeEditions } from "../../../mechanics/tables/saeJ306.ts";
import { type LabelHeld, supposedLines, viscosityLines } from "../../../sheets/words/fluidWords.ts";
import { mistaken } from "../mistake.ts";
import { baseOption, editionOption, labelOption, supposedOption, viscosityOption } from "../oils.ts";
import { quantityOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly kv40?: string;
  readonly kv100?: string;
  readonly temperature?: string;
  readonly label?: string;
  readonly base?: string;
  readonly edition?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function viscosityCommand(program: Command): void {
  program
    .command("viscosity")
    .description("viscosity at a temperature, viscosity index and grade of an oil (ASTM D341, ISO 2909, SAE J306)")
    .option("--kv40 <mm2/s>", "kinematic viscosity at 40 °C, mm²/s, as 100")
    .option("--kv100 <mm2/s>", "kinematic viscosity at 100 °C, mm²/s, as 15")
    .option("--temperature <temperature>", 'the temperature asked for, as "20 °C"')
    .option("--label <grade>", "the grade on the can, as 75W-90: held against the viscosities, or all that is known")
    .option("--base <base>", "of an oil of which only the label is known: mineral, synthetic or unknown")
    .option("--edition <year>", "edition of SAE J306: 2019 (where none is given) or 2005")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft viscosity --kv40 100 --kv100 15 --temperature "20 °C"\n  turnsleft viscosity --label 75W-90 --base mineral --temperature "0 °C"',
    )
    .action(answer);
}

function answer(options: Options): void {
  const edition = editionOption(options.edition);
  const t =
    options.temperature === undefined
      ? null
      : quantityOption("--temperature", "t", "temperature", "20 °C", options.temperature);
  const { kv40, kv100, label, base } = options;
  if (kv40 === undefined && kv100 === undefined && label !== undefined) {
    supposed(options, label, t, edition);
    return;
  }
  if (kv40 === undefined || kv100 === undefined)
    throw mistaken(kv40 === undefined ? "--kv40" : "--kv100", null, "--kv40 and --kv100 together, or --label alone");
  if (base !== undefined)
    throw mistaken("--base", base, "--label alone with it: two viscosities tell more than a base");
  measured(options, { kv40, kv100 }, t, edition);
}

function measured(
  options: Options,
  given: { readonly kv40: string; readonly kv100: string },
  t: Quantity | null,
  edition: GearGradeEdition,
): void {
  const [kv40, kv100] = [
    viscosityOption("--kv40", "nu", given.kv40),
    viscosityOption("--kv100", "nu", given.kv100),
  ] as const;
  const drawn = viscosityLine({ nu: kv40, t: exact("t", 40, degC) }, { nu: kv100, t: exact("t", 100, degC) });
  if (!drawn.ok)
    throw mistaken("--kv40", given.kv40, `more than at 100 °C (${given.kv100}): oil grows thinner with heat`);
  const index = viscosityIndex(kv40, kv100);
  const nu = t && onLine(drawn.line, t, options.temperature ?? "");
  const label = options.label === undefined ? null : labelHeld(options.label, { kv40, kv100 }, edition);
  const hot = nu && viscosityAt(drawn.line, exact("t", 90, degC, "oil as hot as after a run"));
  const timesHot = nu && hot?.ok ? levellingFactor(nu, hot.nu) : null;
  const steps = working(...(timesHot ? [timesHot] : nu ? [nu] : []), ...(index.ok ? [index.VI] : []));
  const found = {
    index: index.ok ? index.printed : null,
    nu,
    timesHot,
    t,
    reach: t && reachOf(drawn.line, t),
    grade: gearGrade(kv100, edition),
    engine: engineGrades(kv100),
    iso: isoGrade(kv40),
    label,
  };
  const document = {
    index: found.index,
    kv_mm2s: nu && digits(valueIn(mm2_s, nu), 4),
    grade: found.grade.type === "gear grade" ? `SAE ${found.grade.grade}` : null,
    edition,
    engineGrades: found.engine.map((it) => `SAE ${it}`),
    isoGrade: found.iso.type === "ISO VG" ? `ISO VG ${found.iso.VG_mm2_s}` : null,
    timesHot: timesHot && digits(timesHot.value, 2),
    reach: found.reach,
    label: label?.text ?? null,
    labelFits: label?.fits ?? null,
    working: steps,
  };
  print(options.json ?? false, document, [...viscosityLines(found), ...(options.working ? workingLines(steps) : [])]);
}

/** Where only the grade is known: ranges, with the index that is usual for the base. */
function supposed(options: Options, text: string, t: Quantity | null, edition: GearGradeEdition): void {
  const base = baseOption(options.base);
  const label = labelOption("--label", text);
  const { kv40, kv100, VI, corners } = supposedOption("--label", text, base, edition);
  const ends = (figures: readonly number[]): readonly [number, number] => [Math.min(...figures), Math.max(...figures)];
  const [kv40_mm2_s, kv100_mm2_s] = [
    ends(corners.map((it) => it.kv40_mm2_s)),
    ends(corners.map((it) => it.kv100_mm2_s)),
  ] as const;
  const drawn = viscosityLine({ nu: kv40, t: exact("t", 40, degC) }, { nu: kv100, t: exact("t", 100, degC) });
  const at = t && supposedViscosity({ kv40, kv100, VI, corners }, t);
  if (t && (!at?.ok || !drawn.ok))
    throw mistaken("--temperature", options.temperature ?? "", "a temperature at which the oil still flows");
  const reach = t && drawn.ok ? reachOf(drawn.line, t) : null;
  const usual = VI.origin.type === "taken" ? VI.origin : null;
  const index =
    usual?.distribution.type === "uniform" ? ([usual.distribution.low, usual.distribution.high] as const) : null;
  if (!usual || !index) throw new TypeError("the supposed index of an oil is no range");
  const source = usual.source.replace(/, --label$/, "");
  const grades =
    label.type === "gear" && label.hot ? [label.hot] : gearGradesBetween(...openAbove(kv100_mm2_s), edition);
  const steps = working(...(at?.ok ? [at.nu] : [kv40, kv100]));
  const bounds = (range: readonly [number, number]): readonly number[] => range.map((it) => digits(it, 3));
  const document = {
    index: null,
    kv_mm2s: at?.ok ? digits(valueIn(mm2_s, at.nu), 2) : null,
    kvRange_mm2s: at?.ok ? bounds([at.least_mm2_s, at.most_mm2_s]) : null,
    kv40Range_mm2s: bounds(kv40_mm2_s),
    kv100Range_mm2s: bounds(kv100_mm2_s),
    indexRange: index,
    grade: grades.length === 1 ? `SAE ${grades[0]}` : null,
    grades: grades.map((it) => `SAE ${it}`),
    edition,
    reach,
    label: text.trim(),
    base,
    assumed: [{ reading: "viscosity index", value: index.join(" to "), source }],
    working: steps,
  };
  const lines = supposedLines({
    text: text.trim(),
    kv40_mm2_s,
    kv100_mm2_s,
    at: t && at?.ok && reach ? { t, reach, nu_mm2_s: [at.least_mm2_s, at.most_mm2_s] } : null,
    index: { range: index, source },
  });
  print(options.json ?? false, document, [...lines, ...(options.working ? workingLines(steps) : [])]);
}

/** @throws InputMistake where the oil would leave the chart, with the temperatures between which it stays on it. */
function onLine(line: ViscosityLine, t: Quantity, text: string): Quantity {
  const read = viscosityAt(line, t);
  if (read.ok) return read.nu;
  const [hot, cold] = [d341Limits.least, d341Limits.most].map((it) => {
    const end = temperatureFor(line, exact("nu", it ?? Number.NaN, mm2_s));
    return end.ok ? valueIn(degC, end.t) : Number.NaN;
  });
  throw mistaken(
    "--temperature",
    text,
    `${Math.ceil(cold ?? 0)} to ${Math.floor(hot ?? 0)} °C for this oil (${d341Limits.source})`,
  );
}

/** Rows end below their upper figure, so a range that ends there does not touch the next row. */
const openAbove = ([least, most]: readonly [number, number]): [Quantity, Quantity] => [
  exact("nu", least, mm2_s),
  exact("nu", most * (1 - 1e-9), mm2_s),
];

function labelHeld(
  text: string,
  { kv40, kv100 }: { readonly kv40: Quantity; readonly kv100: Quantity },
  edition: GearGradeEdition,
): LabelHeld {
  const label = labelOption("--label", text);
  const at_degC = label.type === "ISO VG" ? 40 : 100;
  const measured_mm2_s = asEntered(mm2_s, at_degC === 40 ? kv40 : kv100);
  const asks = (of: GearGradeEdition): KV100Range | null => {
    if (label.type === "engine") return engineLabelRange(label);
    if (label.type === "gear") return gearLabelRange(label, of);
    const [from_mm2_s, below_mm2_s] = [1 - isoGradeReach, 1 + isoGradeReach].map((it) =>
      digits(it * label.VG_mm2_s, 6),
    );
    return { from_mm2_s: from_mm2_s ?? Number.NaN, below_mm2_s: below_mm2_s ?? null };
  };
  const within = (range: KV100Range | null): boolean =>
    range !== null &&
    measured_mm2_s >= range.from_mm2_s &&
    (range.below_mm2_s === null ||
      measured_mm2_s < range.below_mm2_s ||
      (label.type === "ISO VG" && measured_mm2_s === range.below_mm2_s));
  const fits = within(asks(edition));
  const elsewhere = gearGradeEditions.find((it) => it !== edition && within(asks(it))) ?? null;
  return { text: text.trim(), asks: asks(edition), at_degC, measured_mm2_s, fits, fitsUnder: fits ? null : elsewhere };
}
