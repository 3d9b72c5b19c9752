import type { Command } from "commander";
import { type OilPart, type TopUp, topUp } from "../../../mechanics/fluid/blend.ts";
import { gearGradesBetween } from "../../../mechanics/fluid/grades.ts";
import type { OilBase, SupposedOil } from "../../../mechanics/fluid/gradesRange.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { mm2_s } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import type { GearGradeEdition, GearHotGrade } from "../../../mechanics/tables/saeJ306.ts";
import { blendLines } from "../../../sheets/words/blendWords.ts";
import { limitsText } from "../../../sheets/words/fluidWords.ts";
import { mistaken } from "../mistake.ts";
import { baseOption, editionOption, labelOption, supposedOption, viscosityOption } from "../oils.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly has: string;
  readonly hasKv100?: string;
  readonly hasLabel?: string;
  readonly add: string;
  readonly addKv100?: string;
  readonly addLabel?: string;
  readonly base?: string;
  readonly edition?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

/** One of the two oils: its amount, its viscosity, the ends that its label allows, and what was supposed of it. */
type Part = {
  readonly oil: OilPart;
  readonly ends_mm2_s: readonly number[];
  readonly label: string | null;
  readonly assumed: readonly Assumed[];
};
type Assumed = { readonly reading: string; readonly value: string; readonly source: string };

export function blendCommand(program: Command): void {
  program
    .command("blend")
    .description("what a top-up with another grade makes of the oil in a case, graded again (ASTM D7152, SAE J306)")
    .requiredOption("--has <volume>", 'what is in the case, as "1.5 L"')
    .option("--has-kv100 <mm2/s>", "its kinematic viscosity at 100 °C, mm²/s, as 15")
    .option("--has-label <grade>", "or its grade, as 75W-90")
    .requiredOption("--add <volume>", 'what is added, as "0.5 L"')
    .option("--add-kv100 <mm2/s>", "its kinematic viscosity at 100 °C, mm²/s, as 8")
    .option("--add-label <grade>", 'or its grade, as "SAE 80"')
    .option("--base <base>", "of an oil known by its ISO VG alone: mineral, synthetic or unknown")
    .option("--edition <year>", "edition of SAE J306: 2019 (where none is given) or 2005")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft blend --has "1.5 L" --has-kv100 15 --add "0.5 L" --add-kv100 8\n  turnsleft blend --has "1.5 L" --has-label 75W-90 --add "0.5 L" --add-label "SAE 80"',
    )
    .action(answer);
}

function answer(options: Options): void {
  const [edition, base] = [editionOption(options.edition), baseOption(options.base)];
  const [has, added] = [
    partOf("--has", options.has, options.hasKv100, options.hasLabel, base, edition),
    partOf("--add", options.add, options.addKv100, options.addLabel, base, edition),
  ] as const;
  const made = topped(has.oil, added.oil, edition);
  const range_mm2_s = rangeOf(has, added, edition);
  const before = gradesBetween(has.ends_mm2_s, edition);
  const after = gradesBetween(range_mm2_s ?? [valueIn(mm2_s, made.kv100)], edition);
  const sure = before.length === 1 && after.length === 1;
  const steps = working(made.kv100, made.crossCheck);
  const assumed = [...has.assumed, ...added.assumed];
  const document = {
    share: digits(made.share.value, 3),
    kv100_mm2s: digits(valueIn(mm2_s, made.kv100), range_mm2_s ? 2 : 4),
    kv100Range_mm2s: range_mm2_s?.map((it) => digits(it, 3)) ?? null,
    crossCheck_mm2s: digits(valueIn(mm2_s, made.crossCheck), range_mm2_s ? 2 : 4),
    gradeBefore: before.length === 1 ? `SAE ${before[0]}` : null,
    gradeAfter: after.length === 1 ? `SAE ${after[0]}` : null,
    gradesAfter: after.map((it) => `SAE ${it}`),
    gradesUp: sure ? made.gradesUp : null,
    edition,
    assumed,
    working: steps,
  };
  print(options.json ?? false, document, [
    ...blendLines({ topUp: made, range_mm2_s, grades: after, labels: [has.label, added.label], assumed }),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

function partOf(
  name: "--has" | "--add",
  volume: string,
  kv100: string | undefined,
  label: string | undefined,
  base: OilBase,
  edition: GearGradeEdition,
): Part {
  const V = positiveOption(name, "V", "volume", "1.5 L", volume);
  const one = `either ${name}-kv100 or ${name}-label, one of them`;
  if (kv100 !== undefined) {
    if (label !== undefined) throw mistaken(`${name}-label`, label, one);
    const nu = viscosityOption(`${name}-kv100`, "nu", kv100);
    return { oil: { V, nu }, ends_mm2_s: [valueIn(mm2_s, nu)], label: null, assumed: [] };
  }
  if (label === undefined) throw mistaken(`${name}-kv100`, null, one);
  const oil = supposedOption(`${name}-label`, label, base, edition);
  const ends_mm2_s = oil.corners.map((it) => it.kv100_mm2_s);
  const industrial = labelOption(`${name}-label`, label).type === "ISO VG";
  return {
    oil: { V, nu: oil.kv100 },
    ends_mm2_s: [Math.min(...ends_mm2_s), Math.max(...ends_mm2_s)],
    label: label.trim(),
    assumed: industrial ? [indexAssumed(oil, label.trim(), `${name}-label`)] : [],
  };
}

/** Only a grade given at 40 °C needs an index to be known at 100 °C. */
function indexAssumed({ VI: { origin } }: SupposedOil, label: string, id: string): Assumed {
  if (origin.type !== "taken" || origin.distribution.type !== "uniform")
    throw new TypeError("the supposed index of an oil is no range");
  const { low, high } = origin.distribution;
  return {
    reading: `viscosity index of ${label}`,
    value: `${low} to ${high}`,
    source: origin.source.replace(`, ${id}`, ""),
  };
}

function topped(has: OilPart, added: OilPart, edition: GearGradeEdition): TopUp {
  const read = topUp(has, added, edition);
  if (!read.ok) throw mistaken("--add", "this blend", limitsText(read.problem));
  return read.topUp;
}

/** The blend's least and greatest viscosity by the ends of its labels; null where both viscosities are known. */
function rangeOf(has: Part, added: Part, edition: GearGradeEdition): readonly [number, number] | null {
  if (has.label === null && added.label === null) return null;
  const at = (V: Quantity, nu_mm2_s: number): OilPart => ({ V, nu: exact("nu", nu_mm2_s, mm2_s) });
  const ends = has.ends_mm2_s.flatMap((a) =>
    added.ends_mm2_s.map((b) => valueIn(mm2_s, topped(at(has.oil.V, a), at(added.oil.V, b), edition).kv100)),
  );
  return [Math.min(...ends), Math.max(...ends)];
}

/** The gear grades that viscosities at 100 °C may fall in; a range ends just below its upper figure, as rows do. */
function gradesBetween(ends_mm2_s: readonly number[], edition: GearGradeEdition): readonly GearHotGrade[] {
  const [least, most] = [Math.min(...ends_mm2_s), Math.max(...ends_mm2_s)];
  const open = least < most ? most * (1 - 1e-9) : most;
  return gearGradesBetween(exact("nu", least, mm2_s), exact("nu", open, mm2_s), edition);
}
