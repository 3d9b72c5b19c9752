import { existsSync } from "node:fs";
import type { Command } from "commander";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import { journalIn } from "../../../stores/dataFolder.ts";
import { type InspectionFault, inspected } from "../../../stores/journalFile.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { print } from "../print.ts";
import { countLine, countsOf } from "./backup.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function checkCommand(program: Command): void {
  program
    .command("check")
    .description("whether the journal is whole: every page, every entry, every guard")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft check --data hollin-reach")
    .action(({ data, json = false }: Options) => {
      const folder = dataFolder(data);
      if (!existsSync(journalIn(folder))) throw new StoreTrouble("not there", folder);
      const found = inspected(journalIn(folder));
      const whole = found.faults.length === 0;
      if (!whole) process.exitCode = 3;
      print(json, { whole, folder, ...countsOf(found), clockSetBack: found.clockSetBack, faults: found.faults }, [
        whole ? `Whole: ${countLine(found)}.` : `NOT WHOLE: ${found.faults.length} faults in ${countLine(found)}.`,
        ...found.faults.map((it) => `  ${it.place}: ${faultWords(it)}`),
        ...(found.clockSetBack > 0
          ? [`At ${found.clockSetBack} entries a device's clock had been set back; their order does not hang on it.`]
          : []),
        ...(whole ? [] : ["Restore the last backup into a new folder, and bring over what other devices hold."]),
      ]);
    });
}

function faultWords(fault: InspectionFault): string {
  switch (fault.type) {
    case "file":
      return fault.words;
    case "guard missing":
      return "the guard of the table was taken away";
    case "malformed":
      return fault.words;
    case "not what its columns say":
      return "the entry was changed behind the journal's back";
    case "gap":
      return "the entry before it is missing";
    case "clock does not rise":
      return "its clock is not after that of the entry before it";
    default:
      return fault satisfies never;
  }
}
