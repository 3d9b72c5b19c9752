import { statSync } from "node:fs";
import { resolve } from "node:path";
import type { Command } from "commander";
import { backedUp, restored } from "../../../stores/backup.ts";
import { identityIn } from "../../../stores/identity.ts";
import type { Inspection } from "../../../stores/journalFile.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { print } from "../print.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function backupCommand(program: Command): void {
  program
    .command("backup")
    .description("the journal in one file, taken while it is written, and read back")
    .argument("<file>", "the file to write; it must not be there yet")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft backup hollin-reach.backup --data hollin-reach")
    .action((file: string, { data, json = false }: Options) => {
      const held = backedUp(dataFolder(data), resolve(file));
      const bytes = statSync(file).size;
      print(json, { file: resolve(file), bytes, ...countsOf(held), readBack: true }, [
        `Backed up to ${resolve(file)} (${Math.ceil(bytes / 1024)} kB): ${countLine(held)}.`,
        "Read back and found whole.",
      ]);
    });
}

export function restoreCommand(program: Command): void {
  program
    .command("restore")
    .description("a folder with the journal of a backup; it becomes a device of its own")
    .argument("<file>", "the backup")
    .option(dataFlags, `${dataHelp}; it must hold no journal yet`)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft restore hollin-reach.backup --data hollin-reach-again")
    .action((file: string, { data, json = false }: Options) => {
      const folder = dataFolder(data);
      const held = restored(resolve(file), folder);
      const device = identityIn(folder)?.device ?? null;
      print(json, { folder, device, ...countsOf(held) }, [
        `Restored into ${folder}: ${countLine(held)}.`,
        `It is the device ${device} of the workshop from now on; the one that made the backup may write on.`,
      ]);
    });
}

/** What a journal holds, by the keys of the contract. */
export const countsOf = ({ workshops, entries, jobs, devices, cards }: Inspection) => ({
  workshop: workshops[0] ?? null,
  entries,
  jobs,
  devices,
  owners: cards,
});

export const countLine = ({ entries, jobs, devices, cards }: Inspection): string =>
  `${entries} entries, ${jobs} jobs, ${devices} devices, ${cards} owners' cards`;
