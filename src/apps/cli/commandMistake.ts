import type { Argument, Command, CommanderError } from "commander";
import { nearest } from "../../sheets/caseForm/nearest.ts";
import { anyOf } from "../../sheets/words/problemWords.ts";
import { InputMistake } from "./mistake.ts";

/** A mistake in what was typed, in the words of this house: the field, what was given, what is accepted. */
export function commandMistake(fault: CommanderError, program: Command, typed: readonly string[]): InputMistake {
  const command = program.commands.find((it) => it.name() === typed[0]) ?? program;
  const quoted = [...fault.message.matchAll(/'([^']*)'/g)].map((match) => match[1] ?? "");
  const [name = ""] = quoted;
  const names = program.commands.map((it) => it.name());
  switch (fault.code) {
    case "commander.help":
      return new InputMistake({ field: "command", given: "nothing", accepted: anyOf(names) });
    case "commander.unknownCommand":
      return new InputMistake({ field: "command", given: `"${name}"`, accepted: nearestOf(name, names) });
    case "commander.unknownOption": {
      const options = command.options.flatMap(({ long }) => long ?? []);
      return new InputMistake({
        field: name,
        given: "an option that is not known here",
        accepted: nearestOf(name, options),
      });
    }
    case "commander.missingArgument":
      return new InputMistake({ field: name, given: "nothing", accepted: descriptionOf(command, name) });
    case "commander.missingMandatoryOptionValue":
    case "commander.optionMissingArgument": {
      const option = command.options.find(({ flags }) => flags === name);
      return new InputMistake({
        field: option?.long ?? name,
        given: "nothing",
        accepted: option?.description ?? "a value",
      });
    }
    case "commander.invalidArgument": {
      const [, given = ""] = quoted;
      const option = command.options.find(({ flags }) => flags === name);
      return new InputMistake({
        field: option?.long ?? name,
        given: `"${given}"`,
        accepted: anyOf((option?.argChoices ?? []).map((it) => `"${it}"`)),
      });
    }
    case "commander.excessArguments": {
      const known = command.registeredArguments.length;
      const given = typed.slice(1).filter((it) => !it.startsWith("-"))[known] ?? "";
      return new InputMistake({ field: command.name(), given: `"${given}" as well`, accepted: shapeOf(command) });
    }
    default:
      return new InputMistake({ field: command.name(), given: typed.join(" "), accepted: shapeOf(command) });
  }
}

const nearestOf = (given: string, known: readonly string[]): string => nearest(given, known) ?? anyOf(known);

const descriptionOf = (command: Command, name: string): string =>
  command.registeredArguments.find((it: Argument) => it.name() === name)?.description ?? "a value";

const shapeOf = (command: Command): string => `turnsleft ${command.name()} ${command.usage()}`;
