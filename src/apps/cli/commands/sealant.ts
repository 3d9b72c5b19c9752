import { type Command, Option } from "commander";
import { type SealingCase, sealingChoice } from "../../../mechanics/cure/sealantChoice.ts";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { h } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { type SealedFluid, sealedFluids } from "../../../mechanics/tables/cureData.ts";
import { sourceText } from "../../../mechanics/tables/source.ts";
import { stillAsked } from "../../../sheets/words/labelWords.ts";
import { type SealantFound, sealantLines } from "../../../sheets/words/sealantWords.ts";
import { type LabelOptions, labelAsked, withLabelOptions } from "../labelOptions.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { type AnaerobicOptions, breakawayFound, isLightAlloy, metalsOf } from "./sealantAnaerobic.ts";
import { type MeansFound, meansFound } from "./sealantMeans.ts";

type Options = LabelOptions &
  AnaerobicOptions & {
    readonly state?: "sound" | "worn" | "torn";
    readonly taper?: boolean;
    readonly gap?: string;
    readonly notSnug?: boolean;
    readonly score?: string;
    readonly washer?: boolean;
    readonly openedOften?: boolean;
    readonly oily?: boolean;
    readonly within?: string;
    readonly hottest?: string;
    readonly fluid?: SealedFluid;
    readonly working?: boolean;
    readonly json?: boolean;
  };

export function sealantCommand(program: Command): void {
  const command = program
    .command("sealant")
    .description("which class of sealant for which gap, heat and fluid, whether it cures, and how it is undone")
    .addOption(new Option("--state <state>", "of the thread").choices(["sound", "worn", "torn"]))
    .option("--taper", "a taper thread, which seals on its flanks")
    .option("--gap <clearance>", 'clearance in diameter of a worn thread, as "0.2 mm"')
    .option("--not-snug", "the plug does not take a snug pull")
    .option("--score <depth>", 'of the deepest score across the seat, as "0.05 mm"')
    .option("--washer", "a new washer is at hand")
    .option("--opened-often", "the plug comes out at every service")
    .option("--oily", "oil is still on the metal")
    .option("--within <time>", 'it must be on the road within, as "8 h"')
    .option("--metals <metals>", "that meet there, with commas, as steel, aluminium")
    .option("--activator", "the activator for an anaerobic is at hand")
    .option("--temperature <temperature>", 'of the bay, as "12 °C"')
    .option("--hottest <temperature>", 'the joint gets in service, as "120 °C"')
    .addOption(new Option("--fluid <fluid>", "that is sealed in").choices([...sealedFluids]))
    .option("--thread <thread>", "of the plug, as M20x1.5: the torque that breaks an anaerobic loose")
    .option("--engaged <length>", 'the length on which thread meets thread, as "10 mm"')
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft sealant --state worn --gap "0.2 mm" --metals "steel, aluminium" --temperature "12 °C" --hottest "90 °C" --fluid "gear oil" --thread M20x1.5 --engaged "10 mm"',
        '  turnsleft sealant --state sound --score "0.05 mm" --within "8 h" --names-fluid yes --use-by 2027-03-31',
      ].join("\n"),
    );
  withLabelOptions(command).action(answer);
}

function answer(options: Options): void {
  const { hottest, temperature } = options;
  const given = caseOf(options);
  const choice = sealingChoice(given);
  const heat = hottest === undefined ? null : quantityOption("--hottest", "T", "temperature", "120 °C", hottest);
  const T =
    temperature === undefined ? null : quantityOption("--temperature", "T", "temperature", "12 °C", temperature);
  const joint = { ...options, clearance: given.gap, T };
  const means = choice.means.map((it) => meansFound(it, joint, heat, options.fluid ?? null));
  const breakaway = breakawayFound(options);
  const found: SealantFound = {
    row: choice.row,
    // What does not stand comes last: the order of the table is kept beside that.
    means: [...means.filter(stands), ...means.filter((it) => !stands(it))],
    avoid: choice.avoid,
    first: choice.first,
    because: choice.because,
    hottest: hottest ?? null,
    fluid: options.fluid ?? null,
    breakaway,
    label: labelAsked(options),
    useBy: options.useBy ?? null,
  };
  const full = means.flatMap((it) => (it.anaerobic?.type === "cures" ? [it.anaerobic.full] : []));
  const steps = working(...full, ...(breakaway ? breakaway.classes.flatMap(({ low, high }) => [low, high]) : []));
  print(options.json ?? false, document(found, steps), [
    ...sealantLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

const stands = ({ heat, fluid, anaerobic }: MeansFound): boolean =>
  heat?.verdict !== "too hot" && fluid?.verdict !== "does not bear it" && anaerobic?.type !== "does not cure";

function caseOf(options: Options): SealingCase {
  const { state, taper = false, gap, score, within } = options;
  if (state === undefined && !taper) throw mistaken("--state", null, "sound, worn or torn; or --taper");
  const length = (name: string, symbol: string, text: string | undefined, example: string): Quantity | null =>
    text === undefined ? null : positiveOption(name, symbol, "length", example, text);
  if (gap !== undefined && state === "sound")
    throw mistaken("--gap", gap, "--state worn with it: a sound thread has none to seal");
  if (score !== undefined && state !== "sound")
    throw mistaken("--score", score, "--state sound with it: a worn thread is chosen for by its gap");
  return {
    taper,
    thread: state ?? "sound",
    gap: length("--gap", "c", gap, "0.2 mm"),
    holdsSnug: !options.notSnug,
    score: length("--score", "s", score, "0.05 mm"),
    washerAtHand: options.washer ?? false,
    openedOften: options.openedOften ?? false,
    oily: options.oily ?? false,
    lightAlloy: isLightAlloy(metalsOf(options)),
    timeToRoad: within === undefined ? null : positiveOption("--within", "t", "time", "8 h", within),
  };
}

function document({ row, means, avoid, first, because, breakaway, label }: SealantFound, steps: readonly Step[]) {
  return {
    row,
    means: means.map(({ means: name, heat, fluid, anaerobic, undone }) => ({
      means: name,
      fluid: fluid && { verdict: fluid.verdict, source: sourceText(fluid.source) },
      heat: heat && { verdict: heat.verdict, room_K: digits(heat.room_K, 3), source: sourceText(heat.source) },
      cures: anaerobic && anaerobic.type === "cures",
      grade: anaerobic?.type === "cures" ? anaerobic.grade : null,
      full_h: anaerobic?.type === "cures" ? digits(valueIn(h, anaerobic.full), 2) : null,
      hindrances: anaerobic?.type === "does not cure" ? anaerobic.hindrances : [],
      undone,
    })),
    avoid,
    first,
    because,
    breakaway_Nm:
      breakaway &&
      Object.fromEntries(breakaway.classes.map(({ strength, low_Nm, high_Nm }) => [strength, [low_Nm, high_Nm]])),
    label: label.map(({ id, verdict }) => ({ id, verdict })),
    asked: stillAsked(label),
    working: steps,
  };
}
