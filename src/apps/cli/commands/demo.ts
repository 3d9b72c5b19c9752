import type { Command } from "commander";
import { demoJournal } from "../../../demo/demoJournal.ts";
import { workshopOfDemo } from "../../../demo/workshop.ts";
import type { WorkshopId } from "../../../journal/facts/ids.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import { openToWrite } from "../../../stores/dataFolder.ts";
import { dataFlags, dataFolder } from "../dataOption.ts";
import { print } from "../print.ts";
import { momentOption } from "../readings.ts";
import { engine } from "../version.ts";

type Options = { readonly data: string; readonly now?: string; readonly json?: boolean };

export function demoCommand(program: Command): void {
  program
    .command("demo")
    .description("an invented workshop to look around in: thirteen jobs of a year, three of them open")
    .requiredOption(dataFlags, "a folder that holds no journal yet")
    .option("--now <moment>", "the moment at which it is to stand, as 2026-11-25T10:40Z; by the clock unless told")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft demo --data hollin-reach")
    .action(async ({ data, now, json = false }: Options) => {
      const folder = dataFolder(data);
      const { entries, cards } = demoJournal(momentOption("--now", now), engine);
      const work = openToWrite(folder, workshopOfDemo as WorkshopId);
      try {
        if (Object.keys(await work.store.heads()).length > 0) throw new StoreTrouble("already there", folder);
        await work.store.add(entries);
        await work.cards.put(cards);
      } finally {
        await work.close();
      }
      const jobs = new Set(entries.map(({ job }) => job).filter((it) => it !== null)).size;
      print(json, { folder, workshop: workshopOfDemo, entries: entries.length, jobs, owners: cards.length }, [
        `Hollin Reach Workshop lies in ${folder}: ${entries.length} entries, ${jobs} jobs. All of it is invented.`,
        `  turnsleft standing --data ${data}     what stands open`,
      ]);
    });
}
