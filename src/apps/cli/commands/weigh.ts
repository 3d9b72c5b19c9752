import { readFileSync, writeFileSync } from "node:fs";
import type { Command } from "commander";
import * as z from "zod/mini";
import { weigh } from "../../../mechanics/remedies/weigh.ts";
import { answerDocument } from "../../../sheets/answer/answerDocument.ts";
import { answerLines } from "../../../sheets/answer/answerLines.ts";
import { answerSvg } from "../../../sheets/answer/answerSvg.tsx";
import { casePageLines } from "../../../sheets/answer/casePageLines.ts";
import { ownerLines } from "../../../sheets/answer/ownerLines.ts";
import { readCase } from "../../../sheets/caseForm/caseDocument.ts";
import { caseSchema } from "../../../sheets/caseForm/caseSchema.ts";
import { caseTemplate } from "../../../sheets/caseForm/template.ts";
import { withThreadNamed } from "../measuredThread.ts";
import { InputMistake, mistaken } from "../mistake.ts";
import { print } from "../print.ts";
import { engine } from "../version.ts";

type Options = {
  readonly json?: boolean;
  readonly template?: boolean;
  readonly schema?: boolean;
  readonly at?: string;
  readonly svg?: string;
  readonly working?: boolean;
  readonly owner?: boolean;
  readonly casePage?: boolean;
};

export function weighCommand(program: Command): void {
  program
    .command("weigh")
    .description("what is left of a thread, what it will carry, what can be done")
    .argument("[case.json]", "the case; - for standard input")
    .option("--json", "one JSON document")
    .option("--template", "print an empty case with its questions")
    .option("--schema", "print the JSON Schema of a case")
    .option("--at <torques>", "odds at these torques as well, N·m, as 10,20,46")
    .option("--svg <file>", "write the picture")
    .option("--working", "print how every figure was got")
    .option("--owner", "what may be done, for the owner: three rows without a word of the trade")
    .option("--case-page", "one page to ask a colleague, without owner or machine")
    .addHelpText("after", "\nExample:\n  turnsleft weigh examples/chain-case-level.json --at 10,20,46")
    .action((file: string | undefined, options: Options) => {
      if (options.template) return print(true, caseTemplate, []);
      if (options.schema) return print(true, z.toJSONSchema(caseSchema), []);
      if (file === undefined) throw mistaken("case.json", null, "a file, - for standard input, or --template");
      answer(file, options);
    });
}

function answer(file: string, options: Options): void {
  const at_Nm = torquesAt(options.at);
  const given = documentIn(file);
  const { written, named } = withThreadNamed(given);
  const read = readCase(written, new Date().toISOString().slice(0, 10));
  if (!read.ok) throw new InputMistake(...read.problems);
  const weighed = weigh(read.given);
  const document = answerDocument(weighed, named ? [named, ...read.ordinary] : read.ordinary, given, at_Nm, engine);
  if (options.svg) writeSvg(options.svg, answerSvg(weighed));
  print(options.json ?? false, document, linesOf());

  function linesOf(): readonly string[] {
    if (options.owner) return ownerLines(weighed);
    if (options.casePage) return casePageLines(weighed);
    return answerLines(weighed, document, at_Nm, options.working ?? false);
  }
}

/** "10,20,46": commas separate, the point is the decimal mark; only here. */
function torquesAt(text: string | undefined): readonly number[] {
  if (text === undefined) return [];
  return text.split(",").map((it) => {
    const torque = /^\s*\d+(\.\d+)?\s*$/.test(it) ? Number(it) : Number.NaN;
    if (!(torque > 0)) throw mistaken("--at", text, "torques in N·m with commas between them, as 10,20,46");
    return torque;
  });
}

function documentIn(file: string): unknown {
  let text: string;
  try {
    text = readFileSync(file === "-" ? 0 : file, "utf8");
  } catch (cause) {
    throw mistaken(
      "case.json",
      file,
      `a file that can be read (${(cause as NodeJS.ErrnoException).code ?? "unreadable"})`,
    );
  }
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw mistaken("case.json", file, `JSON; ${(cause as Error).message}`);
  }
}

function writeSvg(file: string, svg: string): void {
  try {
    writeFileSync(file, svg);
  } catch (cause) {
    throw mistaken(
      "--svg",
      file,
      `a file that can be written (${(cause as NodeJS.ErrnoException).code ?? "not writable"})`,
    );
  }
}
