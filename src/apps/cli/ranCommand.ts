import { Command, CommanderError } from "commander";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { troubleSentence } from "../../sheets/words/storeWords.ts";
import { commandMistake } from "./commandMistake.ts";
import { commandsFor } from "./commandsFor.ts";
import { InputMistake } from "./mistake.ts";
import { engine } from "./version.ts";

/** Runs the command that `given` spells, on the standard streams of this process. @returns its exit code, 0 where all went well */
export async function ranCommand(given: readonly string[]): Promise<number> {
  // A figure below zero is a figure: with a true minus sign no option is looked for in "-40 °C".
  const typed = given.map((it) => it.replace(/^-(?=[\d.,])/, "−"));
  const program = new Command("turnsleft")
    .description(
      "What a torn plug thread will still carry, what its seal needs, and whether any torque satisfies both.",
    )
    .version(engine)
    .addHelpText("after", "\nExample:\n  turnsleft weigh examples/chain-case-level.json")
    .exitOverride()
    .configureOutput({ writeErr: () => {} });
  for (const add of await commandsFor(typed[0])) add(program);
  for (const command of program.commands) command.exitOverride().configureOutput({ writeErr: () => {} });
  try {
    await program.parseAsync(typed, { from: "user" });
    return 0;
  } catch (fault) {
    return exitCode(fault, program, typed);
  }
}

/** 2 for a mistake in what was typed or given, 3 for data in trouble, 1 for a fault of ours. Help and version are answers. */
function exitCode(fault: unknown, program: Command, typed: readonly string[]): number {
  if (fault instanceof CommanderError && fault.exitCode === 0) return 0;
  const mistake = fault instanceof CommanderError ? commandMistake(fault, program, typed) : fault;
  if (mistake instanceof InputMistake) {
    process.stderr.write(`turnsleft: ${mistake.message.replace(/\s*\n\s*/g, " ")}\n`);
    return 2;
  }
  if (mistake instanceof StoreTrouble) {
    process.stderr.write(`turnsleft: ${troubleSentence(mistake.trouble, mistake.place)}\n`);
    return 3;
  }
  process.stderr.write(
    `turnsleft: a fault of ours: ${fault instanceof Error ? (fault.stack ?? fault.message) : fault}\n`,
  );
  return 1;
}
