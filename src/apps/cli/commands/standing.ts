import type { Command } from "commander";
import { journalReader } from "../../../journal/reader.ts";
import { standing } from "../../../journal/views/standing.ts";
import { backupLine } from "../../../sheets/words/backupWords.ts";
import { standingLines } from "../../../sheets/words/standingWords.ts";
import { openToRead } from "../../../stores/dataFolder.ts";
import { backupAge } from "../../../stores/lastBackup.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { print } from "../print.ts";
import { momentOption } from "../readings.ts";

type Options = { readonly data?: string; readonly now?: string; readonly json?: boolean };

export function standingCommand(program: Command): void {
  program
    .command("standing")
    .description("what stands open, drained, by hand or curing; what must not be started first")
    .option(dataFlags, dataHelp)
    .option("--now <moment>", "the moment to look at, as 2026-11-25T10:40Z; by the clock unless told")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft standing --data hollin-reach")
    .action(async ({ data, now, json = false }: Options) => {
      const moment = momentOption("--now", now);
      const folder = dataFolder(data);
      const { store, close } = openToRead(folder);
      const reader = journalReader(store);
      await reader.refresh();
      await close();
      const jobs = standing(reader.sheets(), moment);
      const backup = backupAge(folder, moment);
      print(json, { now: moment, standing: jobs, backup }, [...standingLines(jobs, reader.shop()), backupLine(backup)]);
    });
}
