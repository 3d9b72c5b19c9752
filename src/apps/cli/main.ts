#!/usr/bin/env node
import { Command, CommanderError } from "commander";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { troubleSentence } from "../../sheets/words/storeWords.ts";
import { commandMistake } from "./commandMistake.ts";
import { backupCommand, restoreCommand } from "./commands/backup.ts";
import { blendCommand } from "./commands/blend.ts";
import { checkCommand } from "./commands/check.ts";
import { convertCommand } from "./commands/convert.ts";
import { cureCommand } from "./commands/cure.ts";
import { demoCommand } from "./commands/demo.ts";
import { dueCommand } from "./commands/due.ts";
import { expandCommand } from "./commands/expand.ts";
import { exportCommand, importCommand } from "./commands/exportImport.ts";
import { fluidCommand } from "./commands/fluid.ts";
import { heldCommand } from "./commands/held.ts";
import { leakCommand } from "./commands/leak.ts";
import { levelCommand } from "./commands/level.ts";
import { limitsCommand } from "./commands/limits.ts";
import { pressureCommand } from "./commands/pressure.ts";
import { sealantCommand } from "./commands/sealant.ts";
import { standingCommand } from "./commands/standing.ts";
import { startCommand } from "./commands/start.ts";
import { stripCommand } from "./commands/strip.ts";
import { threadCommand } from "./commands/thread.ts";
import { torqueCommand } from "./commands/torque.ts";
import { viscosityCommand } from "./commands/viscosity.ts";
import { volumeCommand } from "./commands/volume.ts";
import { weighCommand } from "./commands/weigh.ts";
import { InputMistake } from "./mistake.ts";
import { engine } from "./version.ts";

const program = new Command("turnsleft")
  .description("What a torn plug thread will still carry, what its seal needs, and whether any torque satisfies both.")
  .version(engine)
  .addHelpText("after", "\nExample:\n  turnsleft weigh examples/chain-case-level.json")
  .exitOverride()
  .configureOutput({ writeErr: () => {} });

/** A figure below zero is a figure: with a true minus sign no option is looked for in "-40 °C". */
const typed = process.argv.slice(2).map((it) => it.replace(/^-(?=[\d.,])/, "−"));

const commands = [
  weighCommand,
  threadCommand,
  limitsCommand,
  stripCommand,
  torqueCommand,
  cureCommand,
  sealantCommand,
  pressureCommand,
  volumeCommand,
  levelCommand,
  leakCommand,
  expandCommand,
  viscosityCommand,
  blendCommand,
  fluidCommand,
  dueCommand,
  heldCommand,
  convertCommand,
  startCommand,
  demoCommand,
  standingCommand,
  backupCommand,
  restoreCommand,
  exportCommand,
  importCommand,
  checkCommand,
];
for (const add of commands) add(program);
for (const command of program.commands) command.exitOverride().configureOutput({ writeErr: () => {} });

process.stdout.on("error", (fault: NodeJS.ErrnoException) => {
  if (fault.code !== "EPIPE") throw fault;
  process.exit(0);
});

try {
  await program.parseAsync(typed, { from: "user" });
} catch (fault) {
  process.exitCode = exitCode(fault);
}

/** 2 for a mistake in what was typed or given, 3 for data in trouble, 1 for a fault of ours. Help and version are answers. */
function exitCode(fault: unknown): number {
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
