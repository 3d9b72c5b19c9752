import { type Command, Option } from "commander";
import {
  type Known,
  type ServiceFinding,
  serviceClassesFromText,
  serviceFindings,
} from "../../../mechanics/fluid/serviceClass.ts";
import type { ServiceClass } from "../../../mechanics/tables/apiClasses.ts";
import { anyOf } from "../../../sheets/words/problemWords.ts";
import { serviceLines, serviceSentence, serviceSource, serviceVerdict } from "../../../sheets/words/serviceWords.ts";
import { mistaken } from "../mistake.ts";
import { print } from "../print.ts";

type Options = {
  readonly class: string;
  readonly hypoid: Known;
  readonly yellowMetal: Known;
  readonly limitedSlip: Known;
  readonly makerAllows?: string;
  readonly inCase?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function fluidCommand(program: Command): void {
  program
    .command("fluid")
    .description("what stands against filling an oil of a service class: yellow metal, hypoid, limited slip (API 1560)")
    .requiredOption("--class <classes>", "what the can claims, as GL-5 or GL-4/GL-5; none where it says nothing")
    .addOption(known("--hypoid <answer>", "whether there is a hypoid in the unit"))
    .addOption(known("--yellow-metal <answer>", "whether there are brass or bronze synchronisers or bushes in it"))
    .addOption(known("--limited-slip <answer>", "whether it has a limited-slip differential"))
    .option("--maker-allows <classes>", "what the unit's own sheet names, as GL-4")
    .option("--in-case <classes>", "where it is only topped up: the class of what stays in, or unknown")
    .option("--working", "print the source of each finding")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft fluid --class GL-5 --yellow-metal yes --hypoid no --limited-slip no")
    .action(answer);
}

function answer(options: Options): void {
  const label = classesOption("--class", options.class, "none");
  const findings = serviceFindings(label, {
    hypoid: options.hypoid,
    yellowMetal: options.yellowMetal,
    limitedSlip: options.limitedSlip,
    makerAllows: options.makerAllows === undefined ? [] : classesOption("--maker-allows", options.makerAllows, null),
    inCase: options.inCase === undefined ? null : classesOption("--in-case", options.inCase, "unknown"),
  });
  const document = {
    classes: label,
    verdict: serviceVerdict(findings),
    findings: findings.map(found),
  };
  print(options.json ?? false, document, [
    ...serviceLines(label, findings),
    ...(options.working ? findings.map((it) => `  ${it.reason}: ${serviceSource(it)}`) : []),
  ]);
}

const found = (it: ServiceFinding) => ({
  level: it.level,
  reason: it.reason,
  sentence: serviceSentence(it),
  classes: it.classes,
  source: serviceSource(it),
});

/** What nobody has looked at is unknown, never no. */
const known = (flags: string, description: string): Option =>
  new Option(flags, description).choices(["yes", "no", "unknown"]).default("unknown");

/** Service classes given as an option; `nothing` is the word for none at all. @throws InputMistake if one is no class. */
function classesOption(name: string, text: string, nothing: string | null): readonly ServiceClass[] {
  if (text.trim() === nothing) return [];
  const read = serviceClassesFromText(text);
  if (read.ok && read.classes.length > 0) return read.classes;
  const accepted = read.ok ? ["GL-5"] : [...read.problem.accepted];
  throw mistaken(name, text, anyOf(nothing === null ? accepted : [...accepted, nothing]));
}
