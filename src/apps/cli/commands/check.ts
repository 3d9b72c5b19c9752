import { existsSync } from "node:fs";
import type { Command } from "commander";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import { journalIn } from "../../../stores/dataFolder.ts";
import { type InspectionFault, inspected } from "../../../stores/journalFile.ts";
import { photosFound } from "../../../stores/photoCopies.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { missingPhotoLines } from "../photoLines.ts";
import { print } from "../print.ts";
import { countLine, countsOf } from "./backup.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function checkCommand(program: Command): void {
  program
    .command("check")
    .description("whether the journal is whole: every page, every entry, every guard, every photo")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft check --data hollin-reach")
    .action(async ({ data, json = false }: Options) => {
      const folder = dataFolder(data);
      if (!existsSync(journalIn(folder))) throw new StoreTrouble("not there", folder);
      const found = inspected(journalIn(folder));
      const { photos, missing, damaged, strangers } = await photosFound(folder, found.photos);
      const faults: readonly Fault[] = [
        ...found.faults,
        ...damaged.map((place) => ({ type: "photo", place }) as const),
      ];
      const whole = faults.length === 0;
      if (!whole) process.exitCode = 3;
      const { clockSetBack } = found;
      const counted = `${countLine(found)}, ${photos} photos`;
      print(
        json,
        { whole, folder, ...countsOf(found), clockSetBack, photos, photosMissing: missing, strangers, faults },
        [
          whole ? `Whole: ${counted}.` : `NOT WHOLE: ${faults.length} faults in ${counted}.`,
          ...faults.map((it) => `  ${it.place}: ${faultWords(it)}`),
          ...(clockSetBack > 0
            ? [`At ${clockSetBack} entries a device's clock had been set back; their order does not hang on it.`]
            : []),
          ...missingPhotoLines(missing),
          ...(strangers.length > 0
            ? [`Beside the photos lie files that are none of ours: ${strangers.join(", ")}.`]
            : []),
          ...(whole ? [] : ["Restore the last backup into a new folder, and bring over what other devices hold."]),
        ],
      );
    });
}

type Fault = InspectionFault | { readonly type: "photo"; readonly place: string };

function faultWords(fault: Fault): string {
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
    case "photo":
      return "the photo is damaged: its bytes are no longer those of its name";
    default:
      return fault satisfies never;
  }
}
