import { statSync } from "node:fs";
import { resolve } from "node:path";
import type { Command } from "commander";
import { type BackedUp, backedUp, restored } from "../../../stores/backup.ts";
import { identityIn } from "../../../stores/identity.ts";
import type { Inspection } from "../../../stores/journalFile.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { damagedPhotoLines, missingPhotoLines } from "../photoLines.ts";
import { print } from "../print.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function backupCommand(program: Command): void {
  program
    .command("backup")
    .description("the journal in one file and its photos beside it, taken while it is written, and read back")
    .argument("<file>", "the file to write; it must not be there yet")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft backup hollin-reach.backup --data hollin-reach")
    .action(async (file: string, { data, json = false }: Options) => {
      const held = await backedUp(dataFolder(data), resolve(file));
      exitFor(held);
      const bytes = statSync(file).size;
      print(json, { file: resolve(file), bytes, ...countsOf(held), ...copiedDocument(held), readBack: true }, [
        `Backed up to ${resolve(file)} (${Math.ceil(bytes / 1024)} kB): ${countLine(held)}.`,
        ...copiedLines(held),
        "Read back and found whole.",
      ]);
    });
}

export function restoreCommand(program: Command): void {
  program
    .command("restore")
    .description("a folder with the journal and photos of a backup; it becomes a device of its own")
    .argument("<file>", "the backup, with its photos beside it")
    .option(dataFlags, `${dataHelp}; it must hold no journal yet`)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft restore hollin-reach.backup --data hollin-reach-again")
    .action(async (file: string, { data, json = false }: Options) => {
      const folder = dataFolder(data);
      const held = await restored(resolve(file), folder);
      exitFor(held);
      const device = identityIn(folder)?.device ?? null;
      print(json, { folder, device, ...countsOf(held), ...copiedDocument(held) }, [
        `Restored into ${folder}: ${countLine(held)}.`,
        ...copiedLines(held),
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

const copiedDocument = ({ copied, photosAt, missing }: BackedUp) => ({
  photos: copied.photos,
  photosAdded: copied.added,
  photosAt,
  photosMissing: missing,
  photosDamaged: copied.damaged,
});

const copiedLines = ({ copied, photosAt, missing }: BackedUp): readonly string[] => [
  ...(copied.photos > 0 ? [`${copied.photos} photos in ${photosAt}, ${copied.added} of them new there.`] : []),
  ...missingPhotoLines(missing),
  ...damagedPhotoLines(copied.damaged),
];

/** A photo that is damaged where it comes from makes the exit say so, and keeps back nothing else. */
function exitFor({ copied }: BackedUp): void {
  if (copied.damaged.length > 0) process.exitCode = 3;
}
